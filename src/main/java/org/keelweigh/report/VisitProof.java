package org.keelweigh.report;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.keelweigh.appraisal.BoatReport;
import org.keelweigh.condition.Check;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.Outcome;
import org.keelweigh.condition.SellerQuestion;
import org.keelweigh.shortlist.Display;
import org.keelweigh.shortlist.Photo;
import org.keelweigh.shortlist.PhotoId;
import org.keelweigh.shortlist.VisitNotes;

/**
 * Everything that the papers about a visit are made of.
 *
 * @param report the boat
 * @param notes what was noted at the visit
 * @param checks the checks that apply, in zone order
 * @param questions the questions to the seller
 * @param photos the boat's photos
 * @param pictures finds a photo's file
 * @param display how figures are written
 * @param printed when the paper is made
 * @param zone where the clock on the wall hangs
 */
public record VisitProof(
        BoatReport report,
        VisitNotes notes,
        List<Check> checks,
        List<SellerQuestion> questions,
        List<Photo> photos,
        Function<PhotoId, Optional<byte[]>> pictures,
        Display display,
        Instant printed,
        ZoneId zone) {

    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm");

    public VisitProof {
        checks = List.copyOf(checks);
        questions = List.copyOf(questions);
        photos = List.copyOf(photos);
    }

    String boatName() {
        return report.name();
    }

    String time(Instant at) {
        return MINUTE.withZone(zone).format(at);
    }

    Optional<Finding> finding(Check check) {
        return report.candidate().data().findings().stream()
                .filter(each -> each.check().equals(check.id()))
                .findFirst();
    }

    /** Tells a finding in words: its grade, what that looks like, the measure and the note. */
    String words(Check check, Finding finding) {
        String looks = finding.outcome() == Outcome.FINE
                ? check.fineLooksLike()
                : check.grade(finding.outcome()).map(grade -> grade.looksLike()).orElse("");
        return finding.outcome().label()
                + (looks.isEmpty() ? "" : ": " + looks)
                + (finding.measured() == null ? "" : "; " + check.told(finding.measured()))
                + (finding.note() == null ? "" : "; note: " + finding.note());
    }

    /** Writes a row of a table; a blank to fill in by hand where nothing is known. */
    static String row(String label, @Nullable String value) {
        return "<tr><th>" + Markup.text(label) + "</th><td>"
                + (value == null || value.isBlank() ? "&#160;" : Markup.text(value)) + "</td></tr>\n";
    }
}
