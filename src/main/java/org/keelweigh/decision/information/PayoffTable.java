package org.keelweigh.decision.information;

import java.util.Arrays;

/**
 * A choice among alternatives whose payoff depends on which of a few states holds: exact value of information of any
 * kind about the state.
 *
 * <p>Source: H. Raiffa 1968, <i>Decision Analysis</i>.
 */
public final class PayoffTable {

    private final double[] probability;
    private final double[][] payoff;

    /**
     * @param probability chance of each state, adding up to 1
     * @param payoff {@code [alternative][state]}, finite
     */
    public PayoffTable(double[] probability, double[][] payoff) {
        Probabilities.requireDistribution("chances of states", probability);
        if (payoff.length == 0) {
            throw new IllegalArgumentException("payoffs must have at least one alternative");
        }
        this.probability = probability.clone();
        this.payoff = new double[payoff.length][];
        for (int a = 0; a < payoff.length; a++) {
            if (payoff[a].length != probability.length
                    || !Arrays.stream(payoff[a]).allMatch(Double::isFinite)) {
                throw new IllegalArgumentException(
                        "alternative " + a + " must have " + probability.length + " finite payoffs");
            }
            this.payoff[a] = payoff[a].clone();
        }
    }

    /** Expected payoff of each alternative. */
    public double[] expectedValues() {
        return Arrays.stream(payoff)
                .mapToDouble(row -> Probabilities.mean(probability, row))
                .toArray();
    }

    /** Expected payoff of the best alternative without information. */
    public double bestValue() {
        return Arrays.stream(expectedValues()).max().orElseThrow();
    }

    /** Expected value of perfect information about the state. */
    public double evpi() {
        int[] each = new int[probability.length];
        Arrays.setAll(each, k -> k);
        return evppi(each);
    }

    /**
     * Expected value of learning in which group the state lies.
     *
     * @param groupOfState group number of each state, 0 or more
     */
    public double evppi(int[] groupOfState) {
        int groups = 1 + Arrays.stream(groupOfState).max().orElse(0);
        double[][] likelihood = new double[groups][probability.length];
        for (int k = 0; k < probability.length; k++) {
            likelihood[groupOfState[k]][k] = 1;
        }
        return evsi(likelihood);
    }

    /**
     * Expected value of an imperfect report: {@code Σ_r max_a Σ_k p_k P(r|k) u_ak − max_a Σ_k p_k u_ak}.
     *
     * @param likelihood {@code [report][state]}
     */
    public double evsi(double[][] likelihood) {
        ImperfectTest test = new ImperfectTest(probability, likelihood);
        double[] chance = test.reportProbability();
        double informed = 0;
        for (int r = 0; r < chance.length; r++) {
            double[] posterior = test.posterior(r);
            informed += chance[r]
                    * Arrays.stream(payoff)
                            .mapToDouble(row -> Probabilities.mean(posterior, row))
                            .max()
                            .orElseThrow();
        }
        return Math.max(0, informed - bestValue());
    }
}
