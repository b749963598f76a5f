package org.keelweigh.exchange;

import java.util.List;
import org.keelweigh.shortlist.Doubt;

/** What came of reading a file. Reading stores nothing. */
public sealed interface ImportResult {

    /**
     * The file can be imported.
     *
     * @param document what it says
     * @param questions what looks unusual or is not known to the catalogues; a person may look at it again
     */
    record Ready(ShortlistDocument document, List<Doubt> questions) implements ImportResult {
        public Ready {
            questions = List.copyOf(questions);
        }
    }

    /**
     * The file cannot be imported.
     *
     * @param problems why, at least one, by line
     */
    record Refused(List<ImportProblem> problems) implements ImportResult {
        public Refused {
            problems = List.copyOf(problems);
        }
    }
}
