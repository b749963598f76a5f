package org.keelweigh.condition;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.keelweigh.condition.BeliefNetwork.Signal;
import org.keelweigh.condition.Evidence.CheckReport;
import org.keelweigh.condition.Evidence.CheckSign;
import org.keelweigh.condition.Evidence.SignalLook;

/** Turns evidence into the posterior over all states of a network's causes. */
final class EvidenceWeights {

    private static final int OUTCOMES = OutcomeChances.COUNT;
    private static final Outcome[] GRADES = {Outcome.FINE, Outcome.MINOR, Outcome.MAJOR, Outcome.STOP};

    private final BeliefNetwork network;
    private final List<Evidence> evidence;

    EvidenceWeights(BeliefNetwork network, Collection<Evidence> observed) {
        this.network = network;
        evidence = inOrder(network, observed);
    }

    List<Evidence> evidence() {
        return evidence;
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
    double[][] reported() {
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

    /** Computes the posterior chance of each state of the causes. */
    double[] joint(double[][] reported) {
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
            throw new IllegalArgumentException(
                    "What was observed contradicts itself: together it has no chance at all");
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
                throw new IllegalArgumentException("The signals of "
                        + network.causes().get(j).id() + " contradict each other: together they have no chance at all");
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
}
