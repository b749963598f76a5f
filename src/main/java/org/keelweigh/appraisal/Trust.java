package org.keelweigh.appraisal;

import java.time.Year;
import java.util.Arrays;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.keelweigh.boat.Boat;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.DriveKind;
import org.keelweigh.boat.identity.IdentityCheck;
import org.keelweigh.boat.identity.NumberDuty;
import org.keelweigh.boat.identity.PlateState;
import org.keelweigh.condition.ListingAssessment;
import org.keelweigh.condition.ListingCatalogue;
import org.keelweigh.shortlist.CandidateData;

/**
 * How far the listing, its seller and the hull number can be relied on.
 *
 * @param identity what the hull number says
 * @param listing what listing and seller say
 * @param firm the same without what rests on an assumed price: what is only assumed never rules a boat out
 */
public record Trust(IdentityCheck identity, ListingAssessment listing, ListingAssessment firm) {

    private static final int FIRST_RULES = 1972;

    static Trust of(CandidateData data, Boat boat, double fairPrice, Situation situation, ListingCatalogue catalogue) {
        IdentityCheck identity = IdentityCheck.compare(
                plateState(data.plate().state()),
                data.plate().number(),
                data.boat().modelYear(),
                duty(boat, situation.display().currency()),
                Year.of(situation.thisYear()));
        // how low a price is cannot be a sign while both the year and the price new are guesses
        boolean guessed = boat.modelYear().isAssumed() && boat.priceNew().isAssumed();
        ListingAssessment listing =
                ListingAssessment.of(data.listing(), data.findings(), guessed ? null : fairPrice, catalogue);
        boolean known = !boat.modelYear().isAssumed() && !boat.priceNew().isAssumed();
        return new Trust(
                identity,
                listing,
                known ? listing : ListingAssessment.of(data.listing(), data.findings(), null, catalogue));
    }

    /** Reads a plate's state by its code; unknown codes count as not looked. */
    public static PlateState plateState(@Nullable String code) {
        return Arrays.stream(PlateState.values())
                .filter(each -> code(each).equals(code))
                .findFirst()
                .orElse(PlateState.NOT_LOOKED);
    }

    /** Tells the code under which a plate's state is kept. */
    public static String code(PlateState state) {
        return state.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Tells whether such a boat has to carry a number where the shortlist's money is paid. */
    private static NumberDuty duty(Boat boat, String currency) {
        if (boat.kind().board()) {
            return NumberDuty.PADDLEBOARD_WAIVED;
        }
        if (!boat.modelYear().isAssumed() && boat.modelYear().value() < FIRST_RULES) {
            return NumberDuty.BEFORE_RULES;
        }
        return switch (currency) {
            case "USD", "CAD" -> NumberDuty.REQUIRED;
            case "EUR", "GBP" ->
                boat.drive() == DriveKind.MOTOR || boat.kind() == BoatKind.ROWING_BOAT
                        ? NumberDuty.UNCERTAIN
                        : NumberDuty.OUTSIDE_DIRECTIVE;
            default -> NumberDuty.UNCERTAIN;
        };
    }
}
