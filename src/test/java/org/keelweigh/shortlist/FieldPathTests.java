package org.keelweigh.shortlist;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.fit.Waters;

class FieldPathTests {

    private static final ShortlistData DATA = ShortlistData.named("Test");

    @Test
    void setsAndReadsANumberDeepDown() {
        FieldPath path = new FieldPath("trip.car.lengthM");

        ShortlistData changed = path.with(DATA, 4.3);

        assertThat(changed.trip().car().lengthM()).isEqualTo(4.3);
        assertThat(path.number(changed)).hasValue(4.3);
        assertThat(path.number(DATA)).isEmpty();
    }

    @Test
    void forgetsAFieldThatIsSetToNothing() {
        FieldPath path = new FieldPath("trip.outingsPerYear");

        assertThat(path.with(path.with(DATA, 12.0), null)).isEqualTo(DATA);
    }

    @Test
    void reachesIntoAList() {
        ShortlistData with = new FieldPath("trip.launches")
                .with(DATA, List.of(new LaunchSite("Pier", null, null, null, null, null)));

        ShortlistData changed = new FieldPath("trip.launches[0].distanceM").with(with, 40.0);

        assertThat(changed.trip().launches().getFirst().distanceM()).isEqualTo(40.0);
        assertThat(changed.trip().launches().getFirst().name()).isEqualTo("Pier");
    }

    @Test
    void refusesAPlaceThatIsNotThere() {
        assertThatThrownBy(() -> new FieldPath("trip.launches[0].distanceM").with(DATA, 40.0))
                .isInstanceOf(IndexOutOfBoundsException.class)
                .hasMessageContaining("no place 0");
    }

    @Test
    void readsCodesAndFlags() {
        ShortlistData changed = new FieldPath("trip.mainWater").with(DATA, Waters.LAKE_CHOP);

        assertThat(changed.trip().mainWater()).isEqualTo(Waters.LAKE_CHOP);
        assertThat(new FieldPath("trip.mainWater").text(changed)).hasValue("lake-chop");
        assertThat(new FieldPath("trip.cart.owned").flag(changed)).hasValue(false);
    }

    @Test
    void leavesEverythingElseAsItWas() {
        CandidateData boat = CandidateData.of("Green", BoatKind.CANOE);

        CandidateData changed = new FieldPath("boat.modelYear").with(boat, 2019);

        assertThat(changed.boat().modelYear()).isEqualTo(2019);
        assertThat(new FieldPath("boat.modelYear").with(changed, null)).isEqualTo(boat);
    }

    @Test
    void refusesAnEmptyPath() {
        assertThatThrownBy(() -> new FieldPath(" ")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void copiesOneFieldAndNothingElse() {
        VisitNotes from = new FieldPath("minutes").with(new FieldPath("place").with(VisitNotes.none(), "Shed"), 30);
        VisitNotes to = new FieldPath("place").with(VisitNotes.none(), "Slipway");

        assertThat(new FieldPath("minutes").copied(from, to)).isEqualTo(new FieldPath("minutes").with(to, 30));
        assertThat(new FieldPath("seller").copied(from, to)).isEqualTo(to);
        assertThat(new FieldPath("place").copied(VisitNotes.none(), to)).isEqualTo(VisitNotes.none());
    }
}
