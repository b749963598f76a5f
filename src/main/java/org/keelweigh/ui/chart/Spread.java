package org.keelweigh.ui.chart;

/**
 * Where an uncertain figure could end up.
 *
 * @param low one future in ten stays below
 * @param middle half of the futures stay below
 * @param high one future in ten goes above
 */
public record Spread(Figure low, Figure middle, Figure high) {

    public Spread {
        Require.check(
                low,
                low.value() <= middle.value() && middle.value() <= high.value(),
                "a spread must rise, was " + low.label() + ", " + middle.label() + ", " + high.label());
    }

    /** Says the range as a possibility, not as two fixed figures. */
    String words() {
        return "could be " + low.label() + " to " + high.label();
    }
}
