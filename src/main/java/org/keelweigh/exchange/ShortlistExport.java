package org.keelweigh.exchange;

import java.util.function.Function;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.Documents;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.VisitNotes;

/** Writes a shortlist as a file that {@link ShortlistImport} reads back without loss. */
public final class ShortlistExport {

    private ShortlistExport() {}

    /**
     * Writes everything that people typed; the same facts and notes always give the same text.
     *
     * @param visits tells the notes of the visit to a boat
     */
    public static String of(Facts facts, Function<CandidateId, VisitNotes> visits) {
        return of(ShortlistDocument.of(facts, visits));
    }

    static String of(ShortlistDocument document) {
        return Documents.tree(document).toPrettyString() + "\n";
    }
}
