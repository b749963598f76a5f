package org.keelweigh.decision.acceptability;

/**
 * Draws rows of uniform and standard normal numbers, one number per lane, from a seed, a block and a row number alone.
 *
 * <p>Every number is a hash of its place, so blocks can be worked in any order and by any thread. A lane has a 32-bit
 * state {@code s} from a 64-bit mixer (Steele, Lea &amp; Flood 2014, SplitMix64); row {@code k} adds a fixed key and
 * applies two multiply-xorshift rounds. The normal number is
 *
 * <pre>
 *   t = (hi(x) − hi(y) + lo(x) − lo(y)) / 2^17     y = x · 0xc2b2ae35,  hi and lo 16-bit halves
 *   z = t · P(t²)                                  P of degree 6
 * </pre>
 *
 * {@code t} is a sum of four nearly independent uniforms; {@code P} bends it to the normal quantile. No table, branch,
 * logarithm or square root, because the compiler turns only such loops into vector instructions.
 *
 * <p>Accuracy, by going through all 2^32 inputs: mean 0, variance 1 within 1e-5, kurtosis 2.9993, sixth moment 14.98
 * (normal: 15), distance to the normal distribution function at most 2.8e-4, increasing, range ±5.79; the share beyond
 * 3, 4 and 5 is 1.02, 0.95 and 1.4 times the normal one. The sampling error of a share from 100 000 samples is
 * 1.6e-3.
 */
final class CounterNoise {

    private static final long GOLDEN = 0x9e3779b97f4a7c15L;
    private static final int FIRST = 0x21f0aaad;
    private static final int SECOND = 0x735a2d97;
    private static final int THIRD = 0xc2b2ae35;

    private static final float P0 = 3.3518004f;
    private static final float P1 = -0.44543415f;
    private static final float P2 = 11.1275175f;
    private static final float P3 = -53.57489f;
    private static final float P4 = 123.38929f;
    private static final float P5 = -131.57198f;
    private static final float P6 = 53.690998f;

    private final int[] state = new int[Lanes.COUNT];
    private final int[] sum = new int[Lanes.COUNT];
    private final int[] rowKey;

    CounterNoise(int rows) {
        rowKey = new int[rows];
        for (int k = 0; k < rows; k++) {
            rowKey[k] = (int) (mix(GOLDEN * (k + 1)) >>> 32);
        }
    }

    /** Turns to the given block of the stream that belongs to the seed. */
    void start(long seed, int block) {
        long stream = mix(mix(seed + GOLDEN) + GOLDEN * (block + 1L));
        for (int i = 0; i < Lanes.COUNT; i++) {
            state[i] = (int) (mix(stream + GOLDEN * (i + 1)) >>> 32);
        }
    }

    /** Fills {@code out} with uniform integers in 0 .. 2^31−1. */
    void uniform(int row, int[] out) {
        hashed(state, rowKey[row], out);
    }

    /** Fills {@code out} with standard normal numbers. */
    void normal(int row, float[] out) {
        summed(state, rowKey[row], sum);
        bent(sum, out);
    }

    private static void hashed(int[] state, int key, int[] out) {
        for (int i = 0; i < Lanes.COUNT; i++) {
            int x = state[i] + key;
            x = (x ^ (x >>> 16)) * FIRST;
            x = (x ^ (x >>> 15)) * SECOND;
            out[i] = (x ^ (x >>> 15)) >>> 1;
        }
    }

    private static void summed(int[] state, int key, int[] out) {
        for (int i = 0; i < Lanes.COUNT; i++) {
            int x = state[i] + key;
            x = (x ^ (x >>> 16)) * FIRST;
            x = (x ^ (x >>> 15)) * SECOND;
            int y = x * THIRD;
            out[i] = (x >> 16) - (y >> 16) + (x & 0xffff) - (y & 0xffff);
        }
    }

    /** Kept apart from {@link #summed}: together they need more vector registers than there are. */
    private static void bent(int[] sum, float[] out) {
        for (int i = 0; i < Lanes.COUNT; i++) {
            float t = sum[i] * 0x1p-17f;
            float q = t * t;
            float low = Math.fma(P6, q, P5);
            low = Math.fma(low, q, P4);
            low = Math.fma(low, q, P3);
            low = Math.fma(low, q, P2);
            low = Math.fma(low, q, P1);
            out[i] = t * Math.fma(low, q, P0);
        }
    }

    /** The transform of one hash value, for tests that go through the inputs. */
    static float normalOf(int x) {
        int y = x * THIRD;
        float t = ((x >> 16) - (y >> 16) + (x & 0xffff) - (y & 0xffff)) * 0x1p-17f;
        float q = t * t;
        return t
                * Math.fma(
                        Math.fma(Math.fma(Math.fma(Math.fma(Math.fma(P6, q, P5), q, P4), q, P3), q, P2), q, P1), q, P0);
    }

    static long mix(long z) {
        z = (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
        z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
        return z ^ (z >>> 31);
    }
}
