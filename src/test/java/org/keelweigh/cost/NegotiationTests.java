package org.keelweigh.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.condition.SellerKind;
import org.keelweigh.quantity.Estimate;

/** The shares are common practice, no source. */
class NegotiationTests {

    private static final Negotiation SHIPPED = Negotiation.read(Catalogue.shipped());

    @ParameterizedTest
    @CsvSource({
        "PRIVATE, 5, , 0, false, 0.92",
        "SHOP, 5, , 0, false, 0.97",
        "PRIVATE, 41, , 0, false, 0.89",
        "PRIVATE, 400, , 0, false, 0.86",
        "PRIVATE, 5, 11, 0, false, 0.865",
        "PRIVATE, 5, 5, 3, false, 0.96",
        "PRIVATE, 5, 5, 0, true, 0.90"
    })
    void expectsThePaidShare(SellerKind seller, int days, Integer month, int buyers, boolean cash, double share) {
        assertThat(SHIPPED.paidShare(new Dealing(seller, days, month, buyers, cash))
                        .likely())
                .isCloseTo(share, within(1e-9));
    }

    /** Half of private sellers take 88 %; one deviation of 6 % more or less moves that as the normal table says. */
    @Test
    void followsTheNormalTable() {
        assertThat(SHIPPED.acceptChance(880, 1000, dealing(SellerKind.PRIVATE, 0)))
                .isCloseTo(0.5, within(1e-12));
        assertThat(SHIPPED.acceptChance(940, 1000, dealing(SellerKind.PRIVATE, 0)))
                .isCloseTo(0.841345, within(1e-6));
        assertThat(SHIPPED.acceptChance(760, 1000, dealing(SellerKind.PRIVATE, 0)))
                .isCloseTo(0.022750, within(1e-6));
    }

    @Property
    void likesAHigherOfferBetter(
            @ForAll @DoubleRange(min = 0, max = 1500) double offer,
            @ForAll @DoubleRange(min = 0, max = 500) double more,
            @ForAll SellerKind seller) {
        double chance = SHIPPED.acceptChance(offer, 1000, dealing(seller, 0));
        assertThat(chance).isBetween(0.0, 1.0);
        assertThat(SHIPPED.acceptChance(offer + more, 1000, dealing(seller, 0))).isGreaterThanOrEqualTo(chance);
    }

    @Property
    void keepsTheThreePricesInOrder(
            @ForAll @DoubleRange(min = 1, max = 3000) double asking,
            @ForAll @DoubleRange(min = 0, max = 3000) double fair,
            @ForAll @DoubleRange(min = 1, max = 3000) double tie,
            @ForAll @DoubleRange(min = 1, max = 3000) double budget,
            @ForAll boolean faults) {
        OfferPlan plan = plan(asking, fair, tie, budget, faults).orElseThrow();
        assertThat(plan.opening()).isNotNegative().isLessThanOrEqualTo(plan.target());
        assertThat(plan.target()).isLessThanOrEqualTo(plan.walkAway());
        assertThat(plan.walkAway()).isLessThanOrEqualTo(Math.min(asking, Math.min(tie, budget)));
    }

    @Test
    void opensNotTooLowWithoutFaults() {
        OfferPlan faulty = plan(1000, 700, 900, 2000, true).orElseThrow();
        assertThat(faulty.opening()).isCloseTo(0.92 * 700, within(1e-9));
        assertThat(faulty.target()).isEqualTo(700);
        assertThat(faulty.walkAway()).isEqualTo(900);
        assertThat(plan(1000, 850, 900, 2000, false).orElseThrow().opening()).isEqualTo(800);
    }

