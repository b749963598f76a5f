package org.keelweigh.appraisal;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import org.keelweigh.condition.NextCheck;

/**
 * What to do next about the boat that leads.
 *
 * @param boat its place in the shortlist
 * @param sentence what to do, with how long it takes
 */
public record NextStep(int boat, String sentence) {

    /** Tells the next step: the check of the leader that saves most for each minute; empty if no boat leads. */
    public static Optional<NextStep> of(Measured measured, Perspective perspective) {
        OptionalInt leader = perspective.ranking().leader();
        return leader.isEmpty()
                ? Optional.empty()
                : Optional.of(new NextStep(
                        leader.getAsInt(), sentence(measured.boats().get(leader.getAsInt()))));
    }

    private static String sentence(BoatReport report) {
        return report.condition().nextChecks().stream()
                .findFirst()
                .map(NextCheck::check)
                .map(check -> "Next, check this on " + report.name() + ": " + lower(check.title()) + " (about "
                        + Math.round(Math.max(2, check.minutes())) + " minutes).")
                .orElseGet(() -> "Everything about " + report.name() + " has been checked: agree on the price.");
    }

    private static String lower(String title) {
        return title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1);
    }
}
