package org.keelweigh.report;

import org.jspecify.annotations.Nullable;

/** Writes what people typed as text of a page, never as its markup. */
final class Markup {

    private Markup() {}

    /** Escapes a text for elements and quoted attributes; leaves out characters that no page may hold. */
    static String text(@Nullable String typed) {
        if (typed == null) {
            return "";
        }
        StringBuilder out = new StringBuilder(typed.length());
        typed.codePoints().filter(Markup::allowed).forEach(point -> {
            switch (point) {
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '&' -> out.append("&amp;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> out.appendCodePoint(point);
            }
        });
        return out.toString();
    }

    /** Makes JSON safe to stand inside a script element: nothing in it can end the element. */
    static String json(String json) {
        return json.replace("<", "\\u003c")
                .replace(">", "\\u003e")
                .replace("&", "\\u0026")
                .replace("\u2028", "\\u2028")
                .replace("\u2029", "\\u2029");
    }

    private static boolean allowed(int point) {
        return point == '\n'
                || point == '\t'
                || point >= ' ' && !(point >= 0xD800 && point <= 0xDFFF) && point < 0xFFFE
                || point > 0xFFFF;
    }
}
