package org.keelweigh.listing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds what goes with the boat, and not what is denied, sold apart, or only sounds like gear. */
final class Gear {

    private record Item(String code, Pattern words) {
        static Item of(String code, String words) {
            return new Item(code, Pattern.compile("\\b(?:" + words + ")"));
        }
    }

    private static final List<Item> ITEMS = List.of(
            Item.of(
                    "paddle",
                    "paddles?\\b(?![ -]?(?:board|boarding|sport|only|craft|kayak|leash|holder|clip"
                            + "|keeper|well|great|straight|nicely|like|beautifully|easily|fine|fast|out|around"
                            + "|float))|oars?\\b(?!locks?)"),
            Item.of("vest", "pfds?\\b|life ?(?:jackets?|vests?)\\b|vests?\\b|buoyancy aids?\\b|flotation vests?\\b"),
            Item.of("cart", "(?:kayak |canoe |launch )?carts?\\b|trolleys?\\b|dolly\\b"),
            Item.of("pump", "pumps?\\b"),
            Item.of("rack-bars", "roof ?(?:racks?|bars?)\\b(?! (?:pads|straps))|cross ?bars?\\b|rack bars\\b"),
            Item.of(
                    "cradle-straps",
                    "cradles?\\b|cam straps?\\b|straps?\\b|tie[- ]?downs?\\b|j[- ]?(?:bars?|racks?|hooks?)\\b"),
            Item.of(
                    "skirt-or-bags",
                    "spray ?(?:skirts?|decks?)\\b|skirts?\\b|(?:float(?:ation)?|flotation|air|buoyancy) ?bags?\\b"),
            Item.of("anchor-fishing", "anchors?\\b|rod holders?\\b|fish ?finders?\\b(?! batter)"),
            Item.of("trailer", "trailers?\\b"),
            Item.of("cover", "(?<!hatch )covers?\\b(?! (?:ground|a lot|distance|miles|up))|tarp\\b|tarpaulin\\b"),
            Item.of(
                    "signal-light",
                    "whistle\\b|(?:nav(?:igation)?|stern|bow|deck|safety) lights?\\b|flares?\\b"
                            + "|signal mirror\\b|signal kit\\b"),
            Item.of("dry-bag-lock", "dry ?bags?\\b|(?:cable |bike )?locks?\\b|padlocks?\\b"),
            Item.of("battery", "batter(?:y|ies)\\b(?! box)"),
            Item.of("charger", "chargers?\\b"),
            Item.of("seat", "seats?\\b(?!er)(?! (?:height|post|\\d|two|three|cushions?))"),
            Item.of("rudder", "rudders?\\b"));

    private static final Pattern TURN =
            Pattern.compile("\\b(?:but|includ\\w{1,4}|comes|with|plus|has|have|got|just|only|also)\\b");
    /** "does not come with" denies what follows. */
    private static final Pattern UNTURNED = Pattern.compile("\\b(?:not|doesn't|does not|don't) (?:come )?$");

    private static final Pattern DENIAL =
            Pattern.compile("\\b(?:no|not|without|w/o|excluding|excludes?|excl|minus|lacks?|lacking|doesn't"
                    + "|does not|don't|needs?|missing|sans|never|nor|buy|bring|wanted|want|swap" + "|trade)\\b");
    private static final Pattern DENIED_AFTER =
            Pattern.compile("^(?: ?(?:and|&|or|nor) (?:\\w{1,12} ){0,2}\\w{1,12})? ?(?:is |are |was "
                    + "|were )?(?:: ?)?(?:no\\b(?! \\w)|not (?:for sale|incl|part)|sold separately"
                    + "|extra|available|gone|lost|missing|excluded|(?:at |for )(?:an )?(?:extra"
                    + "|additional)|needed|required|can be |to borrow|stays? with|(?:is|are) staying"
                    + "|[$£€]\\d{1,3} (?:each|extra|more)|[$£€]\\d{1,2}(?![\\d.,]*\\d))");
    private static final Pattern INCLUDED_AFTER = Pattern.compile("^ ?\\(?(?:is |are )?included\\b");
    private static final Pattern ALTERNATIVE = Pattern.compile("\\b(?:or|nor)\\b");
    private static final Pattern MERE_SEAT = Pattern.compile(
            "\\b(?:behind|under|torn|broken|worn|missing|new|in|front|rear|car|\\d" + "|two)(?: the| a)? $");
    private static final Pattern VERB_BEFORE = Pattern.compile("\\b(?:to|can|you|she|it|he|they|still|i|we) $");

    private final Source source;

    private Gear(Source source) {
        this.source = source;
    }

    static List<Proposal> in(Source source) {
        Gear gear = new Gear(source);
        List<Proposal> proposals = new ArrayList<>();
        for (Item item : ITEMS) {
            gear.first(item).ifPresent(proposals::add);
        }
        return proposals;
    }

    private Optional<Proposal> first(Item item) {
        Matcher matcher = item.words.matcher(source.plain());
        while (matcher.find()) {
            if (included(item, matcher.start(), matcher.end())) {
                return Optional.of(source.propose(
                        Fact.INCLUDED_GEAR,
                        new Proposal.Text(item.code),
                        matcher.start(),
                        matcher.end(),
                        note(item),
                        item.code.equals("seat") ? Certainty.UNSURE : Certainty.LIKELY));
            }
        }
        return Optional.empty();
    }

    private static String note(Item item) {
        return switch (item.code) {
            case "seat" -> "A seat is named; check that it stays in the boat.";
            case "pump" -> "For filling or for bailing: the text does not say.";
            default -> "";
        };
    }

    private boolean included(Item item, int start, int end) {
        String before = source.sentenceBefore(start, 70);
        String after = source.sentenceAfter(end, 44);
        if (VERB_BEFORE.matcher(before).find() && !item.code.equals("vest")
                || DENIED_AFTER.matcher(after).find()) {
            return false;
        }
        if (INCLUDED_AFTER.matcher(after).find()) {
            return true;
        }
        if (item.code.equals("seat") && MERE_SEAT.matcher(before).find()) {
            return false;
        }
        if (item.code.equals("cart") && before.endsWith("anchor ")) {
            return false;
        }
        return !denied(before, after);
    }

    /** A denial reaches forward to the next turn of phrase; past a comma only in a list that ends with "or". */
    private static boolean denied(String before, String after) {
        String clause = before.substring(before.lastIndexOf(')') + 1);
        String reach = clause;
        Matcher turn = TURN.matcher(clause);
        while (turn.find()) {
            if (!UNTURNED.matcher(clause.substring(0, turn.start())).find()) {
                reach = clause.substring(turn.end());
            }
        }
        Matcher denial = DENIAL.matcher(reach);
        int last = -1;
        while (denial.find()) {
            last = denial.end();
        }
        if (last < 0) {
            return false;
        }
        String between = reach.substring(last);
        boolean comma = between.indexOf(',') >= 0 || between.contains(" - ");
        return !comma || ALTERNATIVE.matcher(between + after).find();
    }
}
