package org.keelweigh.condition;

import java.util.List;
import java.util.function.Function;

/**
 * How much of an inspection is done and what it is worth as evidence.
 *
 * @param made checks made
 * @param applicable checks that apply and whose part is fitted
 * @param minutesLeft minutes of somebody's time that the others take
 * @param evidenceShare share of the risk that was looked at, each look at its sensitivity, 0 to 1
 */
public record Progress(int made, int applicable, double minutesLeft, double evidenceShare) {

    /** What a purchase that had to be stopped is worth avoiding, USD; estimate. */
    static final double STOP_WORTH = 300;

    private static final double GRADE_A = 0.85;
    private static final double GRADE_B = 0.70;
    private static final double GRADE_C = 0.50;

    /** Tells the evidence grade: A from 0.85, B from 0.70, C from 0.50, D below. */
    public char grade() {
        if (evidenceShare >= GRADE_A) {
            return 'A';
        }
        return evidenceShare >= GRADE_B ? 'B' : evidenceShare >= GRADE_C ? 'C' : 'D';
    }

    /**
     * Measures the progress. The evidence share is {@code Σ w·s / Σ w} with {@code w} the risk of a check by its prior,
     * {@code p(major)·cost + p(stop)·cost + 300·p(stop)}, and {@code s} the sensitivity of the look at it, 0 for none.
     */
    static Progress of(InspectionCatalogue catalogue, Inspection inspection, Function<Check, OutcomeChances> prior) {
        double risk = 0;
        double seen = 0;
        for (Check check : inspection.applicable()) {
            double weight = weight(check, prior.apply(check));
            risk += weight;
            seen += weight
                    * inspection
                            .finding(check)
                            .map(finding -> catalogue.sensitivity(check, finding.method()))
                            .orElse(0.0);
        }
        List<Check> unmade = inspection.unmade();
        int applicable = inspection.applicable().size();
        double minutesLeft = unmade.stream().mapToDouble(Check::minutes).sum();
        return new Progress(applicable - unmade.size(), applicable, minutesLeft, risk > 0 ? seen / risk : 0);
    }

    private static double weight(Check check, OutcomeChances chances) {
        return chances.major() * likelyCost(check, Outcome.MAJOR)
                + chances.stop() * (likelyCost(check, Outcome.STOP) + STOP_WORTH);
    }

    static double likelyCost(Check check, Outcome outcome) {
        return check.grade(outcome).map(grade -> grade.repairCost().likely()).orElse(0.0);
    }
}
