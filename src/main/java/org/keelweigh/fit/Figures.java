package org.keelweigh.fit;

import java.util.Locale;
import org.keelweigh.quantity.Length;
import org.keelweigh.quantity.Mass;

/** Writes numbers with their units. */
final class Figures {

    private Figures() {}

    static String in(String unit, double value) {
        return switch (unit) {
            case "mm" -> String.format(Locale.ROOT, "%.0f mm (%.1f in)", value, value / 1000 / Length.M_PER_INCH);
            case "m" -> String.format(Locale.ROOT, "%.2f m (%.1f ft)", value, value / Length.M_PER_FOOT);
            case "kg" -> String.format(Locale.ROOT, "%.1f kg (%.0f lb)", value, new Mass(value).pounds());
            case "share" -> String.format(Locale.ROOT, "%.0f %%", 100 * value);
            case "ratio" -> String.format(Locale.ROOT, "%.2f times", value);
            default -> String.format(Locale.ROOT, "%.0f %s", value, unit);
        };
    }

    static String dealBreaker(FitRow row, FitRow.DealBreak bound, double measure) {
        String label = row.label().substring(0, 1).toUpperCase(Locale.ROOT)
                + row.label().substring(1);
        return label + ": " + in(row.unit(), measure) + ", " + (bound.above() ? "above" : "below") + " the bound of "
                + in(row.unit(), bound.bound()) + ".";
    }
}
