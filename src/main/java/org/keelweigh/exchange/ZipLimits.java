package org.keelweigh.exchange;

/**
 * How much an archive may hold before it is taken for one made to do harm.
 *
 * @param entries how many files
 * @param entryBytes bytes of one file, unpacked
 * @param totalBytes bytes of all files together, unpacked
 * @param ratio how many times a file may be larger than it is packed, once it is not small
 */
record ZipLimits(int entries, long entryBytes, long totalBytes, double ratio) {

    static final ZipLimits USUAL = new ZipLimits(2_000, 16L << 20, 100L << 20, 200);

    /** Below this size a high ratio is no sign of anything. */
    static final long SMALL_BYTES = 1L << 20;
}
