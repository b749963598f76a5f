package org.keelweigh.exchange;

import org.keelweigh.shortlist.Documents;
import org.keelweigh.shortlist.Facts;

/** Writes a shortlist as a file that {@link ShortlistImport} reads back without loss. */
public final class ShortlistExport {

    private ShortlistExport() {}

    /** Writes everything that people typed; the same facts always give the same text. */
    public static String of(Facts facts) {
        return of(ShortlistDocument.of(facts));
    }

    static String of(ShortlistDocument document) {
        return Documents.tree(document).toPrettyString() + "\n";
    }
}
