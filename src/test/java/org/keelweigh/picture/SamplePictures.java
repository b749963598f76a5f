package org.keelweigh.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;

/** Pictures made by the tests: red on the left, blue on the right. */
public final class SamplePictures {

    /** A word in the metadata that must not survive. */
    public static final String PLACE = "GPSPLACE-54.1N";

    private SamplePictures() {}

    static BufferedImage image(int width, int height) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.RED);
        graphics.fillRect(0, 0, width / 2, height);
        graphics.setColor(Color.BLUE);
        graphics.fillRect(width / 2, 0, width - width / 2, height);
        graphics.dispose();
        return image;
    }

    /** Makes a picture in a format by its name. */
    public static byte[] of(String format, int width, int height) {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ImageIO.write(image(width, height), format, out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Makes a JPEG with Exif data: an orientation, a directory of places and a word in plain letters. */
    public static byte[] jpegWithExif(int width, int height, int orientation) {
        byte[] plain = of("jpeg", width, height);
        byte[] place = PLACE.getBytes(StandardCharsets.US_ASCII);
        ByteBuffer tiff = ByteBuffer.allocate(38 + 18 + place.length);
        tiff.put("MM".getBytes(StandardCharsets.US_ASCII)).putShort((short) 42).putInt(8);
        tiff.putShort((short) 2);
        tiff.putShort((short) 0x0112)
                .putShort((short) 3)
                .putInt(1)
                .putShort((short) orientation)
                .putShort((short) 0);
        tiff.putShort((short) 0x8825).putShort((short) 4).putInt(1).putInt(38);
        tiff.putInt(0);
        tiff.putShort((short) 1);
        tiff.putShort((short) 0x001B).putShort((short) 7).putInt(place.length).putInt(56);
        tiff.putInt(0);
        tiff.put(place);
        ByteBuffer out = ByteBuffer.allocate(plain.length + 10 + tiff.capacity());
        out.put(plain, 0, 2);
        out.putShort((short) 0xFFE1).putShort((short) (8 + tiff.capacity()));
        out.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII)).put(tiff.array());
        out.put(plain, 2, plain.length - 2);
        return out.array();
    }

    /** Makes a PNG of 57 bytes whose header promises a picture of any size. */
    static byte[] pngPromising(int width, int height) {
        ByteBuffer out = ByteBuffer.allocate(57);
        out.put(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'});
        ByteBuffer header = ByteBuffer.allocate(13);
        header.putInt(width).putInt(height).put(new byte[] {8, 2, 0, 0, 0});
        chunk(out, "IHDR", header.array());
        chunk(out, "IDAT", new byte[0]);
        chunk(out, "IEND", new byte[0]);
        return out.array();
    }

    private static void chunk(ByteBuffer out, String name, byte[] body) {
        byte[] letters = name.getBytes(StandardCharsets.US_ASCII);
        CRC32 sum = new CRC32();
        sum.update(letters);
        sum.update(body);
        out.putInt(body.length).put(letters).put(body).putInt((int) sum.getValue());
    }
}
