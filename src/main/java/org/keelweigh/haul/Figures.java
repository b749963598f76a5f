package org.keelweigh.haul;

import java.util.Locale;
import org.keelweigh.quantity.Force;
import org.keelweigh.quantity.Length;
import org.keelweigh.quantity.Mass;

/** Writes numbers with both systems' units, so that a sentence suits either reader. */
final class Figures {

    private Figures() {}

    static String newtons(double value) {
        return String.format(Locale.ROOT, "%.0f N (%.0f lbf)", value, new Force(value).poundsForce());
    }

    static String kilograms(double value) {
        String metric = value < 10 ? "%.1f kg (%.0f lb)" : "%.0f kg (%.0f lb)";
        return String.format(Locale.ROOT, metric, value, new Mass(value).pounds());
    }

    static String metres(double value) {
        return value < 10
                ? String.format(Locale.ROOT, "%.2f m (%.1f ft)", value, value / Length.M_PER_FOOT)
                : String.format(Locale.ROOT, "%.0f m (%.0f ft)", value, value / Length.M_PER_FOOT);
    }

    static String millimetres(double metres) {
        return String.format(Locale.ROOT, "%.0f mm (%.1f in)", metres * 1000, metres / Length.M_PER_INCH);
    }

    static String grade(double slopeRad) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * Math.tan(slopeRad));
    }

    static String times(double ratio) {
        return String.format(Locale.ROOT, "%.2f", ratio);
    }

    static String plain(double value) {
        return String.format(Locale.ROOT, "%.0f", value);
    }
}
