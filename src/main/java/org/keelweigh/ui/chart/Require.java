package org.keelweigh.ui.chart;

import java.util.Collection;
import java.util.HashSet;

/** Checks on what is about to be drawn, each with a sentence that names what is wrong. */
final class Require {

    private Require() {}

    static double finite(double value, String name) {
        return check(value, Double.isFinite(value), name + " must be a finite number, was " + value);
    }

    static double within(double value, double low, double high, String name) {
        return check(
                value,
                value >= low && value <= high,
                name + " must lie between " + low + " and " + high + ", was " + value);
    }

    static double positive(double value, String name) {
        return check(value, value > 0 && Double.isFinite(value), name + " must be above 0, was " + value);
    }

    static String text(String text, String name) {
        return check(text, !text.isBlank(), name + " must not be blank");
    }

    static <C extends Collection<?>> C notEmpty(C items, String name) {
        return check(items, !items.isEmpty(), name + " must not be empty");
    }

    static void distinct(Collection<String> ids, String name) {
        check(ids, new HashSet<>(ids).size() == ids.size(), name + " must differ from each other, were " + ids);
    }

    static <T> T check(T value, boolean holds, String otherwise) {
        if (!holds) {
            throw new IllegalArgumentException(otherwise);
        }
        return value;
    }
}
