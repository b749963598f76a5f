package org.keelweigh.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
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
        assertThat(SHIPPED.acceptChance(880, 1000, SellerKind.PRIVATE)).isCloseTo(0.5, within(1e-12));
        assertThat(SHIPPED.acceptChance(940, 1000, SellerKind.PRIVATE)).isCloseTo(0.841345, within(1e-6));
        assertThat(SHIPPED.acceptChance(760, 1000, SellerKind.PRIVATE)).isCloseTo(0.022750, within(1e-6));
    }

    @Property
    void likesAHigherOfferBetter(
            @ForAll @DoubleRange(min = 0, max = 1500) double offer,
            @ForAll @DoubleRange(min = 0, max = 500) double more,
            @ForAll SellerKind seller) {
        double chance = SHIPPED.acceptChance(offer, 1000, seller);
        assertThat(chance).isBetween(0.0, 1.0);
        assertThat(SHIPPED.acceptChance(offer + more, 1000, seller)).isGreaterThanOrEqualTo(chance);
    }

    @Property
    void keepsTheThreePricesInOrder(
            @ForAll @DoubleRange(min = 1, max = 3000) double asking,
            @ForAll @DoubleRange(min = 0, max = 3000) double fair,
            @ForAll @DoubleRange(min = 1, max = 3000) double tie,
            @ForAll @DoubleRange(min = 1, max = 3000) double budget,
            @ForAll boolean faults) {
        OfferPlan plan = SHIPPED.plan(asking, fair, tie, budget, faults).orElseThrow();
        assertThat(plan.opening()).isNotNegative().isLessThanOrEqualTo(plan.target());
        assertThat(plan.target()).isLessThanOrEqualTo(plan.walkAway());
        assertThat(plan.walkAway()).isLessThanOrEqualTo(Math.min(asking, Math.min(tie, budget)));
    }

    @Test
    void opensNotTooLowWithoutFaults() {
        assertThat(SHIPPED.plan(1000, 700, 900, 2000, true).orElseThrow())
                .isEqualTo(new OfferPlan(0.92 * 700, 700, 900));
        assertThat(SHIPPED.plan(1000, 850, 900, 2000, false).orElseThrow().opening())
                .isEqualTo(800);
    }

    @Test
    void offersNothingWhenNoPriceIsWorthPaying() {
        assertThat(SHIPPED.plan(1000, 700, -50, 2000, false)).isEmpty();
        assertThat(SHIPPED.plan(1000, 700, 900, 0, false)).isEmpty();
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
        assertThatIllegalArgumentException().isThrownBy(() -> SHIPPED.acceptChance(5, 0, SellerKind.SHOP));
    }
}
