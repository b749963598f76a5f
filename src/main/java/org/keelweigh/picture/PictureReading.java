package org.keelweigh.picture;

/** What came of taking a picture in. */
public sealed interface PictureReading {

    /**
     * The picture, made anew from its pixels alone: whatever else the file held, such as the place it was taken, is gone.
     *
     * @param jpeg the picture as JPEG, its longer side at most {@link PictureIntake#LONGEST_SIDE} pixels
     * @param thumbnail a small one as JPEG, its longer side at most {@link PictureIntake#THUMBNAIL_SIDE} pixels
     * @param width width of the picture in pixels
     * @param height height of the picture in pixels
     */
    record Accepted(byte[] jpeg, byte[] thumbnail, int width, int height) implements PictureReading {

        /** The media type of both pictures. */
        public static final String MEDIA_TYPE = "image/jpeg";

        public Accepted {
            jpeg = jpeg.clone();
            thumbnail = thumbnail.clone();
        }

        @Override
        public byte[] jpeg() {
            return jpeg.clone();
        }

        @Override
        public byte[] thumbnail() {
            return thumbnail.clone();
        }
    }

    /**
     * The file was not taken.
     *
     * @param sentence why, and what would do
     */
    record Refused(String sentence) implements PictureReading {}
}
