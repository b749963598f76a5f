package org.keelweigh.appraisal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.keelweigh.boat.BoatFacts;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.DriveKind;
import org.keelweigh.boat.HullMaterial;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.ListingFacts;
import org.keelweigh.condition.Outcome;
import org.keelweigh.condition.SellerKind;
import org.keelweigh.fit.PaddlingUse;
import org.keelweigh.fit.Waters;
import org.keelweigh.shortlist.Candidate;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.Certainty;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.LaunchSite;
import org.keelweigh.shortlist.Person;
import org.keelweigh.shortlist.PersonData;
import org.keelweigh.shortlist.PersonId;
import org.keelweigh.shortlist.Shortlist;
import org.keelweigh.shortlist.ShortlistData;
import org.keelweigh.shortlist.StoragePlace;
import org.keelweigh.shortlist.Trip;

/** Common practice, no source: the trade's hard rules. What is only assumed never rules a boat out (decision record 5). */
class RulingsTests {

    private static final Appraiser APPRAISER = new Appraiser(Samples.CATALOGUES);
    private static final Trip UNKNOWN = Trip.unknown();

    private static List<Ruling> rulings(Trip trip, List<Person> people, CandidateData boat) {
        Facts facts = new Facts(
                new Shortlist(Samples.LIST, 0, ShortlistData.named("Test").withTrip(trip)),
                people,
                List.of(new Candidate(CandidateId.fresh(), Samples.LIST, 0, boat)));
        return APPRAISER.measure(facts, 2026, null, 64).boats().getFirst().rulings();
    }

    private static List<Rule> rules(Trip trip, List<Person> people, CandidateData boat) {
        return rulings(trip, people, boat).stream().map(Ruling::rule).toList();
    }

    private static BoatFacts facts(
            BoatKind kind,
            @Nullable Double lengthM,
            @Nullable Double beamM,
            @Nullable Double bareKg,
            @Nullable Double ratedKg) {
        return new BoatFacts(
                kind, null, null, 2018, 1000.0, lengthM, beamM, bareKg, null, null, null, null, ratedKg, null,
                List.of());
    }

    private static CandidateData asking(@Nullable Double price, BoatFacts boat) {
        return CandidateData.of("Boat", boat.kind())
                .withBoat(boat)
                .withListing(new ListingFacts(price, null, null, null, new TreeMap<>(), new TreeMap<>()));
    }

    private static Person person(
            @Nullable Double massKg, @Nullable PaddlingUse use, @Nullable Double liftKg, @Nullable Double haulN) {
        return new Person(
                PersonId.fresh(),
                Samples.LIST,
                0,
                new PersonData(
                        "Robin",
                        massKg,
                        1.75,
                        null,
                        use,
                        true,
                        true,
                        liftKg,
                        haulN,
                        null,
                        new TreeMap<>(),
                        Certainty.FAIRLY_SURE,
                        true));
    }

    private static final Person NOBODY_KNOWN = person(null, null, null, null);
    private static final Person KNOWN = person(80.0, PaddlingUse.SIT_CALM_FIRST_TIMER, 15.0, 150.0);

    // ---- findings

    @Test
    void letsNobodyDrownInABoatWithAFaultThatCanKill() {
        assertThat(rules(
                        UNKNOWN,
                        List.of(),
                        Samples.priced("Boat", BoatKind.SIT_ON_TOP, 500)
                                .withFinding(Finding.of("flotation", Outcome.MAJOR))))
                .contains(Rule.UNSAFE);
    }

    @Test
    void doesNotRuleABoatOutForWhatIsBoughtOrLeftBehindBeforeTheFirstLaunch() {
        CandidateData bare = Samples.priced("Boat", BoatKind.SIT_ON_TOP, 500)
                .withFinding(Finding.of("pfd", Outcome.MAJOR))
                .withFinding(Finding.of("trailer-check", Outcome.MAJOR))
                .withFinding(Finding.of("cart-check", Outcome.MAJOR))
                .withFinding(Finding.of("paddle", Outcome.MAJOR));

        assertThat(rulings(UNKNOWN, List.of(), bare)).isEmpty();
    }

    // ---- what is only assumed

    @ParameterizedTest
    @EnumSource
    void rulesNothingOutOfABareList(BoatKind kind) {
        Trip nearlyNothing = TripOf.with(trip -> trip.budget = 1.0);

        assertThat(rulings(nearlyNothing, List.of(), CandidateData.of("Boat", kind)))
                .isEmpty();
        assertThat(rulings(nearlyNothing, List.of(NOBODY_KNOWN), CandidateData.of("Boat", kind)))
                .isEmpty();
    }

