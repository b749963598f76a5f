package org.keelweigh.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A page with places to fill, written as <code>{{name}}</code>. What is filled in is not escaped here. */
final class Template {

    private static final Pattern PLACE = Pattern.compile("\\{\\{([a-z-]+)\\}\\}");

    private final String text;

    private Template(String text) {
        this.text = text;
    }

    /** Reads a page from the folder {@code report} of the resources. */
    static Template named(String name) {
        try (InputStream in = Template.class.getResourceAsStream("/report/" + name)) {
            if (in == null) {
                throw new IllegalStateException("There is no template report/" + name);
            }
            return new Template(new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Fills every place in one pass, so that filled-in text is never looked at again.
     *
     * @throws IllegalArgumentException if a place has nothing to fill it
     */
    String fill(Map<String, String> values) {
        return PLACE.matcher(text).replaceAll(match -> {
            String value = values.get(match.group(1));
            if (value == null) {
                throw new IllegalArgumentException("Nothing was given for the place " + match.group(1));
            }
            return Matcher.quoteReplacement(value);
        });
    }

    /** Tells the text between two marks, such as that of the one script. */
    String between(String start, String end) {
        int from = text.indexOf(start) + start.length();
        return text.substring(from, text.indexOf(end, from));
    }
}
