package org.keelweigh.cost;

/**
 * Two readings of a price index, to carry a price from one date to another.
 *
 * <p>Source: US Bureau of Labor Statistics, <i>Using the Consumer Price Index for Escalation</i>, 1989, p. 5.
 *
 * @param earlier the reading when the price was noted; above 0
 * @param later the reading at the date wanted; above 0
 */
public record PriceIndex(double earlier, double later) {

    public PriceIndex {
        requireReading(earlier);
        requireReading(later);
    }

    /** Tells the change in per cent of the earlier reading, {@code 100 (I2 − I1)/I1}. */
    public double percentChange() {
        return 100 * (later - earlier) / earlier;
    }

    /** Carries a price along: {@code P2 = P1 · I2/I1}. */
    public double update(double price) {
        return price * later / earlier;
    }

    private static void requireReading(double reading) {
        if (!(reading > 0 && reading < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("An index reading must be above 0, not " + reading);
        }
    }
}