    @Test
    void liftsWithATestedLimitOnly() {
        CandidateData heavy = asking(500.0, facts(BoatKind.ROWING_BOAT, 4.2, 1.5, 90.0, 300.0));
        Trip bars = TripOf.with(trip -> trip.barHeightM = 1.45);

        assertThat(rules(bars, List.of(NOBODY_KNOWN), heavy)).doesNotContain(Rule.LIFT);
        assertThat(rules(UNKNOWN, List.of(KNOWN), heavy)).doesNotContain(Rule.LIFT);
        assertThat(rules(bars, List.of(KNOWN), heavy)).contains(Rule.LIFT);
        assertThat(rules(bars, List.of(KNOWN, NOBODY_KNOWN), heavy)).doesNotContain(Rule.LIFT);
    }

    /** 27.5 kg by hand: 0.43 of it is 11.8 kg, 1.69 times 7 kg; the aid that is bought for it lets the hands stay low. */
    @Test
    void takesTheLoadingAidThatIsBoughtForAnAnswer() {
        CandidateData kayak = asking(500.0, facts(BoatKind.SIT_ON_TOP, 3.6, 0.78, 27.5, 160.0));
        Trip bars = TripOf.with(trip -> trip.barHeightM = 1.45);
        Person weak = person(70.0, PaddlingUse.SIT_CALM_FIRST_TIMER, 7.0, 100.0);

        assertThat(rules(bars, List.of(weak), kayak)).doesNotContain(Rule.LIFT);
    }

    @Test
    void leavesTheRoofToATrailer() {
        CandidateData heavy = asking(500.0, facts(BoatKind.ROWING_BOAT, 4.2, 1.5, 90.0, 300.0));
        Trip towing = TripOf.with(trip -> {
            trip.barHeightM = 1.45;
            trip.roofLimitKg = 50.0;
            trip.canTow = true;
        });

        assertThat(rules(towing, List.of(KNOWN), heavy)).doesNotContain(Rule.LIFT, Rule.ROOF);
    }

    @Test
    void leavesAnAssumedRackOutOfTheRoofsLimit() {
        Trip roof = TripOf.with(trip -> trip.roofLimitKg = 50.0);

        assertThat(rules(roof, List.of(), asking(500.0, facts(BoatKind.CANOE, 4.8, 0.9, 45.0, 300.0))))
                .doesNotContain(Rule.ROOF);
        assertThat(rules(roof, List.of(), asking(500.0, facts(BoatKind.CANOE, 4.8, 0.9, 52.0, 300.0))))
                .contains(Rule.ROOF);
    }

    @Test
    void judgesSteadinessByAUseThatSomebodyNamed() {
        // a touring kayak of 560 mm is too narrow for a first boat, and right for somebody with experience
        CandidateData tourer = asking(900.0, facts(BoatKind.SIT_INSIDE, 5.0, 0.56, 24.0, 150.0));
        Person first = person(80.0, PaddlingUse.SIT_CALM_FIRST_TIMER, null, null);

        assertThat(rules(UNKNOWN, List.of(person(80.0, null, null, null)), tourer))
                .doesNotContain(Rule.FIT);
        assertThat(rules(UNKNOWN, List.of(first), tourer)).contains(Rule.FIT);
        assertThat(rulings(UNKNOWN, List.of(first), tourer).getFirst().remedy()).doesNotContain("Sit in it");
    }

    @Test
    void countsOnlyTheLoadThatSomebodyGave() {
        CandidateData small = asking(500.0, facts(BoatKind.SIT_ON_TOP, 2.7, 0.76, 18.0, 95.0));

        // an assumed 78 + 10 kg would use 93 % of 95 kg
        assertThat(rules(UNKNOWN, List.of(), small)).doesNotContain(Rule.CAPACITY);
        assertThat(rules(UNKNOWN, List.of(person(80.0, null, null, null)), small))
                .doesNotContain(Rule.CAPACITY);
        assertThat(rules(UNKNOWN, List.of(person(90.0, null, null, null)), small))
                .contains(Rule.CAPACITY);
    }

    @Test
    void countsOnlyTheCashThatSomebodyAskedFor() {
        BoatFacts boat = facts(BoatKind.SIT_ON_TOP, 3.2, 0.76, 20.0, 140.0);
        Trip poor = TripOf.with(trip -> trip.budget = 100.0);

        assertThat(rules(poor, List.of(), asking(null, boat))).doesNotContain(Rule.CASH);
        assertThat(rules(poor, List.of(), asking(400.0, boat))).contains(Rule.CASH);
    }

