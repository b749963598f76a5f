package org.keelweigh.exchange;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;

/** Turns a file's bytes into text. */
final class Utf8Text {

    /** The most bytes that are read: a hundred times a full shortlist. */
    static final int MOST_BYTES = 5_000_000;

    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private Utf8Text() {}

    static String of(byte[] bytes) throws RefusedFile {
        if (bytes.length > MOST_BYTES) {
            throw new RefusedFile(
                    "", 1, "The file has more than 5 MB, more than any shortlist needs; is it the right file?");
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(in, out, true);
        out.flip();
        if (result.isError()) {
            int line = 1 + (int) out.chars().filter(c -> c == '\n').count();
            throw new RefusedFile("", line, "The file is not UTF-8 text. Save it again and choose the encoding UTF-8.");
        }
        return withoutMark(out.toString());
    }

    static String withoutMark(String text) {
        return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
    }
}
