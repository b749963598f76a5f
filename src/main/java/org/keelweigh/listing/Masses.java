package org.keelweigh.listing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds what the boat weighs and what it may carry, and keeps people, motors and anchors out. */
final class Masses {

    private static final double POUND_KG = 0.45359237;
    private static final double STONE_KG = 14 * POUND_KG;
    private static final double LIGHTEST_KG = 4;
    private static final double HEAVIEST_HULL_KG = 200;
    private static final double UNLABELLED_HULL_KG = 85;
    private static final double SMALLEST_LOAD_KG = 40;
    private static final double HEAVIEST_KG = 900;

    private static final Pattern MASS = Pattern.compile("(?<![\\d$£€])(?<!\\d[.,])(?<number>" + WrittenNumber.PATTERN
            + ")(?:ish|\\+)? ?-?(?<unit>lbs?\\b|pounds?\\b|#|kgs?\\b|kilos?\\b|kilograms?\\b|stone\\b)");

    private static final String LOAD = "capacity|load|payload|carr(?:y|ies)|holds?|supports?|up to|max(?:imum)?|rated|"
            + "(?:weight|user|paddler|rider) limit|limit|takes up|suits?|suitable for|ideal for|good for";
    private static final Pattern LOAD_BEFORE = Pattern.compile("\\b(?:" + LOAD + ")\\b(?:[^,;]{0,26})$");
    private static final Pattern LOAD_AFTER =
            Pattern.compile("^[^,;\\d]{0,14}?\\b(?:capacity|load|payload|max(?:imum)?|(?:weight|user|paddler"
                    + "|rider) limit|limit|rated|rating)\\b");
    private static final Pattern HULL_BEFORE =
            Pattern.compile("\\b(?:weigh(?:s|t|ing)?|wt|mass|hull|light|only|just)\\b[^,;\\d]{0,22}$");
    private static final Pattern RIGGED = Pattern.compile("\\b(?:rigged|loaded|fully|with (?:seat|everything))\\b");
    private static final Pattern PERSON =
            Pattern.compile("\\b(?:i'm|i am|i weigh|who is|who weighs|me at|my (?:\\w{1,12}) (?:is|weighs)"
                    + "|i was|we are)\\b[^.;]{0,25}$");
    private static final Pattern PADDLER =
            Pattern.compile("\\b(?:paddlers?|people|person|adults?|riders?|users?|someone)\\b");
    private static final Pattern OTHER_AFTER =
            Pattern.compile("^[ -]?(?:of )?(?:thrust|test|anchor|motor|batter(?:y|ies)|line"
                    + "|weights?\\b(?! capacity| limit)|dog|fish|gear)\\b");
    private static final Pattern PERSON_AFTER = Pattern.compile("^[ -]?(?:guy|man|person|paddler|adult|bloke)\\b");
    private static final Pattern OTHER_BEFORE =
            Pattern.compile("\\b(?:anchor|battery|motor|thrust|trailer|cart|pump|paddle)\\b[^,;]{0,8}$");
    private static final Pattern MONEY_BEFORE =
            Pattern.compile("\\b(?:asking|price|paid|cost|sell(?:ing)? for|sale|offers?)\\b[^,;]{0,12}$");

    private static final Pattern MONEY_AFTER = Pattern.compile("^ ?(?:ono\\b|obo\\b|or near|or best|firm\\b)");

    private record Found(Fact fact, double kg, int start, int end, int score, String note) {}

    private final Source source;
    private final List<Found> found = new ArrayList<>();
    private final Claims claims = new Claims();

    private Masses(Source source) {
        this.source = source;
    }

    static Masses in(Source source) {
        Masses masses = new Masses(source);
        Matcher mass = MASS.matcher(source.plain());
        int floor = 0;
        while (mass.find()) {
            masses.judge(mass, floor);
            floor = mass.end();
        }
        return masses;
    }

    Claims claims() {
        return claims;
    }

    List<Proposal> proposals() {
        List<Proposal> proposals = new ArrayList<>();
        for (Fact fact : List.of(Fact.HULL_MASS_KG, Fact.RATED_LOAD_KG)) {
            found.stream()
                    .filter(each -> each.fact == fact)
                    .max(Comparator.comparingInt(Found::score).thenComparing(Found::start, Comparator.reverseOrder()))
                    .ifPresent(best -> proposals.add(source.propose(
                            fact,
                            new Proposal.Quantity(best.kg),
                            best.start,
                            best.end,
                            best.note,
                            best.score >= 3 && best.note.isEmpty()
                                    ? Certainty.PLAIN
                                    : best.score >= 1 ? Certainty.LIKELY : Certainty.UNSURE)));
        }
        return proposals;
    }

    private void judge(Matcher mass, int floor) {
        String before = source.clauseBefore(mass.start(), 40, floor);
        String after = source.clauseAfter(mass.end(), 30);
        if (mass.group("unit").startsWith("pound")
                && (MONEY_BEFORE.matcher(before).find()
                        || MONEY_AFTER.matcher(after).find())) {
            return;
        }
        claims.claim(mass.start(), mass.end());
        OptionalDouble kg = WrittenNumber.of(mass.group("number"))
                .within(kilogramsPer(mass.group("unit")), LIGHTEST_KG, HEAVIEST_KG);
        if (kg.isEmpty()
                || PERSON.matcher(source.sentenceBefore(mass.start(), 60)).find()
                || OTHER_AFTER.matcher(after).find()
                || OTHER_BEFORE.matcher(before).find()) {
            return;
        }
        assign(kg.getAsDouble(), mass.start(), mass.end(), before, after);
    }

    private void assign(double kg, int start, int end, String before, String after) {
        boolean loadBefore = LOAD_BEFORE.matcher(before).find();
        boolean person = PERSON_AFTER.matcher(after).find();
        if (person && !loadBefore) {
            return;
        }
        boolean hullBefore = HULL_BEFORE.matcher(before).find();
        if (loadBefore || !hullBefore && LOAD_AFTER.matcher(after).find()) {
            if (kg >= SMALLEST_LOAD_KG) {
                String note = person || PADDLER.matcher(before).find()
                        ? "Said of the paddler; the load the maker allows may be another figure."
                        : "";
                found.add(new Found(Fact.RATED_LOAD_KG, kg, start, end, 3, note));
            }
        } else if (hullBefore || after.strip().startsWith("hull")) {
            hull(kg, start, end, before, after);
        } else if (kg <= UNLABELLED_HULL_KG) {
            found.add(new Found(Fact.HULL_MASS_KG, kg, start, end, 1, "Not labelled; taken as the boat's own weight."));
        } else {
            found.add(new Found(
                    Fact.RATED_LOAD_KG,
                    kg,
                    start,
                    end,
                    0,
                    "Not labelled; too heavy for the boat, so taken as the load."));
        }
    }

    private void hull(double kg, int start, int end, String before, String after) {
        if (kg > HEAVIEST_HULL_KG) {
            return;
        }
        boolean rigged = RIGGED.matcher(before).find() || RIGGED.matcher(after).find();
        found.add(new Found(
                Fact.HULL_MASS_KG,
                kg,
                start,
                end,
                before.contains("hull") ? 4 : rigged ? 2 : 3,
                rigged ? "Said of the boat as rigged; the bare hull is lighter." : ""));
    }

    private static double kilogramsPer(String unit) {
        return switch (unit.charAt(0)) {
            case 'k' -> 1;
            case 's' -> STONE_KG;
            default -> POUND_KG;
        };
    }
}