    /** The roof bars of 300 USD are in the cash before the first launch only because nobody said whether there are any. */
    @Test
    void leavesBarsThatNobodySpokeOfOutOfTheCash() {
        CandidateData boat = asking(600.0, facts(BoatKind.SIT_ON_TOP, 3.2, 0.76, 20.0, 140.0));
        double dayOne = dayOne(TripOf.with(trip -> trip.hasBars = false), boat);
        double limit = (dayOne - 10) / 1.15;
        Trip unsaid = TripOf.with(trip -> trip.budget = limit);
        Trip said = TripOf.with(trip -> {
            trip.budget = limit;
            trip.hasBars = false;
        });

        assertThat(rules(unsaid, List.of(), boat)).doesNotContain(Rule.CASH);
        assertThat(rules(said, List.of(), boat)).contains(Rule.CASH);
    }

    private static double dayOne(Trip trip, CandidateData boat) {
        Facts facts = new Facts(
                new Shortlist(Samples.LIST, 0, ShortlistData.named("Test").withTrip(trip)),
                List.of(),
                List.of(new Candidate(CandidateId.fresh(), Samples.LIST, 0, boat)));
        return APPRAISER.measure(facts, 2026, null, 64).boats().getFirst().dayOneCash();
    }

    // ---- hauling

    private static Trip over(LaunchSite... way) {
        return TripOf.with(trip -> trip.launches = Arrays.asList(way));
    }

    @Test
    void rulesNothingOutThatTwoPeopleCanHaul() {
        CandidateData boat = asking(
                900.0,
                new BoatFacts(
                        BoatKind.PEDAL_KAYAK,
                        HullMaterial.POLYETHYLENE,
                        DriveKind.PROPELLER,
                        2020,
                        2600.0,
                        3.7,
                        0.86,
                        45.0,
                        3.0,
                        8.0,
                        null,
                        1.0,
                        215.0,
                        null,
                        List.of()));
        Trip sand = over(new LaunchSite("Beach", 60.0, "soft-dry-sand", 3.0, 0, null));

        // two people's 1.8 x 110 N do what one person's 110 N does not
        assertThat(rules(sand, List.of(person(80.0, null, null, 90.0)), boat)).doesNotContain(Rule.HAUL, Rule.FIT);
    }

    @Test
    void rulesOutWhatNoTwoPeopleCanHaulOverAKnownWay() {
        CandidateData boat = asking(900.0, facts(BoatKind.ROWING_BOAT, 4.5, 1.6, 120.0, 400.0));
        LaunchSite sand = new LaunchSite("Beach", 200.0, "soft-dry-sand", 5.0, 0, null);
        LaunchSite somewhere = new LaunchSite("Beach", null, "soft-dry-sand", null, 0, null);

        assertThat(rules(over(sand), List.of(person(80.0, null, null, 100.0)), boat))
                .contains(Rule.HAUL);
        assertThat(rules(over(sand), List.of(NOBODY_KNOWN), boat)).doesNotContain(Rule.HAUL);
        assertThat(rules(over(somewhere), List.of(person(80.0, null, null, 100.0)), boat))
                .doesNotContain(Rule.HAUL);
        assertThat(rules(UNKNOWN, List.of(person(80.0, null, null, 100.0)), boat))
                .doesNotContain(Rule.HAUL);
    }

    // ---- room

    @Test
    void rulesOutABoatFarLongerThanTheCarUnlessItIsTowed() {
        CandidateData canoe = asking(900.0, facts(BoatKind.CANOE, 5.0, 0.9, 26.0, 400.0));

        // 5.0 / 2.9 = 1.72, more than 1.6
        assertThat(rules(TripOf.with(trip -> trip.carM = 2.9), List.of(), canoe))
                .containsExactly(Rule.CAR);
        assertThat(rulings(TripOf.with(trip -> trip.carM = 2.9), List.of(), canoe)
                        .getFirst()
                        .reason())
                .contains("1.72 times");
        assertThat(rules(TripOf.with(trip -> trip.carM = 3.2), List.of(), canoe))
                .isEmpty();
        assertThat(rules(
                        TripOf.with(trip -> {
                            trip.carM = 2.9;
                            trip.canTow = true;
                        }),
                        List.of(),
                        canoe))
                .isEmpty();
    }

    @Test
    void rulesOutABoatLongerThanItsOnlyRoom() {
        CandidateData canoe = asking(900.0, facts(BoatKind.CANOE, 5.0, 0.9, 26.0, 400.0));

        assertThat(rules(TripOf.with(trip -> trip.roomM = 4.3), List.of(), canoe))
                .containsExactly(Rule.STORAGE);
        assertThat(rules(
                        TripOf.with(trip -> {
                            trip.roomM = 4.3;
                            trip.storage = StoragePlace.COVERED;
                        }),
                        List.of(),
                        canoe))
                .isEmpty();
    }

