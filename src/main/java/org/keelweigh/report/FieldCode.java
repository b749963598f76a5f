package org.keelweigh.report;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.keelweigh.condition.Check;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.InspectionCatalogue;
import org.keelweigh.condition.Method;
import org.keelweigh.condition.Outcome;
import org.keelweigh.condition.WaterNeed;
import org.keelweigh.shortlist.Candidate;

/**
 * The results of a field sheet as a code to copy or type: outcomes only, no notes and measures.
 *
 * <p>Bytes: form (1), tag of the sheet (4), three bits for each check in the catalogue's order up to the last that was made
 * (0 not made, else one more than the outcome's place), and a check sum (CRC-16/CCITT-FALSE, 2). Written in base 32 with
 * digits and letters that are not mistaken for each other: no I, L, O and U.
 */
public final class FieldCode {

    private static final String DIGITS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    private static final byte FORM = 1;
    private static final int HEAD_BYTES = 5;
    private static final int SUM_BYTES = 2;
    private static final int BITS_A_CHECK = 3;
    private static final int BITS_A_DIGIT = 5;
    private static final int GROUP = 5;
    private static final int LONGEST = 2000;
    private static final Map<Outcome, Integer> VALUES = Arrays.stream(Outcome.values())
            .collect(Collectors.toUnmodifiableMap(each -> each, each -> each.ordinal() + 1));

    private final InspectionCatalogue inspection;

    /** Prepares codes by a catalogue. */
    public FieldCode(InspectionCatalogue inspection) {
        this.inspection = inspection;
    }

    /** Writes the outcomes of {@code findings} on a boat in the state that a sheet was made from. */
    public String write(Candidate boat, List<Finding> findings) {
        List<Check> checks = inspection.checks();
        Map<String, Outcome> outcomes =
                findings.stream().collect(Collectors.toMap(Finding::check, Finding::outcome, (one, other) -> other));
        int last = -1;
        for (int i = 0; i < checks.size(); i++) {
            last = outcomes.containsKey(checks.get(i).id()) ? i : last;
        }
        ByteBuffer bytes = ByteBuffer.allocate(HEAD_BYTES + ((last + 1) * BITS_A_CHECK + 7) / 8 + SUM_BYTES);
        bytes.put(FORM).putInt(SheetTag.of(boat.id(), boat.version(), checks).value());
        for (int i = 0; i <= last; i++) {
            Outcome outcome = outcomes.get(checks.get(i).id());
            putBits(bytes.array(), HEAD_BYTES * 8 + i * BITS_A_CHECK, outcome == null ? 0 : VALUES.get(outcome));
        }
        int end = bytes.capacity() - SUM_BYTES;
        bytes.putShort(end, (short) checkSum(bytes.array(), end));
        return digits(bytes.array());
    }

    /** Reads a code that belongs to {@code boat}, in whichever earlier state its sheet was made from. */
    public FieldResults.Reading read(String code, Candidate boat) {
        Optional<byte[]> bytes = code.length() > LONGEST ? Optional.empty() : bytes(code);
        if (bytes.isEmpty()) {
            return refused("A code has digits and letters only, in groups of five. Please compare it with the sheet.");
        }
        byte[] all = bytes.get();
        int end = all.length - SUM_BYTES;
        if (end < HEAD_BYTES || (ByteBuffer.wrap(all).getShort(end) & 0xFFFF) != checkSum(all, end)) {
            return refused(
                    "The code does not add up: a character is missing or wrong. Please compare it with the sheet.");
        }
        if (all[0] != FORM) {
            return refused("This code was made by a newer Keelweigh. Update Keelweigh, then enter it again.");
        }
        SheetTag tag = new SheetTag(ByteBuffer.wrap(all).getInt(1));
        List<Check> checks = inspection.checks();
        for (long version = boat.version(); version >= 0; version--) {
            if (SheetTag.of(boat.id(), version, checks).equals(tag)) {
                return results(boat, version, all, checks);
            }
        }
        return refused("This code belongs to another boat's sheet, or to another catalogue of checks.");
    }

