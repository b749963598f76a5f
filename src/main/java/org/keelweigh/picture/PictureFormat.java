package org.keelweigh.picture;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/** The formats that are taken, each recognised by its first bytes and never by a file's name. */
enum PictureFormat {
    JPEG("JPEG", 80, new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF}),
    PNG("PNG", 80, new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'}),
    /** Its decoder holds the whole picture in memory, so that the limit is lower. */
    WEBP("WebP", 30, "RIFF".getBytes(StandardCharsets.US_ASCII));

    private static final byte[] WEBP_MARK = "WEBP".getBytes(StandardCharsets.US_ASCII);
    private static final int WEBP_MARK_AT = 8;

    private final String label;
    private final int mostMegapixels;
    private final byte[] start;

    PictureFormat(String label, int mostMegapixels, byte[] start) {
        this.label = label;
        this.mostMegapixels = mostMegapixels;
        this.start = start;
    }

    /** Tells the name in plain words. */
    String label() {
        return label;
    }

    /** Tells how large a picture may be before it is decoded, in millions of pixels. */
    int mostMegapixels() {
        return mostMegapixels;
    }

    /** Recognises a format; empty if it is none that is taken. */
    static Optional<PictureFormat> of(byte[] bytes) {
        return Arrays.stream(values())
                .filter(each -> holds(bytes, 0, each.start))
                .filter(each -> each != WEBP || holds(bytes, WEBP_MARK_AT, WEBP_MARK))
                .findFirst();
    }

    private static boolean holds(byte[] bytes, int at, byte[] mark) {
        return bytes.length >= at + mark.length && Arrays.equals(bytes, at, at + mark.length, mark, 0, mark.length);
    }
}
