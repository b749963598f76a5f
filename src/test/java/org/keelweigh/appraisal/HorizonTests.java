package org.keelweigh.appraisal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.cost.DiscountRate;
import org.keelweigh.decision.ValueFunction;
import org.keelweigh.shortlist.Candidate;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.FieldPath;
import org.keelweigh.shortlist.Shortlist;
import org.keelweigh.shortlist.ShortlistData;

/** Keeping a boat for one year or for twenty changes what is paid, never what a paid sum is called. */
class HorizonTests {

    private static Measured over(int years) {
        ShortlistData data = new FieldPath("trip.horizonYears").with(ShortlistData.named("Test"), years);
        Facts facts = new Facts(
                new Shortlist(Samples.LIST, 0, data),
                List.of(),
                List.of(
                        boat(Samples.priced("Cheap", BoatKind.SIT_ON_TOP, 500)),
                        boat(Samples.priced("Dear", BoatKind.SIT_ON_TOP, 1500))));
        return new Appraiser(Samples.CATALOGUES).measure(facts, 2026);
    }

    private static Candidate boat(CandidateData data) {
        return new Candidate(CandidateId.fresh(), Samples.LIST, 0, data);
    }

    /** Before, a cost over one year was multiplied by five, and all boats fell off the range: cost no longer mattered. */
    @ParameterizedTest
    @CsvSource({"1", "2", "5", "12"})
    void measuresTheMoneyThatIsPaid(int years) {
        Measured measured = over(years);
        int cost = measured.yardsticks().column(Measure.COST);
        for (BoatReport boat : measured.boats()) {
            assertThat(boat.measures().getFirst().get(cost))
                    .isCloseTo(boat.cost().presentValue(), within(1e-9));
        }
        Perspective perspective = measured.perspectives().getFirst();
        // 1000 more for the same boat takes at least a seventh of the range, whatever the years
        assertThat(perspective.value(0, cost) - perspective.value(1, cost)).isGreaterThan(14);
    }

    /**
     * Constructed, recomputed apart: UPV(1) = 0.980392 and UPV(5) = 4.713460 at 2 %, so 0.6 + 0.4 · 0.207999 = 0.683200; UPV(10) =
     * 8.982585 gives 1.362292. Without interest they are the years themselves: 0.68 and 1.4.
     */
    @ParameterizedTest
    @CsvSource({"1, 0.02, 0.683200", "10, 0.02, 1.362292", "1, 0, 0.68", "10, 0, 1.4", "5, 0.02, 1"})
    void stretchesTheRangeOfTheCostAlone(int years, double rate, double factor) {
        Yardsticks stretched = Samples.CATALOGUES.yardsticks().overYears(years, new DiscountRate(rate));
        for (int c = 0; c < stretched.all().size(); c++) {
            Yardstick before = Samples.CATALOGUES.yardsticks().all().get(c);
            Yardstick after = stretched.all().get(c);
            double expected = before.measure() == Measure.COST ? factor : 1;
            assertThat(after.swingFrom())
                    .isCloseTo(expected * before.swingFrom(), within(1e-3 * Math.abs(before.swingFrom())));
            ValueFunction.Point last =
                    after.criterion().valueFunction().points().getLast();
            assertThat(last.measure())
                    .isCloseTo(
                            expected
                                    * before.criterion()
                                            .valueFunction()
                                            .points()
                                            .getLast()
                                            .measure(),
                            within(0.01));
        }
    }

    @Test
    void namesTheCriterionByItsYears() {
        assertThat(name(1)).isEqualTo("Cost over 1 year");
        assertThat(name(3)).isEqualTo("Cost over 3 years");
        assertThat(name(5)).isEqualTo("Five-year cost");
        assertThat(over(3).yardsticks().all().getFirst().meaning()).contains("0.84 times the one for five years");
    }

    private static String name(int years) {
        return over(years).yardsticks().all().getFirst().name();
    }
}
