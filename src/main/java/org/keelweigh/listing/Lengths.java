package org.keelweigh.listing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds length and beam: labelled, in pairs such as 320 x 81, or told apart by what a small boat can measure. */
final class Lengths {

    static final double SHORTEST_M = 1.75;
    static final double LONGEST_M = 9.5;
    static final double NARROWEST_M = 0.35;
    static final double WIDEST_M = 1.75;

    private static final Pattern OTHER_BEFORE = Pattern.compile("\\b(?:paddles?|oars?|leash|rope|line|chain|depth|"
            + "draft|draught|thickness|cockpit|hatch|wheels?|trailer|mast|within|tall|i'm|i am"
            + "|height|shaft|inseam)\\b[^a-z]{0,3}(?:is |of |about )?$");
    private static final Pattern OTHER_AFTER =
            Pattern.compile("^[ -]?(?:[a-z]{1,10} )?(?:paddles?(?! ?board)|oars?|leash|rope|"
                    + "line|chain|deep|thick|tall|high|trailers?|shaft|away|from|of rope|hatch|cockpit"
                    + "|wheels?|waves?|draft|draught|depth|inseam)\\b");
    private static final Pattern LENGTH_WORD =
            Pattern.compile("\\b(?:length|loa|lg|l)\\b[^a-z\\d]{0,24}(?:is |of |about |approx\\.? |overall )?$");
    private static final Pattern BEAM_WORD =
            Pattern.compile("\\b(?:beam|width|breadth|w|b)\\b[^a-z/\\d]{0,24}(?:is |of |about |approx\\.? )?$");
    private static final Pattern LONG_AFTER = Pattern.compile("^[ -]?(?:in )?(?:long|length|loa)\\b");
    private static final Pattern WIDE_AFTER = Pattern.compile("^[ -]?(?:in )?(?:wide|beam|width|across)\\b");
    private static final Pattern BOAT_AFTER = Pattern.compile(
            "^[ -]?(?:[a-z-]{1,12} ){0,3}(?:kayaks?|canoe|boat|board|sup|sit|paddle ?board|rowboat|dinghy|skiff)\\b");

    private final Source source;
    private final List<Found> found = new ArrayList<>();
    private final Claims claims = new Claims();

    private Lengths(Source source) {
        this.source = source;
    }

    private record Found(Fact fact, double metres, int start, int end, int score, String note) {}

    static Lengths in(Source source) {
        Lengths lengths = new Lengths(source);
        lengths.pairs();
        lengths.singles();
        lengths.spelt();
        lengths.bareWidths();
        return lengths;
    }

    /** Every stretch that is a length, wanted or not. */
    Claims claims() {
        return claims;
    }

    List<Proposal> proposals() {
        List<Proposal> proposals = new ArrayList<>();
        for (Fact fact : List.of(Fact.LENGTH_M, Fact.BEAM_M)) {
            found.stream()
                    .filter(each -> each.fact == fact)
                    .max(Comparator.comparingInt(Found::score).thenComparing(Found::start, Comparator.reverseOrder()))
                    .ifPresent(best -> proposals.add(propose(best)));
        }
        return proposals;
    }

    private Proposal propose(Found best) {
        String other = found.stream()
                .filter(each -> each.fact == best.fact && Math.abs(each.metres - best.metres) > 0.02 * best.metres)
                .findFirst()
                .map(each -> "The text also says " + source.original().substring(each.start, each.end) + ".")
                .orElse("");
        String note = (best.note + " " + other).strip();
        Certainty certainty = best.score >= 3 && note.isEmpty()
                ? Certainty.PLAIN
                : best.score >= 1 ? Certainty.LIKELY : Certainty.UNSURE;
        return source.propose(best.fact, new Proposal.Quantity(best.metres), best.start, best.end, note, certainty);
    }

    private void pairs() {
        Matcher at = LengthWriting.PAIR.matcher(source.plain());
        while (at.find()) {
            LengthPair.of(at).ifPresent(pair -> {
                claims.claim(at.start(), at.end());
                found.add(new Found(Fact.LENGTH_M, pair.lengthM(), at.start(), at.end(), 3, pair.note()));
                found.add(new Found(Fact.BEAM_M, pair.beamM(), at.start(), at.end(), 3, pair.note()));
            });
        }
    }

    private void singles() {
        Matcher one = LengthWriting.ONE.matcher(source.plain());
        while (one.find()) {
            if (claims.free(one.start(), one.end())) {
                claims.claim(one.start(), one.end());
                LengthWriting.one(one, NARROWEST_M, LONGEST_M)
                        .ifPresent(metres -> judge(metres, one.start(), one.end(), doubt(one)));
            }
        }
    }

    private static String doubt(Matcher one) {
        return one.group("number") != null
                        && WrittenNumber.of(one.group("number")).ambiguous()
                ? "The comma or point may mark thousands or decimals; taken as what a boat can measure."
                : "";
    }

    private void spelt() {
        Matcher words = LengthWriting.SPELT.matcher(source.plain());
        while (words.find()) {
            claims.claim(words.start(), words.end());
            judge(LengthWriting.spelt(words), words.start(), words.end(), "");
        }
    }

    private void bareWidths() {
        Matcher width = LengthWriting.BARE_WIDTH.matcher(source.plain());
        while (width.find()) {
            int number = Integer.parseInt(width.group("number"));
            boolean inches = number <= 60;
            double metres = number * (inches ? LengthWriting.INCH_M : 0.01);
            if (metres >= NARROWEST_M && metres <= WIDEST_M) {
                found.add(new Found(
                        Fact.BEAM_M,
                        metres,
                        width.start(),
                        width.end(),
                        1,
                        "No unit is given; taken as " + (inches ? "inches." : "centimetres.")));
            }
        }
    }

    private void judge(double metres, int start, int end, String note) {
        String before = source.clauseBefore(start, 40, 0);
        String after = source.clauseAfter(end, 40);
        if (OTHER_BEFORE.matcher(before).find() || OTHER_AFTER.matcher(after).find()) {
            return;
        }
        boolean beamWord =
                WIDE_AFTER.matcher(after).find() || BEAM_WORD.matcher(before).find();
        boolean lengthWord =
                LONG_AFTER.matcher(after).find() || LENGTH_WORD.matcher(before).find();
        if (beamWord && !lengthWord && metres <= 3) {
            found.add(new Found(Fact.BEAM_M, metres, start, end, 3, note));
        } else if (metres >= SHORTEST_M && metres <= LONGEST_M) {
            int score = lengthWord ? 3 : BOAT_AFTER.matcher(after).find() ? 2 : 1;
            found.add(new Found(Fact.LENGTH_M, metres, start, end, score, note));
        } else if (metres <= WIDEST_M && followsLength(start)) {
            found.add(new Found(
                    Fact.BEAM_M, metres, start, end, 1, (note + " Not labelled; it follows the length.").strip()));
        }
    }

    private boolean followsLength(int start) {
        return found.stream()
                .anyMatch(each -> each.fact == Fact.LENGTH_M && start - each.end >= 0 && start - each.end < 12);
    }
}
