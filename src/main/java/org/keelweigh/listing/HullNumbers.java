package org.keelweigh.listing;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds a hull identification number by its label, or by the shape of its twelve characters. */
final class HullNumbers {

    private static final Pattern LABELLED = Pattern.compile(
            "\\b(?:hin|hull (?:id(?:entification)?(?: (?:no|number))?|no|number)|cin"
                    + "|win)\\b[.:# ]{1,3}(?:is )?(?<number>(?:[a-z]{2}-?)?[a-z]{3}[- ]?[a-z0-9]{5}[- ]?[a-z0-9]{4})\\b");
    private static final Pattern BARE = Pattern.compile(
            "\\b(?<number>(?:[a-z]{2}-)?[a-z]{3}(?=[a-z0-9]{0,4}\\d)[a-z0-9]{5}(?:[a-l]\\d{3}|m\\d{2}[a-l]))\\b");

    private HullNumbers() {}

    static Optional<Proposal> in(Source source) {
        Optional<Proposal> labelled = first(source, LABELLED, "", Certainty.PLAIN);
        return labelled.isPresent()
                ? labelled
                : first(source, BARE, "Not labelled; it has the shape of a hull number.", Certainty.LIKELY);
    }

    private static Optional<Proposal> first(Source source, Pattern pattern, String note, Certainty certainty) {
        Matcher matcher = pattern.matcher(source.plain());
        if (!matcher.find()) {
            return Optional.empty();
        }
        return Optional.of(source.propose(
                Fact.HULL_NUMBER,
                new Proposal.Text(matcher.group("number").toUpperCase(Locale.ROOT)),
                matcher.start("number"),
                matcher.end("number"),
                note,
                certainty));
    }
}
