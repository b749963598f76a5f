package org.keelweigh.condition;

/**
 * A few of a network's causes, with the arithmetic that goes between a table over all causes and one over these few.
 *
 * <p>A table over {@code k} causes has {@code 2^k} entries; bit {@code j} of the index says whether cause {@code j} is
 * active. Indices are translated by two small tables, one for the low bits and one for the rest, so that the inner loop is
 * a plain gather that the compiler can unroll.
 */
final class CauseSet {

    private static final int LOW_BITS = 8;

    private final int[] members;
    private final int[] low;
    private final int[] high;

    /**
     * Makes a set.
     *
     * @param members indices of its causes, ascending
     * @param causes how many causes there are in all
     */
    CauseSet(int[] members, int causes) {
        this.members = members.clone();
        int lowBits = Math.min(causes, LOW_BITS);
        low = new int[1 << lowBits];
        high = new int[1 << (causes - lowBits)];
        for (int i = 0; i < low.length; i++) {
            low[i] = indexOf(i);
        }
        for (int i = 0; i < high.length; i++) {
            high[i] = indexOf(i << lowBits);
        }
    }

    /** Translates a state of all causes into the index of the table over these. */
    int indexOf(int state) {
        int index = 0;
        for (int bit = 0; bit < members.length; bit++) {
            index |= (state >>> members[bit] & 1) << bit;
        }
        return index;
    }

    int[] members() {
        return members.clone();
    }

    boolean isEmpty() {
        return members.length == 0;
    }

    /** Tells how many entries a table over these causes has. */
    int size() {
        return 1 << members.length;
    }

    /** Multiplies every entry of a table over all causes by the matching one of {@code table}. */
    void multiply(double[] joint, double[] table) {
        for (int h = 0, at = 0; h < high.length; h++) {
            int base = high[h];
            for (int l = 0; l < low.length; l++, at++) {
                joint[at] *= table[base | low[l]];
            }
        }
    }

    /**
     * Sums a table over all causes into one over these.
     *
     * <p>Causes are taken from the last to the first. One that is not a member is summed out by adding the two halves of
     * each block, which are contiguous; one that is a member splits each block in two without moving anything.
     */
    double[] marginal(double[] joint) {
        double[] from = joint;
        int member = members.length - 1;
        int blocks = 1;
        for (int half = joint.length / 2; half > 0; half /= 2) {
            int cause = Integer.numberOfTrailingZeros(half);
            if (member >= 0 && members[member] == cause) {
                member--;
                blocks *= 2;
            } else {
                from = withHalvesAdded(from, blocks, half);
            }
        }
        return from == joint ? joint.clone() : from;
    }

    private static double[] withHalvesAdded(double[] from, int blocks, int half) {
        double[] to = new double[blocks * half];
        for (int block = 0; block < blocks; block++) {
            int at = block * half;
            for (int i = 0; i < half; i++) {
                to[at + i] = from[2 * at + i] + from[2 * at + half + i];
            }
        }
        return to;
    }
}
