package org.keelweigh.boat.identity;

import java.time.Year;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The outcome of comparing a hull's number with what is claimed about the boat.
 *
 * @param verdict what it means for the purchase
 * @param reasons why, a sentence each
 * @param settles what would settle it, a sentence each; empty if nothing is open
 * @param reading what came of the characters, if there were any
 */
public record IdentityCheck(
        IdentityVerdict verdict, List<String> reasons, List<String> settles, Optional<HullNumberReading> reading) {

    private static final String READ_IT = "Find the number at the starboard stern, photograph it and type it in.";
    private static final String SECOND_NUMBER =
            "A second number is hidden elsewhere in the hull; ask the maker or a dealer where, and compare the two.";
    private static final String PAPERS =
            "Ask for the receipt, title or registration that carries this number, in the seller's name.";
    private static final String OTHER_PROOF =
            "Keep photographs and the maker's own serial number, and ask for the receipt.";

    /** Copies the lists. */
    public IdentityCheck {
        reasons = List.copyOf(reasons);
        settles = List.copyOf(settles);
    }

    /**
     * Compares. A missing number where one is required, or a number that was tampered with, rules the boat out;
     * whatever does not agree asks for papers; wear that hides characters asks for papers too, since it is common
     * and the hidden second number can settle it.
     *
     * @param plate what was found at the boat; with {@link PlateState#NOT_LOOKED} the text may come from the listing
     * @param text the characters, where there are any
     * @param claimedModelYear the year the listing gives, if it gives one
     * @param duty whether this boat has to carry a number
     * @param today the current year
     */
    public static IdentityCheck compare(
            PlateState plate, @Nullable String text, @Nullable Integer claimedModelYear, NumberDuty duty, Year today) {
        Optional<HullNumberReading> reading =
                text == null || text.isBlank() ? Optional.empty() : Optional.of(HullNumberReading.of(text, today));
        return switch (plate) {
            case READ ->
                reading.map(r -> judged(r, claimedModelYear, IdentityVerdict.IN_ORDER))
                        .orElseGet(() -> new IdentityCheck(
                                IdentityVerdict.NOT_LOOKED,
                                List.of("The number was seen but its characters are not typed in."),
                                List.of(READ_IT),
                                Optional.empty()));
            case NOT_LOOKED ->
                reading.map(r -> judged(r, claimedModelYear, IdentityVerdict.NOT_LOOKED))
                        .orElseGet(() -> new IdentityCheck(
                                IdentityVerdict.NOT_LOOKED,
                                List.of("Nobody has looked for the hull number yet."),
                                List.of(READ_IT),
                                Optional.empty()));
            case MISSING -> missing(duty, reading);
            case UNREADABLE -> unreadable(duty, reading);
            case TAMPERED ->
                new IdentityCheck(
                        IdentityVerdict.RULED_OUT,
                        List.of(
                                "The number was ground off, cut, filled or stamped over. The boat may be stolen, and then"
                                        + " you can lose boat and money."),
                        List.of("Only an authority's written record of a replaced number would clear this."),
                        reading);
            case NOT_REQUIRED -> notRequired(duty, reading);
        };
    }

    private static IdentityCheck missing(NumberDuty duty, Optional<HullNumberReading> reading) {
        return switch (duty) {
            case REQUIRED ->
                new IdentityCheck(
                        IdentityVerdict.RULED_OUT,
                        List.of(
                                duty.sentence(),
                                "There is none, and no boat without one can be told from a stolen one."),
                        List.of(SECOND_NUMBER, PAPERS),
                        reading);
            case UNCERTAIN ->
                new IdentityCheck(
                        IdentityVerdict.ASK_FOR_PAPERS,
                        List.of("There is no number.", duty.sentence()),
                        List.of("Ask where and when the boat was first sold, and for the receipt."),
                        reading);
            case PADDLEBOARD_WAIVED, OUTSIDE_DIRECTIVE, BEFORE_RULES -> nothing(duty, reading);
        };
    }

    private static IdentityCheck unreadable(NumberDuty duty, Optional<HullNumberReading> reading) {
        return new IdentityCheck(
                IdentityVerdict.ASK_FOR_PAPERS,
                duty == NumberDuty.REQUIRED || duty == NumberDuty.UNCERTAIN
                        ? List.of("Characters of the number cannot be read.")
                        : List.of("Characters of the number cannot be read.", duty.sentence()),
                List.of(
                        "Clean it, light it from the side, rub it through with paper and pencil.",
                        SECOND_NUMBER,
                        PAPERS),
                reading);
    }

    private static IdentityCheck notRequired(NumberDuty duty, Optional<HullNumberReading> reading) {
        if (duty == NumberDuty.REQUIRED) {
            return new IdentityCheck(
                    IdentityVerdict.ASK_FOR_PAPERS,
                    List.of("It was noted that no number is needed, but: " + duty.sentence()),
                    List.of(READ_IT, PAPERS),
                    reading);
        }
        return nothing(duty, reading);
    }

    private static IdentityCheck nothing(NumberDuty duty, Optional<HullNumberReading> reading) {
        return new IdentityCheck(
                IdentityVerdict.NOTHING_TO_CHECK,
                List.of("There is no hull number to check.", duty.sentence()),
                List.of(OTHER_PROOF),
                reading);
    }

    private static IdentityCheck judged(HullNumberReading reading, @Nullable Integer claimed, IdentityVerdict ifFine) {
        return switch (reading) {
            case HullNumberReading.Malformed malformed -> {
                List<String> settles = new ArrayList<>(List.of("Read the number again, character by character."));
                malformed
                        .suggestions()
                        .forEach(other -> settles.add(other.number().text() + " would fit. " + other.explanation()));
                settles.add(PAPERS);
                yield new IdentityCheck(
                        IdentityVerdict.ASK_FOR_PAPERS,
                        List.of("The format does not fit. " + malformed.sentence()),
                        settles,
                        Optional.of(reading));
            }
            case HullNumberReading.WellFormed fits -> wellFormed(fits, claimed, ifFine);
        };
    }

    private static IdentityCheck wellFormed(
            HullNumberReading.WellFormed fits, @Nullable Integer claimed, IdentityVerdict ifFine) {
        List<String> reasons = new ArrayList<>();
        reasons.add("The format fits: " + fits.number().format().words()
                + ". That does not show that the number belongs to this boat.");
        fits.observations().forEach(each -> reasons.add(each.sentence()));
        boolean open = fits.observations().stream().anyMatch(each -> each.weight() != Observation.Weight.NOTE);
        if (claimed != null) {
            ClaimedYear year = ClaimedYear.compare(fits.number(), claimed);
            reasons.add(year.sentence());
            open |= !year.agrees();
        }
        List<String> settles = new ArrayList<>();
        if (open) {
            settles.add("Read the number again, character by character.");
            fits.suggestions()
                    .forEach(other -> settles.add(other.number().text() + " would fit. " + other.explanation()));
            settles.add(PAPERS);
        } else if (ifFine == IdentityVerdict.NOT_LOOKED) {
            settles.add(
                    "Read the number on the boat itself and compare it with the listing's, character by character.");
        }
        return new IdentityCheck(open ? IdentityVerdict.ASK_FOR_PAPERS : ifFine, reasons, settles, Optional.of(fits));
    }
}
