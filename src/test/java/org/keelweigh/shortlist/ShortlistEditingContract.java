package org.keelweigh.shortlist;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.keelweigh.boat.BoatFacts;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.DriveKind;
import org.keelweigh.boat.HullMaterial;
import org.keelweigh.boat.SeatFacts;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.ListingFacts;
import org.keelweigh.condition.Method;
import org.keelweigh.condition.Outcome;
import org.keelweigh.condition.SellerKind;
import org.keelweigh.fit.PaddlingUse;
import org.keelweigh.fit.Waters;
import org.keelweigh.quantity.Estimate;
import org.springframework.beans.factory.annotation.Autowired;

/** What every database must do with shortlists; one subclass for each database. */
abstract class ShortlistEditingContract {

    @Autowired
    ShortlistEditing editing;

    static CandidateData everyField() {
        return new CandidateData(
                "Green pedal boat",
                new BoatFacts(
                        BoatKind.PEDAL_KAYAK,
                        HullMaterial.POLYETHYLENE,
                        DriveKind.PROPELLER,
                        2019,
                        2650.0,
                        3.66,
                        0.8636,
                        41.0,
                        3.5,
                        7.5,
                        0.0,
                        0.1,
                        215.0,
                        0.46,
                        List.of(new SeatFacts(1.65, 0.48))),
                new ListingFacts(
                        980.0,
                        SellerKind.PRIVATE,
                        38_000.0,
                        41,
                        new TreeMap<>(Map.of("paddle", 1)),
                        new TreeMap<>(Map.of("seller-unsure-service", true))),
                new PlateFacts("read", "ZZQ4K7M2C122"),
                List.of(new Finding(
                        "stern-drag",
                        Outcome.MAJOR,
                        Method.TOUCHED,
                        30.0,
                        "flat under the stern",
                        new Estimate(40, 80, 150))),
                new TreeMap<>(Map.of("storage", "hangs on the carport wall")),
                new TreeMap<>(Map.of("someone", 6)),
                9,
                "anchor trolley; tired vest");
    }

    static PersonData everyPersonField() {
        return new PersonData(
                "Wren",
                84.0,
                1.83,
                0.41,
                PaddlingUse.STAND,
                true,
                true,
                18.0,
                160.0,
                "angler",
                new TreeMap<>(Map.of("stability", 90.0)),
                Certainty.ROUGHLY,
                true);
    }

    static Trip everyTripField() {
        return new Trip(
                Waters.LAKE_CHOP,
                Waters.SLOW_RIVER,
                1,
                0.7,
                18.0,
                12.0,
                8.0,
                List.of(new LaunchSite("Lake", 260.0, "packed-trail", 2.0, 0, 0.03)),
                new CarFacts(4.6, 75.0, 1.45, 0.95, true, 10.0, false),
                StoragePlace.INDOORS,
                4.3,
                new CartFacts("strap-cradle", 70.0, true),
                5,
                0.02,
                0.06,
                2400.0,
                1.0);
    }

    @Test
    void keepsEveryField() {
        Shortlist list =
                editing.create(new ShortlistData("Spring", UnitSystem.US, "EUR", 7L, everyTripField()), "Wren");
        Candidate boat = editing.add(list.id(), everyField(), "Wren");
        Person person = editing.add(list.id(), everyPersonField(), "Wren");

        Facts facts = editing.facts(list.id()).orElseThrow();

        assertThat(facts.shortlist()).isEqualTo(list);
        assertThat(facts.shortlist().data().trip()).isEqualTo(everyTripField());
        assertThat(facts.candidates()).containsExactly(boat);
        assertThat(facts.candidates().getFirst().data()).isEqualTo(everyField());
        assertThat(facts.people()).containsExactly(person);
        assertThat(facts.people().getFirst().data()).isEqualTo(everyPersonField());
    }

    @Test
    void keepsWhatIsUnknownUnknown() {
        Shortlist list = editing.create(ShortlistData.named("Bare"), "Wren");
        CandidateData bare = CandidateData.of("Bare boat", BoatKind.CANOE);
        editing.add(list.id(), bare, "Wren");
        editing.add(list.id(), PersonData.named("Alder"), "Wren");

        Facts facts = editing.facts(list.id()).orElseThrow();

        assertThat(facts.candidates().getFirst().data()).isEqualTo(bare);
        assertThat(facts.people().getFirst().data()).isEqualTo(PersonData.named("Alder"));
        assertThat(facts.shortlist().data().trip()).isEqualTo(Trip.unknown());
    }

