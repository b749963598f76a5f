package org.keelweigh.appraisal;

import java.util.Arrays;
import java.util.List;

/**
 * What may come of buying one boat: equally likely futures, the same ones for all boats of a shortlist.
 *
 * <p>The arrays are never handed out; figures come with their standard error where a reader could over-read a digit.
 */
public final class BoatFutures {

    private static final double P10 = 0.1;
    private static final double MEDIAN = 0.5;
    private static final double P90 = 0.9;

    private final double[] hiddenRepairs;
    private final boolean[] dud;
    private final double[] presentValue;
    private final double[] sortedValue;
    private final List<YearBand> years;
    private final double priceSlope;
    private final RepairSurprise repairSurprise;

    /**
     * The money spent by the end of a year, less what came back, in today's money.
     *
     * @param year 0 for the day of purchase
     * @param p10 one future in ten is at most this
     * @param median half the futures are at most this
     * @param p90 nine futures in ten are at most this
     */
    public record YearBand(int year, double p10, double median, double p90) {}

    /** Takes the arrays over; only {@link FuturesSampler} makes them. */
    BoatFutures(
            double[] hiddenRepairs,
            boolean[] dud,
            double[] presentValue,
            List<YearBand> years,
            double priceSlope,
            RepairSurprise repairSurprise) {
        this.hiddenRepairs = hiddenRepairs;
        this.dud = dud;
        this.presentValue = presentValue;
        this.years = List.copyOf(years);
        this.priceSlope = priceSlope;
        this.repairSurprise = repairSurprise;
        sortedValue = sorted(presentValue);
    }

    /** Tells how many futures there are. */
    public int size() {
        return presentValue.length;
    }

    /** Tells the present value of owning the boat in one future. */
    public double presentValue(int future) {
        return presentValue[future];
    }

    /** Tells what repairs nobody has seen yet cost in one future. */
    public double hiddenRepairs(int future) {
        return hiddenRepairs[future];
    }

    /** Tells whether in one future there is a fault that would have made one walk away. */
    public boolean dud(int future) {
        return dud[future];
    }

    /** Tells by how much the present value rises with each unit of price. */
    public double priceSlope() {
        return priceSlope;
    }

    /** Tells the mean present value. */
    public double mean() {
        return mean(presentValue);
    }

    /** Tells the standard error of {@link #mean()}: an upper bound, for the stratified draws do better. */
    public double meanError() {
        double mean = mean();
        double squares = 0;
        for (double each : presentValue) {
            squares += (each - mean) * (each - mean);
        }
        return Math.sqrt(squares / (presentValue.length - 1.0) / presentValue.length);
    }

    /** Tells the present value that one future in ten stays below. */
    public double p10() {
        return quantile(sortedValue, P10);
    }

    /** Tells the present value that half the futures stay below. */
    public double median() {
        return quantile(sortedValue, MEDIAN);
    }

    /** Tells the present value that nine futures in ten stay below. */
    public double p90() {
        return quantile(sortedValue, P90);
    }

    /** Tells any quantile of the present value. */
    public double quantile(double share) {
        return quantile(sortedValue, share);
    }

    /** Tells the share of futures in which owning the boat costs more than {@code amount}. */
    public double chanceAbove(double amount) {
        int at = Arrays.binarySearch(sortedValue, amount);
        int above = at >= 0 ? at : -at - 1;
        return 1 - above / (double) sortedValue.length;
    }

    /**
     * Tells how far unseen repairs go above their mean in one future of ten, at least 0. It comes from more draws than there
     * are futures, because its error is the same in all of them and so would not average out over weighings.
     */
    public double repairSurprise() {
        return repairSurprise.amount();
    }

    /** Tells the standard error of {@link #repairSurprise()}. */
    public double repairSurpriseError() {
        return repairSurprise.error();
    }

    /** Tells the mean cost of unseen repairs. */
    public double meanHiddenRepairs() {
        return mean(hiddenRepairs);
    }

    /** Tells the share of futures with a fault that would have made one walk away. */
    public double dudShare() {
        int duds = 0;
        for (boolean each : dud) {
            duds += each ? 1 : 0;
        }
        return duds / (double) dud.length;
    }

    /** Tells the money spent by the end of each year. */
    public List<YearBand> years() {
        return years;
    }

    /** Tells a quantile of sorted values by linear interpolation (type 7 of Hyndman and Fan, 1996). */
    static double quantile(double[] sorted, double share) {
        double at = share * (sorted.length - 1);
        int below = (int) Math.floor(at);
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (at - below) * (sorted[above] - sorted[below]);
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double each : values) {
            sum += each;
        }
        return sum / values.length;
    }

    private static double[] sorted(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted;
    }
}