    @Test
    void rulesOutByWaterThatSomebodyNamed() {
        CandidateData board = CandidateData.of("Board", BoatKind.INFLATABLE_BOARD)
                .withBoat(facts(BoatKind.INFLATABLE_BOARD, 3.2, 0.8, 9.0, 150.0));

        assertThat(rules(TripOf.with(trip -> trip.mainWater = Waters.WHITEWATER), List.of(), board))
                .contains(Rule.WATER);
    }

    // ---- money

    @Test
    void comparesSeriousRepairsWithThePriceBeforeTheyComeOff() {
        BoatFacts boat = new BoatFacts(
                BoatKind.SIT_ON_TOP,
                null,
                null,
                2018,
                1500.0,
                3.2,
                0.76,
                20.0,
                null,
                null,
                null,
                null,
                140.0,
                null,
                List.of());
        // the catalogue's likely cost of it: 320
        List<Finding> faults = List.of(Finding.of("hull-soft", Outcome.MAJOR));
        BoatReport dear = report(asking(600.0, boat).withFindings(faults));
        double repairs = dear.condition().seriousRepairsLikely();
        double sound = dear.fair().sound();
        assertThat(repairs).isBetween(0.45 * sound, sound);

        assertThat(dear.rulings()).extracting(Ruling::rule).contains(Rule.REPAIRS);
        assertThat(report(asking(sound - repairs - 1, boat).withFindings(faults))
                        .rulings())
                .extracting(Ruling::rule)
                .doesNotContain(Rule.REPAIRS);
        assertThat(report(asking(sound - repairs + 1, boat).withFindings(faults))
                        .rulings())
                .extracting(Ruling::rule)
                .contains(Rule.REPAIRS);
        // with an assumed year and price new, what it is worth sound is a guess
        assertThat(report(asking(600.0, BoatFacts.of(BoatKind.SIT_ON_TOP)).withFindings(faults))
                        .rulings())
                .extracting(Ruling::rule)
                .doesNotContain(Rule.REPAIRS);
    }

    private static BoatReport report(CandidateData boat) {
        return APPRAISER
                .measure(Samples.facts(List.of(), boat), 2026, null, 64)
                .boats()
                .getFirst();
    }

    // ---- trust

    private static CandidateData offered(SellerKind seller, @Nullable Double price, BoatFacts boat, String... signs) {
        TreeMap<String, Boolean> signals = new TreeMap<>();
        Arrays.stream(signs).forEach(each -> signals.put(each, true));
        return CandidateData.of("Boat", boat.kind())
                .withBoat(boat)
                .withListing(new ListingFacts(price, seller, null, null, new TreeMap<>(), signals));
    }

    @Test
    void stopsNobodyForTheWayOfSellingAlone() {
        BoatFacts boat = facts(BoatKind.SIT_ON_TOP, 3.2, 0.76, 20.0, 140.0);

        assertThat(rules(UNKNOWN, List.of(), offered(SellerKind.REMOTE, null, boat)))
                .doesNotContain(Rule.FRAUD);
        assertThat(rules(UNKNOWN, List.of(), offered(SellerKind.REMOTE, null, boat, "hin-withheld")))
                .contains(Rule.FRAUD);
    }

    @Test
    void doesNotTakeAGiftForASignOfFraud() {
        BoatFacts boat = facts(BoatKind.SIT_ON_TOP, 3.2, 0.76, 20.0, 140.0);

        assertThat(report(offered(SellerKind.PRIVATE, 0.0, boat))
                        .trust()
                        .listing()
                        .concern())
                .isEqualTo(report(offered(SellerKind.PRIVATE, null, boat))
                        .trust()
                        .listing()
                        .concern());
    }

    @Test
    void stopsNobodyForAPriceThatIsLowAgainstAGuess() {
        // odds of fraud 0.03 / 0.97 x 3 for the account x 8 for the price: over the bound only with the price
        String[] signs = {"account-new"};
        BoatFacts known = facts(BoatKind.SIT_ON_TOP, 3.2, 0.76, 20.0, 140.0);

        assertThat(rules(UNKNOWN, List.of(), offered(SellerKind.PRIVATE, 50.0, known, signs)))
                .contains(Rule.FRAUD);
        assertThat(rules(
                        UNKNOWN,
                        List.of(),
                        offered(SellerKind.PRIVATE, 50.0, BoatFacts.of(BoatKind.SIT_ON_TOP), signs)))
                .doesNotContain(Rule.FRAUD);
    }
}
