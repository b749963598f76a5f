package org.keelweigh.boat;

/**
 * A number about a boat together with how it is known, so that an assumption never looks like a measurement.
 *
 * @param value the number, in the unit its owner's name carries
 * @param basis how it is known
 * @param reason for an assumption, where it comes from, as a phrase that can be shown; for a typed number, empty
 */
public record Figure(double value, Basis basis, String reason) {

    /** How a figure is known. */
    public enum Basis {
        /** A person typed or imported it. */
        TYPED,
        /** Nobody said; a usual value for this kind and material stands in. */
        ASSUMED
    }

    public Figure {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("A figure must be a finite number, not " + value);
        }
    }

    /** Makes a figure that a person gave. */
    public static Figure typed(double value) {
        return new Figure(value, Basis.TYPED, "");
    }

    /** Makes a figure that stands in for one nobody gave. */
    public static Figure assumed(double value, String reason) {
        return new Figure(value, Basis.ASSUMED, reason);
    }

    /** Tells whether nobody gave it. */
    public boolean isAssumed() {
        return basis == Basis.ASSUMED;
    }
}
