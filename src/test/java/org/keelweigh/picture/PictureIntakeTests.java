package org.keelweigh.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PictureIntakeTests {

    @ParameterizedTest
    @ValueSource(strings = {"jpeg", "png"})
    void takesPicturesAndMakesThemSmaller(String format) throws IOException {
        PictureReading.Accepted taken = accepted(SamplePictures.of(format, 4200, 2100));

        assertThat(taken.width()).isEqualTo(2000);
        assertThat(taken.height()).isEqualTo(1000);
        assertThat(leftAndRight(taken.jpeg())).containsExactly("red", "blue");
        BufferedImage small = ImageIO.read(new ByteArrayInputStream(taken.thumbnail()));
        assertThat(small.getWidth()).isEqualTo(320);
        assertThat(small.getHeight()).isEqualTo(160);
    }

    @ParameterizedTest
    @ValueSource(strings = {"lossy", "lossless"})
    void takesWebpPictures(String name) throws IOException {
        try (InputStream in = getClass().getResourceAsStream("/picture/" + name + ".webp")) {
            PictureReading.Accepted taken = accepted(in.readAllBytes());

            assertThat(taken.width()).isEqualTo(64);
            assertThat(taken.height()).isEqualTo(48);
            assertThat(leftAndRight(taken.jpeg())).containsExactly("red", "blue");
        }
    }

    @Test
    void keepsASmallPictureItsSize() {
        PictureReading.Accepted taken = accepted(SamplePictures.of("png", 40, 30));

        assertThat(taken.width()).isEqualTo(40);
        assertThat(taken.height()).isEqualTo(30);
    }

    /** Where the red half of the stored rows lands: JEITA CP-3451, table of tag 0x0112. */
    @ParameterizedTest
    @CsvSource({
        "1, 60, 40, left", "2, 60, 40, right", "3, 60, 40, right", "4, 60, 40, left",
        "5, 40, 60, top", "6, 40, 60, top", "7, 40, 60, bottom", "8, 40, 60, bottom",
        "0, 60, 40, left", "99, 60, 40, left"
    })
    void turnsPicturesAsTheCameraWasHeld(int orientation, int width, int height, String red) throws IOException {
        PictureReading.Accepted taken = accepted(SamplePictures.jpegWithExif(60, 40, orientation));

        assertThat(taken.width()).isEqualTo(width);
        assertThat(taken.height()).isEqualTo(height);
        assertThat(redSide(taken.jpeg())).isEqualTo(red);
    }

    @Test
    void leavesThePlaceBehind() {
        byte[] withPlace = SamplePictures.jpegWithExif(60, 40, 1);
        assertThat(letters(withPlace)).contains(SamplePictures.PLACE).contains("Exif");

        PictureReading.Accepted taken = accepted(withPlace);

        assertThat(letters(taken.jpeg())).doesNotContain(SamplePictures.PLACE).doesNotContain("Exif");
        assertThat(letters(taken.thumbnail())).doesNotContain(SamplePictures.PLACE);
    }

    @Test
    void leavesEverythingBehindThatIsNoPicture() {
        byte[] script = "<script>alert(1)</script>PK\u0003\u0004".getBytes(StandardCharsets.US_ASCII);
        byte[] picture = SamplePictures.of("jpeg", 60, 40);
        byte[] both = Arrays.copyOf(picture, picture.length + script.length);
        System.arraycopy(script, 0, both, picture.length, script.length);

        PictureReading.Accepted taken = accepted(both);

        assertThat(letters(taken.jpeg())).doesNotContain("script").doesNotContain("PK\u0003");
    }

    @Test
    void refusesPicturesThatWouldFillTheMemory() {
        assertThat(sentence(SamplePictures.pngPromising(60_000, 60_000)))
                .isEqualTo("This PNG picture is 60000 × 60000 pixels. Up to 80 megapixels are taken.");
    }

    @Test
    void refusesFilesThatAreTooLarge() {
        assertThat(sentence(new byte[PictureIntake.MOST_BYTES + 1])).contains("15 MB");
    }

    @ParameterizedTest
    @ValueSource(strings = {"gif", "bmp"})
    void refusesOtherFormatsWhateverTheirName(String format) {
        assertThat(sentence(SamplePictures.of(format, 20, 20))).contains("not a JPEG, PNG or WebP");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "<svg xmlns='http://www.w3.org/2000/svg'><script/></svg>", "%PDF-1.7", "RIFF____WAVE"})
    void refusesWhatIsNoPicture(String content) {
        assertThat(sentence(content.getBytes(StandardCharsets.US_ASCII))).contains("not a JPEG, PNG or WebP");
    }

    @ParameterizedTest
    @ValueSource(strings = {"jpeg", "png"})
    void refusesHalfAPicture(String format) {
        byte[] whole = SamplePictures.of(format, 600, 400);

        assertThat(sentence(Arrays.copyOf(whole, whole.length / 2))).containsAnyOf("cannot be read", "not complete");
    }

    @Test
    void refusesAPngWithoutPixels() {
        assertThat(sentence(SamplePictures.pngPromising(10, 10))).contains("cannot be read");
    }

    @Test
    void refusesAJpegMadeToKeepADecoderBusy() {
        byte[] picture = SamplePictures.of("jpeg", 60, 40);
        byte[] many = Arrays.copyOf(picture, picture.length + 400);
        for (int i = picture.length; i < many.length; i += 2) {
            many[i] = (byte) 0xFF;
            many[i + 1] = (byte) 0xDA;
        }

        assertThat(sentence(many)).contains("unusual way");
    }

    @ParameterizedTest
    @ValueSource(strings = {"jpeg", "png", "webp"})
    void answersDamagedPicturesInASentence(String format) throws IOException {
        byte[] whole;
        try (InputStream in = getClass().getResourceAsStream("/picture/lossy.webp")) {
            whole = format.equals("webp") ? in.readAllBytes() : SamplePictures.of(format, 120, 80);
        }
        Random random = new Random(20_260_401);
        for (int i = 0; i < 300; i++) {
            byte[] damaged = whole.clone();
            for (int hit = 0; hit < 6; hit++) {
                damaged[12 + random.nextInt(damaged.length - 12)] = (byte) random.nextInt(256);
            }
            PictureReading reading = PictureIntake.read(damaged);
            if (reading instanceof PictureReading.Refused refused) {
                assertThat(refused.sentence()).endsWith(".");
            } else {
                assertThat(((PictureReading.Accepted) reading).width()).isPositive();
            }
        }
    }

    private static PictureReading.Accepted accepted(byte[] bytes) {
        PictureReading reading = PictureIntake.read(bytes);
        assertThat(reading).isInstanceOf(PictureReading.Accepted.class);
        return (PictureReading.Accepted) reading;
    }

    private static String sentence(byte[] bytes) {
        PictureReading reading = PictureIntake.read(bytes);
        assertThat(reading).isInstanceOf(PictureReading.Refused.class);
        return ((PictureReading.Refused) reading).sentence();
    }

    private static String letters(byte[] bytes) {
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }

    private static String[] leftAndRight(byte[] jpeg) throws IOException {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(jpeg));
        int row = image.getHeight() / 2;
        return new String[] {
            colour(image.getRGB(image.getWidth() / 4, row)), colour(image.getRGB(image.getWidth() * 3 / 4, row))
        };
    }

    private static String redSide(byte[] jpeg) throws IOException {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(jpeg));
        int right = image.getWidth() - 4;
        int bottom = image.getHeight() - 4;
        boolean first = colour(image.getRGB(3, 3)).equals("red");
        boolean across = colour(image.getRGB(right, 3)).equals("red");
        boolean below = colour(image.getRGB(3, bottom)).equals("red");
        return first && across ? "top" : first && below ? "left" : across ? "right" : "bottom";
    }

    private static String colour(int rgb) {
        Color colour = new Color(rgb);
        return colour.getRed() > colour.getBlue() ? "red" : "blue";
    }
}
