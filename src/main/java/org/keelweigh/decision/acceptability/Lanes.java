package org.keelweigh.decision.acceptability;

/**
 * The row loops of the sampling kernels. A row holds one number for each of {@link #COUNT} samples.
 *
 * <p>Each loop runs a bare index over whole arrays: with offsets the compiler cannot prove that rows do not overlap and
 * leaves the loop scalar. Rows of 512 spread the cost of entering a loop and all rows of a block still fit the
 * second-level cache.
 */
final class Lanes {

    static final int COUNT = 512;

    private Lanes() {}

    static int blocks(int samples) {
        return (samples + COUNT - 1) / COUNT;
    }

    /** Number of lanes of the given block that hold samples. */
    static int used(int block, int samples) {
        return Math.min(COUNT, samples - block * COUNT);
    }

    /** Orders two rows lane by lane: the smaller numbers end in {@code low}. */
    static void exchange(int[] low, int[] high) {
        for (int i = 0; i < COUNT; i++) {
            int x = low[i];
            int y = high[i];
            low[i] = Math.min(x, y);
            high[i] = Math.max(x, y);
        }
    }

    static void difference(int[] upper, int[] lower, int[] out) {
        for (int i = 0; i < COUNT; i++) {
            out[i] = upper[i] - lower[i];
        }
    }

    static void halved(int[] row) {
        for (int i = 0; i < COUNT; i++) {
            row[i] >>= 1;
        }
    }

    static void scaled(int[] row, float factor, float[] out) {
        for (int i = 0; i < COUNT; i++) {
            out[i] = row[i] * factor;
        }
    }

    static void scaled(float[] row, float factor, int[] out) {
        for (int i = 0; i < COUNT; i++) {
            out[i] = (int) (row[i] * factor);
        }
    }

    /** Adds {@code weight · value} for a value that is the same in all samples. */
    static void addCertain(float[] weight, float value, float[] total) {
        for (int i = 0; i < COUNT; i++) {
            total[i] = Math.fma(weight[i], value, total[i]);
        }
    }

    static void addSampled(float[] weight, float[] value, float[] total) {
        for (int i = 0; i < COUNT; i++) {
            total[i] = Math.fma(weight[i], value[i], total[i]);
        }
    }

    /**
     * Adds {@code weight · (|x| − |x − 1|)} with {@code x = base + sd·z}. That is twice the clamped value
     * {@code min(1, max(0, x))} less one: absolute values cost one instruction, float minimum and maximum several.
     */
    static void addClamped(float[] weight, float[] z, float sd, float base, float[] total) {
        for (int i = 0; i < COUNT; i++) {
            float x = Math.fma(sd, z[i], base);
            total[i] = Math.fma(weight[i], Math.abs(x) - Math.abs(x - 1f), total[i]);
        }
    }

    /** Makes sort keys, smallest first for the largest total, with the alternative's index in the low bits. */
    static void keys(float[] total, float scale, float top, int indexMask, int index, int[] out) {
        for (int i = 0; i < COUNT; i++) {
            out[i] = ((int) Math.fma(total[i], -scale, top) & ~indexMask) | index;
        }
    }

    /** Counts lanes in which the key of {@code better} stands strictly before that of {@code worse}. */
    static int countBefore(int[] better, int[] worse, int indexBits, int lanes) {
        int count = 0;
        for (int i = 0; i < lanes; i++) {
            count += ((better[i] >> indexBits) - (worse[i] >> indexBits)) >>> 31;
        }
        return count;
    }
}
