package org.keelweigh.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;
import org.keelweigh.decision.acceptability.Acceptability;
import org.keelweigh.decision.acceptability.AcceptabilityAnalysis;
import org.keelweigh.decision.acceptability.Futures;
import org.keelweigh.decision.acceptability.WeightBank;
import org.keelweigh.decision.acceptability.WeightSampler;

/**
 * Measures the error of rank shares against the number of samples, for random and for low-discrepancy weights, prints the
 * table and draws the plot of the method page.
 */
public final class ConvergencePlot {

    private static final int[] SIZES = {1_024, 4_096, 16_384, 65_536};
    private static final int REPEATS = 16;

    private record Line(String name, String colour, String dash, double[] error) {}

    private ConvergencePlot() {}

    /** @param arguments where to write the SVG file */
    public static void main(String[] arguments) throws IOException {
        double[][] four = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}, {0.4, 0.4, 0.4}};
        double[][] six = AcceptabilityBenchmark.base(8, 6);
        WeightSampler three = new WeightSampler.Uniform(3);
        WeightSampler uniform = new WeightSampler.Uniform(6);
        WeightSampler stated = new WeightSampler.AroundStated(List.of(0.3, 0.25, 0.15, 0.12, 0.1, 0.08), 63);
        List<Line> lines = new ArrayList<>();
        lines.add(line("3 criteria, random", "#D55E00", "", four, three, ConvergencePlot::random));
        lines.add(line("3 criteria, low discrepancy", "#0072B2", "", four, three, ConvergencePlot::shifted));
        lines.add(line("6 criteria, random", "#D55E00", "7 4", six, uniform, ConvergencePlot::random));
        lines.add(line("6 criteria, low discrepancy", "#0072B2", "7 4", six, uniform, ConvergencePlot::shifted));
        lines.add(line("6 around stated, random", "#D55E00", "2 4", six, stated, ConvergencePlot::random));
        lines.add(line("6 around stated, low discrepancy", "#0072B2", "2 4", six, stated, ConvergencePlot::shifted));
        for (Line line : lines) {
            System.out.printf("| %s |", line.name());
            for (double error : line.error()) {
                System.out.printf(Locale.ROOT, " %.2e |", error);
            }
            System.out.println();
        }
        Files.writeString(Path.of(arguments[0]), svg(lines));
    }

    private interface Bank {
        WeightBank of(long seed, int criteria, int samples);
    }

    private static WeightBank random(long seed, int criteria, int samples) {
        return WeightBank.random(seed, criteria, samples);
    }

    private static WeightBank shifted(long seed, int criteria, int samples) {
        int shifts = Math.clamp(samples / 512, 2, 8);
        return WeightBank.lowDiscrepancy(seed, criteria, samples / shifts, shifts);
    }

    private static Line line(
            String name, String colour, String dash, double[][] values, WeightSampler sampler, Bank bank) {
        int criteria = sampler.criteria();
        Acceptability reference = shares(values, sampler, WeightBank.lowDiscrepancy(999, criteria, 65_536, 16));
        double[] error = new double[SIZES.length];
        for (int i = 0; i < SIZES.length; i++) {
            int samples = SIZES[i];
            IntFunction<Acceptability> repeat = r -> shares(values, sampler, bank.of(100 + r, criteria, samples));
            error[i] = rootMeanSquare(reference, repeat);
        }
        return new Line(name, colour, dash, error);
    }

    private static Acceptability shares(double[][] values, WeightSampler sampler, WeightBank bank) {
        return AcceptabilityAnalysis.of(Futures.certain(values)).analyse(sampler.sample(bank));
    }

    /** Over all alternatives and ranks that occur. */
    private static double rootMeanSquare(Acceptability reference, IntFunction<Acceptability> repeat) {
        double squares = 0;
        int count = 0;
        for (int i = 0; i < REPEATS; i++) {
            Acceptability result = repeat.apply(i);
            for (int a = 0; a < reference.alternatives(); a++) {
                for (int r = 0; r < reference.alternatives(); r++) {
                    double share = reference.rankShare(a, r);
                    if (share > 0.01 && share < 0.99) {
                        squares += Math.pow(result.rankShare(a, r) - share, 2);
                        count++;
                    }
                }
            }
        }
        return Math.sqrt(squares / count);
    }

    private static String svg(List<Line> lines) {
        StringBuilder svg = new StringBuilder("""
                <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 720 430" font-family="sans-serif" font-size="13">
                <title>Error of rank shares against the number of samples</title>
                <desc>Random weights halve their error with four times the samples; low-discrepancy weights fall faster.</desc>
                <rect width="720" height="430" fill="#ffffff"/>
                """);
        for (int power = -5; power <= -1; power++) {
            double y = y(Math.pow(10, power));
            svg.append(text("<line x1='80' x2='460' y1='%.1f' y2='%.1f' stroke='#cccccc'/>", y, y));
            svg.append(text("<text x='72' y='%.1f' text-anchor='end'>1e%d</text>", y + 4, power));
        }
        for (int samples : SIZES) {
            svg.append(text("<text x='%.1f' y='390' text-anchor='middle'>%d</text>", x(samples), samples));
        }
        svg.append("<text x='270' y='415' text-anchor='middle'>samples</text>\n");
        svg.append("<text x='16' y='25'>root mean square error of a rank share</text>\n");
        for (int k = 0; k < lines.size(); k++) {
            Line line = lines.get(k);
            StringBuilder points = new StringBuilder();
            for (int i = 0; i < SIZES.length; i++) {
                points.append(text("%.1f,%.1f ", x(SIZES[i]), y(line.error()[i]))
                                .strip())
                        .append(' ');
            }
            String style = "fill='none' stroke='%s' stroke-width='2' stroke-dasharray='%s'"
                    .formatted(line.colour(), line.dash().isEmpty() ? "none" : line.dash());
            svg.append(
                    "<polyline points='%s' %s/>\n".formatted(points.toString().strip(), style));
            double legend = 60 + 24.0 * k;
            svg.append(text("<line x1='475' x2='505' y1='%.1f' y2='%.1f' ", legend, legend))
                    .setLength(svg.length() - 1);
            svg.append(style).append("/>\n");
            svg.append(text("<text x='512' y='%.1f'>%s</text>", legend + 4, line.name()));
        }
        return svg.append("</svg>\n").toString();
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values) + "\n";
    }

    private static double x(double samples) {
        return 80 + 380 * Math.log(samples / 1_024) / Math.log(64);
    }

    private static double y(double error) {
        return 40 + 330 * (-1 - Math.log10(error)) / 4;
    }
}
