package org.keelweigh.report;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.keelweigh.boat.Boat;
import org.keelweigh.condition.Check;
import org.keelweigh.condition.Grade;
import org.keelweigh.condition.InspectionCatalogue;
import org.keelweigh.condition.Outcome;
import org.keelweigh.condition.ReadingUnit;
import org.keelweigh.condition.StopRule;
import org.keelweigh.shortlist.Candidate;
import org.keelweigh.shortlist.Documents;

/**
 * A page to take along: every check of one or more boats in a single file that works without a network, keeps what is tapped
 * on the phone, and prints.
 */
public final class FieldSheet {

    private static final Template PAGE = Template.named("field-sheet.html");

    private FieldSheet() {}

    /**
     * A boat with the checks to make, in the order to make them.
     *
     * @param candidate the boat as it stands
     * @param boat its kind, material and drive
     * @param checks the checks in order
     */
    public record Stop(Candidate candidate, Boat boat, List<Check> checks) {
        public Stop {
            checks = List.copyOf(checks);
        }
    }

    private record Sheet(String format, String sheet, String title, String made, List<BoatPart> boats) {}

    private record BoatPart(String id, String name, String what, long version, String tag, List<CheckPart> checks) {}

    private record CheckPart(
            String id,
            int place,
            String zone,
            String title,
            String todo,
            String tools,
            double minutes,
            double waiting,
            @Nullable String caution,
            boolean ifFitted,
            @Nullable String measured,
            String fine,
            List<GradePart> grades,
            @Nullable KnownPart known) {}

    private record GradePart(
            String outcome,
            String looks,
            String fixedBy,
            @Nullable String why,
            @Nullable String stop) {}

    private record KnownPart(String outcome, @Nullable String note) {}

    /**
     * Writes the page.
     *
     * @param title what it is for, such as the shortlist's name
     * @param stops the boats with their checks
     * @param inspection the catalogue, whose order the short code follows
     * @param made when it was made
     */
    public static String of(String title, List<Stop> stops, InspectionCatalogue inspection, Instant made) {
        List<Check> all = inspection.checks();
        List<BoatPart> boats = stops.stream().map(stop -> boat(stop, all)).toList();
        String id = boats.stream().map(BoatPart::tag).collect(Collectors.joining("-"));
        String json = Documents.write(new Sheet("keelweigh-field-sheet", id, title, made.toString(), boats));
        String script = FieldScript.text();
        return PAGE.fill(Map.of(
                "title", Markup.text(title),
                "style-hash", hash(PAGE.between("<style>", "</style>")),
                "script-hash", hash(script),
                "script", script,
                "data", Markup.json(json)));
    }

    private static BoatPart boat(Stop stop, List<Check> all) {
        Candidate candidate = stop.candidate();
        List<String> places = all.stream().map(Check::id).toList();
        Boat boat = stop.boat();
        return new BoatPart(
                candidate.id().toString(),
                candidate.data().name(),
                boat.kind().label() + ", " + boat.material().label() + ", "
                        + boat.drive().label(),
                candidate.version(),
                SheetTag.of(candidate.id(), candidate.version(), all).hex(),
                stop.checks().stream()
                        .map(check -> check(check, places.indexOf(check.id()), candidate))
                        .toList());
    }

    private static CheckPart check(Check check, int place, Candidate candidate) {
        KnownPart known = candidate.data().findings().stream()
                .filter(finding -> finding.check().equals(check.id()))
                .findFirst()
                .map(finding -> new KnownPart(finding.outcome().label(), finding.note()))
                .orElse(null);
        return new CheckPart(
                check.id(),
                place,
                check.zone().label(),
                check.title(),
                check.instruction(),
                check.tools(),
                check.minutes(),
                check.waitingMinutes(),
                check.caution().orElse(null),
                check.ifFitted(),
                check.readingUnit().map(ReadingUnit::label).orElse(null),
                check.fineLooksLike(),
                check.grades().stream().map(FieldSheet::grade).toList(),
                known);
    }

    private static GradePart grade(Grade grade) {
        return new GradePart(
                grade.outcome().code(),
                grade.looksLike(),
                grade.fixedBy(),
                grade.why().orElse(null),
                grade.outcome() != Outcome.MINOR && grade.stop() != StopRule.NO
                        ? grade.stop().label()
                        : null);
    }

    /** Lets the page run its own script and style and no other. */
    private static String hash(String content) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(content.getBytes(StandardCharsets.UTF_8));
            return "sha256-" + Base64.getEncoder().encodeToString(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256", e);
        }
    }
}
