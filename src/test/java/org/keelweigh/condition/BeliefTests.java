package org.keelweigh.condition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.keelweigh.condition.BeliefNetwork.Cause;
import org.keelweigh.condition.BeliefNetwork.Influence;
import org.keelweigh.condition.BeliefNetwork.Signal;
import org.keelweigh.condition.Evidence.CheckReport;
import org.keelweigh.condition.Evidence.CheckSign;
import org.keelweigh.condition.Evidence.SignalLook;

class BeliefTests {

    private static final Reliability TOUCHED = new Reliability(0.88, 0.03);
    private static final Reliability PHOTO = new Reliability(0.15, 0.10);

    private static final List<Cause> CAUSES =
            List.of(new Cause("sun", 0.2, 0.5), new Cause("ramp", 0.35, 0.5), new Cause("impact", 0.06, 0));
    private static final List<Signal> SIGNALS = List.of(
            new Signal("step", "sun", 0.8, 0.3),
            new Signal("garage", "sun", 0.15, 0.55),
            new Signal("hairs", "ramp", 0.6, 0.15),
            new Signal("scrape", "impact", 0.45, 0.06),
            new Signal("repair", "impact", 0.25, 0.04));
    private static final List<Influence> INFLUENCES = List.of(
            new Influence("sun", "crack", 1.6, 2.6),
            new Influence("impact", "crack", 2.4, 5.8),
            new Influence("sun", "fabric", 2.2, 4.9),
            new Influence("ramp", "stern", 2.5, 6),
            new Influence("ramp", "crack", 0.8, 1.5));

    private static LinkedHashMap<String, OutcomeChances> checks() {
        LinkedHashMap<String, OutcomeChances> checks = new LinkedHashMap<>();
        checks.put("crack", OutcomeChances.ofFaults(0.08, 0.032, 0.010));
        checks.put("fabric", OutcomeChances.ofFaults(0.30, 0.096, 0));
        checks.put("stern", OutcomeChances.ofFaults(0.33, 0.101, 0.010));
        checks.put("plug", OutcomeChances.ofFaults(0.13, 0.042, 0));
        return checks;
    }

    private static final BeliefNetwork NETWORK = BeliefNetwork.of(CAUSES, SIGNALS, checks(), INFLUENCES);

    private static final List<Evidence> MUCH = List.of(
            SignalLook.of("step", true),
            SignalLook.of("garage", false),
            SignalLook.of("scrape", true),
            SignalLook.of("repair", true),
            new SignalLook("hairs", 0.9, 0.05),
            new CheckReport("stern", Outcome.MAJOR, TOUCHED),
            new CheckReport("plug", Outcome.FINE, PHOTO),
            new CheckSign("fabric", "tears", Outcome.MAJOR, true, TOUCHED),
            new CheckReport("crack", Outcome.FINE, PHOTO));

    @Test
    void keepsEveryPriorWhenNothingWasObserved() {
        Belief belief = NETWORK.prior();
        assertThat(belief.causes()).allSatisfy(each -> assertThat(each.now()).isCloseTo(each.before(), within(1e-12)));
        assertThat(belief.checks()).allSatisfy(each -> {
            for (Outcome outcome : List.of(Outcome.FINE, Outcome.MINOR, Outcome.MAJOR, Outcome.STOP)) {
                assertThat(each.now().of(outcome)).isCloseTo(each.before().of(outcome), within(1e-12));
            }
            assertThat(each.timesAsLikely()).isCloseTo(1, within(1e-10));
        });
    }

    @Test
    void agreesWithListingEveryWorld() {
        BruteForce naive = new BruteForce(CAUSES, SIGNALS, checks(), INFLUENCES);
        for (int use = 0; use <= MUCH.size(); use++) {
            List<Evidence> evidence = MUCH.subList(0, use);
            Belief belief = NETWORK.believe(evidence);
            for (int j = 0; j < CAUSES.size(); j++) {
                assertThat(belief.causes().get(j).now()).isCloseTo(naive.cause(j, evidence), within(1e-9));
            }
            for (int c = 0; c < 4; c++) {
                OutcomeChances now = belief.checks().get(c).now();
                assertThat(now.fine()).isCloseTo(naive.outcome(c, 0, evidence), within(1e-9));
                assertThat(now.minor()).isCloseTo(naive.outcome(c, 1, evidence), within(1e-9));
                assertThat(now.major()).isCloseTo(naive.outcome(c, 2, evidence), within(1e-9));
                assertThat(now.stop()).isCloseTo(naive.outcome(c, 3, evidence), within(1e-9));
            }
        }
    }

