package org.keelweigh.decision.information;

import java.util.Arrays;

/**
 * A test whose report depends on a hidden outcome by chance: Bayes' rule for its reports.
 *
 * <p>{@code P(r) = Σ_k p_k P(r|k)} and {@code P(k|r) = p_k P(r|k) / P(r)}.
 */
public final class ImperfectTest {

    private final double[] prior;
    private final double[][] likelihood;

    /**
     * @param prior chance of each hidden outcome, adding up to 1
     * @param likelihood {@code [report][outcome]}: chance of the report given the outcome; for each outcome the reports
     *     add up to 1
     */
    public ImperfectTest(double[] prior, double[][] likelihood) {
        Probabilities.requireDistribution("chances of outcomes", prior);
        this.prior = prior.clone();
        this.likelihood = new double[likelihood.length][];
        for (int r = 0; r < likelihood.length; r++) {
            if (likelihood[r].length != prior.length) {
                throw new IllegalArgumentException(
                        "report " + r + " must have " + prior.length + " likelihoods but has " + likelihood[r].length);
            }
            this.likelihood[r] = likelihood[r].clone();
        }
        for (int k = 0; k < prior.length; k++) {
            int outcome = k;
            Probabilities.requireDistribution(
                    "chances of reports given outcome " + k,
                    Arrays.stream(this.likelihood)
                            .mapToDouble(row -> row[outcome])
                            .toArray());
        }
    }

    /**
     * A yes/no fault and a yes/no report: outcome and report 0 are "no fault", 1 "fault".
     *
     * @param fault prior chance of the fault
     * @param sensitivity chance that a fault is reported
     * @param falseAlarm chance that a fault is reported where there is none
     */
    public static ImperfectTest ofFault(double fault, double sensitivity, double falseAlarm) {
        return new ImperfectTest(
                new double[] {1 - fault, fault},
                new double[][] {{1 - falseAlarm, 1 - sensitivity}, {falseAlarm, sensitivity}});
    }

    /** A test that tells the outcome. */
    public static ImperfectTest perfect(double[] prior) {
        double[][] likelihood = new double[prior.length][prior.length];
        for (int k = 0; k < prior.length; k++) {
            likelihood[k][k] = 1;
        }
        return new ImperfectTest(prior, likelihood);
    }

    /** Number of possible reports. */
    public int reports() {
        return likelihood.length;
    }

    /** Chance of each report. */
    public double[] reportProbability() {
        return Arrays.stream(likelihood)
                .mapToDouble(row -> Probabilities.mean(prior, row))
                .toArray();
    }

    /** Chance of each outcome after a report; the prior where the report cannot happen. */
    public double[] posterior(int report) {
        double chance = Probabilities.mean(prior, likelihood[report]);
        double[] posterior = prior.clone();
        for (int k = 0; k < posterior.length && chance > 0; k++) {
            posterior[k] *= likelihood[report][k] / chance;
        }
        return posterior;
    }

    /**
     * Expected value after each report.
     *
     * @param valueGivenOutcome expected value under each outcome, with all other hidden facts at what they then are
     */
    public double[] valueGivenReport(double[] valueGivenOutcome) {
        if (valueGivenOutcome.length != prior.length) {
            throw new IllegalArgumentException(
                    "values must be for " + prior.length + " outcomes but are " + valueGivenOutcome.length);
        }
        double[] value = new double[reports()];
        Arrays.setAll(value, r -> Probabilities.mean(posterior(r), valueGivenOutcome));
        return value;
    }
}
