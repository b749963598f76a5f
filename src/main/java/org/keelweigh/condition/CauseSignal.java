package org.keelweigh.condition;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.keelweigh.boat.Coded;
import org.keelweigh.catalogue.Row;

/**
 * A sign that tells of a hidden cause, from the table {@code signals.csv}.
 *
 * @param id its id
 * @param cause the id of its cause
 * @param phrase how a sentence names it when it was there
 * @param absentPhrase how a sentence names it when it was looked for and not there
 * @param ifCause chance that it is there when the cause holds, 0 to 1
 * @param ifNot chance that it is there when the cause does not hold, 0 to 1
 * @param checks the checks that grade the same thing; a finding of one of them takes the signal's place
 * @param from where set, the sign means that its one check comes out so or worse, and is weighed as such
 * @param source where the figures come from
 */
public record CauseSignal(
        String id,
        String cause,
        String phrase,
        String absentPhrase,
        double ifCause,
        double ifNot,
        List<String> checks,
        Optional<Outcome> from,
        String source) {

    public CauseSignal {
        checks = List.copyOf(checks);
        if (from.isPresent() && checks.size() != 1) {
            throw new IllegalArgumentException(
                    "The signal " + id + " stands for an outcome and so needs exactly one check, not " + checks.size());
        }
    }

    static CauseSignal of(Row row) {
        @Nullable String from = row.optional("from").orElse(null);
        return new CauseSignal(
                row.text("signal"),
                row.text("cause"),
                row.text("phrase"),
                row.text("absent"),
                row.number("if_cause", 0, 1),
                row.number("if_not", 0, 1),
                row.words("checks"),
                Optional.ofNullable(from).map(code -> Coded.parse(Outcome.class, code)),
                row.text("source"));
    }

    /** Tells how a sentence names it. */
    public String phrase(boolean seen) {
        return seen ? phrase : absentPhrase;
    }
}
