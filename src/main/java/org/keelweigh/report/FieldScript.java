package org.keelweigh.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The script of the field sheet, built from {@code frontend/src/sheet}. */
final class FieldScript {

    private static final String PLACE = "/report/field-sheet.js";

    private FieldScript() {}

    /** Reads the script as it stands inside the page. */
    static String text() {
        try (InputStream in = FieldScript.class.getResourceAsStream(PLACE)) {
            if (in == null) {
                throw new IllegalStateException(
                        "The field sheet's script report/field-sheet.js has not been built. "
                                + "Run Maven once without -Dcharts.skip, or “npm ci && npm run bundle” in the folder frontend.");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).strip();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
