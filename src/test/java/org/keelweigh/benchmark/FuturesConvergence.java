package org.keelweigh.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.keelweigh.appraisal.Appraiser;
import org.keelweigh.appraisal.BoatFutures;
import org.keelweigh.appraisal.BoatReport;
import org.keelweigh.appraisal.Catalogues;
import org.keelweigh.appraisal.Confidence;
import org.keelweigh.appraisal.Measured;
import org.keelweigh.appraisal.Outlook;
import org.keelweigh.appraisal.Perspective;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.decision.Weights;
import org.keelweigh.exchange.ImportResult;
import org.keelweigh.exchange.ShortlistDocument;
import org.keelweigh.exchange.ShortlistImport;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.Shortlist;
import org.keelweigh.shortlist.ShortlistData;

/**
 * Measures how far the application's own figures on an exported shortlist stray from seed to seed, for several numbers of
 * futures, and prints the table of the method page. The truth is taken to be the mean over all seeds at the largest number.
 *
 * <p>Chances of being best are looked at twice: with the weights people stated, and with the nearest weights at which the
 * leader and its runner-up are level, where such a chance is hardest to measure.
 */
public final class FuturesConvergence {

    private static final int[] SIZES = {256, 512, 1_024, 2_048, 4_096, 8_192, 16_384, 65_536};
    private static final int YEAR = 2026;
    private static final boolean[] SHARE = {true, true, false, false, true, false};

    /** The figures of one run, kind by kind, such as the chances of being best of all boats from all perspectives. */
    private record Figures(
            double[] best, double[] level, double[] median, double[] p90, double[] dud, double[] surprise) {

        List<double[]> all() {
            return List.of(best, level, median, p90, dud, surprise);
        }
    }

    private final Appraiser appraiser;
    private final Facts facts;
    private final int seeds;
    private final Weights level;

    private FuturesConvergence(Appraiser appraiser, Facts facts, int seeds) {
        this.appraiser = appraiser;
        this.facts = facts;
        this.seeds = seeds;
        this.level = level(appraiser.measure(facts, YEAR));
    }

    /** The weights nearest to those stated at which the leader and its runner-up are level. */
    private static Weights level(Measured measured) {
        Perspective perspective = measured.perspectives().getFirst();
        List<Double> changed = perspective
                .smallestChange(perspective.ranking().runnerUp().orElseThrow())
                .orElseThrow()
                .weights();
        Map<String, Double> weights = new LinkedHashMap<>();
        for (int c = 0; c < changed.size(); c++) {
            weights.put(measured.yardsticks().all().get(c).id(), changed.get(c));
        }
        return Weights.of(weights);
    }

    /** @param arguments the exported shortlist, and how many seeds to try */
    public static void main(String[] arguments) throws IOException {
        Catalogue catalogue = Catalogue.shipped();
        ImportResult read = new ShortlistImport(catalogue, YEAR).read(Files.readAllBytes(Path.of(arguments[0])));
        ShortlistDocument document = ((ImportResult.Ready) read).document();
        new FuturesConvergence(
                        new Appraiser(Catalogues.read(catalogue)), document.facts(), Integer.parseInt(arguments[1]))
                .print();
    }

    private void print() {
        List<Figures> most = runs(SIZES[SIZES.length - 1]);
        List<double[]> truth = mean(most);
        System.out.println("| futures | √(0.25/N) | best, as stated | best, level | median cost | P90 of cost |"
                + " chance of a dud | repair surprise | ms |");
        System.out.println("| --- | --- | --- | --- | --- | --- | --- | --- | --- |");
        for (int size : SIZES) {
            long start = System.nanoTime();
            List<Figures> runs = size == SIZES[SIZES.length - 1] ? most : runs(size);
            double ms = (System.nanoTime() - start) / 1e6 / seeds;
            String line = IntStream.range(0, truth.size())
                    .mapToObj(kind -> error(runs, truth, kind, SHARE[kind] ? 100 : 1))
                    .collect(Collectors.joining(" | "));
            System.out.printf(Locale.ROOT, "| %d | %.2f | %s | %.0f |%n", size, 50 / Math.sqrt(size), line, ms);
        }
    }

    /** Root mean square error and largest error of a kind of figure. */
    private static String error(List<Figures> runs, List<double[]> truth, int kind, double scale) {
        return String.format(
                Locale.ROOT,
                scale > 1 ? "%.2f (%.2f)" : "%.1f (%.1f)",
                scale * rootMeanSquare(runs, truth, kind),
                scale * largest(runs, truth, kind));
    }

    private List<Figures> runs(int futures) {
        List<Figures> runs = new ArrayList<>();
        for (int seed = 1; seed <= seeds; seed++) {
            runs.add(figures(futures, 7_919L * seed));
        }
        return runs;
    }

    private Figures figures(int futures, long seed) {
        Measured measured = appraiser.measure(seeded(seed), YEAR, null, futures);
        Outlook outlook = Outlook.of(measured);
        double[] best = measured.perspectives().stream()
                .flatMapToDouble(each -> best(outlook, each))
                .toArray();
        double[] atLevel =
                best(outlook, measured.perspectives().getFirst().with(level)).toArray();
        List<BoatFutures> boats =
                measured.boats().stream().map(BoatReport::futures).toList();
        return new Figures(
                best,
                atLevel,
                boats.stream().mapToDouble(BoatFutures::median).toArray(),
                boats.stream().mapToDouble(BoatFutures::p90).toArray(),
                boats.stream().mapToDouble(BoatFutures::dudShare).toArray(),
                boats.stream().mapToDouble(BoatFutures::repairSurprise).toArray());
    }

    private static DoubleStream best(Outlook outlook, Perspective perspective) {
        Confidence confidence = outlook.confidence(perspective);
        return IntStream.range(0, perspective.size())
                .filter(boat -> !perspective.ruledOut(boat))
                .mapToDouble(confidence::chanceBest);
    }

    private Facts seeded(long seed) {
        Shortlist old = facts.shortlist();
        ShortlistData data = old.data();
        ShortlistData changed = new ShortlistData(data.name(), data.units(), data.currency(), seed, data.trip());
        return new Facts(new Shortlist(old.id(), old.version(), changed), facts.people(), facts.candidates());
    }

    private static List<double[]> mean(List<Figures> runs) {
        List<double[]> means = new ArrayList<>();
        for (int kind = 0; kind < runs.getFirst().all().size(); kind++) {
            double[] mean = new double[runs.getFirst().all().get(kind).length];
            for (Figures run : runs) {
                for (int i = 0; i < mean.length; i++) {
                    mean[i] += run.all().get(kind)[i] / runs.size();
                }
            }
            means.add(mean);
        }
        return means;
    }

    private static double rootMeanSquare(List<Figures> runs, List<double[]> truth, int kind) {
        double squares = 0;
        int count = 0;
        for (Figures run : runs) {
            for (int i = 0; i < truth.get(kind).length; i++) {
                squares += Math.pow(run.all().get(kind)[i] - truth.get(kind)[i], 2);
                count++;
            }
        }
        return Math.sqrt(squares / count);
    }

    private static double largest(List<Figures> runs, List<double[]> truth, int kind) {
        double largest = 0;
        for (Figures run : runs) {
            for (int i = 0; i < truth.get(kind).length; i++) {
                largest = Math.max(largest, Math.abs(run.all().get(kind)[i] - truth.get(kind)[i]));
            }
        }
        return largest;
    }
}
