package org.keelweigh.report;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;

/**
 * Prints a page of this package as PDF. The typeface comes with the PDF library; it has Latin, Greek and Cyrillic letters.
 * Other scripts show as a placeholder there and come out right when the page itself is printed.
 */
public final class PaperPdf {

    private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final int PLAIN = 400;

    /** The papers there are. */
    public enum Paper {
        A4(210, 297),
        LETTER(215.9, 279.4);

        private final double widthMm;
        private final double heightMm;

        Paper(double widthMm, double heightMm) {
            this.widthMm = widthMm;
            this.heightMm = heightMm;
        }
    }

    private PaperPdf() {}

    /** Prints a page. Nothing outside it is fetched. */
    public static byte[] of(String page, Paper paper) {
        try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            PdfRendererBuilder builder = new PdfRendererBuilder();
            builder.useFastMode();
            builder.useFont(PaperPdf::font, "Liberation Sans", PLAIN, FontStyle.NORMAL, true);
            builder.useDefaultPageSize(
                    (float) paper.widthMm, (float) paper.heightMm, PdfRendererBuilder.PageSizeUnits.MM);
            builder.useUriResolver((base, uri) -> uri.startsWith("data:") ? uri : null);
            builder.withHtmlContent(page, null);
            builder.toStream(out);
            builder.run();
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static InputStream font() {
        return Objects.requireNonNull(PaperPdf.class.getResourceAsStream(FONT), "The PDF library brings its typeface");
    }
}
