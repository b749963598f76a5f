package org.keelweigh.appraisal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.shortlist.Display;
import org.keelweigh.shortlist.UnitSystem;

class LikenessTests {

    private static final Display METRIC = new Display(UnitSystem.METRIC, "USD");
    private static final Display US = new Display(UnitSystem.US, "USD");

    private static Yardstick yardstick(Measure measure) {
        Yardsticks all = Samples.CATALOGUES.yardsticks();
        return all.all().get(all.column(measure));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "STABILITY | 0.03 | 14 | These boats differ by 30 mm of a scale of 220 mm.",
                "SPEED | 0.1 | 9 | These boats differ by 0.4 km/h of a scale of 4.0 km/h.",
                "COST | 300 | 8 | These boats differ by $300 of a scale of $4,400.",
                "WAIT | 1 | 5 | These boats differ by 1 day of a scale of 44 days.",
                "EVIDENCE | 0.05 | 8 | These boats differ by 5.0 percentage points of a scale of 75 percentage points.",
                "LIFT | 0.1 | 11 | These boats differ by 0.10 of your limit of a scale of 1.30 of your limit.",
                "DELIGHT | 1 | 10 | These boats differ by 1 point of a scale of 10 points.",
            })
    void warnsOfANarrowStepInWhatItIsMeasuredIn(Measure measure, double difference, double points, String words) {
        Likeness likeness = new Likeness(yardstick(measure), difference, points);

        assertThat(likeness.share()).isLessThan(Likeness.NARROW);
        assertThat(likeness.warning(METRIC))
                .hasValue(words + " A weight is for the whole scale, so it hardly matters here.");
    }

    @Test
    void speaksInTheReadersUnits() {
        assertThat(new Likeness(yardstick(Measure.STABILITY), 0.0254, 12)
                        .warning(US)
                        .orElseThrow())
                .startsWith("These boats differ by 1.0 in of a scale of 8.7 in.");
    }

    @Test
    void saysThatTheWeightCountsWhereTheScaleIsSteep() {
        // 5 to 10 % chance of a dud: a sixth of the scale, but 75 down to 40 points.
        assertThat(new Likeness(yardstick(Measure.WALK_RISK), 0.05, 35)
                        .warning(METRIC)
                        .orElseThrow())
                .contains("steep")
                .contains("35 of 100 points")
                .doesNotContain("hardly");
    }

    @Test
    void saysThatTheWeightHardlyCountsWhereTheScaleIsFlat() {
        assertThat(new Likeness(yardstick(Measure.COST), 900, 15)
                        .warning(METRIC)
                        .orElseThrow())
                .contains("flat", "15 of 100 points", "hardly matters");
    }

    @Test
    void isSilentWhereTheBoatsDifferEnough() {
        assertThat(new Likeness(yardstick(Measure.COST), 0.2 * 4400, 20).warning(METRIC))
                .isEmpty();
    }

    @Test
    void saysWhereNothingDiffers() {
        assertThat(new Likeness(yardstick(Measure.COST), 0, 0).warning(METRIC).orElseThrow())
                .contains("do not differ");
    }

    @Test
    void measuresWithinTheScaleOnly() {
        Measured measured = Samples.measured(
                List.of(),
                Samples.priced("Dear", BoatKind.SIT_ON_TOP, 40_000),
                Samples.priced("Dearer", BoatKind.SIT_ON_TOP, 90_000),
                Samples.stopped("Ruled out"));
        Perspective only = measured.perspectives().getFirst();
        int cost = measured.yardsticks().column(Measure.COST);

        // Both lie far beyond the dear end of the scale, and the boat that is ruled out does not count.
        assertThat(measured.likeness(only, cost).orElseThrow().difference()).isCloseTo(0, within(1e-9));
    }

    @Test
    void countsWhateverOneOfThemSeesWhenAllLookTogether() {
        Measured measured = Samples.measured(
                List.of(Samples.person("Ann"), Samples.person("Ben")),
                Samples.priced("One", BoatKind.SIT_ON_TOP, 500),
                Samples.priced("Two", BoatKind.INFLATABLE_BOARD, 500));
        int lift = measured.yardsticks().column(Measure.LIFT);
        List<Perspective> all = measured.perspectives();

        double together = measured.likeness(all.getFirst(), lift).orElseThrow().difference();
        double widest = all.subList(1, 3).stream()
                .mapToDouble(each -> measured.likeness(each, lift).orElseThrow().difference())
                .max()
                .orElseThrow();

        assertThat(together).isEqualTo(widest).isPositive();
    }

    @Test
    void hasNothingToSayOfOneBoat() {
        Measured measured = Samples.measured(List.of(), Samples.priced("Only", BoatKind.SIT_ON_TOP, 500));

        assertThat(measured.likeness(measured.perspectives().getFirst(), 0)).isEqualTo(Optional.empty());
    }
}
