package org.keelweigh.ui.boat;

import java.util.Optional;
import org.keelweigh.condition.CauseSignal;
import org.keelweigh.condition.Check;
import org.keelweigh.condition.ListingSignal;

/** Finds the words for an id: of a check, a sign, a piece of gear or a person. */
final class Wording {

    private final BoatDesk desk;

    Wording(BoatDesk desk) {
        this.desk = desk;
    }

    String of(String id) {
        return desk.catalogues()
                .inspection()
                .check(id)
                .map(Check::title)
                .or(() -> desk.catalogues().listing().signal(id).map(ListingSignal::phrase))
                .or(() -> desk.catalogues().causes().signal(id).map(CauseSignal::phrase))
                .or(() -> GearKind.of(id).map(GearKind::words))
                .or(() -> person(id))
                .orElse(id);
    }

    private Optional<String> person(String id) {
        return desk.facts().people().stream()
                .filter(each -> each.id().toString().equals(id))
                .map(each -> each.data().name())
                .findFirst();
    }
}
