package org.keelweigh.condition;

import java.util.Arrays;

/**
 * One check in a network: its causes and the chance of each outcome in each of their states.
 *
 * <p>In a state in which the causes {@code A} are active the outcomes have the weights
 * {@code fine : minor : major : stop = 1 : b1·Πm_a : b2·ΠM_a : b3·ΠM_a}, with {@code m_a} and {@code M_a} the factors by
 * which cause {@code a} multiplies the odds. The base odds {@code b} are fitted so that, with the causes at their prior
 * chances, the outcomes keep the catalogue's.
 */
final class CheckNode {

    private static final int OUTCOMES = OutcomeChances.COUNT;

    /** Far below anything shown; the fit gains about a digit in a few rounds, so it costs little. */
    private static final double FIT_TOLERANCE = 1e-13;

    /** The fit converges geometrically; effects a hundred times the catalogue's need some thousand rounds. */
    private static final int MOST_ROUNDS = 20_000;

    private final String id;
    private final OutcomeChances prior;
    private final CauseSet causes;
    private final double[] chances;

    /**
     * Fits a check.
     *
     * @param causes the causes that bear on it
     * @param causePriors their prior chances, in the set's order
     * @param minorFactors by how much each multiplies the odds of a minor fault
     * @param majorFactors by how much each multiplies the odds of a major fault and of a stop
     */
    CheckNode(
            String id,
            OutcomeChances prior,
            CauseSet causes,
            double[] causePriors,
            double[] minorFactors,
            double[] majorFactors) {
        this.id = id;
        this.prior = prior;
        this.causes = causes;
        this.chances = fit(prior, causePriors, minorFactors, majorFactors);
    }

    String id() {
        return id;
    }

    OutcomeChances prior() {
        return prior;
    }

    CauseSet causes() {
        return causes;
    }

    /** Tells the chance of outcome {@code outcome} in state {@code state} of this check's own causes. */
    double chance(int state, int outcome) {
        return chances[state * OUTCOMES + outcome];
    }

    /** Computes, for each state of its causes, the chance of what was reported. */
    double[] likelihood(double[] ofReport) {
        double[] likelihood = new double[causes.size()];
        for (int state = 0; state < likelihood.length; state++) {
            for (int o = 0; o < OUTCOMES; o++) {
                likelihood[state] += chance(state, o) * ofReport[o];
            }
        }
        return likelihood;
    }

    /** Computes the chances of outcomes by state, state by state, once a report is known. */
    double[] chancesAfter(double[] ofReport) {
        double[] likelihood = likelihood(ofReport);
        double[] after = new double[chances.length];
        for (int i = 0; i < after.length; i++) {
            double reported = likelihood[i / OUTCOMES];
            // A state that the report rules out has no weight anywhere, so what stands in it does not matter.
            after[i] = reported > 0 ? chances[i] * ofReport[i % OUTCOMES] / reported : chances[i];
        }
        return after;
    }

    private static double[] fit(
            OutcomeChances prior, double[] causePriors, double[] minorFactors, double[] majorFactors) {
        int states = 1 << causePriors.length;
        double[] weight = new double[states];
        double[] factors = new double[states * OUTCOMES];
        for (int state = 0; state < states; state++) {
            double minor = 1;
            double major = 1;
            weight[state] = 1;
            for (int c = 0; c < causePriors.length; c++) {
                boolean active = (state >>> c & 1) == 1;
                weight[state] *= active ? causePriors[c] : 1 - causePriors[c];
                minor *= active ? minorFactors[c] : 1;
                major *= active ? majorFactors[c] : 1;
            }
            factors[state * OUTCOMES] = 1;
            factors[state * OUTCOMES + 1] = minor;
            factors[state * OUTCOMES + 2] = major;
            factors[state * OUTCOMES + 3] = major;
        }
        return fit(prior.toArray(), weight, factors);
    }

    /** Scales the base odds by wanted over obtained until the marginals agree (iterative proportional fitting). */
    private static double[] fit(double[] wanted, double[] weight, double[] factors) {
        double[] base = wanted.clone();
        double[] chances = new double[factors.length];
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double[] obtained = marginals(base, weight, factors, chances);
            double worst = 0;
            for (int o = 0; o < OUTCOMES; o++) {
                worst = Math.max(worst, Math.abs(obtained[o] - wanted[o]));
                base[o] *= wanted[o] > 0 ? wanted[o] / obtained[o] : 0;
            }
            if (worst < FIT_TOLERANCE) {
                return chances;
            }
        }
        throw new IllegalArgumentException(
                "The causes' effects are too strong for the chances " + Arrays.toString(wanted) + " to be kept");
    }

    private static double[] marginals(double[] base, double[] weight, double[] factors, double[] chances) {
        double[] marginals = new double[OUTCOMES];
        for (int state = 0; state < weight.length; state++) {
            int at = state * OUTCOMES;
            double total = 0;
            for (int o = 0; o < OUTCOMES; o++) {
                total += base[o] * factors[at + o];
            }
            for (int o = 0; o < OUTCOMES; o++) {
                chances[at + o] = base[o] * factors[at + o] / total;
                marginals[o] += weight[state] * chances[at + o];
            }
        }
        return marginals;
    }
}
