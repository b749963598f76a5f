package org.keelweigh.decision.acceptability;

/**
 * Ranks one block of totals after another and counts. Only integers are added up (weights as multiples of 2^-30), so
 * sums do not depend on the order of blocks or the number of threads.
 */
final class Tally {

    /** A weight of one in the fixed-point sums of favourable weights. */
    static final int WEIGHT_ONE = 1 << 30;

    /** Keys use 2^30 steps for the range of totals: room for rounding beyond its ends. */
    private static final float KEY_RANGE = 0x1p30f;

    private final int alternatives;
    private final int criteria;
    private final int indexBits;
    private final int indexMask;
    private final SortingNetwork network;
    private final int[][] key;
    private final int[] blockCount;
    private final int[] oddCount;
    private final int[] winner = new int[Lanes.COUNT];
    private final boolean countPairs;

    final long[] rank;
    final long[] favouring;
    final long[] beats;

    Tally(int alternatives, int criteria, boolean countPairs) {
        this.alternatives = alternatives;
        this.criteria = criteria;
        this.countPairs = countPairs;
        indexBits = Integer.SIZE - Integer.numberOfLeadingZeros(alternatives - 1);
        indexMask = (1 << indexBits) - 1;
        network = new SortingNetwork(alternatives);
        key = new int[alternatives][Lanes.COUNT];
        blockCount = new int[alternatives << indexBits];
        oddCount = new int[blockCount.length];
        rank = new long[alternatives * alternatives];
        favouring = new long[alternatives * criteria];
        beats = new long[alternatives * alternatives];
    }

    /**
     * Counts one block.
     *
     * @param total one row of totals per alternative, within {@code low .. high}
     * @param weight one row per criterion, in multiples of 1 / {@link #WEIGHT_ONE}
     * @param lanes samples in this block
     */
    void add(float[][] total, float low, float high, int[][] weight, int lanes) {
        float scale = KEY_RANGE / range(low, high);
        for (int a = 0; a < alternatives; a++) {
            Lanes.keys(total[a], scale, high * scale, indexMask, a, key[a]);
        }
        if (countPairs) {
            addPairs(lanes);
        }
        network.sort(key, 0);
        for (int position = 0; position < alternatives; position++) {
            if (position > 0 && hasTies(key[position - 1], key[position], lanes)) {
                countTied(position, lanes);
            } else {
                countPlain(key[position], position, lanes);
            }
        }
        flush();
        addFavouring(weight, lanes);
    }

    /** A range that is not lost in the rounding of the totals themselves, also when all values are alike. */
    private static float range(float low, float high) {
        float size = Math.max(Math.abs(low), Math.abs(high));
        return size == 0 ? 1 : Math.max(high - low, size * 1e-3f);
    }

    void addAll(Tally other) {
        addEach(rank, other.rank);
        addEach(favouring, other.favouring);
        addEach(beats, other.beats);
    }

    private static void addEach(long[] sum, long[] part) {
        for (int i = 0; i < sum.length; i++) {
            sum[i] += part[i];
        }
    }

    private void addPairs(int lanes) {
        for (int a = 0; a < alternatives; a++) {
            for (int b = 0; b < alternatives; b++) {
                if (a != b) {
                    beats[a * alternatives + b] += Lanes.countBefore(key[a], key[b], indexBits, lanes);
                }
            }
        }
    }

    private boolean hasTies(int[] before, int[] after, int lanes) {
        return Lanes.countBefore(before, after, indexBits, lanes) < lanes;
    }

    private void countPlain(int[] row, int position, int lanes) {
        int base = position << indexBits;
        int i = 0;
        // Neighbouring lanes often count the same alternative: two tables spare the wait for the last store
        for (; i + 1 < lanes; i += 2) {
            blockCount[base + (row[i] & indexMask)]++;
            oddCount[base + (row[i + 1] & indexMask)]++;
        }
        if (i < lanes) {
            blockCount[base + (row[i] & indexMask)]++;
        }
    }

    private void countTied(int position, int lanes) {
        for (int i = 0; i < lanes; i++) {
            blockCount[(firstEqual(position, i) << indexBits) + (key[position][i] & indexMask)]++;
        }
    }

    private int firstEqual(int position, int lane) {
        int value = key[position][lane] >> indexBits;
        int first = position;
        while (first > 0 && key[first - 1][lane] >> indexBits == value) {
            first--;
        }
        return first;
    }

    private void flush() {
        for (int position = 0; position < alternatives; position++) {
            for (int a = 0; a < alternatives; a++) {
                int slot = (position << indexBits) + a;
                rank[a * alternatives + position] += blockCount[slot] + oddCount[slot];
                oddCount[slot] = 0;
                blockCount[slot] = 0;
            }
        }
    }

    private void addFavouring(int[][] weight, int lanes) {
        for (int i = 0; i < Lanes.COUNT; i++) {
            winner[i] = (key[0][i] & indexMask) * criteria;
        }
        int c = 0;
        for (; c + 3 < criteria; c += 4) {
            addFour(c, weight[c], weight[c + 1], weight[c + 2], weight[c + 3], lanes);
        }
        for (; c < criteria; c++) {
            int[] row = weight[c];
            for (int i = 0; i < lanes; i++) {
                favouring[winner[i] + c] += row[i];
            }
        }
        for (int position = 1;
                position < alternatives && hasTies(key[position - 1], key[position], lanes);
                position++) {
            addTiedFavouring(position, weight, lanes);
        }
    }

    private void addFour(int c, int[] first, int[] second, int[] third, int[] fourth, int lanes) {
        for (int i = 0; i < lanes; i++) {
            int slot = winner[i] + c;
            favouring[slot] += first[i];
            favouring[slot + 1] += second[i];
            favouring[slot + 2] += third[i];
            favouring[slot + 3] += fourth[i];
        }
    }

    private void addTiedFavouring(int position, int[][] weight, int lanes) {
        for (int i = 0; i < lanes; i++) {
            if (firstEqual(position, i) == 0) {
                for (int c = 0; c < criteria; c++) {
                    favouring[(key[position][i] & indexMask) * criteria + c] += weight[c][i];
                }
            }
        }
    }
}
