package org.keelweigh.decision.acceptability;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Shares of samples in which each alternative takes each rank.
 *
 * <p>An alternative's rank in a sample is the number of others that are strictly better; alternatives that tie share the
 * better rank. Alternatives that are ruled out take part in nothing: their shares are zero and they beat nobody.
 *
 * <p>Source: R. Lahdelma &amp; P. Salminen 2001, SMAA-2, <i>Operations Research</i> 49(3), 444–454.
 */
public final class Acceptability {

    private final int alternatives;
    private final int criteria;
    private final long samples;
    private final int[] slot;
    private final int eligible;
    private final Tally total;
    private final Tally[] replicates;
    private final boolean paired;

    /** @param slot place of each alternative among the eligible ones, −1 when ruled out */
    Acceptability(int criteria, long samples, int[] slot, int eligible, Tally[] replicates, boolean paired) {
        this.alternatives = slot.length;
        this.criteria = criteria;
        this.samples = samples;
        this.slot = slot;
        this.eligible = eligible;
        this.replicates = replicates;
        this.paired = paired;
        total = new Tally(Math.max(1, eligible), criteria, false);
        for (Tally part : replicates) {
            total.addAll(part);
        }
    }

    /** Number of alternatives. */
    public int alternatives() {
        return alternatives;
    }

    /** Number of criteria. */
    public int criteria() {
        return criteria;
    }

    /** Number of samples. */
    public long samples() {
        return samples;
    }

    /** False for an alternative that was ruled out. */
    public boolean isEligible(int alternative) {
        return slot[alternative] >= 0;
    }

    /**
     * Share of samples in which exactly {@code better} alternatives are strictly better, 0 to 1.
     *
     * @param better 0 (first) to alternatives − 1
     */
    public double rankShare(int alternative, int better) {
        return share(total, samples, alternative, better);
    }

    /** Share of samples in which nobody is strictly better. With ties these shares add up to more than one. */
    public double chanceBest(int alternative) {
        return rankShare(alternative, 0);
    }

    /**
     * Standard error of {@link #rankShare}: {@code √(p(1−p)/n)} for independent samples; for low-discrepancy weights the
     * spread of the separately shifted parts over the root of their number.
     */
    public double rankShareError(int alternative, int better) {
        int parts = replicates.length;
        double mean = rankShare(alternative, better);
        if (parts == 1) {
            return SamplingError.ofShare(mean, samples);
        }
        double squares = 0;
        for (Tally part : replicates) {
            double away = share(part, samples / parts, alternative, better) - mean;
            squares += away * away;
        }
        return Math.sqrt(squares / (parts - 1) / parts);
    }

    /** Largest standard error of any rank share. */
    public double largestError() {
        double largest = 0;
        for (int a = 0; a < alternatives; a++) {
            for (int r = 0; r < eligible; r++) {
                largest = Math.max(largest, rankShareError(a, r));
            }
        }
        return largest;
    }

    /**
     * Number of samples at which the largest standard error would be as wanted, if it falls as 1/√N (for low-discrepancy
     * weights that is too many, never too few in expectation).
     *
     * @param error wanted standard error of a share, above 0
     */
    public long samplesFor(double error) {
        if (!(error > 0)) {
            throw new IllegalArgumentException("error must be above 0 but is " + error);
        }
        double ratio = largestError() / error;
        return Math.max(1, (long) Math.ceil(samples * ratio * ratio));
    }

    /** Mean rank, 1 for always first; empty when ruled out. */
    public OptionalDouble expectedRank(int alternative) {
        return isEligible(alternative) ? OptionalDouble.of(1 + rankMoment(alternative, 1)) : OptionalDouble.empty();
    }

    /** Standard error of {@link #expectedRank} for independent samples, an upper bound in practice for shifted ones. */
    public OptionalDouble expectedRankError(int alternative) {
        if (!isEligible(alternative)) {
            return OptionalDouble.empty();
        }
        double mean = rankMoment(alternative, 1);
        double variance = Math.max(0, rankMoment(alternative, 2) - mean * mean);
        return OptionalDouble.of(Math.sqrt(variance / samples));
    }

    /**
     * Share of samples in which {@code one} is strictly better than {@code other}; empty when pairs were not counted.
     * Zero when either is ruled out.
     */
    public OptionalDouble winningChance(int one, int other) {
        if (!paired) {
            return OptionalDouble.empty();
        }
        boolean counted = isEligible(one) && isEligible(other);
        return OptionalDouble.of(counted ? total.beats[slot[one] * eligible + slot[other]] / (double) samples : 0);
    }

    /** Mean weights of the samples in which the alternative is first; empty when it never is. */
    public Optional<double[]> centralWeights(int alternative) {
        long first = isEligible(alternative) ? total.rank[slot[alternative] * eligible] : 0;
        if (first == 0) {
            return Optional.empty();
        }
        double[] weights = new double[criteria];
        for (int c = 0; c < criteria; c++) {
            weights[c] = total.favouring[slot[alternative] * criteria + c] / (double) first / Tally.WEIGHT_ONE;
        }
        return Optional.of(weights);
    }

    private double rankMoment(int alternative, int power) {
        double sum = 0;
        for (int r = 0; r < eligible; r++) {
            sum += Math.pow(r, power) * rankShare(alternative, r);
        }
        return sum;
    }

    private double share(Tally tally, long count, int alternative, int better) {
        if (better < 0 || better >= alternatives) {
            throw new IllegalArgumentException(
                    "number of better alternatives must be 0 to " + (alternatives - 1) + " but is " + better);
        }
        if (!isEligible(alternative) || better >= eligible) {
            return 0;
        }
        return tally.rank[slot[alternative] * eligible + better] / (double) count;
    }
}
