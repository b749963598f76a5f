package org.keelweigh.appraisal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.keelweigh.decision.acceptability.WeightBank;
import org.keelweigh.decision.acceptability.WeightSample;
import org.keelweigh.decision.acceptability.WeightSampler;
import org.keelweigh.shortlist.Certainty;

/** Draws weights that agree with what a person stated and how sure they are of it, from a bank that is drawn once. */
final class WeightDraws {

    private final WeightBank bank;

    WeightDraws(long seed, int criteria, int samples) {
        bank = WeightBank.random(seed, criteria, samples);
    }

    WeightSample draw(double[] stated, Certainty certainty) {
        WeightSampler sampler = certainty == Certainty.ORDER_ONLY
                ? new WeightSampler.OrderOnly(tiers(stated), 0)
                : new WeightSampler.AroundStated(boxed(stated), certainty.concentration());
        return sampler.sample(bank);
    }

    /** Criteria from the most to the least important; equal weights make one tier. */
    static List<List<Integer>> tiers(double[] weights) {
        List<Integer> order = IntStream.range(0, weights.length)
                .boxed()
                .sorted(Comparator.comparing((Integer c) -> -weights[c]))
                .toList();
        List<List<Integer>> tiers = new ArrayList<>();
        for (int c : order) {
            if (tiers.isEmpty() || weights[tiers.getLast().getFirst()] != weights[c]) {
                tiers.add(new ArrayList<>());
            }
            tiers.getLast().add(c);
        }
        return tiers;
    }

    private static List<Double> boxed(double[] values) {
        return IntStream.range(0, values.length).mapToObj(c -> values[c]).toList();
    }
}
