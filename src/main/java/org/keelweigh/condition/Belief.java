package org.keelweigh.condition;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.keelweigh.condition.BeliefNetwork.Cause;
import org.keelweigh.condition.BeliefNetwork.Signal;
import org.keelweigh.condition.Evidence.CheckReport;
import org.keelweigh.condition.Evidence.CheckSign;
import org.keelweigh.condition.Evidence.SignalLook;

/**
 * What is believed about one boat's hidden causes and checks after weighing evidence; exact, immutable.
 *
 * @see BeliefNetwork
 */
public final class Belief {

    private static final int OUTCOMES = OutcomeChances.COUNT;
    private static final Outcome[] GRADES = {Outcome.FINE, Outcome.MINOR, Outcome.MAJOR, Outcome.STOP};

    private final BeliefNetwork network;
    private final List<Evidence> evidence;
    private final double[] joint;
    private final double[][] tables;
    private final List<CauseBelief> causes;
    private final List<CheckBelief> checks;

    Belief(BeliefNetwork network, Collection<Evidence> observed) {
        this.network = network;
        evidence = inOrder(network, observed);
        double[][] reported = reported();
        joint = joint(reported);
        tables = new double[reported.length][];
        for (int c = 0; c < tables.length; c++) {
            tables[c] = network.nodes().get(c).chancesAfter(reported[c]);
        }
        causes = causeBeliefs();
        checks = checkBeliefs();
    }

    /** Sorts evidence so that rounding does not depend on the order in which things were found. */
    private static List<Evidence> inOrder(BeliefNetwork network, Collection<Evidence> observed) {
        return observed.stream()
                .sorted(Comparator.comparingInt((Evidence each) -> switch (each) {
                            case SignalLook look -> network.signalAt(look.about());
                            case CheckReport report -> network.checkAt(report.about());
                            case CheckSign sign -> network.checkAt(sign.about());
                        })
                        .thenComparing(Evidence::toString))
                .toList();
    }

    /** Collects, check by check, the chance of everything reported about it given each outcome. */
    private double[][] reported() {
        double[][] reported = new double[network.nodes().size()][OUTCOMES];
        for (double[] each : reported) {
            Arrays.fill(each, 1);
        }
        for (Evidence each : evidence) {
            if (each instanceof SignalLook) {
                continue;
            }
            int check = network.checkAt(each.about());
            OutcomeChances prior = network.nodes().get(check).prior();
            double[] chance = each instanceof CheckReport report
                    ? ofReport(report.outcome(), report.reliability(), prior)
                    : ofSign((CheckSign) each, prior);
            for (int o = 0; o < OUTCOMES; o++) {
                reported[check][o] *= chance[o];
            }
        }
        return reported;
    }

    private static double[] ofReport(Outcome outcome, Reliability reliability, OutcomeChances prior) {
        Outcome report = nearestPossible(outcome, prior);
        double[] chance = new double[OUTCOMES];
        for (int o = 0; o < OUTCOMES; o++) {
            chance[o] = reliability.chanceOf(report, GRADES[o], prior);
        }
        return chance;
    }

    /** A grade that this check cannot have on this boat is taken for the next milder fault, else the next worse one. */
    private static Outcome nearestPossible(Outcome outcome, OutcomeChances prior) {
        for (int o = outcome.ordinal(); o > 0; o--) {
            if (prior.of(GRADES[o]) > 0) {
                return GRADES[o];
            }
        }
        for (int o = outcome.ordinal(); o > 0 && o < OUTCOMES; o++) {
            if (prior.of(GRADES[o]) > 0) {
                return GRADES[o];
            }
        }
        return Outcome.FINE;
    }

    /** A sign is there exactly when a report of the check would be at that outcome or worse. */
    private static double[] ofSign(CheckSign sign, OutcomeChances prior) {
        double[] chance = new double[OUTCOMES];
        for (int o = 0; o < OUTCOMES; o++) {
            double shown = 0;
            for (int report = sign.least().ordinal(); report < OUTCOMES; report++) {
                shown += sign.reliability().chanceOf(GRADES[report], GRADES[o], prior);
            }
            chance[o] = sign.seen() ? shown : 1 - shown;
        }
        return chance;
    }

    private double[] joint(double[][] reported) {
        double[] states = causesAlone();
        for (int c = 0; c < reported.length; c++) {
            CheckNode node = network.nodes().get(c);
            boolean silent = reported[c][0] == 1 && reported[c][1] == 1 && reported[c][2] == 1 && reported[c][3] == 1;
            if (!silent && !node.causes().isEmpty()) {
                node.causes().multiply(states, scaled(node.likelihood(reported[c])));
            }
        }
        double total = Arrays.stream(states).sum();
        if (!(total > 0)) {
            throw new IllegalArgumentException("What was observed contradicts itself: together it has no chance at all");
        }
        for (int s = 0; s < states.length; s++) {
            states[s] /= total;
        }
        return states;
    }

    /** Keeps products of many small chances away from underflow; the scale cancels on normalising. */
    private static double[] scaled(double[] likelihood) {
        double most = Arrays.stream(likelihood).max().orElse(1);
        return most > 0 ? Arrays.stream(likelihood).map(each -> each / most).toArray() : likelihood;
    }

