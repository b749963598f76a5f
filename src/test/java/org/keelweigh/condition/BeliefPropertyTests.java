package org.keelweigh.condition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.keelweigh.condition.BeliefNetwork.Cause;
import org.keelweigh.condition.BeliefNetwork.Influence;
import org.keelweigh.condition.BeliefNetwork.Signal;
import org.keelweigh.condition.Evidence.CheckReport;
import org.keelweigh.condition.Evidence.SignalLook;

class BeliefPropertyTests {

    private static final Outcome[] GRADES = {Outcome.FINE, Outcome.MINOR, Outcome.MAJOR, Outcome.STOP};

    /** Is a network made at random with something observed in it. */
    private record Made(
            List<Cause> causes,
            List<Signal> signals,
            LinkedHashMap<String, OutcomeChances> checks,
            List<Influence> influences,
            List<Evidence> evidence) {

        BeliefNetwork network() {
            return BeliefNetwork.of(causes, signals, checks, influences);
        }
    }

    private static Made made(long seed, int causeCount, int checkCount) {
        Random random = new Random(seed);
        List<Cause> causes = new ArrayList<>();
        List<Signal> signals = new ArrayList<>();
        List<Evidence> evidence = new ArrayList<>();
        for (int j = 0; j < causeCount; j++) {
            causes.add(new Cause("cause" + j, 0.05 + 0.6 * random.nextDouble(), 0.9 * random.nextDouble()));
            for (int s = 0; s < 2; s++) {
                String id = "signal" + j + s;
                signals.add(
                        new Signal(id, "cause" + j, 0.3 + 0.6 * random.nextDouble(), 0.1 + 0.2 * random.nextDouble()));
                if (random.nextBoolean()) {
                    evidence.add(SignalLook.of(id, random.nextBoolean()));
                }
            }
        }
        LinkedHashMap<String, OutcomeChances> checks = new LinkedHashMap<>();
        List<Influence> influences = new ArrayList<>();
        for (int c = 0; c < checkCount; c++) {
            String id = "check" + c;
            checks.put(
                    id,
                    OutcomeChances.ofFaults(
                            0.4 * random.nextDouble(),
                            0.2 * random.nextDouble(),
                            random.nextBoolean() ? 0 : 0.05 * random.nextDouble()));
            for (int j = 0; j < causeCount; j++) {
                if (random.nextInt(3) > 0) {
                    double minor = 1 + 2 * random.nextDouble();
                    influences.add(new Influence("cause" + j, id, minor, minor * (1 + 3 * random.nextDouble())));
                }
            }
            if (random.nextBoolean()) {
                evidence.add(new CheckReport(id, GRADES[random.nextInt(3)], reliability(random)));
            }
        }
        return new Made(causes, signals, checks, influences, evidence);
    }

    private static Reliability reliability(Random random) {
        return new Reliability(0.1 + 0.85 * random.nextDouble(), 0.01 + 0.1 * random.nextDouble());
    }

    @Property(tries = 12)
    void agreesWithListingEveryWorld(@ForAll long seed, @ForAll @IntRange(max = 4) int causes) {
        Made made = made(seed, causes, 3);
        BruteForce naive = new BruteForce(made.causes(), made.signals(), made.checks(), made.influences());
        Belief belief = made.network().believe(made.evidence());
        for (int j = 0; j < causes; j++) {
            assertThat(belief.causes().get(j).now()).isCloseTo(naive.cause(j, made.evidence()), within(1e-7));
        }
        for (int c = 0; c < 3; c++) {
            for (int o = 0; o < 4; o++) {
                assertThat(belief.checks().get(c).now().of(GRADES[o]))
                        .isCloseTo(naive.outcome(c, o, made.evidence()), within(1e-7));
            }
        }
    }

    @Property(tries = 100)
    void doesNotMindTheOrderOfFindings(@ForAll long seed, @ForAll long shuffle) {
        Made made = made(seed, 6, 8);
        List<Evidence> shuffled = new ArrayList<>(made.evidence());
        Collections.shuffle(shuffled, new Random(shuffle));
        BeliefNetwork network = made.network();
        Belief one = network.believe(made.evidence());
        Belief other = network.believe(shuffled);
        assertThat(other.causes()).isEqualTo(one.causes());
        assertThat(other.checks()).isEqualTo(one.checks());
    }

    @Property(tries = 100)
    void keepsPriorsWithoutEvidence(@ForAll long seed, @ForAll @IntRange(max = 9) int causes) {
        for (CheckBelief each : made(seed, causes, 6).network().prior().checks()) {
            for (Outcome outcome : GRADES) {
                assertThat(each.now().of(outcome)).isCloseTo(each.before().of(outcome), within(1e-11));
            }
        }
    }

    @Property(tries = 100)
    void believesMoreOfACauseTheMoreSpeaksForIt(@ForAll long seed) {
        Made made = made(seed, 4, 5);
        BeliefNetwork network = made.network();
        Belief before = network.believe(made.evidence());
        for (Signal signal : made.signals()) {
            if (made.evidence().stream().anyMatch(each -> each.about().equals(signal.id()))) {
                continue;
            }
            List<Evidence> more = new ArrayList<>(made.evidence());
            more.add(SignalLook.of(signal.id(), true));
            Belief after = network.believe(more);
            assertThat(after.cause(signal.cause()).now())
                    .isGreaterThanOrEqualTo(before.cause(signal.cause()).now() - 1e-12);
        }
    }

    /** Every effect here raises major faults at least as much as minor ones, so a major one can only speak for the causes. */
    @Property(tries = 100)
    void believesMoreOfACauseTheWorseACheckOfItComesOut(
            @ForAll long seed, @ForAll @DoubleRange(min = 0.3, max = 1) double sensitivity) {
        Made made = made(seed, 4, 2);
        BeliefNetwork network = made.network();
        Reliability look = new Reliability(sensitivity, 0.02);
        Belief fine = network.believe(List.of(new CheckReport("check0", Outcome.FINE, look)));
        Belief major = network.believe(List.of(new CheckReport("check0", Outcome.MAJOR, look)));
        for (int j = 0; j < 4; j++) {
            double before = made.causes().get(j).prior();
            assertThat(fine.causes().get(j).now()).isLessThanOrEqualTo(before + 1e-12);
            assertThat(major.causes().get(j).now()).isGreaterThanOrEqualTo(before - 1e-12);
        }
    }

    @Property(tries = 60)
    void forecastsAverageToWhatIsBelieved(@ForAll long seed) {
        Made made = made(seed, 5, 6);
        Belief belief = made.network().believe(made.evidence());
        for (int asked = 0; asked < 6; asked++) {
            List<ReportForecast> forecasts = belief.reports("check" + asked, reliability(new Random(seed)));
            for (int c = 0; c < 6; c++) {
                for (Outcome outcome : GRADES) {
                    double mean = 0;
                    for (ReportForecast each : forecasts) {
                        mean += each.chance() * each.checks().get(c).of(outcome);
                    }
                    assertThat(mean).isCloseTo(belief.checks().get(c).now().of(outcome), within(1e-11));
                }
            }
        }
    }
}
