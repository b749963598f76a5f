package org.keelweigh.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;

/** Shrinks pictures smoothly, on white where they are transparent. */
final class Scaling {

    private Scaling() {}

    /** Makes a picture whose longer side has at most {@code side} pixels; a smaller one keeps its size. */
    static BufferedImage toFit(BufferedImage image, int side) {
        double share = Math.min(1, side / (double) Math.max(image.getWidth(), image.getHeight()));
        int width = Math.max(1, (int) Math.round(image.getWidth() * share));
        int height = Math.max(1, (int) Math.round(image.getHeight() * share));
        BufferedImage now = drawn(image, image.getWidth(), image.getHeight());
        // Halving step by step uses every pixel; one large step would leave most of them out.
        while (now.getWidth() >= 2 * width && now.getHeight() >= 2 * height) {
            now = drawn(now, now.getWidth() / 2, now.getHeight() / 2);
        }
        return now.getWidth() == width && now.getHeight() == height ? now : drawn(now, width, height);
    }

    /** Makes a white picture. */
    static BufferedImage blank(int width, int height) {
        BufferedImage blank = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = blank.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, width, height);
        graphics.dispose();
        return blank;
    }

    private static BufferedImage drawn(BufferedImage image, int width, int height) {
        BufferedImage target = blank(width, height);
        Graphics2D graphics = target.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        graphics.drawImage(image, 0, 0, width, height, null);
        graphics.dispose();
        return target;
    }
}
