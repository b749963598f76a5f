package org.keelweigh.browser;

import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.ShortlistEditing;
import org.keelweigh.shortlist.ShortlistId;
import org.keelweigh.ui.shell.Places;

/** The addresses of all pages there are for one shortlist and its first boat. */
final class Pages {

    private static final List<String> SECTIONS =
            List.of("facts", "inspection", "costs", "haul", "fit", "trust", "history");

    private Pages() {}

    static List<String> of(ShortlistEditing editing, String compare) {
        ShortlistId list = new ShortlistId(UUID.fromString(compare.substring(compare.lastIndexOf('/') + 1)));
        Facts facts = editing.facts(list).orElseThrow();
        var boat = facts.candidates().getFirst().id();
        Stream<String> shared = Stream.of(
                "",
                "settings",
                compare,
                Places.trip(list),
                Places.weigh(list),
                Places.offer(list),
                Places.visit(list, boat));
        return Stream.concat(shared, SECTIONS.stream().map(each -> Places.boat(list, boat, each)))
                .toList();
    }
}
