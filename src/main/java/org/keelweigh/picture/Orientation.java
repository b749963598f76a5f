package org.keelweigh.picture;

import java.awt.geom.AffineTransform;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * How a camera was held, as its picture's Exif data say: one of eight ways to turn and mirror the stored rows.
 *
 * <p>Source: JEITA CP-3451 (Exif 2.3), tag 0x0112.
 */
enum Orientation {
    UPRIGHT,
    MIRRORED,
    UPSIDE_DOWN,
    MIRRORED_UPSIDE_DOWN,
    MIRRORED_LEFT,
    RIGHT,
    MIRRORED_RIGHT,
    LEFT;

    private static final int TAG = 0x0112;
    private static final int ENTRY_BYTES = 12;
    private static final int VALUE_AT = 8;
    private static final int MARKER_BYTES = 4;
    private static final int JPEG_START = 2;
    private static final int APP1 = 0xE1;
    private static final int START_OF_SCAN = 0xDA;
    private static final int RIFF_HEADER = 12;
    private static final int CHUNK_HEADER = 8;
    private static final byte[] EXIF = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);
    private static final byte[] WEBP_EXIF = "EXIF".getBytes(StandardCharsets.US_ASCII);

    /** Reads the orientation; upright where none is given or the data make no sense. */
    static Orientation of(byte[] bytes, PictureFormat format) {
        try {
            return switch (format) {
                case JPEG -> ofJpeg(bytes);
                case WEBP -> ofWebp(bytes);
                case PNG -> UPRIGHT;
            };
        } catch (IndexOutOfBoundsException | IllegalArgumentException e) {
            return UPRIGHT;
        }
    }

    /** Tells whether width and height change places. */
    boolean turned() {
        return ordinal() >= MIRRORED_LEFT.ordinal();
    }

    /** Tells how to draw the stored rows of a picture {@code w} wide and {@code h} high so that they are upright. */
    AffineTransform upright(int w, int h) {
        return switch (this) {
            case UPRIGHT -> new AffineTransform();
            case MIRRORED -> new AffineTransform(-1, 0, 0, 1, w, 0);
            case UPSIDE_DOWN -> new AffineTransform(-1, 0, 0, -1, w, h);
            case MIRRORED_UPSIDE_DOWN -> new AffineTransform(1, 0, 0, -1, 0, h);
            case MIRRORED_LEFT -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case RIGHT -> new AffineTransform(0, 1, -1, 0, h, 0);
            case MIRRORED_RIGHT -> new AffineTransform(0, -1, -1, 0, h, w);
            case LEFT -> new AffineTransform(0, -1, 1, 0, 0, w);
        };
    }

    private static Orientation ofJpeg(byte[] bytes) {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        int at = JPEG_START;
        while (at + MARKER_BYTES < bytes.length && (bytes[at] & 0xFF) == 0xFF) {
            int marker = bytes[at + 1] & 0xFF;
            int length = in.getShort(at + 2) & 0xFFFF;
            int body = at + MARKER_BYTES;
            if (marker == START_OF_SCAN) {
                return UPRIGHT;
            }
            if (marker == APP1 && Arrays.equals(bytes, body, body + EXIF.length, EXIF, 0, EXIF.length)) {
                return ofTiff(in.slice(body + EXIF.length, length - 2 - EXIF.length));
            }
            at += 2 + length;
        }
        return UPRIGHT;
    }

    private static Orientation ofWebp(byte[] bytes) {
        ByteBuffer in = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
        int at = RIFF_HEADER;
        while (at >= RIFF_HEADER && at + CHUNK_HEADER < bytes.length) {
            int length = in.getInt(at + WEBP_EXIF.length);
            if (Arrays.equals(bytes, at, at + WEBP_EXIF.length, WEBP_EXIF, 0, WEBP_EXIF.length)) {
                return ofTiff(in.slice(at + CHUNK_HEADER, length));
            }
            at += CHUNK_HEADER + length + (length & 1);
        }
        return UPRIGHT;
    }

    private static Orientation ofTiff(ByteBuffer tiff) {
        tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int directory = tiff.getInt(4);
        int entries = tiff.getShort(directory) & 0xFFFF;
        for (int i = 0; i < entries; i++) {
            int entry = directory + 2 + i * ENTRY_BYTES;
            if ((tiff.getShort(entry) & 0xFFFF) == TAG) {
                int value = tiff.getShort(entry + VALUE_AT) & 0xFFFF;
                return value >= 1 && value <= values().length ? values()[value - 1] : UPRIGHT;
            }
        }
        return UPRIGHT;
    }
}
