package org.keelweigh.picture;

import com.twelvemonkeys.imageio.plugins.webp.WebPImageReaderSpi;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

/**
 * Takes pictures in from phones and files: looks at the content and not at the name, measures before decoding, and makes
 * each picture anew from its pixels. What cannot be read is refused in a sentence.
 */
public final class PictureIntake {

    /** The largest file that is taken, bytes. */
    public static final int MOST_BYTES = 15 * 1024 * 1024;

    /** The longer side of a kept picture, pixels. */
    public static final int LONGEST_SIDE = 2000;

    /** The longer side of a thumbnail, pixels. */
    public static final int THUMBNAIL_SIDE = 320;

    private static final String BROKEN =
            "This picture cannot be read; it may be damaged. Please take it again or send another file.";
    private static final double PIXELS_A_MEGAPIXEL = 1e6;

    private PictureIntake() {}

    /** Reads a picture; one at a time, so that several large ones together cannot exhaust the memory. */
    public static synchronized PictureReading read(byte[] bytes) {
        if (bytes.length > MOST_BYTES) {
            return new PictureReading.Refused("This file is larger than 15 MB. Please send a smaller picture.");
        }
        Optional<PictureFormat> format = PictureFormat.of(bytes);
        if (format.isEmpty()) {
            return new PictureReading.Refused("This is not a JPEG, PNG or WebP picture. Please send one of those.");
        }
        Optional<String> objection = PictureLayout.objection(bytes, format.get());
        if (objection.isPresent()) {
            return new PictureReading.Refused(objection.get());
        }
        try {
            return decode(bytes, format.get());
        } catch (IOException | RuntimeException e) {
            // Decoders answer hostile data with whatever exception their arithmetic runs into.
            return new PictureReading.Refused(BROKEN);
        }
    }

    private static PictureReading decode(byte[] bytes, PictureFormat format) throws IOException {
        ImageReader reader = reader(format);
        try (ImageInputStream in =
                new MemoryCacheImageInputStream(new ByteArrayInputStream(PictureLayout.essential(bytes, format)))) {
            reader.setInput(in, true, true);
            int width = reader.getWidth(0);
            int height = reader.getHeight(0);
            if (!bearable(width, height, format)) {
                return new PictureReading.Refused("This " + format.label() + " picture is " + width + " × " + height
                        + " pixels. Up to " + format.mostMegapixels() + " megapixels are taken.");
            }
            BufferedImage raw = reader.read(0, smaller(reader, Math.max(width, height)));
            return accepted(raw, Orientation.of(bytes, format));
        } finally {
            reader.dispose();
        }
    }

    private static PictureReading accepted(BufferedImage raw, Orientation orientation) throws IOException {
        BufferedImage picture = upright(Scaling.toFit(raw, LONGEST_SIDE), orientation);
        BufferedImage thumbnail = Scaling.toFit(picture, THUMBNAIL_SIDE);
        return new PictureReading.Accepted(
                JpegFile.of(picture), JpegFile.of(thumbnail), picture.getWidth(), picture.getHeight());
    }

    private static boolean bearable(int width, int height, PictureFormat format) {
        return (double) width * height <= format.mostMegapixels() * PIXELS_A_MEGAPIXEL;
    }

    private static ImageReader reader(PictureFormat format) throws IOException {
        return switch (format) {
            case JPEG -> ImageIO.getImageReadersByFormatName("jpeg").next();
            case PNG -> ImageIO.getImageReadersByFormatName("png").next();
            // Asked for by its class: in one runnable archive the search for plug-ins may run before they can be seen.
            case WEBP -> new WebPImageReaderSpi().createReaderInstance(null);
        };
    }

    /** Skips rows and columns of very large pictures; at least twice the pixels needed are left for smooth scaling. */
    private static ImageReadParam smaller(ImageReader reader, int longerSide) {
        ImageReadParam param = reader.getDefaultReadParam();
        int step = Math.max(1, longerSide / (2 * LONGEST_SIDE));
        param.setSourceSubsampling(step, step, 0, 0);
        return param;
    }

    private static BufferedImage upright(BufferedImage image, Orientation orientation) {
        if (orientation == Orientation.UPRIGHT) {
            return image;
        }
        int width = image.getWidth();
        int height = image.getHeight();
        BufferedImage turned =
                Scaling.blank(orientation.turned() ? height : width, orientation.turned() ? width : height);
        Graphics2D graphics = turned.createGraphics();
        graphics.drawImage(image, orientation.upright(width, height), null);
        graphics.dispose();
        return turned;
    }
}