    @Test
    void bringsEditsOfDifferentFieldsTogether() {
        Candidate seen = boat();
        editing.save(with(seen, seen.data().withFinding(Finding.of("hull-crack", Outcome.FINE))), "Alder");

        Saved<Candidate> saved =
                editing.save(with(seen, seen.data().withFinding(Finding.of("seat-frame", Outcome.MINOR))), "Wren");

        assertThat(saved).isInstanceOf(Saved.Merged.class);
        assertThat(((Saved.Merged<Candidate>) saved).by()).isEqualTo("Alder");
        assertThat(saved.current().data().findings())
                .extracting(Finding::check)
                .containsExactlyInAnyOrder("hull-crack", "seat-frame");
    }

    @Test
    void tellsOfEditsOfTheSameFieldAndLosesNeither() {
        Candidate seen = boat();
        editing.save(with(seen, seen.data().withFinding(Finding.of("hull-crack", Outcome.MAJOR))), "Alder");

        Saved<Candidate> saved =
                editing.save(with(seen, seen.data().withFinding(Finding.of("hull-crack", Outcome.FINE))), "Wren");

        assertThat(saved).isInstanceOf(Saved.Clashed.class);
        assertThat(((Saved.Clashed<Candidate>) saved).clashes())
                .extracting(Clash::field)
                .containsExactly("findings.hull-crack.outcome");
        assertThat(editing.facts(seen.shortlist())
                        .orElseThrow()
                        .candidates()
                        .getFirst()
                        .data()
                        .findings())
                .containsExactly(Finding.of("hull-crack", Outcome.MAJOR));
    }

    @Test
    void undoesADeletion() {
        Candidate boat = boat();
        editing.delete(boat.id(), "Wren");
        assertThat(editing.facts(boat.shortlist()).orElseThrow().candidates()).isEmpty();
        assertThat(editing.save(boat, "Alder")).isInstanceOf(Saved.Gone.class);

        editing.restore(boat.id(), "Wren");

        assertThat(editing.facts(boat.shortlist()).orElseThrow().candidates()).containsExactly(boat);
    }

    @Test
    void hidesADeletedShortlist() {
        Shortlist list = editing.create(ShortlistData.named("Gone"), "Wren");
        editing.delete(list.id(), "Wren");

        assertThat(editing.facts(list.id())).isEmpty();
        assertThat(editing.shortlists()).extracting(Shortlist::id).doesNotContain(list.id());
    }

    @Test
    void returnsToAnEarlierStateWithoutLosingTheLaterOne() {
        Candidate first = boat();
        Candidate second = editing.save(
                        with(first, first.data().withFinding(Finding.of("hull-uv", Outcome.MAJOR))), "Wren")
                .current();

        Candidate returned = editing.returnTo(first.id(), first.version(), "Alder");

        assertThat(returned.data()).isEqualTo(first.data());
        assertThat(returned.version()).isGreaterThan(second.version());
        assertThat(editing.history(first.id())).extracting(Change::who).containsExactly("Alder", "Wren", "Wren");
        assertThat(editing.returnTo(first.id(), second.version(), "Wren").data())
                .isEqualTo(second.data());
        assertThatThrownBy(() -> editing.returnTo(first.id(), 99, "Wren"))
                .isInstanceOf(NoSuchElementException.class)
                .hasMessageContaining("no state number 99");
    }

    @Test
    void keepsTheOrderInWhichBoatsWereAdded() {
        Shortlist list = editing.create(ShortlistData.named("Order"), "Wren");
        for (String name : List.of("one", "two", "three")) {
            editing.add(list.id(), CandidateData.of(name, BoatKind.SIT_ON_TOP), "Wren");
        }

        assertThat(editing.facts(list.id()).orElseThrow().candidates())
                .extracting(each -> each.data().name())
                .containsExactly("one", "two", "three");
    }

    private Candidate boat() {
        Shortlist list = editing.create(ShortlistData.named("Spring"), "Wren");
        return editing.add(list.id(), CandidateData.of("Green pedal boat", BoatKind.PEDAL_KAYAK), "Wren");
    }

    private static Candidate with(Candidate seen, CandidateData data) {
        return new Candidate(seen.id(), seen.shortlist(), seen.version(), data);
    }
}
