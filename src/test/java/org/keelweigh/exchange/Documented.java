package org.keelweigh.exchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The example that stands in the documentation. */
final class Documented {

    private static final String BEGIN = "```json\n";

    private Documented() {}

    static String example() {
        try {
            String text = Files.readString(Path.of("docs/data-format.md"));
            int from = text.indexOf(BEGIN) + BEGIN.length();
            return text.substring(from, text.indexOf("```", from));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
