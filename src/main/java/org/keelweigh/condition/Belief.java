package org.keelweigh.condition;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.SortedMap;
import org.keelweigh.condition.BeliefNetwork.Cause;

/**
 * What is believed about one boat's hidden causes and checks after weighing evidence; exact, immutable.
 *
 * @see BeliefNetwork
 */
public final class Belief {

    private static final int OUTCOMES = OutcomeChances.COUNT;

    private final BeliefNetwork network;
    private final List<Evidence> evidence;
    private final double[] joint;
    private final double[][] tables;
    private final List<CauseBelief> causes;
    private final List<CheckBelief> checks;

    Belief(BeliefNetwork network, Collection<Evidence> observed) {
        this.network = network;
        EvidenceWeights weights = new EvidenceWeights(network, observed);
        evidence = weights.evidence();
        double[][] reported = weights.reported();
        joint = weights.joint(reported);
        tables = new double[reported.length][];
        for (int c = 0; c < tables.length; c++) {
            tables[c] = network.nodes().get(c).chancesAfter(reported[c]);
        }
        causes = causeBeliefs();
        checks = checkBeliefs();
    }

    private List<CauseBelief> causeBeliefs() {
        List<CauseBelief> beliefs = new ArrayList<>();
        for (int j = 0; j < network.causes().size(); j++) {
            double now = new CauseSet(new int[] {j}, network.causes().size()).marginal(joint)[1];
            Cause cause = network.causes().get(j);
            beliefs.add(new CauseBelief(cause.id(), cause.prior(), Math.clamp(now, 0, 1)));
        }
        return List.copyOf(beliefs);
    }

    private List<CheckBelief> checkBeliefs() {
        List<CheckBelief> beliefs = new ArrayList<>();
        for (int c = 0; c < tables.length; c++) {
            CheckNode node = network.nodes().get(c);
            double[] states = node.causes().marginal(joint);
            beliefs.add(new CheckBelief(node.id(), node.prior(), mix(states, tables[c])));
        }
        return List.copyOf(beliefs);
    }

    private static OutcomeChances mix(double[] states, double[] table) {
        double[] chances = new double[OUTCOMES];
        double total = 0;
        for (int s = 0; s < states.length; s++) {
            total += states[s];
            for (int o = 0; o < OUTCOMES; o++) {
                chances[o] += states[s] * table[s * OUTCOMES + o];
            }
        }
        for (int o = 0; o < OUTCOMES; o++) {
            chances[o] /= total;
        }
        return OutcomeChances.of(chances);
    }

    /** Tells the network this belief is about. */
    public BeliefNetwork network() {
        return network;
    }

    /** Tells what was weighed. */
    public List<Evidence> evidence() {
        return evidence;
    }

    /** Tells each cause's chance before and now, in the network's order. */
    public List<CauseBelief> causes() {
        return causes;
    }

    /** Tells each check's chances before and now, checked or not, in the network's order. */
    public List<CheckBelief> checks() {
        return checks;
    }

    /**
     * Tells one cause's chance.
     *
     * @throws IllegalArgumentException if the boat has no such cause
     */
    public CauseBelief cause(String id) {
        return causes.get(network.causeAt(id));
    }

    /**
     * Tells one check's chances: of what is truly there, whether or not somebody reported on it.
     *
     * @throws IllegalArgumentException if the boat has no such check
     */
    public CheckBelief check(String id) {
        return checks.get(network.checkAt(id));
    }

    /** Finds, for every cause and check, which evidence moved it. Takes one more weighing for each piece of evidence. */
    public Movers movers() {
        return new Movers(this);
    }

    /** Makes a sampler of worlds from this belief. */
    public WorldSampler sampler() {
        return new WorldSampler(network, joint, tables);
    }

    /**
     * Works out by how much the largest spend of several checks is expected to exceed what is spent anyway, exactly: checks that
     * share a cause go wrong together.
     *
     * @param spends for each check's id, for each ordinal of the outcome from fine to stop, equally likely spends, one at least;
     *     in any money, 0 or more
     * @param already what is spent anyway, in that money; 0 or more
     * @throws IllegalArgumentException if the boat has no such check
     */
    public double expectedLargest(SortedMap<String, double[][]> spends, double already) {
        return new LargestSpend(network, tables, spends)
                .expectedAbove(already, joint, network.causes().size());
    }

    /**
     * Forecasts what would be believed after each possible report of one more look at a check.
     *
     * @param check the check's id
     * @param reliability how good the look would be
     * @return one forecast for each report that has any chance; their chances sum to 1, and weighted by them the forecasts
     *     average to what is believed now
     */
    public List<ReportForecast> reports(String check, Reliability reliability) {
        return new ReportForecasts(network, joint, tables, checks, network.checkAt(check)).with(reliability);
    }
}
