package org.keelweigh.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.keelweigh.decision.Cases.Case;
import org.keelweigh.decision.Difference.Part;

class DifferenceTests {

    @Provide
    Arbitrary<Case> cases() {
        return Cases.cases();
    }

    @Test
    void sortsWhatSpeaksForAndAgainst() {
        // by hand from oracle/offices.csv: Addison minus Elton is 60, 0, 10, -25, -60, 20 per criterion
        Difference difference = Difference.between(Offices.values(), Offices.WEIGHTS, Offices.ADDISON, Offices.ELTON);
        assertThat(difference.pros()).extracting(Part::criterion).containsExactly(0, 2, 5);
        assertThat(difference.cons()).extracting(Part::criterion).containsExactly(4, 3);
        assertThat(difference.pros().getFirst().points()).isCloseTo(19.2, within(1e-9));
        assertThat(difference.margin()).isCloseTo(16.0, within(1e-9));
        assertThat(difference.decisivePros()).extracting(Part::criterion).containsExactly(0);
    }

    @Test
    void namesAllProsWhenTheyDoNotOutweigh() {
        double[][] values = {{60, 60, 0}, {50, 50, 100}};
        double[] third = {1 / 3.0, 1 / 3.0, 1 / 3.0};
        assertThat(Difference.between(values, third, 0, 1).decisivePros()).hasSize(2);
        assertThat(Difference.between(values, third, 0, 0).decisivePros()).isEmpty();
    }

    @Property
    void addsUpToTheMargin(@ForAll("cases") Case all) {
        double[] totals = AdditiveModel.totals(all.values(), all.weights());
        Difference difference = Difference.between(all.values(), all.weights(), 0, 1);
        assertThat(difference.margin()).isCloseTo(totals[0] - totals[1], within(1e-9));
        double parts = difference.pros().stream().mapToDouble(Part::points).sum()
                + difference.cons().stream().mapToDouble(Part::points).sum();
        assertThat(parts).isCloseTo(difference.margin(), within(1e-9));
    }

    @Test
    void rejectsAnAlternativeThatIsNotThere() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Difference.between(Offices.values(), Offices.WEIGHTS, 0, 7))
                .withMessageContaining("0 to 6");
    }
}
