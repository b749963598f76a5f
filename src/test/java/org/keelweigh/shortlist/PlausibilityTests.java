package org.keelweigh.shortlist;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.keelweigh.boat.BoatDefaults;
import org.keelweigh.boat.BoatFacts;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.condition.ListingFacts;

class PlausibilityTests {

    private final Plausibility plausibility =
            new Plausibility(BoatDefaults.read(Catalogue.shipped()), 2026, new Display(UnitSystem.METRIC, "USD"));

    @Test
    void doubtsNothingThatIsUsualOrUnknown() {
        assertThat(plausibility.of(CandidateData.of("Boat", BoatKind.CANOE))).isEmpty();
        assertThat(plausibility.of(PersonData.named("Wren"))).isEmpty();
        assertThat(plausibility.of(ShortlistData.named("Spring"))).isEmpty();
        assertThat(plausibility.of(ShortlistEditingContract.everyField())).isEmpty();
        assertThat(plausibility.of(ShortlistEditingContract.everyPersonField())).isEmpty();
    }

    @Test
    void asksAboutAKayakOfFourKilograms() {
        List<Doubt> doubts = plausibility.of(boat(null, 4.0, null));

        assertThat(doubts).hasSize(1);
        assertThat(doubts.getFirst().refused()).isFalse();
        assertThat(doubts.getFirst().sentence()).contains("4.0 kg", "sit-on-top kayak", "usual is about 24.0 kg");
    }

    @Test
    void refusesACanoeOfFortyMetres() {
        List<Doubt> doubts = plausibility.of(boat(40.0, null, null));

        assertThat(doubts).singleElement().satisfies(doubt -> {
            assertThat(doubt.refused()).isTrue();
            assertThat(doubt.sentence()).contains("between 1.00 m and 12.00 m", "40.00 m is too much");
        });
    }

    @Test
    void guessesThatALengthWasTypedInInches() {
        assertThat(plausibility.of(boat(144.0, null, null)).getFirst().sentence())
                .contains("144 inches", "3.66 m");
    }

    @Test
    void refusesANegativePrice() {
        CandidateData data = CandidateData.of("Boat", BoatKind.CANOE)
                .withListing(new ListingFacts(-1.0, null, null, null, new TreeMap<>(), new TreeMap<>()));

        assertThat(plausibility.of(data)).singleElement().satisfies(doubt -> {
            assertThat(doubt.field()).isEqualTo("listing.askingPrice");
            assertThat(doubt.sentence()).contains("−$1 is too little");
        });
    }

    @Test
    void refusesAModelYearInTheFuture() {
        assertThat(plausibility.of(boat(null, null, 2030)).getFirst().sentence())
                .contains("2030 lies in the future");
    }

    @Test
    void refusesANameThatIsBlank() {
        assertThat(plausibility.of(CandidateData.of(" ", BoatKind.CANOE)))
                .extracting(Doubt::field)
                .containsExactly("name");
    }

    private static CandidateData boat(
            @Nullable Double lengthM, @Nullable Double bareMassKg, @Nullable Integer modelYear) {
        return CandidateData.of("Boat", BoatKind.SIT_ON_TOP)
                .withBoat(new BoatFacts(
                        BoatKind.SIT_ON_TOP,
                        null,
                        null,
                        modelYear,
                        null,
                        lengthM,
                        null,
                        bareMassKg,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        List.of()));
    }
}
