package org.keelweigh.appraisal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.keelweigh.decision.Weights;
import org.keelweigh.haul.CartPlanner;
import org.keelweigh.haul.HaulCatalogue;
import org.keelweigh.haul.NamedRequest;
import org.keelweigh.haul.OneCart;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.PersonId;

/**
 * A shortlist measured: everything that does not depend on weights. It is slow to make and is kept until a fact changes.
 *
 * @param facts what was typed
 * @param situation where, how and by whom the boats are to be used
 * @param yardsticks the criteria, in the shortlist's money
 * @param boats the boats in their order
 */
public record Measured(Facts facts, Situation situation, Yardsticks yardsticks, List<BoatReport> boats) {

    private static final String TOGETHER = "Together";

    public Measured {
        boats = List.copyOf(boats);
    }

    /** Says which one kind of cart serves whichever boat that is not ruled out wins, and about what it costs. */
    public String oneCart(HaulCatalogue catalogue) {
        OneCart one = new CartPlanner(catalogue, situation.display())
                .oneForAll(boats.stream()
                        .filter(each -> !each.ruledOut())
                        .map(each -> new NamedRequest(each.name(), each.cartRequest()))
                        .toList());
        return one.price().isEmpty()
                ? one.reason()
                : one.reason() + " It costs about "
                        + situation.display().money(one.price().getAsDouble() * situation.priceFactor()) + ".";
    }

    /** Tells how alike the boats left to choose from are on a criterion; empty when fewer than two are left. */
    public Optional<Likeness> likeness(Perspective perspective, int criterion) {
        return Likeness.of(this, perspective, criterion);
    }

    /** Finds the place of a person among the situation's people. */
    private int place(Participant participant) {
        return situation.people().indexOf(participant);
    }

    /** Tells how one decider, with the weights they stated, sees the boats. */
    public Perspective perspective(Participant decider) {
        return new Perspective(
                decider.id(), decider.name(), yardsticks.weights(decider.data()), values(place(decider)), ruledOut());
    }

    /** Lists the perspectives: all deciders together first when there are several, then each decider. */
    public List<Perspective> perspectives() {
        List<Perspective> single =
                situation.deciders().stream().map(this::perspective).toList();
        if (single.size() == 1) {
            return single;
        }
        List<Perspective> all = new ArrayList<>();
        all.add(together(single));
        all.addAll(single);
        return all;
    }

    /** Tells whether each decider's own view may be shown: only when all of them have said that they are done weighing. */
    public boolean revealed() {
        return situation.deciders().size() == 1
                || situation.deciders().stream().allMatch(each -> each.data().weighed());
    }

    /** Finds a person's perspective; for an empty person the first there is. */
    public Perspective perspective(Optional<PersonId> person) {
        List<Perspective> all = perspectives();
        return all.stream()
                .filter(each -> each.person().equals(person))
                .findFirst()
                .orElse(all.getFirst());
    }

    /**
     * Brings several perspectives together so that a boat's total is the mean of its totals: the weight of a criterion is the
     * mean weight, its value the mean of the values weighed by each person's weight.
     */
    private Perspective together(List<Perspective> single) {
        int criteria = yardsticks.all().size();
        double[][] values = new double[boats.size()][criteria];
        Map<String, Double> mean = new LinkedHashMap<>();
        for (int c = 0; c < criteria; c++) {
            int column = c;
            double sum = single.stream().mapToDouble(each -> each.share(column)).sum();
            mean.put(yardsticks.all().get(c).id(), sum);
            for (int b = 0; b < boats.size(); b++) {
                int boat = b;
                values[b][c] = sum == 0
                        ? single.stream()
                                .mapToDouble(each -> each.value(boat, column))
                                .average()
                                .orElse(0)
                        : single.stream()
                                        .mapToDouble(each -> each.share(column) * each.value(boat, column))
                                        .sum()
                                / sum;
            }
        }
        return new Perspective(Optional.empty(), TOGETHER, Weights.of(mean), values, ruledOut());
    }

    private double[][] values(int person) {
        double[][] measures = new double[boats.size()][];
        for (int b = 0; b < boats.size(); b++) {
            measures[b] = boats.get(b).measures().get(person).stream()
                    .mapToDouble(Double::doubleValue)
                    .toArray();
        }
        return boats.isEmpty() ? measures : yardsticks.criteria().values(measures);
    }

    private boolean[] ruledOut() {
        boolean[] flags = new boolean[boats.size()];
        for (int b = 0; b < flags.length; b++) {
            flags[b] = boats.get(b).ruledOut();
        }
        return flags;
    }
}
