package org.keelweigh.appraisal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.shortlist.Person;

/** What is shown beside the ranking: the table, the smallest changes, the exchange of money for value, the cart. */
class ComparisonTests {

    private static final Measured ALIKE = Samples.threeAlike();

    private static SideBySide.Row row(Measured measured, String label) {
        return SideBySide.of(measured, measured.perspectives().getFirst()).stream()
                .filter(each -> each.label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void tellsBestAndWorstAmongBoatsThatAreNotRuledOut() {
        Measured measured = Samples.measured(
                List.of(),
                Samples.priced("Dear", BoatKind.SIT_ON_TOP, 900),
                Samples.priced("Cheap", BoatKind.SIT_ON_TOP, 400),
                Samples.stopped("Ruined"));

        assertThat(row(measured, "Five-year cost").cells())
                .extracting(SideBySide.Cell::mark)
                .containsExactly(SideBySide.Mark.WORST, SideBySide.Mark.BEST, SideBySide.Mark.PLAIN);
        assertThat(row(measured, "Easy cruising speed").cells().subList(0, 2))
                .extracting(SideBySide.Cell::mark)
                .containsOnly(SideBySide.Mark.ALIKE);
        assertThat(row(measured, "Length").cells())
                .allMatch(SideBySide.Cell::assumed)
                .allMatch(each -> each.text().endsWith(" m"));
    }

    @Test
    void showsEachDecidersOwnMeasuresTogetherAndOneAlone() {
        List<Person> people = List.of(Samples.person("Ann", "lift"), Samples.person("Ben", "cost"));
        Measured measured = Samples.measured(
                people, Samples.priced("One", BoatKind.CANOE, 500), Samples.priced("Two", BoatKind.SIT_INSIDE, 500));

        List<String> together = SideBySide.of(measured, measured.perspectives().getFirst()).stream()
                .map(SideBySide.Row::label)
                .toList();
        List<String> bens = SideBySide.of(measured, measured.perspectives().getLast()).stream()
                .map(SideBySide.Row::label)
                .toList();

        assertThat(together).contains("Lifting it on the car · Ann", "Lifting it on the car · Ben", "Five-year cost");
        assertThat(bens).contains("Lifting it on the car").doesNotContain("Lifting it on the car · Ann");
    }

    /** By hand: B leads 70 to 60; the weights at which both are level stand in the test. */
    @Test
    void tellsHowMuchWeightHasToMoveForARivalToComeFirst() {
        Perspective perspective = Samples.perspective(ALIKE, new double[][] {{100, 20}, {60, 80}, {10, 10}});

        List<CatchUp> rivals = CatchUp.of(ALIKE, perspective);

        // at weights t and 1 − t: 100 t + 20 (1 − t) = 60 t + 80 (1 − t) where t = 0.6, so a tenth moves
        assertThat(rivals.getFirst().rival()).isZero();
        assertThat(rivals.getFirst().change().orElseThrow().moved()).isCloseTo(0.1, within(1e-9));
        assertThat(rivals.getFirst().sentence())
                .isEqualTo(
                        "A would come first if 10 % of the weight moved: more on five-year cost, less on repair surprise.");
    }

    /** C is beaten by A on every criterion with a value; only weight on a criterion on which all have nothing makes them level. */
    @Test
    void saysThatABeatenRivalNeedsNearlyAllTheWeightElsewhere() {
        Perspective perspective = Samples.perspective(ALIKE, new double[][] {{100, 20}, {60, 80}, {10, 10}});

        assertThat(CatchUp.of(ALIKE, perspective).getLast().sentence())
                .startsWith("C would come first only if nearly all the weight lay");
    }

    /** With t of the weight on the first criterion, B passes the leader A at t = 8/11 and C, which stands between, at 3/4. */
    @Test
    void countsEveryBoatInTheWayAndNotTheLeaderAlone() {
        Perspective perspective = Samples.perspective(ALIKE, new double[][] {{50, 80}, {80, 0}, {60, 60}});

        CatchUp last = CatchUp.of(ALIKE, perspective).getLast();

        // B against A: 80 t ≥ 50 t + 80 (1 − t) from t = 8/11; B against C: 80 t ≥ 60 from t = 3/4
        assertThat(last.rival()).isEqualTo(1);
        assertThat(last.change().orElseThrow().moved()).isCloseTo(0.25, within(1e-9));
    }

    /** Half the weight on cost, 15 points for 900 of cost between 600 and 1500 dollars: one point of the rest is worth 60. */
    @Test
    void tellsWhatAPointIsWorthInMoney() {
        Measured measured = Samples.measured(
                List.of(Samples.person("Ann", "cost", "speed")),
                Samples.priced("One", BoatKind.INFLATABLE_BOARD, 100),
                Samples.priced("Two", BoatKind.INFLATABLE_BOARD, 900));
        Perspective perspective = measured.perspectives().getFirst();
        double cost = measured.boats().getFirst().cost().presentValue();

        OptionalDouble worth = TradeOff.moneyPerPoint(measured, perspective);

        assertThat(cost).isBetween(650.0, 1450.0);
        assertThat(worth.orElseThrow()).isCloseTo(60, within(1e-6));
    }

    @Test
    void hasNoExchangeRateWhereCostHasNoWeight() {
        Measured measured =
                Samples.measured(List.of(Samples.person("Ann", "speed")), Samples.priced("One", BoatKind.CANOE, 100));

        assertThat(TradeOff.moneyPerPoint(measured, measured.perspectives().getFirst()))
                .isEmpty();
    }

    @Test
    void findsOneCartForTheBoatsThatCanWin() {
        Measured measured =
                Samples.measured(List.of(), Samples.priced("One", BoatKind.SIT_ON_TOP, 500), Samples.stopped("Ruined"));

        assertThat(measured.oneCart(Samples.CATALOGUES.haul()))
                .contains("this boat")
                .containsPattern("It costs about \\$[0-9]+\\.$");
    }

    @Test
    void countsTheDifferenceAmongBoatsThatAreLeftOnly() {
        Perspective perspective =
                Samples.perspective(ALIKE, new double[][] {{50, 40}, {50, 60}, {0, 50}}, false, false, true);

        double[] shares = perspective.effectiveShares();

        assertThat(shares[0]).isZero();
        assertThat(shares[1]).isEqualTo(1);
    }
}