    /**
     * Half of private sellers take 880 of 1000, so 900 is taken with Φ(0.02/0.06) = Φ(0.3333) = 0.6306; after 41 days on offer (three
     * whole weeks beyond two, 3 %) with Φ(0.05/0.06) = Φ(0.8333) = 0.7977.
     */
    @Test
    void tellsHowLikelyTheWalkAwayPriceIsTaken() {
        assertThat(plan(1000, 850, 900, 2000, false).orElseThrow().chanceTaken())
                .isCloseTo(0.6306, within(1e-4));
        OfferPlan late = SHIPPED.plan(1000, 850, 900, 2000, List.of(), dealing(SellerKind.PRIVATE, 41))
                .orElseThrow();
        assertThat(late.chanceTaken()).isCloseTo(0.7977, within(1e-4));
        assertThat(late.usuallyPaid().likely()).isCloseTo(890, within(1e-9));
    }

    /** A repair of 100 with a quote takes 60 off in a private seller's mind: 840 against 940 is 0.8936, Φ(0.2270) = 0.5898. */
    @Test
    void reckonsWithTheArguments() {
        assertThat(plan(1000, 850, 840, 2000, true).orElseThrow().chanceTaken()).isCloseTo(0.5898, within(1e-4));
    }

    /** 854 against 2200 is 39 % of the price: no seller takes it, and without faults nobody opens under 80 %. */
    @Test
    void saysWhereNoOfferIsWorthMaking() {
        assertThat(plan(2200, 1950, 854, 5000, false).orElseThrow().worthMaking())
                .isFalse();
        assertThat(plan(2200, 1950, 854, 5000, true).orElseThrow().worthMaking())
                .isFalse();
        assertThat(plan(2200, 1950, 1800, 5000, false).orElseThrow().worthMaking())
                .isTrue();
        assertThat(plan(1000, 850, 790, 2000, false).orElseThrow().worthMaking())
                .as("taken in 1 of 15 cases, but under the least first offer")
                .isFalse();
    }

    @Test
    void offersNothingWhenNoPriceIsWorthPaying() {
        assertThat(plan(1000, 700, -50, 2000, false)).isEmpty();
        assertThat(plan(1000, 700, 900, 0, false)).isEmpty();
    }

    private static Dealing dealing(SellerKind seller, int days) {
        return new Dealing(seller, days, null, 0, false);
    }

    private static Optional<OfferPlan> plan(double asking, double fair, double tie, double budget, boolean faults) {
        List<Argument> arguments = faults
                ? SHIPPED.weigh(
                        List.of(new Argument("crack", Argument.Basis.DOCUMENTED, Estimate.exactly(100), null)),
                        SellerKind.PRIVATE)
                : List.of();
        return SHIPPED.plan(asking, fair, tie, budget, arguments, dealing(SellerKind.PRIVATE, 0));
    }

    @Test
    void weighsEachArgument() {
        Estimate cost = new Estimate(50, 100, 300);
        List<Argument> weighed = SHIPPED.weigh(
                List.of(
                        new Argument("worn gears", Argument.Basis.DOCUMENTED, cost, null),
                        new Argument("perhaps a soft spot", Argument.Basis.SUSPECTED, cost, null),
                        new Argument("no life jacket", Argument.Basis.MISSING_KIT, cost, null)),
                SellerKind.PRIVATE);
        assertThat(weighed.get(0).off()).isEqualTo(new Estimate(30, 60, 100));
        assertThat(weighed.get(1).off())
                .isNotNull()
                .extracting(Estimate::likely)
                .isEqualTo(0.25 * 125);
        assertThat(weighed.get(2).off())
                .isNotNull()
                .extracting(Estimate::likely)
                .isEqualTo(35.0);
        assertThat(SHIPPED.weigh(weighed, SellerKind.SHOP).getFirst().off())
                .isNotNull()
                .extracting(Estimate::likely)
                .isEqualTo(30.0);
    }

    @Test
    void refusesImpossibleDealings() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Dealing(SellerKind.SHOP, -1, null, 0, false));
        assertThatIllegalArgumentException().isThrownBy(() -> SHIPPED.acceptChance(5, 0, dealing(SellerKind.SHOP, 0)));
    }
}
