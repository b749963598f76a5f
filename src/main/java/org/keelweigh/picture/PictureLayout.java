package org.keelweigh.picture;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Set;

/** What can be told from the parts of a picture file before any pixel is decoded. */
final class PictureLayout {

    /** Cameras write at most about a dozen; hundreds are made to keep a decoder busy. */
    private static final int MOST_SCANS = 64;

    private static final int START_OF_SCAN = 0xDA;
    private static final int END_OF_IMAGE = 0xD9;
    private static final int PNG_SIGNATURE = 8;
    private static final int PNG_FRAME = 12;
    private static final int WEBP_FLAGS_AT = 20;
    private static final int WEBP_ANIMATED = 0x02;
    private static final Set<String> PNG_NEEDED = Set.of("IHDR", "PLTE", "tRNS", "IDAT", "IEND");

    private PictureLayout() {}

    /** Says why a file should not be decoded; empty if nothing speaks against it. */
    static Optional<String> objection(byte[] bytes, PictureFormat format) {
        return switch (format) {
            case JPEG -> jpegObjection(bytes);
            case WEBP ->
                animated(bytes)
                        ? Optional.of("This WebP file is an animation. Please send a still picture.")
                        : Optional.empty();
            case PNG -> Optional.empty();
        };
    }

    /**
     * Leaves out the parts that a picture can do without: of a PNG, texts and profiles, which are compressed and can grow
     * without bounds when read.
     */
    static byte[] essential(byte[] bytes, PictureFormat format) {
        if (format != PictureFormat.PNG) {
            return bytes;
        }
        ByteBuffer in = ByteBuffer.wrap(bytes);
        ByteArrayOutputStream kept = new ByteArrayOutputStream(bytes.length);
        kept.write(bytes, 0, PNG_SIGNATURE);
        int at = PNG_SIGNATURE;
        while (at + PNG_FRAME <= bytes.length) {
            int length = in.getInt(at);
            if (length < 0 || length > bytes.length - at - PNG_FRAME) {
                kept.write(bytes, at, bytes.length - at);
                break;
            }
            String name = new String(bytes, at + 4, 4, StandardCharsets.US_ASCII);
            if (PNG_NEEDED.contains(name)) {
                kept.write(bytes, at, length + PNG_FRAME);
            }
            at += length + PNG_FRAME;
        }
        return kept.toByteArray();
    }

    private static Optional<String> jpegObjection(byte[] bytes) {
        int scans = 0;
        boolean ended = false;
        for (int i = 1; i < bytes.length; i++) {
            if ((bytes[i - 1] & 0xFF) == 0xFF) {
                int marker = bytes[i] & 0xFF;
                scans += marker == START_OF_SCAN ? 1 : 0;
                ended = marker == END_OF_IMAGE || ended && marker != START_OF_SCAN;
            }
        }
        if (scans > MOST_SCANS) {
            return Optional.of(
                    "This JPEG picture is built in an unusual way and was not opened. Please take it again.");
        }
        return ended
                ? Optional.empty()
                : Optional.of("This JPEG picture is not complete; its end is missing. Please send it again.");
    }

    private static boolean animated(byte[] bytes) {
        return bytes.length > WEBP_FLAGS_AT
                && new String(bytes, 12, 4, StandardCharsets.US_ASCII).equals("VP8X")
                && (bytes[WEBP_FLAGS_AT] & WEBP_ANIMATED) != 0;
    }
}
