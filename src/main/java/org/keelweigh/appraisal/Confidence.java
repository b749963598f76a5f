package org.keelweigh.appraisal;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.keelweigh.decision.acceptability.Acceptability;
import org.keelweigh.shortlist.Display;

/** In how many weighings of how many futures each boat comes first, second and so on. */
public final class Confidence {

    private static final double SURE = 0.95;
    private static final double LIKELY = 0.7;
    private static final int TEN = 10;
    private static final int HUNDRED = 100;

    private final Acceptability acceptability;

    Confidence(Acceptability acceptability) {
        this.acceptability = acceptability;
    }

    /** Tells the chance that a boat is the best, 0 to 1. */
    public double chanceBest(int boat) {
        return acceptability.chanceBest(boat);
    }

    /** Tells the standard error of {@link #chanceBest}. */
    public double chanceBestError(int boat) {
        return acceptability.rankShareError(boat, 0);
    }

    /** Tells the share of weighings in which exactly {@code better} boats are better than this one. */
    public double rankShare(int boat, int better) {
        return acceptability.rankShare(boat, better);
    }

    /** Tells the mean rank, from 1; empty for a boat that is ruled out. */
    public OptionalDouble expectedRank(int boat) {
        return acceptability.expectedRank(boat);
    }

    /** Tells the chance that one boat is better than another. */
    public double chanceBetter(int boat, int other) {
        return acceptability.winningChance(boat, other).orElse(0);
    }

    /** Tells the mean weights of those weighings in which a boat comes first; empty when it never does. */
    public List<Double> centralWeights(int boat) {
        return acceptability
                .centralWeights(boat)
                .map(weights -> Arrays.stream(weights).boxed().toList())
                .orElse(List.of());
    }

    /** Tells how many weighings were drawn. */
    public long samples() {
        return acceptability.samples();
    }

    /** Tells the largest standard error of any share. */
    public double largestError() {
        return acceptability.largestError();
    }

    /** Tells how firmly a leader stands by its chance of being the best. */
    public Answer.Strength strength(int leader) {
        double chance = chanceBest(leader);
        return chance >= SURE ? Answer.Strength.SURE : chance >= LIKELY ? Answer.Strength.LIKELY : Answer.Strength.OPEN;
    }

    /** Says a chance the way people count: out of ten, or out of a hundred below a tenth and above nine. */
    public static String inWords(double chance) {
        long ofHundred = Math.round(chance * HUNDRED);
        if (ofHundred >= HUNDRED) {
            return "nearly all";
        }
        if (ofHundred <= 0) {
            return "hardly any";
        }
        return ofHundred < TEN || ofHundred > HUNDRED - TEN
                ? ofHundred + " of 100"
                : Display.number(Math.round(chance * TEN), 0) + " of 10";
    }
}
