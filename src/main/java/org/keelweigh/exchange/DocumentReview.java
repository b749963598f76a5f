package org.keelweigh.exchange;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import org.keelweigh.boat.BoatDefaults;
import org.keelweigh.condition.Finding;
import org.keelweigh.shortlist.Display;
import org.keelweigh.shortlist.Doubt;
import org.keelweigh.shortlist.Plausibility;

/** Looks whether a document that keeps to the schema can be right: identifiers, references, bounds. */
final class DocumentReview {

    private static final String FINDINGS = "findings.";

    private final LocatedJson located;
    private final List<ImportProblem> problems = new ArrayList<>();
    private final List<Doubt> questions = new ArrayList<>();
    private final Map<UUID, String> seen = new TreeMap<>();

    DocumentReview(
            ShortlistDocument document, LocatedJson located, KnownNames names, BoatDefaults defaults, int thisYear) {
        this.located = located;
        Display display = new Display(
                document.shortlist().data().units(), document.shortlist().data().currency());
        Plausibility plausibility = new Plausibility(defaults, thisYear, display);
        frame(document.shortlist(), names, plausibility);
        Set<String> people = new HashSet<>();
        for (int i = 0; i < document.people().size(); i++) {
            people.add(document.people().get(i).id().toString());
            person("people[" + i + "].", document.people().get(i), names, plausibility);
        }
        for (int i = 0; i < document.candidates().size(); i++) {
            candidate("candidates[" + i + "].", document.candidates().get(i), people, names, plausibility);
        }
    }

    /** Tells why the document cannot be imported; empty when it can. */
    List<ImportProblem> problems() {
        return problems;
    }

    /** Tells what a person may look at again. */
    List<Doubt> questions() {
        return questions;
    }

    private void frame(ShortlistDocument.ShortlistPart part, KnownNames names, Plausibility plausibility) {
        identity("shortlist.id", part.id());
        plausibility.of(part.data()).forEach(doubt -> take("shortlist.data." + doubt.field(), doubt));
        names.askAbout(part.data(), (field, question) -> ask("shortlist.data." + field, question));
    }

    private void person(String at, ShortlistDocument.PersonPart part, KnownNames names, Plausibility plausibility) {
        identity(at + "id", part.id());
        plausibility.of(part.data()).forEach(doubt -> take(at + "data." + doubt.field(), doubt));
        names.askAbout(part.data(), (field, question) -> ask(at + "data." + field, question));
        for (String criterion : part.data().weights().keySet()) {
            if (!names.criteria().contains(criterion)) {
                refuse(
                        at + "data.weights." + criterion,
                        "There is no criterion named \"" + Words.brief(criterion) + "\"."
                                + NearestName.hint(Words.brief(criterion), names.criteria()));
            }
        }
    }

    private void candidate(
            String at,
            ShortlistDocument.CandidatePart part,
            Set<String> people,
            KnownNames names,
            Plausibility plausibility) {
        identity(at + "id", part.id());
        for (Doubt doubt : plausibility.of(part.data())) {
            take(at + "data." + placed(doubt.field(), part.data().findings()), doubt);
        }
        names.askAbout(part.data(), (field, question) -> ask(at + "data." + field, question));
        for (String person : part.data().liking().keySet()) {
            if (!people.contains(person)) {
                refuse(
                        at + "data.liking." + person,
                        "Nobody among the people of this file has the id \"" + Words.brief(person) + "\".");
            }
        }
    }

    /** Findings are named by check where people see them and numbered in a file; the last of two is the one too many. */
    private static String placed(String field, List<Finding> findings) {
        if (!field.startsWith(FINDINGS)) {
            return field;
        }
        String check = field.substring(FINDINGS.length());
        int last = findings.size() - 1;
        while (last > 0 && !findings.get(last).check().equals(check)) {
            last--;
        }
        return "findings[" + last + "].check";
    }

    private void identity(String field, UUID id) {
        String before = seen.putIfAbsent(id, field);
        if (before != null) {
            refuse(field, "The id " + id + " stands twice in this file; " + before + " has it too.");
        }
    }

    private void take(String field, Doubt doubt) {
        if (doubt.refused()) {
            refuse(field, doubt.sentence());
        } else {
            ask(field, doubt.sentence());
        }
    }

    private void refuse(String field, String sentence) {
        problems.add(new ImportProblem(field, located.line(field), sentence));
    }

    private void ask(String field, String sentence) {
        questions.add(new Doubt(field, false, sentence));
    }
}
