package org.keelweigh.decision.opinion;

import java.util.Arrays;
import java.util.List;
import org.keelweigh.decision.Ranks;

/**
 * What another method says.
 *
 * @param method its name, with the variant that was used
 * @param scores by alternative, more is better, on the method's own scale
 * @param ranks competition ranks by alternative, from 1
 */
public record Opinion(String method, List<Double> scores, List<Integer> ranks) {

    /** Copies the lists. */
    public Opinion {
        scores = List.copyOf(scores);
        ranks = List.copyOf(ranks);
    }

    static Opinion of(String method, double[] scores) {
        return new Opinion(
                method,
                Arrays.stream(scores).boxed().toList(),
                Arrays.stream(Ranks.competition(scores)).boxed().toList());
    }
}
