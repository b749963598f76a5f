package org.keelweigh.benchmark;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.keelweigh.decision.acceptability.Acceptability;
import org.keelweigh.decision.acceptability.AcceptabilityAnalysis;
import org.keelweigh.decision.acceptability.Futures;
import org.keelweigh.decision.acceptability.PerturbedMeasures;
import org.keelweigh.decision.acceptability.WeightBank;
import org.keelweigh.decision.acceptability.WeightSample;
import org.keelweigh.decision.acceptability.WeightSampler;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The fixed problem: 20 alternatives, 12 criteria, every measure perturbed and clamped, weights uniform on the simplex.
 *
 * <p>{@link #main} prints the shares {@code b}, the central weights {@code cw} and the times, also for other sizes and
 * for plain scalar code.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class AcceptabilityBenchmark {

    private static final int ALTERNATIVES = 20;
    private static final int CRITERIA = 12;
    private static final int SAMPLES = 100_000;
    private static final ThreadMXBean THREAD = ManagementFactory.getThreadMXBean();

    @Param({"1", "2"})
    public int threads;

    private final PerturbedMeasures problem = problem(ALTERNATIVES, CRITERIA);

    @Benchmark
    public Acceptability fixedProblem() {
        return problem.analyse(42, SAMPLES, threads);
    }

    public static double[][] base(int alternatives, int criteria) {
        double[][] base = new double[alternatives][criteria];
        for (int a = 0; a < alternatives; a++) {
            for (int c = 0; c < criteria; c++) {
                base[a][c] =
                        0.2 + 0.6 * fraction(0.6180339887498949 * (a + 1) + 0.7548776662466927 * (c + 1) * (1 + a % 3));
            }
        }
        return base;
    }

    public static double[][] sd(int alternatives, int criteria) {
        double[][] sd = new double[alternatives][criteria];
        for (int a = 0; a < alternatives; a++) {
            for (int c = 0; c < criteria; c++) {
                sd[a][c] = 0.03 + 0.09 * fraction(0.5698402909980532 * (a + 1) * (c + 1));
            }
        }
        return sd;
    }

    private static double fraction(double x) {
        return x - Math.floor(x);
    }

    private static PerturbedMeasures problem(int alternatives, int criteria) {
        return new PerturbedMeasures(base(alternatives, criteria), sd(alternatives, criteria));
    }

    public static void main(String[] arguments) {
        int samples = arguments.length > 0 ? Integer.parseInt(arguments[0]) : SAMPLES;
        PerturbedMeasures problem = problem(ALTERNATIVES, CRITERIA);
        print(problem.analyse(42, samples, 1));
        for (int round = 0; round < 2; round++) {
            time("fixed problem, 1 thread", 100, () -> problem.analyse(42, samples, 1));
            time("fixed problem, 2 threads", 100, () -> problem.analyse(42, samples, 2));
        }
        time("plain scalar code", 7, () -> new NaiveAcceptability(
                        base(ALTERNATIVES, CRITERIA), sd(ALTERNATIVES, CRITERIA))
                .run(42, samples));
        if (arguments.length > 1) {
            return;
        }
        growth();
        slider(8, 16, 20_000);
        slider(20, 12, 20_000);
        slider(20, 12, 100_000);
    }

    private static void growth() {
        for (int n : new int[] {1_000, 10_000, 100_000, 1_000_000}) {
            sized(n, ALTERNATIVES, CRITERIA);
        }
        for (int a : new int[] {5, 10, 20, 40, 80}) {
            sized(SAMPLES, a, CRITERIA);
        }
        for (int c : new int[] {3, 6, 12, 24}) {
            sized(SAMPLES, ALTERNATIVES, c);
        }
    }

    private static void sized(int samples, int alternatives, int criteria) {
        PerturbedMeasures problem = problem(alternatives, criteria);
        String name = "N=%d A=%d C=%d, 1 thread".formatted(samples, alternatives, criteria);
        time(name, Math.clamp(4_000_000 / samples, 5, 400), () -> problem.analyse(42, samples, 1));
    }

    /** What a slider move costs when four criteria vary between futures. */
    private static void slider(int alternatives, int criteria, int samples) {
        Futures.Builder builder = Futures.builder(alternatives, criteria, samples);
        double[][] base = base(alternatives, criteria);
        SplittableRandom random = new SplittableRandom(7);
        for (int a = 0; a < alternatives; a++) {
            for (int c = 0; c < criteria; c++) {
                double middle = base[a][c];
                if (c < 4) {
                    builder.sampled(
                            a,
                            c,
                            random.doubles(samples).map(u -> middle + 0.1 * u).toArray());
                } else {
                    builder.certain(a, c, middle);
                }
            }
        }
        Futures futures = builder.build();
        WeightBank bank = WeightBank.random(11, criteria, samples);
        Double[] stated = new Double[criteria];
        Arrays.setAll(stated, c -> 1.0 + c);
        WeightSampler sampler = new WeightSampler.AroundStated(Arrays.asList(stated), 63);
        String size = "N=%d A=%d C=%d".formatted(samples, alternatives, criteria);
        WeightSample weights = sampler.sample(bank);
        time("slider, weights only, " + size, 40, () -> sampler.sample(bank));
        time("slider, ranks with pairs, " + size, 40, () -> AcceptabilityAnalysis.of(futures)
                .analyse(weights));
    }

    private static void time(String name, int repeats, Supplier<?> work) {
        double[] millis = new double[repeats];
        double processor = Double.POSITIVE_INFINITY;
        for (int i = 0; i < repeats; i++) {
            long startOfThread = THREAD.getCurrentThreadCpuTime();
            long start = System.nanoTime();
            work.get();
            millis[i] = (System.nanoTime() - start) / 1e6;
            processor = Math.min(processor, (THREAD.getCurrentThreadCpuTime() - startOfThread) / 1e6);
        }
        double first = millis[0];
        Arrays.sort(millis);
        System.out.printf(
                Locale.ROOT,
                "%-48s best %8.2f ms, median %8.2f ms, first %8.2f ms, calling thread's processor time at best %8.2f ms%n",
                name,
                millis[0],
                millis[repeats / 2],
                first,
                processor);
    }

    private static void print(Acceptability result) {
        for (int a = 0; a < result.alternatives(); a++) {
            StringBuilder line = new StringBuilder("b[%2d]".formatted(a));
            for (int r = 0; r < result.alternatives(); r++) {
                line.append(String.format(Locale.ROOT, " %.4f", result.rankShare(a, r)));
            }
            System.out.println(line);
        }
        for (int a = 0; a < result.alternatives(); a++) {
            StringBuilder line = new StringBuilder("cw[%2d]".formatted(a));
            for (double w : result.centralWeights(a).orElseGet(() -> new double[0])) {
                line.append(String.format(Locale.ROOT, " %.4f", w));
            }
            System.out.println(line);
        }
    }
}
