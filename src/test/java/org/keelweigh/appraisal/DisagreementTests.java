package org.keelweigh.appraisal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.decision.Weights;
import org.keelweigh.shortlist.PersonData;

class DisagreementTests {

    private static Perspective sees(double cost, double lift, double[][] values, boolean... ruledOut) {
        Map<String, Double> points = new LinkedHashMap<>();
        points.put("cost", cost);
        points.put("lift", lift);
        return new Perspective(Optional.empty(), "Somebody", Weights.of(points), values, ruledOut);
    }

    @Test
    void putsTheDifferenceThatCanMoveMostFirst() {
        double[][] values = {{80, 50}, {20, 55}};

        List<Disagreement> all =
                Disagreement.of(List.of(sees(75, 25, values, false, false), sees(25, 75, values, false, false)));

        assertThat(all.getFirst().criterion()).isZero();
        assertThat(all.getFirst().gap()).isCloseTo(0.5, within(1e-12));
        assertThat(all.getFirst().points()).isCloseTo(30, within(1e-9));
        assertThat(all.getLast().points()).isCloseTo(2.5, within(1e-9));
    }

    @Test
    void takesTheSpreadOfTheDeciderWhoSeesTheBoatsFarthestApart() {
        Disagreement cost = Disagreement.of(List.of(
                        sees(75, 25, new double[][] {{80, 50}, {20, 50}}, false, false),
                        sees(25, 75, new double[][] {{90, 50}, {0, 50}}, false, false)))
                .getFirst();

        assertThat(cost.spread()).isEqualTo(90);
    }

    @Test
    void leavesOutBoatsThatAreRuledOut() {
        Perspective one = sees(50, 50, new double[][] {{80, 50}, {70, 50}, {0, 50}}, false, false, true);

        assertThat(one.spread(0)).isEqualTo(10);
    }

    @Test
    void standsWithoutAnyBoat() {
        Perspective none = sees(50, 50, new double[0][]);

        assertThat(none.ranking().leader()).isEmpty();
        assertThat(none.ranking().margin()).isEmpty();
        assertThat(none.spread(0)).isZero();
    }

    @Test
    void bringsPointsToAScaleOfHundredWithoutChangingShares() {
        Yardsticks yardsticks = Yardsticks.read(Catalogue.shipped());
        PersonData person = PersonData.named("Wren").withWeightSet("angler");

        var swings = yardsticks.swings(person);

        assertThat(swings.values().stream().mapToDouble(Double::doubleValue).max())
                .hasValue(100);
        assertThat(swings.get("stability") / swings.get("cost")).isCloseTo(14.0 / 16, within(0.01));
    }

    @Test
    void readsWhereTheCataloguesComeFrom() {
        List<CatalogueSource> all = CatalogueSource.all(Catalogue.shipped());

        assertThat(all)
                .filteredOn(each -> each.file().equals("checks.csv"))
                .singleElement()
                .satisfies(each -> {
                    assertThat(each.lines()).isEqualTo(80);
                    assertThat(each.estimates()).isEqualTo(80);
                    assertThat(each.sources()).anyMatch(source -> source.contains("33 CFR 181.25"));
                });
    }
}
