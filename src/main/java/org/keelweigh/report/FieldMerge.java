package org.keelweigh.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.keelweigh.condition.Finding;

/**
 * The findings of a field sheet brought together, check by check, with those in the app.
 *
 * @param taken findings that can be taken over: nobody changed that check in the app since the sheet was made
 * @param choices checks that both sides changed differently; a person chooses
 * @param same how many checks say the same on both sides
 */
public record FieldMerge(List<Finding> taken, List<Choice> choices, int same) {

    public FieldMerge {
        taken = List.copyOf(taken);
        choices = List.copyOf(choices);
    }

    /**
     * A check on which both sides differ.
     *
     * @param check the check's id
     * @param here what the app says; {@code null} if the finding was taken away there
     * @param sheet what the sheet says
     */
    public record Choice(String check, @Nullable Finding here, Finding sheet) {

        /** Tells what the app says. */
        public Optional<Finding> mine() {
            return Optional.ofNullable(here);
        }
    }

    /**
     * Brings findings together.
     *
     * @param base the findings when the sheet was made
     * @param now the findings in the app
     * @param sheet the findings that came back; a check it does not name was not made there and stays as it is
     */
    public static FieldMerge of(List<Finding> base, List<Finding> now, List<Finding> sheet) {
        List<Finding> taken = new ArrayList<>();
        List<Choice> choices = new ArrayList<>();
        int same = 0;
        for (Finding theirs : sheet) {
            @Nullable Finding before = find(base, theirs.check());
            @Nullable Finding mine = find(now, theirs.check());
            Finding completed = completed(theirs, mine);
            if (completed.equals(mine)) {
                same++;
            } else if (unchanged(before, mine)) {
                taken.add(completed);
            } else {
                choices.add(new Choice(theirs.check(), mine, theirs));
            }
        }
        return new FieldMerge(taken, choices, same);
    }

    /** A sheet sent as a code has no notes; what the app holds about the same outcome is kept. */
    private static Finding completed(Finding theirs, @Nullable Finding mine) {
        if (mine == null || mine.outcome() != theirs.outcome()) {
            return theirs;
        }
        return new Finding(
                theirs.check(),
                theirs.outcome(),
                mine.method(),
                theirs.measured() == null ? mine.measured() : theirs.measured(),
                theirs.note() == null ? mine.note() : theirs.note(),
                mine.quote());
    }

    private static boolean unchanged(@Nullable Finding before, @Nullable Finding mine) {
        return before == null ? mine == null : before.equals(mine);
    }

    private static @Nullable Finding find(List<Finding> findings, String check) {
        return findings.stream()
                .filter(each -> each.check().equals(check))
                .findFirst()
                .orElse(null);
    }
}
