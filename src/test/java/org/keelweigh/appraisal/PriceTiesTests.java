package org.keelweigh.appraisal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.keelweigh.boat.BoatKind;

class PriceTiesTests {

    private static final double HALF_A_POINT = 0.5;

    private static List<PriceTies.PriceTie> ties(Measured measured) {
        return PriceTies.of(measured, measured.perspectives().getFirst());
    }

    /** The tie price is put in as the asking price: measured anew, the boat's cost brings both totals together. */
    @Test
    void findsThePriceAtWhichMeasuringAnewGivesATie() {
        Measured before = Samples.measured(
                List.of(),
                Samples.priced("One", BoatKind.SIT_ON_TOP, 500),
                Samples.priced("Other", BoatKind.SIT_ON_TOP, 800));
        PriceTies.PriceTie tie = ties(before).get(1);
        double at = ((Tie.At) tie.tie().orElseThrow()).price();
        Measured after = Samples.measured(
                List.of(),
                Samples.priced("One", BoatKind.SIT_ON_TOP, 500),
                Samples.priced("Other", BoatKind.SIT_ON_TOP, at));

        Perspective perspective = before.perspectives().getFirst();
        int cost = before.yardsticks().column(Measure.COST);
        double change = after.perspectives().getFirst().value(1, cost) - perspective.value(1, cost);
        double total = perspective.ranking().total(1) + perspective.share(cost) * change;

        assertThat(at).isLessThan(800);
        assertThat(total).isCloseTo(perspective.ranking().total(0), within(HALF_A_POINT));
        assertThat(tie.sentence()).contains("Other ties with One at $").contains("less than now");
    }

    @Test
    void namesNoPriceForABoatThatIsRuledOut() {
        Measured measured = Samples.measured(
                List.of(), Samples.stopped("Ruined"), Samples.priced("Sound", BoatKind.SIT_ON_TOP, 900));

        assertThat(ties(measured).getFirst().tie()).isEmpty();
        assertThat(ties(measured).getFirst().sentence()).contains("ruled out");
        assertThat(ties(measured).getLast().tie()).get().isInstanceOf(Tie.NoOther.class);
    }

    @Test
    void saysThatNoPriceHelpsWhereCostHasNoWeight() {
        Measured measured = Samples.measured(
                List.of(Samples.person("Ann", "speed")),
                Samples.priced("Fast", BoatKind.CANOE, 900),
                Samples.priced("Slow", BoatKind.SIT_ON_TOP, 900));

        assertThat(ties(measured).getFirst().tie()).get().isInstanceOf(Tie.AtAnyPrice.class);
        assertThat(ties(measured).getFirst().sentence()).startsWith("Cost has no weight here");
        assertThat(ties(measured).getLast().tie()).get().isInstanceOf(Tie.AtNoPrice.class);
        assertThat(ties(measured).getLast().sentence()).startsWith("Cost has no weight here");
    }
}
