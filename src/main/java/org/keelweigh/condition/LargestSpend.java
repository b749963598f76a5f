package org.keelweigh.condition;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SortedMap;

/**
 * The largest of several spends that hang on what is truly the matter with checks: one repair cures the whole group.
 *
 * <p>Given the causes, checks are independent, so the distribution function of the largest spend is the product of those of
 * the single checks; over the causes it is the mean by their joint chances. The expectation above what is spent anyway is
 * the integral of {@code 1 − F} from there up. All of it is exact for the spends given.
 */
final class LargestSpend {

    private static final int OUTCOMES = OutcomeChances.COUNT;

    private final List<CheckNode> nodes = new ArrayList<>();
    private final List<double[]> tables = new ArrayList<>();
    private final List<double[][]> upTo = new ArrayList<>();
    private final double[] values;

    /**
     * Prepares the spends of some checks.
     *
     * @param network the network
     * @param tables each check's chances by its causes, in the network's order
     * @param spends for each check's id its equally likely spends by the ordinal of the outcome
     */
    LargestSpend(BeliefNetwork network, double[][] tables, SortedMap<String, double[][]> spends) {
        values = spends.values().stream()
                .flatMap(Arrays::stream)
                .flatMapToDouble(Arrays::stream)
                .distinct()
                .sorted()
                .toArray();
        spends.forEach((id, byOutcome) -> {
            int check = network.checkAt(id);
            nodes.add(network.nodes().get(check));
            this.tables.add(tables[check]);
            upTo.add(shares(byOutcome));
        });
    }

    /** For each outcome the share of its spends that are at most each value. */
    private double[][] shares(double[][] byOutcome) {
        double[][] shares = new double[OUTCOMES][values.length];
        for (int o = 0; o < OUTCOMES; o++) {
            for (int v = 0; v < values.length; v++) {
                double value = values[v];
                long within = Arrays.stream(byOutcome[o])
                        .filter(each -> each <= value)
                        .count();
                shares[o][v] = within / (double) byOutcome[o].length;
            }
        }
        return shares;
    }

    /**
     * Works out by how much the largest spend is expected to exceed {@code already}, which is spent anyway.
     *
     * @param joint the chance of each state of all causes
     * @param causes how many causes there are
     */
    double expectedAbove(double already, double[] joint, int causes) {
        int[] members = nodes.stream()
                .flatMapToInt(each -> Arrays.stream(each.causes().members()))
                .distinct()
                .sorted()
                .toArray();
        double[] states = new CauseSet(members, causes).marginal(joint);
        double sum = 0;
        for (int state = 0; state < states.length; state++) {
            if (states[state] > 0) {
                sum += states[state] * expectedAbove(already, spread(state, members));
            }
        }
        return sum;
    }

    /** Spreads a state of the members alone over all causes; those that bear on none of the checks do not matter. */
    private static int spread(int state, int[] members) {
        int all = 0;
        for (int bit = 0; bit < members.length; bit++) {
            all |= (state >>> bit & 1) << members[bit];
        }
        return all;
    }

    private double expectedAbove(double already, int state) {
        double[] chance = new double[values.length];
        Arrays.fill(chance, 1);
        for (int c = 0; c < nodes.size(); c++) {
            int row = nodes.get(c).causes().indexOf(state) * OUTCOMES;
            double[] table = tables.get(c);
            double[][] shares = upTo.get(c);
            for (int v = 0; v < chance.length; v++) {
                double within = 0;
                for (int o = 0; o < OUTCOMES; o++) {
                    within += table[row + o] * shares[o][v];
                }
                chance[v] *= within;
            }
        }
        double sum = 0;
        for (int v = 0; v + 1 < values.length; v++) {
            double from = Math.max(already, values[v]);
            sum += Math.max(0, values[v + 1] - from) * (1 - chance[v]);
        }
        return sum;
    }
}