    /** Builds the joint distribution of the causes from the priors and the signals, each cause by itself. */
    private double[] causesAlone() {
        int count = network.causes().size();
        double[] states = new double[1 << count];
        states[0] = 1;
        for (int j = 0; j < count; j++) {
            double[] chance = signalChances(j);
            double prior = network.causes().get(j).prior();
            double active = prior * chance[0];
            double total = active + (1 - prior) * chance[1];
            if (!(total > 0)) {
                throw new IllegalArgumentException("The signals of " + network.causes().get(j).id()
                        + " contradict each other: together they have no chance at all");
            }
            active /= total;
            for (int s = 0; s < 1 << j; s++) {
                states[s | 1 << j] = states[s] * active;
                states[s] *= 1 - active;
            }
        }
        return states;
    }

    /** Computes the chance of a cause's looked-for signals with the cause and without it. */
    private double[] signalChances(int cause) {
        double alike = network.lookAlike(cause);
        double with = 1;
        double otherwise = 1;
        String last = "";
        for (Evidence each : evidence) {
            if (!(each instanceof SignalLook look)) {
                continue;
            }
            Signal signal = network.signal(look.about());
            if (network.causeAt(signal.cause()) != cause) {
                continue;
            }
            if (signal.id().equals(last)) {
                throw new IllegalArgumentException("The signal " + last + " was reported twice");
            }
            last = signal.id();
            with *= chanceOf(look, signal.ifCause());
            // With full overlap nothing is left of the histories that do not look like the cause.
            double rest = alike < 1 ? (signal.ifNot() - alike * signal.ifCause()) / (1 - alike) : signal.ifNot();
            otherwise *= chanceOf(look, Math.clamp(rest, 0, 1));
        }
        return new double[] {with, alike * with + (1 - alike) * otherwise};
    }

    private static double chanceOf(SignalLook look, double there) {
        return there * look.ifThere() + (1 - there) * look.ifAbsent();
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
     * Forecasts what would be believed after each possible report of one more look at a check.
     *
     * @param check the check's id
     * @param reliability how good the look would be
     * @return one forecast for each report that has any chance; their chances sum to 1, and weighted by them the forecasts
     *     average to what is believed now
     */
    public List<ReportForecast> reports(String check, Reliability reliability) {
        int asked = network.checkAt(check);
        OutcomeChances usual = network.nodes().get(asked).prior();
        double[][][] pairs = pairTables(asked);
        Map<Outcome, ReportForecast> forecasts = new EnumMap<>(Outcome.class);
        for (Outcome report : GRADES) {
            double[] ofReport = new double[OUTCOMES];
            for (int o = 0; o < OUTCOMES; o++) {
                ofReport[o] = reliability.chanceOf(report, GRADES[o], usual);
            }
            double[] now = checks.get(asked).now().toArray();
            double chance = 0;
            for (int o = 0; o < OUTCOMES; o++) {
                chance += now[o] * ofReport[o];
            }
            if (chance > 0) {
                forecasts.put(report, new ReportForecast(report, chance, after(asked, ofReport, chance, pairs)));
            }
        }
        return List.copyOf(forecasts.values());
    }

    private List<OutcomeChances> after(int asked, double[] ofReport, double chance, double[][][] pairs) {
        List<OutcomeChances> after = new ArrayList<>();
        for (double[][] pair : pairs) {
            double[] chances = new double[OUTCOMES];
            for (int asOutcome = 0; asOutcome < OUTCOMES; asOutcome++) {
                for (int o = 0; o < OUTCOMES; o++) {
                    chances[o] += ofReport[asOutcome] * pair[asOutcome][o] / chance;
                }
            }
            after.add(OutcomeChances.of(chances));
        }
        return after;
    }

    /** Computes, for the asked check with every check, the joint chances of their outcomes as believed now. */
    private double[][][] pairTables(int asked) {
        double[][][] pairs = new double[tables.length][][];
        for (int c = 0; c < tables.length; c++) {
            pairs[c] = c == asked ? diagonal(checks.get(asked).now()) : pairTable(asked, c);
        }
        return pairs;
    }

    private static double[][] diagonal(OutcomeChances chances) {
        double[][] table = new double[OUTCOMES][OUTCOMES];
        for (int o = 0; o < OUTCOMES; o++) {
            table[o][o] = chances.of(GRADES[o]);
        }
        return table;
    }

    private double[][] pairTable(int asked, int other) {
        CauseSet askedCauses = network.nodes().get(asked).causes();
        CauseSet otherCauses = network.nodes().get(other).causes();
        int[] union = IntStream.concat(
                        Arrays.stream(askedCauses.members()), Arrays.stream(otherCauses.members()))
                .distinct()
                .toArray();
        CauseSet both = new CauseSet(union, network.causes().size());
        double[] states = both.marginal(joint);
        double[][] table = new double[OUTCOMES][OUTCOMES];
        for (int s = 0; s < states.length; s++) {
            int state = 0;
            for (int bit = 0; bit < union.length; bit++) {
                state |= (s >>> bit & 1) << union[bit];
            }
            int a = askedCauses.indexOf(state) * OUTCOMES;
            int b = otherCauses.indexOf(state) * OUTCOMES;
            for (int i = 0; i < OUTCOMES; i++) {
                for (int o = 0; o < OUTCOMES; o++) {
                    table[i][o] += states[s] * tables[asked][a + i] * tables[other][b + o];
                }
            }
        }
        return table;
    }
}
