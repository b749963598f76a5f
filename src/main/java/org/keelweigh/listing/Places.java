package org.keelweigh.listing;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds where the boat is: a name in capitals after words such as "located in". */
final class Places {

    private static final String WORD = "\\p{Lu}[\\p{L}'’-]{1,24}";
    private static final String NAME =
            "(?<name>" + WORD + "(?: (?:(?:on|upon|of|the|de|la|sur) )?" + WORD + "){0,3}(?:, \\p{Lu}{2}\\b)?)";
    private static final Pattern LABELLED =
            Pattern.compile("\\b(?i:located(?: in| at| near)?|location(?: is)?|(?:pick[ -]?up|collect(?:ion)?"
                    + "|collected|viewing)(?: only)?(?: in| from| at| near)|(?:based|lives?"
                    + "|live out) (?:in|near|at|by)|uplift from|lies in|(?:depot|store|shop|live|based"
                    + "|am|are) in|lying in|kept (?:in|at|near)|(?:viewed|seen) (?:in|at|near)"
                    + "|(?:pick[ -]?up|collection)(?= ?[:-])|near)[ :-]{1,3}" + NAME);
    private static final Pattern AREA = Pattern.compile(NAME + " (?i:area)\\b");
    private static final Pattern ONLY = Pattern.compile(NAME + ", (?i:pick[ -]?up only|collection only|collect only)");
    private static final Pattern NO_PLACE = Pattern.compile(
            "(?i)(?:person|cash|home|my|the|our|mon|tues|wednes|thurs|fri|satur|sun)(?:day)?|new|.*\\b(?:only|cash)");

    private Places() {}

    static Optional<Proposal> in(Source source) {
        for (Pattern pattern : new Pattern[] {LABELLED, ONLY, AREA}) {
            Matcher matcher = pattern.matcher(source.original());
            while (matcher.find()) {
                String name = matcher.group("name");
                if (!NO_PLACE.matcher(name).matches()) {
                    return Optional.of(source.propose(
                            Fact.PLACE,
                            new Proposal.Text(written(name)),
                            matcher.start("name"),
                            matcher.end("name"),
                            "",
                            Certainty.LIKELY));
                }
            }
        }
        return Optional.empty();
    }

    /** Names shouted in capitals are written with one capital per word; a two-letter state stays as it is. */
    private static String written(String name) {
        if (!name.equals(name.toUpperCase(Locale.ROOT))) {
            return name;
        }
        StringBuilder written = new StringBuilder();
        for (String word : name.split(" ")) {
            String shown = word.length() == 2
                    ? word
                    : word.charAt(0) + word.substring(1).toLowerCase(Locale.ROOT);
            written.append(written.isEmpty() ? "" : " ").append(shown);
        }
        return written.toString();
    }
}
