package org.keelweigh.decision.information;

import org.apache.commons.math3.special.Erf;

/**
 * Closed forms for a normally distributed fact that moves the value of one alternative.
 *
 * <p>Source: H. Raiffa &amp; R. Schlaifer 1961, <i>Applied Statistical Decision Theory</i>, unit normal loss.
 */
public final class NormalInformation {

    private NormalInformation() {}

    /**
     * Computes the unit normal loss {@code L(z) = φ(z) − z(1 − Φ(z))}, the mean of {@code max(0, Z − z)}.
     *
     * @param z any finite number
     */
    public static double unitLoss(double z) {
        if (!Double.isFinite(z)) {
            throw new IllegalArgumentException("z must be finite but is " + z);
        }
        double density = Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);
        return Math.max(0, density - z * 0.5 * Erf.erfc(z / Math.sqrt(2)));
    }

    /**
     * Computes what learning the fact is worth: {@code s·L(|Δ|/s)}.
     *
     * @param lead difference Δ between the expected value of the alternative and the best other, either sign
     * @param sd standard deviation s of the alternative's value due to this fact alone, at least 0
     */
    public static double gain(double lead, double sd) {
        requireSpread("sd", sd);
        if (!Double.isFinite(lead)) {
            throw new IllegalArgumentException("lead must be finite but is " + lead);
        }
        return sd == 0 ? 0 : sd * unitLoss(Math.abs(lead) / sd);
    }

    /**
     * Computes the spread that measurements are expected to take away, {@code s²/√(s² + e²/n)}: put it in the place of the
     * fact's own spread in {@link #gain} to get the value of measuring instead of knowing.
     *
     * @param sd prior standard deviation s, at least 0
     * @param errorSd standard deviation e of one measurement's error, at least 0
     * @param measurements number n of independent measurements, at least 1
     */
    public static double resolvedSd(double sd, double errorSd, int measurements) {
        requireSpread("sd", sd);
        requireSpread("error sd", errorSd);
        if (measurements < 1) {
            throw new IllegalArgumentException("measurements must be at least 1 but is " + measurements);
        }
        return sd == 0 ? 0 : sd * (sd / Math.hypot(sd, errorSd / Math.sqrt(measurements)));
    }

    private static void requireSpread(String name, double sd) {
        if (!(sd >= 0 && sd < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(name + " must be non-negative and finite but is " + sd);
        }
    }
}