    @Test
    void multipliesOddsByTheFactorsBetweenACertainCauseAndItsCertainAbsence() {
        BeliefNetwork network = BeliefNetwork.of(
                List.of(new Cause("sun", 0.2, 0)),
                List.of(new Signal("proof", "sun", 1, 0)),
                checks(),
                List.of(new Influence("sun", "crack", 1.6, 2.6)));
        OutcomeChances with = network.believe(List.of(SignalLook.of("proof", true)))
                .check("crack")
                .now();
        OutcomeChances without = network.believe(List.of(SignalLook.of("proof", false)))
                .check("crack")
                .now();
        assertThat((with.minor() / with.fine()) / (without.minor() / without.fine()))
                .isCloseTo(1.6, within(1e-9));
        assertThat((with.major() / with.fine()) / (without.major() / without.fine()))
                .isCloseTo(2.6, within(1e-9));
        assertThat((with.stop() / with.fine()) / (without.stop() / without.fine()))
                .isCloseTo(2.6, within(1e-9));
    }

    @Test
    void lowersAFaultThatWasLookedForAndNotFound() {
        // p(1-s) / (p(1-s) + (1-p)(1-fa)) with p = 0.05: 0.047 from a photo, 0.006 by torch. Estimates, common
        // practice.
        LinkedHashMap<String, OutcomeChances> alone = new LinkedHashMap<>();
        alone.put("scupper", OutcomeChances.ofFaults(0, 0.04, 0.01));
        BeliefNetwork network = BeliefNetwork.of(List.of(), List.of(), alone, List.of());
        assertThat(network.believe(List.of(new CheckReport("scupper", Outcome.FINE, PHOTO)))
                        .check("scupper")
                        .now()
                        .fault())
                .isCloseTo(0.05 * 0.85 / (0.05 * 0.85 + 0.95 * 0.90), within(1e-12))
                .isCloseTo(0.047, within(0.0005));
        assertThat(network.believe(List.of(new CheckReport("scupper", Outcome.FINE, TOUCHED)))
                        .check("scupper")
                        .now()
                        .fault())
                .isCloseTo(0.006, within(0.0005));
    }

    @Test
    void countsOverlappingSignalsLessThanIndependentOnesAndEachAloneInFull() {
        List<Signal> twins = List.of(new Signal("a", "sun", 0.5, 0.1), new Signal("b", "sun", 0.5, 0.1));
        BeliefNetwork apart =
                BeliefNetwork.of(List.of(new Cause("sun", 0.2, 0)), twins, new LinkedHashMap<>(), List.of());
        BeliefNetwork overlapping =
                BeliefNetwork.of(List.of(new Cause("sun", 0.2, 1)), twins, new LinkedHashMap<>(), List.of());
        List<Evidence> one = List.of(SignalLook.of("a", true));
        List<Evidence> both = List.of(SignalLook.of("a", true), SignalLook.of("b", true));
        assertThat(odds(apart.believe(one))).isCloseTo(0.25 * 5, within(1e-12));
        assertThat(odds(overlapping.believe(one))).isCloseTo(0.25 * 5, within(1e-12));
        assertThat(odds(apart.believe(both))).isCloseTo(0.25 * 25, within(1e-12));
        assertThat(odds(overlapping.believe(both))).isCloseTo(0.25 * 5, within(1e-12));
    }

    private static double odds(Belief belief) {
        double chance = belief.causes().getFirst().now();
        return chance / (1 - chance);
    }

    @Test
    void takesAGradeThatACheckCannotHaveForTheNextMilderOne() {
        Belief stop = NETWORK.believe(List.of(new CheckReport("fabric", Outcome.STOP, TOUCHED)));
        Belief major = NETWORK.believe(List.of(new CheckReport("fabric", Outcome.MAJOR, TOUCHED)));
        assertThat(stop.checks()).isEqualTo(major.checks());
    }