    private static FieldResults.Reading results(Candidate boat, long version, byte[] all, List<Check> checks) {
        List<Finding> findings = new ArrayList<>();
        int places = (all.length - HEAD_BYTES - SUM_BYTES) * 8 / BITS_A_CHECK;
        for (int i = 0; i < places; i++) {
            int value = bits(all, HEAD_BYTES * 8 + i * BITS_A_CHECK);
            if (value > Outcome.values().length || value > 0 && i >= checks.size()) {
                return refused("The code names an outcome that does not exist. Please compare it with the sheet.");
            }
            if (value > 0) {
                Check check = checks.get(i);
                findings.add(new Finding(check.id(), Outcome.values()[value - 1], method(check), null, null, null));
            }
        }
        return new FieldResults.Reading.Readable(
                new FieldResults(List.of(new FieldResults.BoatResults(boat.id(), version, findings))));
    }

    /** Tells how somebody at the boat came to know the outcome of a check. */
    static Method method(Check check) {
        return check.water() == WaterNeed.NEEDS ? Method.ON_WATER : Method.TOUCHED;
    }

    private static FieldResults.Reading refused(String sentence) {
        return new FieldResults.Reading.Refused(sentence);
    }

    private static void putBits(byte[] bytes, int at, int value) {
        for (int i = 0; i < BITS_A_CHECK; i++) {
            if ((value >> (BITS_A_CHECK - 1 - i) & 1) == 1) {
                bytes[(at + i) / 8] |= (byte) (0x80 >> (at + i) % 8);
            }
        }
    }

    private static int bits(byte[] bytes, int at) {
        int value = 0;
        for (int i = 0; i < BITS_A_CHECK; i++) {
            value = value << 1 | bytes[(at + i) / 8] >> (7 - (at + i) % 8) & 1;
        }
        return value;
    }

    /** CRC-16/CCITT-FALSE: polynomial 0x1021, start 0xFFFF. */
    static int checkSum(byte[] bytes, int end) {
        int sum = 0xFFFF;
        for (int i = 0; i < end; i++) {
            sum ^= (bytes[i] & 0xFF) << 8;
            for (int bit = 0; bit < 8; bit++) {
                sum = (sum & 0x8000) == 0 ? sum << 1 & 0xFFFF : (sum << 1 ^ 0x1021) & 0xFFFF;
            }
        }
        return sum;
    }

    private static String digits(byte[] bytes) {
        StringBuilder out = new StringBuilder();
        int count = (bytes.length * 8 + BITS_A_DIGIT - 1) / BITS_A_DIGIT;
        for (int digit = 0; digit < count; digit++) {
            int value = 0;
            for (int bit = digit * BITS_A_DIGIT; bit < (digit + 1) * BITS_A_DIGIT; bit++) {
                int one = bit < bytes.length * 8 ? bytes[bit / 8] >> (7 - bit % 8) & 1 : 0;
                value = value << 1 | one;
            }
            out.append(digit > 0 && digit % GROUP == 0 ? "-" : "").append(DIGITS.charAt(value));
        }
        return out.toString();
    }

    private static Optional<byte[]> bytes(String code) {
        ByteBuffer out = ByteBuffer.allocate(code.length() * BITS_A_DIGIT / 8 + 1);
        int held = 0;
        int bits = 0;
        for (char each : code.toUpperCase(Locale.ROOT).toCharArray()) {
            if (each == '-' || Character.isWhitespace(each)) {
                continue;
            }
            int digit = DIGITS.indexOf(each == 'O' ? '0' : each == 'I' || each == 'L' ? '1' : each);
            if (digit < 0) {
                return Optional.empty();
            }
            held = (held << BITS_A_DIGIT | digit) & 0xFFFF;
            bits += BITS_A_DIGIT;
            if (bits >= 8) {
                bits -= 8;
                out.put((byte) (held >> bits));
            }
        }
        return Optional.of(Arrays.copyOf(out.array(), out.position()));
    }
}
