package org.keelweigh.decision.acceptability;

/**
 * How sure a person is of the weights they stated, as a spread in weight points: the standard deviation of a weight
 * stated as 20 %.
 *
 * <p>A Dirichlet weight with mean {@code w} and concentration {@code k} has standard deviation {@code √(w(1−w)/(k+1))},
 * so {@code k = w(1−w)/spread² − 1} at {@code w = 0.2}. The spreads are our choice.
 */
public enum Sureness {
    /** A first guess: a weight of 20 % could as well be 10 or 30 %. */
    GUESS(0.10),
    /** Fairly sure: 20 % means 15 to 25 %. */
    FAIRLY_SURE(0.05),
    /** Very sure: 20 % means 18 to 22 %. */
    VERY_SURE(0.02);

    private static final double REFERENCE = 0.2;

    private final double spread;

    Sureness(double spread) {
        this.spread = spread;
    }

    /** Standard deviation of a weight of 0.2. */
    public double spread() {
        return spread;
    }

    /** Sum of the Dirichlet parameters. */
    public double concentration() {
        return REFERENCE * (1 - REFERENCE) / (spread * spread) - 1;
    }
}
