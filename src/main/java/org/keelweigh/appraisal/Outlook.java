package org.keelweigh.appraisal;

import java.util.BitSet;
import java.util.List;
import org.keelweigh.decision.ValueFunction;
import org.keelweigh.decision.acceptability.AcceptabilityAnalysis;
import org.keelweigh.decision.acceptability.Futures;
import org.keelweigh.decision.acceptability.WeightSample;
import org.keelweigh.shortlist.Certainty;

/**
 * The boats in all futures, as far as it does not depend on weights: the value of each future's cost, drawn once, and the
 * bank of weights. Kept with a measured shortlist, so that a moved slider only adds up anew.
 */
public final class Outlook {

    private final Measured measured;
    private final int cost;
    private final double[][] costValues;
    private final WeightDraws draws;

    private Outlook(Measured measured, int cost, double[][] costValues, WeightDraws draws) {
        this.measured = measured;
        this.cost = cost;
        this.costValues = costValues;
        this.draws = draws;
    }

    /** Prepares the outlook of a measured shortlist with at least one boat. */
    public static Outlook of(Measured measured) {
        int cost = measured.yardsticks().column(Measure.COST);
        List<BoatReport> boats = measured.boats();
        double[][] values = new double[boats.size()][];
        for (int b = 0; b < values.length && cost >= 0; b++) {
            values[b] = costValues(measured, boats.get(b).futures(), cost, 0);
        }
        int samples =
                boats.isEmpty() ? Appraiser.FUTURES : boats.getFirst().futures().size();
        long seed = measured.facts().shortlist().data().seed();
        return new Outlook(
                measured,
                cost,
                values,
                new WeightDraws(seed, measured.yardsticks().all().size(), samples));
    }

    /** Tells in how many weighings each boat comes where, from a perspective and how sure its person is. */
    public Confidence confidence(Perspective perspective) {
        WeightSample weights = draw(perspective);
        BitSet ruledOut = new BitSet();
        for (int b = 0; b < perspective.size(); b++) {
            ruledOut.set(b, perspective.ruledOut(b));
        }
        return new Confidence(AcceptabilityAnalysis.of(futures(perspective))
                .withRuledOut(ruledOut)
                .analyse(weights));
    }

    WeightSample draw(Perspective perspective) {
        return draws.draw(perspective.weights().toArray(), certainty(perspective));
    }

    /** Tells the value of a boat's cost in each future if its price were higher by {@code extra}. */
    double[] costValues(int boat, double extra) {
        return cost < 0
                ? new double[0]
                : costValues(measured, measured.boats().get(boat).futures(), cost, extra);
    }

    int costColumn() {
        return cost;
    }

    double costValue(int boat, int future) {
        return costValues[boat][future];
    }

    Measured measured() {
        return measured;
    }

    /** All deciders together are as sure as the least sure of them. */
    private Certainty certainty(Perspective perspective) {
        return measured.situation().deciders().stream()
                .filter(each -> perspective.person().isEmpty() || each.id().equals(perspective.person()))
                .map(each -> each.data().certainty())
                .max(Enum::compareTo)
                .orElse(Certainty.FAIRLY_SURE);
    }

    private Futures futures(Perspective perspective) {
        int boats = perspective.size();
        int criteria = measured.yardsticks().all().size();
        int samples = measured.boats().getFirst().futures().size();
        Futures.Builder builder = Futures.builder(boats, criteria, samples);
        for (int b = 0; b < boats; b++) {
            for (int c = 0; c < criteria; c++) {
                if (c == cost) {
                    builder.sampled(b, c, costValues[b]);
                } else {
                    builder.certain(b, c, perspective.value(b, c));
                }
            }
        }
        return builder.build();
    }

    private static double[] costValues(Measured measured, BoatFutures futures, int cost, double extra) {
        ValueFunction function =
                measured.yardsticks().all().get(cost).criterion().valueFunction();
        double[] values = new double[futures.size()];
        for (int w = 0; w < values.length; w++) {
            values[w] = function.value(futures.presentValue(w) + extra * futures.priceSlope());
        }
        return values;
    }
}
