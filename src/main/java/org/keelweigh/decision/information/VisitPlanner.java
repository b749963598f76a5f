package org.keelweigh.decision.information;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Plans which tests to make, by expected gain net of cost per minute, reckoned anew after each: gains of single tests do
 * not add up.
 *
 * <p>Tests can complement each other, each worth nothing alone and much together; taking the best single test would then
 * stop too early. So for the first two steps, and wherever no single test pays, all pairs are tried and the best pair is
 * taken when it beats the best single test per minute. Beyond pairs the plan is greedy and may fall short of the best
 * set.
 */
public final class VisitPlanner {

    /** Expected gain of making all tests of a set, in any unit; 0 for the empty set. */
    @FunctionalInterface
    public interface SetGain {
        double of(BitSet tests);
    }

    /**
     * A test that may be made.
     *
     * @param minutes above 0
     * @param cost beside time, at least 0, in the unit of the gain
     */
    public record Candidate(double minutes, double cost) {

        public Candidate {
            if (!(minutes > 0 && minutes < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("minutes must be above 0 but is " + minutes);
            }
            if (!(cost >= 0 && cost < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("cost must be at least 0 but is " + cost);
            }
        }
    }

    private record Move(List<Integer> tests, double minutes, double net) {

        private double rate() {
            return net / minutes;
        }
    }

    /** Gains that differ by rounding only are not gains. */
    private static final double ROUNDING = 1e-9;

    private final List<Candidate> candidates;
    private final SetGain gain;
    private final double limitMinutes;
    private final double worthPerMinute;
    private final BitSet made = new BitSet();
    private final List<VisitPlan.Step> steps = new ArrayList<>();
    private double minutesLeft;
    private double gainSoFar;
    private double bestGain;

    private VisitPlanner(List<Candidate> candidates, SetGain gain, double limitMinutes, double worthPerMinute) {
        this.candidates = List.copyOf(candidates);
        this.gain = gain;
        this.limitMinutes = limitMinutes;
        this.worthPerMinute = worthPerMinute;
    }

    /**
     * Plans a visit. Asks for the gain of up to n²/2 pairs, so leave out tests that cannot matter.
     *
     * @param candidates tests, numbered by their place
     * @param gain expected gain of a set of tests
     * @param limitMinutes time for the visit, at least 0
     * @param worthPerMinute what a minute must gain net of cost to be worth while, at least 0
     */
    public static VisitPlan plan(List<Candidate> candidates, SetGain gain, double limitMinutes, double worthPerMinute) {
        if (!(limitMinutes >= 0)) {
            throw new IllegalArgumentException("limit of minutes must be at least 0 but is " + limitMinutes);
        }
        if (!(worthPerMinute >= 0)) {
            throw new IllegalArgumentException("worth per minute must be at least 0 but is " + worthPerMinute);
        }
        return new VisitPlanner(candidates, gain, limitMinutes, worthPerMinute).plan();
    }

    private VisitPlan plan() {
        minutesLeft = limitMinutes;
        Move move = next();
        while (pays(move)) {
            for (int test : move.tests()) {
                take(test);
            }
            move = next();
        }
        return steps.isEmpty() ? new VisitPlan.NothingWorthwhile(bestGain) : new VisitPlan.Route(steps);
    }

    private Move next() {
        Move single = bestSingle();
        return steps.size() < 2 || !pays(single) ? better(single, bestPair()) : single;
    }

    private boolean pays(Move move) {
        return move.net() > ROUNDING * Math.max(1, gainSoFar) && move.rate() >= worthPerMinute;
    }

    private static Move better(Move one, Move other) {
        return other.rate() > one.rate() * (1 + ROUNDING) ? other : one;
    }

    private Move bestSingle() {
        Move best = none();
        for (int i = 0; i < candidates.size(); i++) {
            if (fits(List.of(i))) {
                best = better(best, move(List.of(i)));
            }
        }
        return best;
    }

    private Move bestPair() {
        Move best = none();
        for (int i = 0; i < candidates.size(); i++) {
            for (int j = i + 1; j < candidates.size(); j++) {
                if (fits(List.of(i, j))) {
                    best = better(best, move(List.of(i, j)));
                }
            }
        }
        return best.tests().isEmpty() ? best : new Move(moreTellingFirst(best.tests()), best.minutes(), best.net());
    }

    private static Move none() {
        return new Move(List.of(), 1, 0);
    }

    private List<Integer> moreTellingFirst(List<Integer> pair) {
        double first = move(List.of(pair.getFirst())).rate();
        double last = move(List.of(pair.getLast())).rate();
        return last > first ? pair.reversed() : pair;
    }

    private boolean fits(List<Integer> tests) {
        double minutes = 0;
        for (int test : tests) {
            if (made.get(test)) {
                return false;
            }
            minutes += candidates.get(test).minutes();
        }
        return minutes <= minutesLeft * (1 + ROUNDING);
    }

    private Move move(List<Integer> tests) {
        BitSet set = (BitSet) made.clone();
        double minutes = 0;
        double cost = 0;
        for (int test : tests) {
            set.set(test);
            minutes += candidates.get(test).minutes();
            cost += candidates.get(test).cost();
        }
        double together = gain.of(set);
        if (made.isEmpty()) {
            bestGain = Math.max(bestGain, together);
        }
        return new Move(tests, minutes, together - gainSoFar - cost);
    }

    private void take(int test) {
        Candidate candidate = candidates.get(test);
        made.set(test);
        minutesLeft -= candidate.minutes();
        gainSoFar = gain.of((BitSet) made.clone());
        steps.add(new VisitPlan.Step(test, candidate.minutes(), candidate.cost(), gainSoFar));
    }
}
