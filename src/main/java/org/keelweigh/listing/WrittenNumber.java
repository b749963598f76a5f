package org.keelweigh.listing;

import java.util.OptionalDouble;

/**
 * A number as written, whose comma or point may mean thousands or decimals.
 *
 * @param decimal read with the last separator as decimal mark; empty if that cannot be
 * @param grouped read with separators as thousands marks; empty if that cannot be
 */
record WrittenNumber(OptionalDouble decimal, OptionalDouble grouped) {

    /** Digits with at most one separator and three groups; bounded, so that matching cannot run away. */
    static final String PATTERN = "(?:\\d{1,3}(?:[.,]\\d{3}){1,2}(?:[.,]\\d{1,2})?(?!\\d)|\\d{1,6}(?:[.,]\\d{1,4})?)";

    /** As {@link #PATTERN}, and blanks or apostrophes between thousands. */
    static final String MONEY_PATTERN =
            "(?:\\d{1,3}(?:[., ']\\d{3}){1,2}(?:[.,]\\d{1,2})?(?!\\d)|\\d{1,6}(?:[.,]\\d{1,2})?(?!\\d))";

    static WrittenNumber of(String written) {
        String text = written.replace(" ", "").replace("'", "");
        boolean marked = text.length() != written.length();
        int last = Math.max(text.lastIndexOf('.'), text.lastIndexOf(','));
        if (last < 0) {
            return new WrittenNumber(OptionalDouble.of(Double.parseDouble(text)), OptionalDouble.empty());
        }
        int digitsAfter = text.length() - last - 1;
        boolean several = text.indexOf('.') != last && text.indexOf('.') >= 0
                || text.indexOf(',') != last && text.indexOf(',') >= 0;
        String digits = text.replace(".", "").replace(",", "");
        double grouped = Double.parseDouble(digits);
        double decimal = grouped / Math.pow(10, digitsAfter);
        if (several || marked) {
            return digitsAfter == 3
                    ? new WrittenNumber(OptionalDouble.empty(), OptionalDouble.of(grouped))
                    : new WrittenNumber(OptionalDouble.of(decimal), OptionalDouble.empty());
        }
        return digitsAfter == 3 && last <= 3
                ? new WrittenNumber(OptionalDouble.of(decimal), OptionalDouble.of(grouped))
                : new WrittenNumber(OptionalDouble.of(decimal), OptionalDouble.empty());
    }

    /** The reading that, times {@code unit}, lies within the bounds; the decimal one where both do. */
    OptionalDouble within(double unit, double low, double high) {
        for (OptionalDouble reading : new OptionalDouble[] {decimal, grouped}) {
            if (reading.isPresent() && reading.getAsDouble() * unit >= low && reading.getAsDouble() * unit <= high) {
                return OptionalDouble.of(reading.getAsDouble() * unit);
            }
        }
        return OptionalDouble.empty();
    }

    /** As money: three digits after a single separator are thousands. */
    double asMoney() {
        return grouped.orElseGet(decimal::orElseThrow);
    }

    boolean ambiguous() {
        return decimal.isPresent() && grouped.isPresent();
    }
}
