package org.keelweigh.report;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import org.keelweigh.condition.Check;
import org.keelweigh.shortlist.CandidateId;

/**
 * Says which boat, in which state, by which catalogue a field sheet was made: results that do not carry the same tag belong
 * to another sheet.
 *
 * @param value the first four bytes of a digest
 */
record SheetTag(int value) {

    static SheetTag of(CandidateId boat, long version, List<Check> catalogue) {
        StringBuilder text = new StringBuilder().append(boat).append('\n').append(version);
        catalogue.forEach(check -> text.append('\n').append(check.id()));
        try {
            byte[] digest =
                    MessageDigest.getInstance("SHA-256").digest(text.toString().getBytes(StandardCharsets.UTF_8));
            return new SheetTag(ByteBuffer.wrap(digest).getInt());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256", e);
        }
    }

    /** Tells the tag in eight letters and digits. */
    String hex() {
        return HexFormat.of().toHexDigits(value);
    }
}
