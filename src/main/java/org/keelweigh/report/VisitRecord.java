package org.keelweigh.report;

import java.util.Base64;
import java.util.Map;
import java.util.stream.Collectors;
import org.keelweigh.condition.Check;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.SeriousFinding;
import org.keelweigh.shortlist.Photo;

/** The record of a visit: when, where, who, what was found and how, with the photos. One page that needs nothing else. */
public final class VisitRecord {

    /** More would make a file that mail does not carry. */
    static final int MOST_PHOTOS = 24;

    private static final Template PAGE = Template.named("visit-record.html");

    private final VisitProof proof;

    private VisitRecord(VisitProof proof) {
        this.proof = proof;
    }

    /** Writes the page. */
    public static String of(VisitProof proof) {
        return new VisitRecord(proof).page();
    }

    private String page() {
        return PAGE.fill(Map.of(
                "boat", Markup.text(proof.boatName()),
                "facts", facts(),
                "serious", serious(),
                "findings", findings(),
                "open", open(),
                "answers", answers(),
                "photos", photos(),
                "printed", Markup.text(proof.time(proof.printed()))));
    }

    private String facts() {
        var boat = proof.report().boat();
        var notes = proof.notes();
        return VisitProof.row(
                        "Boat",
                        boat.kind().label() + ", " + boat.material().label() + ", "
                                + boat.drive().label())
                + VisitProof.row(
                        "Hull number", proof.report().candidate().data().plate().number())
                + VisitProof.row("Begun", notes.startedAt() == null ? null : proof.time(notes.startedAt()))
                + VisitProof.row("Place", notes.place())
                + VisitProof.row("Present", notes.present())
                + VisitProof.row("Seller", notes.seller());
    }

    private String serious() {
        return proof.report().condition().stops().stream()
                .map(SeriousFinding::reason)
                .map(reason -> "<p class=\"stop\">Do not buy: " + Markup.text(reason) + "</p>")
                .collect(Collectors.joining("\n"));
    }

    private String findings() {
        String rows = proof.checks().stream()
                .flatMap(check -> proof.finding(check).map(found -> row(check, found)).stream())
                .collect(Collectors.joining());
        return rows.isEmpty() ? "<p>Nothing was looked at yet.</p>" : "<table>" + rows + "</table>";
    }

    private String row(Check check, Finding finding) {
        return "<tr><th>" + Markup.text(check.title()) + "</th><td>" + Markup.text(proof.words(check, finding))
                + "<br /><span class=\"note\">" + Markup.text(finding.method().label()) + "</span></td></tr>\n";
    }

    private String open() {
        String titles = proof.checks().stream()
                .filter(check -> proof.finding(check).isEmpty())
                .map(Check::title)
                .collect(Collectors.joining("; "));
        return titles.isEmpty() ? "Every check was made." : Markup.text(titles + ".");
    }

    private String answers() {
        String rows = proof.questions().stream()
                .filter(question -> proof.notes().answers().containsKey(question.id()))
                .map(question ->
                        VisitProof.row(question.text(), proof.notes().answers().get(question.id())))
                .collect(Collectors.joining());
        return rows.isEmpty() ? "<p>No answer was noted.</p>" : "<table>" + rows + "</table>";
    }

    private String photos() {
        if (proof.photos().isEmpty()) {
            return "<p>None were taken.</p>";
        }
        String shown =
                proof.photos().stream().limit(MOST_PHOTOS).map(this::photo).collect(Collectors.joining());
        int more = proof.photos().size() - MOST_PHOTOS;
        return more <= 0 ? shown : shown + "<p>" + more + " more photos are kept in Keelweigh.</p>";
    }

    private String photo(Photo photo) {
        String words = photo.caption() == null ? title(photo) : title(photo) + ": " + photo.caption();
        String image = proof.pictures()
                .apply(photo.id())
                .map(bytes -> "<img alt=\"" + Markup.text(words) + "\" src=\"data:image/jpeg;base64,"
                        + Base64.getEncoder().encodeToString(bytes) + "\" />")
                .orElse("");
        return "<div class=\"photo\">" + image + "<p>" + Markup.text(words + ", " + proof.time(photo.addedAt()))
                + "</p></div>\n";
    }

    private String title(Photo photo) {
        return proof.checks().stream()
                .filter(check -> check.id().equals(photo.check()))
                .map(Check::title)
                .findFirst()
                .orElse("The boat");
    }
}
