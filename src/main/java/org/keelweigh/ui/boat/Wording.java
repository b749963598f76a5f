package org.keelweigh.ui.boat;

import java.util.Optional;

/** Finds the words for an id: of a check, a sign, a piece of gear or a person. */
final class Wording {

    private final BoatDesk desk;

    Wording(BoatDesk desk) {
        this.desk = desk;
    }

    String of(String id) {
        return desk.catalogues()
                .words(id)
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
