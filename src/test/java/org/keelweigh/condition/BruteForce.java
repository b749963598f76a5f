package org.keelweigh.condition;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.keelweigh.condition.BeliefNetwork.Cause;
import org.keelweigh.condition.BeliefNetwork.Influence;
import org.keelweigh.condition.BeliefNetwork.Signal;

/**
 * The same model written as naively as possible: lists every state of causes, look-alike histories and checks, and adds up.
 * Only for networks of a few causes and checks. Base odds are found by bisection on one check at a time, not by the
 * network's own fit.
 */
final class BruteForce {

    private static final Outcome[] GRADES = {Outcome.FINE, Outcome.MINOR, Outcome.MAJOR, Outcome.STOP};

    private final List<Cause> causes;
    private final List<Signal> signals;
    private final List<String> checks;
    private final Map<String, OutcomeChances> priors;
    private final List<Influence> influences;
    private final List<double[]> bases = new ArrayList<>();

    BruteForce(
            List<Cause> causes, List<Signal> signals, Map<String, OutcomeChances> priors, List<Influence> influences) {
        this.causes = causes;
        this.signals = signals;
        this.priors = new LinkedHashMap<>(priors);
        this.checks = List.copyOf(this.priors.keySet());
        this.influences = influences;
        checks.forEach(each -> bases.add(base(each)));
    }

    /** Finds the base odds by cyclic bisection: each odds in turn until its marginal is right, over and over. */
    private double[] base(String check) {
        OutcomeChances wanted = priors.get(check);
        double[] base = {1, 1, 1, 1};
        for (int round = 0; round < 60; round++) {
            for (int o = 1; o < 4; o++) {
                double low = 0;
                double high = 10;
                for (int step = 0; step < 60; step++) {
                    base[o] = (low + high) / 2;
                    if (marginal(check, base, o) < wanted.of(GRADES[o])) {
                        low = base[o];
                    } else {
                        high = base[o];
                    }
                }
            }
        }
        return base;
    }

    private double marginal(String check, double[] base, int outcome) {
        double sum = 0;
        for (int state = 0; state < 1 << causes.size(); state++) {
            sum += prior(state) * chances(check, base, state)[outcome];
        }
        return sum;
    }

    private double prior(int state) {
        double chance = 1;
        for (int j = 0; j < causes.size(); j++) {
            double p = causes.get(j).prior();
            chance *= (state >> j & 1) == 1 ? p : 1 - p;
        }
        return chance;
    }

    private double[] chances(String check, double[] base, int state) {
        double[] weight = base.clone();
        for (Influence each : influences) {
            int cause = causeAt(each.cause());
            if (each.check().equals(check) && (state >> cause & 1) == 1) {
                weight[1] *= each.minorFactor();
                weight[2] *= each.majorFactor();
                weight[3] *= each.majorFactor();
            }
        }
        double sum = weight[0] + weight[1] + weight[2] + weight[3];
        for (int o = 0; o < 4; o++) {
            weight[o] /= sum;
        }
        return weight;
    }

    private int causeAt(String id) {
        return causes.stream().map(Cause::id).toList().indexOf(id);
    }

    /** Is one fully settled world with its chance before and after evidence. */
    private record World(int causes, int[] outcomes, double weight) {}

    private List<World> worlds(Collection<Evidence> evidence) {
        List<World> worlds = new ArrayList<>();
        int[] outcomes = new int[checks.size()];
        for (int state = 0; state < 1 << causes.size(); state++) {
            double weight = prior(state) * signalChance(state, evidence);
            fill(worlds, state, outcomes, 0, weight, evidence);
        }
        return worlds;
    }

    private void fill(
            List<World> worlds, int state, int[] outcomes, int at, double weight, Collection<Evidence> evidence) {
        if (at == outcomes.length) {
            worlds.add(new World(state, outcomes.clone(), weight));
            return;
        }
        String check = checks.get(at);
        double[] chances = chances(check, bases.get(at), state);
        for (int o = 0; o < 4; o++) {
            outcomes[at] = o;
            fill(worlds, state, outcomes, at + 1, weight * chances[o] * reportChance(check, o, evidence), evidence);
        }
    }

    private double reportChance(String check, int outcome, Collection<Evidence> evidence) {
        double chance = 1;
        for (Evidence each : evidence) {
            if (each instanceof Evidence.CheckReport report && report.about().equals(check)) {
                chance *= report.reliability().chanceOf(report.outcome(), GRADES[outcome], priors.get(check));
            }
            if (each instanceof Evidence.CheckSign sign && sign.about().equals(check)) {
                double shown = 0;
                for (int report = sign.least().ordinal(); report < 4; report++) {
                    shown += sign.reliability().chanceOf(GRADES[report], GRADES[outcome], priors.get(check));
                }
                chance *= sign.seen() ? shown : 1 - shown;
            }
        }
        return chance;
    }

    /** Sums over every state of look-alike histories and, signal by signal, over there and absent. */
    private double signalChance(int state, Collection<Evidence> evidence) {
        double chance = 1;
        for (int j = 0; j < causes.size(); j++) {
            boolean active = (state >> j & 1) == 1;
            double alike = lookAlike(causes.get(j));
            double likeCause = 1;
            double likeOther = 1;
            for (Signal signal : signals) {
                if (!signal.cause().equals(causes.get(j).id())) {
                    continue;
                }
                double rest = (signal.ifNot() - alike * signal.ifCause()) / (1 - alike);
                likeCause *= lookChance(signal, signal.ifCause(), evidence);
                likeOther *= lookChance(signal, rest, evidence);
            }
            chance *= active ? likeCause : alike * likeCause + (1 - alike) * likeOther;
        }
        return chance;
    }

    private static double lookChance(Signal signal, double there, Collection<Evidence> evidence) {
        double chance = 1;
        for (Evidence each : evidence) {
            if (each instanceof Evidence.SignalLook look && look.about().equals(signal.id())) {
                chance = there * look.ifThere() + (1 - there) * look.ifAbsent();
            }
        }
        return chance;
    }

    private double lookAlike(Cause cause) {
        double most = 1;
        for (Signal each : signals) {
            if (each.cause().equals(cause.id())) {
                most = Math.min(most, each.ifNot() / each.ifCause());
                most = Math.min(most, (1 - each.ifNot()) / (1 - each.ifCause()));
            }
        }
        return most * cause.overlap();
    }

    double cause(int cause, Collection<Evidence> evidence) {
        double all = 0;
        double with = 0;
        for (World each : worlds(evidence)) {
            all += each.weight();
            with += (each.causes() >> cause & 1) == 1 ? each.weight() : 0;
        }
        return with / all;
    }

    double outcome(int check, int outcome, Collection<Evidence> evidence) {
        double all = 0;
        double with = 0;
        for (World each : worlds(evidence)) {
            all += each.weight();
            with += each.outcomes()[check] == outcome ? each.weight() : 0;
        }
        return with / all;
    }
}
