package org.keelweigh.condition;

import java.util.Arrays;

/**
 * Draws worlds from a belief: which causes hold, and how each check truly comes out.
 *
 * <p>Everything is drawn from uniforms that the caller supplies, one for each cause and each check and world, so that the
 * same uniforms can serve several boats and several beliefs; a larger uniform never gives a better outcome of a check in
 * the same state of causes. Worlds lie in columns, and no call allocates.
 */
public final class WorldSampler {

    private static final int OUTCOMES = OutcomeChances.COUNT;
    private static final int CUTS = OUTCOMES - 1;

    private final BeliefNetwork network;
    private final double[] activeShare;
    private final double[][] cuts;

    WorldSampler(BeliefNetwork network, double[] joint, double[][] tables) {
        this.network = network;
        activeShare = activeShares(joint);
        cuts = Arrays.stream(tables).map(WorldSampler::cuts).toArray(double[][]::new);
    }

    /**
     * Computes, for each node of the tree that settles causes from the last to the first, the chance that the node's cause
     * holds. Node 1 is the root, 2n and 2n+1 are what follows when node n's cause does not hold and does.
     */
    private static double[] activeShares(double[] joint) {
        int states = joint.length;
        double[] sums = new double[2 * states];
        System.arraycopy(joint, 0, sums, states, states);
        double[] shares = new double[states];
        for (int node = states - 1; node > 0; node--) {
            sums[node] = sums[2 * node] + sums[2 * node + 1];
            shares[node] = sums[node] > 0 ? sums[2 * node + 1] / sums[node] : 0;
        }
        return shares;
    }

    /** Computes where outcomes change along the uniform: below the first cut is fine, above the last is stop. */
    private static double[] cuts(double[] table) {
        double[] cuts = new double[table.length / OUTCOMES * CUTS];
        for (int s = 0; s < table.length / OUTCOMES; s++) {
            double worse = 0;
            for (int o = OUTCOMES - 1; o > 0; o--) {
                worse += table[s * OUTCOMES + o];
                cuts[s * CUTS + o - 1] = 1 - worse;
            }
        }
        return cuts;
    }

    /**
     * Draws which causes hold in each world.
     *
     * @param uniforms {@code uniforms[j][w]} in [0, 1) for cause {@code j} in the network's order, world {@code w}
     * @param states filled: bit {@code j} of {@code states[w]} is set when cause {@code j} holds in world {@code w}; its
     *     length is the number of worlds
     * @throws IllegalArgumentException if there are not as many rows of uniforms as causes
     */
    public void drawCauses(double[][] uniforms, int[] states) {
        int causes = network.causes().size();
        if (uniforms.length != causes) {
            throw new IllegalArgumentException(
                    "There are " + uniforms.length + " rows of uniforms for " + causes + " causes");
        }
        Arrays.fill(states, 1);
        for (int j = causes - 1; j >= 0; j--) {
            double[] uniform = uniforms[j];
            for (int w = 0; w < states.length; w++) {
                int node = states[w];
                states[w] = 2 * node + (uniform[w] >= 1 - activeShare[node] ? 1 : 0);
            }
        }
        int leaves = 1 << causes;
        for (int w = 0; w < states.length; w++) {
            states[w] -= leaves;
        }
    }

    /**
     * Draws how one check truly comes out in each world, given the causes that hold there and what was reported about it.
     *
     * @param check the check's place in the network's order
     * @param states the causes of each world, as filled by {@link #drawCauses}
     * @param uniforms one in [0, 1) for each world
     * @param outcomes filled with the ordinal of the outcome: 0 fine, 1 minor, 2 major, 3 stop
     */
    public void drawOutcomes(int check, int[] states, double[] uniforms, byte[] outcomes) {
        CauseSet causes = network.nodes().get(check).causes();
        double[] cut = cuts[check];
        for (int w = 0; w < states.length; w++) {
            int at = causes.indexOf(states[w]) * CUTS;
            double u = uniforms[w];
            int outcome = (u >= cut[at] ? 1 : 0) + (u >= cut[at + 1] ? 1 : 0) + (u >= cut[at + 2] ? 1 : 0);
            outcomes[w] = (byte) outcome;
        }
    }
}
