package org.keelweigh.decision.acceptability;

/** Errors of sampled shares, and the number of samples for a wanted error. */
public final class SamplingError {

    /** Standard normal quantile of 97.5 %: two-sided 95 %. */
    public static final double Z95 = 1.959963984540054;

    private SamplingError() {}

    /**
     * Computes the standard error of a share, {@code √(p(1−p)/n)}.
     *
     * @param share 0 to 1
     * @param samples at least 1, independent
     */
    public static double ofShare(double share, long samples) {
        requireShare(share);
        if (samples < 1) {
            throw new IllegalArgumentException("samples must be at least 1 but is " + samples);
        }
        return Math.sqrt(share * (1 - share) / samples);
    }

    /**
     * Computes how many independent samples put a share within {@code halfWidth} with 95 % confidence:
     * {@code p(1−p)(1.96/h)²}; 9 604 for one point at a share of one half (T. Tervonen &amp; R. Lahdelma 2007).
     *
     * @param share expected share, 0 to 1; one half is the worst case
     * @param halfWidth above 0, below 1
     */
    public static long samplesFor(double share, double halfWidth) {
        requireShare(share);
        if (!(halfWidth > 0 && halfWidth < 1)) {
            throw new IllegalArgumentException("half width must be above 0 and below 1 but is " + halfWidth);
        }
        double z = Z95 / halfWidth;
        return Math.max(1, (long) Math.ceil(share * (1 - share) * z * z));
    }

    private static void requireShare(double share) {
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("share must be 0 to 1 but is " + share);
        }
    }
}
