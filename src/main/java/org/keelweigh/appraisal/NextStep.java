package org.keelweigh.appraisal;

import java.util.Optional;
import java.util.OptionalInt;
import org.keelweigh.condition.Check;
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
                .map(check -> "Next, look at " + report.name() + ": " + asked(check) + " About "
                        + Math.round(Math.max(1, check.minutes())) + " minutes.")
                .orElseGet(() -> "Everything about " + report.name() + " has been checked: agree on the price.");
    }

    private static String asked(Check check) {
        String title = check.title();
        return title.endsWith(".") || title.endsWith("?") ? title : title + ".";
    }
}
