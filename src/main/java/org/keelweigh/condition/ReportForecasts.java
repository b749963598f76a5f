package org.keelweigh.condition;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Works out what would be believed of every check after each possible report of one of them. */
final class ReportForecasts {

    private static final int OUTCOMES = OutcomeChances.COUNT;
    private static final Outcome[] GRADES = {Outcome.FINE, Outcome.MINOR, Outcome.MAJOR, Outcome.STOP};

    private final BeliefNetwork network;
    private final double[] joint;
    private final double[][] tables;
    private final List<CheckBelief> checks;
    private final int asked;

    /**
     * Prepares the forecasts.
     *
     * @param joint the posterior over the states of the causes
     * @param tables for each check the chances of its outcomes by state of its causes, after what was reported about it
     * @param asked the check whose report is forecast
     */
    ReportForecasts(BeliefNetwork network, double[] joint, double[][] tables, List<CheckBelief> checks, int asked) {
        this.network = network;
        this.joint = joint;
        this.tables = tables;
        this.checks = checks;
        this.asked = asked;
    }

    List<ReportForecast> with(Reliability reliability) {
        OutcomeChances usual = network.nodes().get(asked).prior();
        double[][][] pairs = pairTables();
        double[] now = checks.get(asked).now().toArray();
        List<ReportForecast> forecasts = new ArrayList<>();
        for (Outcome report : GRADES) {
            double[] ofReport = new double[OUTCOMES];
            double chance = 0;
            for (int o = 0; o < OUTCOMES; o++) {
                ofReport[o] = reliability.chanceOf(report, GRADES[o], usual);
                chance += now[o] * ofReport[o];
            }
            if (chance > 0) {
                forecasts.add(new ReportForecast(report, chance, after(ofReport, pairs)));
            }
        }
        return List.copyOf(forecasts);
    }

    private static List<OutcomeChances> after(double[] ofReport, double[][][] pairs) {
        List<OutcomeChances> after = new ArrayList<>();
        for (double[][] pair : pairs) {
            double[] chances = new double[OUTCOMES];
            for (int i = 0; i < OUTCOMES; i++) {
                for (int o = 0; o < OUTCOMES; o++) {
                    chances[o] += ofReport[i] * pair[i][o];
                }
            }
            double chance = Arrays.stream(chances).sum();
            after.add(OutcomeChances.of(
                    Arrays.stream(chances).map(each -> each / chance).toArray()));
        }
        return after;
    }

    /** Computes, for the asked check with every check, the joint chances of their outcomes as believed now. */
    private double[][][] pairTables() {
        double[][][] pairs = new double[tables.length][][];
        boolean alone = network.nodes().get(asked).causes().isEmpty();
        for (int c = 0; c < tables.length; c++) {
            if (c == asked) {
                pairs[c] = certain(checks.get(c).now());
            } else if (alone || network.nodes().get(c).causes().isEmpty()) {
                pairs[c] = apart(checks.get(asked).now(), checks.get(c).now());
            } else {
                pairs[c] = pairTable(c);
            }
        }
        return pairs;
    }

    private static double[][] certain(OutcomeChances chances) {
        double[][] table = new double[OUTCOMES][OUTCOMES];
        for (int o = 0; o < OUTCOMES; o++) {
            table[o][o] = chances.of(GRADES[o]);
        }
        return table;
    }

    /** Checks that share no cause know nothing of each other. */
    private static double[][] apart(OutcomeChances asked, OutcomeChances other) {
        double[][] table = new double[OUTCOMES][OUTCOMES];
        for (int i = 0; i < OUTCOMES; i++) {
            for (int o = 0; o < OUTCOMES; o++) {
                table[i][o] = asked.of(GRADES[i]) * other.of(GRADES[o]);
            }
        }
        return table;
    }

    private double[][] pairTable(int other) {
        CauseSet askedCauses = network.nodes().get(asked).causes();
        CauseSet otherCauses = network.nodes().get(other).causes();
        int[] union = IntStream.concat(Arrays.stream(askedCauses.members()), Arrays.stream(otherCauses.members()))
                .distinct()
                .sorted()
                .toArray();
        double[] states = new CauseSet(union, network.causes().size()).marginal(joint);
        double[][] table = new double[OUTCOMES][OUTCOMES];
        for (int s = 0; s < states.length; s++) {
            int state = spread(s, union);
            int a = askedCauses.indexOf(state) * OUTCOMES;
            int b = otherCauses.indexOf(state) * OUTCOMES;
            for (int i = 0; i < OUTCOMES; i++) {
                double first = states[s] * tables[asked][a + i];
                for (int o = 0; o < OUTCOMES; o++) {
                    table[i][o] += first * tables[other][b + o];
                }
            }
        }
        return table;
    }

    /** Puts the bits of a state of some causes where those causes stand among all. */
    private static int spread(int bits, int[] members) {
        int state = 0;
        for (int bit = 0; bit < members.length; bit++) {
            state |= (bits >>> bit & 1) << members[bit];
        }
        return state;
    }
}