    @Test
    void findsTheEvidenceThatMovedACauseMost() {
        Movers movers = NETWORK.believe(MUCH).movers();
        List<Movers.Mover> ofImpact = movers.ofCause("impact");
        assertThat(ofImpact.getFirst().evidence().about()).isEqualTo("scrape");
        // Without overlap a signal moves the log-odds by the logarithm of its own ratio.
        assertThat(ofImpact.getFirst().logOdds()).isCloseTo(Math.log(0.45 / 0.06), within(1e-9));
        assertThat(movers.ofCheck("stern").getFirst().evidence().about()).isEqualTo("stern");
    }

    @Test
    void forecastsReportsThatAverageToWhatIsBelievedNow() {
        Belief belief = NETWORK.believe(MUCH.subList(0, 6));
        List<ReportForecast> forecasts = belief.reports("crack", TOUCHED);
        assertThat(forecasts.stream().mapToDouble(ReportForecast::chance).sum()).isCloseTo(1, within(1e-12));
        for (int c = 0; c < 4; c++) {
            int check = c;
            double mean = forecasts.stream()
                    .mapToDouble(
                            each -> each.chance() * each.checks().get(check).majorOrWorse())
                    .sum();
            assertThat(mean).isCloseTo(belief.checks().get(c).now().majorOrWorse(), within(1e-12));
        }
    }

    @Test
    void forecastsWhatItBelievesOnceTheReportIsIn() {
        List<Evidence> before = MUCH.subList(0, 6);
        for (ReportForecast each : NETWORK.believe(before).reports("crack", TOUCHED)) {
            List<Evidence> after = new java.util.ArrayList<>(before);
            after.add(new CheckReport("crack", each.report(), TOUCHED));
            Belief belief = NETWORK.believe(after);
            for (int c = 0; c < 4; c++) {
                assertThat(each.checks().get(c).majorOrWorse())
                        .isCloseTo(belief.checks().get(c).now().majorOrWorse(), within(1e-12));
                assertThat(each.checks().get(c).fine())
                        .isCloseTo(belief.checks().get(c).now().fine(), within(1e-12));
            }
        }
    }

    @Test
    void drawsWorldsWithTheBelievedFrequencies() {
        int worlds = 200_000;
        Belief belief = NETWORK.believe(MUCH);
        WorldSampler sampler = belief.sampler();
        java.util.SplittableRandom random = new java.util.SplittableRandom(20_251);
        double[][] forCauses = IntStream.range(0, 3)
                .mapToObj(j -> random.doubles(worlds).toArray())
                .toArray(double[][]::new);
        int[] states = new int[worlds];
        sampler.drawCauses(forCauses, states);
        // Five standard errors of a share among 200 000 draws: at most 5 * sqrt(0.25 / 200 000) = 0.0056.
        double room = 0.0056;
        for (int j = 0; j < 3; j++) {
            int cause = j;
            double share = java.util.Arrays.stream(states)
                            .filter(s -> (s >> cause & 1) == 1)
                            .count()
                    / (double) worlds;
            assertThat(share).isCloseTo(belief.causes().get(j).now(), within(room));
        }
        byte[] outcomes = new byte[worlds];
        for (int c = 0; c < 4; c++) {
            sampler.drawOutcomes(c, states, random.doubles(worlds).toArray(), outcomes);
            int[] counts = new int[4];
            for (byte each : outcomes) {
                counts[each]++;
            }
            OutcomeChances now = belief.checks().get(c).now();
            assertThat(counts[0] / (double) worlds).isCloseTo(now.fine(), within(room));
            assertThat(counts[1] / (double) worlds).isCloseTo(now.minor(), within(room));
            assertThat(counts[2] / (double) worlds).isCloseTo(now.major(), within(room));
            assertThat(counts[3] / (double) worlds).isCloseTo(now.stop(), within(room));
        }
    }

    @Test
    void rejectsWhatItDoesNotKnow() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> NETWORK.believe(List.of(SignalLook.of("moon", true))))
                .withMessageContaining("moon");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> NETWORK.believe(List.of(SignalLook.of("step", true), SignalLook.of("step", false))))
                .withMessageContaining("step");
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        BeliefNetwork.of(CAUSES, List.of(), checks(), List.of(new Influence("rain", "crack", 1, 2))))
                .withMessageContaining("rain");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BeliefNetwork.of(
                        IntStream.range(0, 17)
                                .mapToObj(i -> new Cause("c" + i, 0.1, 0))
                                .toList(),
                        List.of(),
                        checks(),
                        List.of()))
                .withMessageContaining("17");
    }
}
