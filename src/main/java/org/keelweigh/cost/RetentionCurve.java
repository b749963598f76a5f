package org.keelweigh.cost;

import java.util.ArrayList;
import java.util.List;
import org.keelweigh.catalogue.Row;

/**
 * The share of today's new price that one kind of boat still fetches, by age: private sale, good condition.
 *
 * @param name the curve's code
 * @param shares shares at the ages {@link #AGES}, each above 0 and none above the one before
 * @param floor the least a whole boat fetches, catalogue currency; at least 0
 * @param sigma one standard deviation of prices around the curve, as a share; 0..1
 */
public record RetentionCurve(String name, List<Double> shares, double floor, double sigma) {

    /** The ages at which curves are given, years. */
    public static final List<Integer> AGES = List.of(0, 1, 2, 3, 5, 7, 10, 15, 20);

    public RetentionCurve {
        shares = List.copyOf(shares);
        if (shares.size() != AGES.size()) {
            throw new IllegalArgumentException(
                    "A retention curve needs " + AGES.size() + " shares, not " + shares.size());
        }
        for (int i = 0; i < shares.size(); i++) {
            double before = i == 0 ? 1.5 : shares.get(i - 1);
            if (!(shares.get(i) > 0 && shares.get(i) <= before)) {
                throw new IllegalArgumentException("The share kept at " + AGES.get(i) + " years is " + shares.get(i)
                        + ", but must be above 0 and at most " + before);
            }
        }
    }

    static RetentionCurve read(Row row) {
        List<Double> shares = new ArrayList<>();
        for (int age : AGES) {
            shares.add(row.number("y" + age, 0, 1.5));
        }
        row.text("source");
        return new RetentionCurve(row.text("curve"), shares, row.number("floor", 0, 1e6), row.number("sigma", 0, 1));
    }

    /**
     * Tells the share kept at an age: linear between the given ages; beyond 20 years falling on at the constant yearly
     * rate of the last five, so that it approaches 0 and never passes it.
     *
     * @param ageYears age in years; at least 0
     */
    public double shareAt(double ageYears) {
        if (!(ageYears >= 0 && ageYears < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("The age must be at least 0 years, not " + ageYears);
        }
        int last = AGES.size() - 1;
        if (ageYears >= AGES.get(last)) {
            int span = AGES.get(last) - AGES.get(last - 1);
            double rate = new BookDepreciation(shares.get(last - 1), shares.get(last), span).constantRate();
            return shares.get(last) * Math.pow(1 - rate, ageYears - AGES.get(last));
        }
        int next = 1;
        while (AGES.get(next) <= ageYears) {
            next++;
        }
        double from = AGES.get(next - 1);
        double part = (ageYears - from) / (AGES.get(next) - from);
        return shares.get(next - 1) + part * (shares.get(next) - shares.get(next - 1));
    }
}
