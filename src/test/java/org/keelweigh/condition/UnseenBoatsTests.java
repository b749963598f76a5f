package org.keelweigh.condition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.keelweigh.boat.Boat;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.Coded;
import org.keelweigh.boat.DriveKind;
import org.keelweigh.boat.HullMaterial;
import org.keelweigh.catalogue.Catalogue;

/** Holds the catalogue against sums drawn up apart from it, and the exact sums against an independent simulation. */
class UnseenBoatsTests {

    private static final InspectionCatalogue CATALOGUE = InspectionCatalogue.read(Catalogue.shipped());
    private static final double AGE_YEARS = 5;
    private static final double USE_DAYS = 90;
    private static final int FUTURES = 20_000;
    private static final long SEED = 20_250_514;

    @ParameterizedTest
    @CsvFileSource(resources = "/oracle/unseen-boats.csv", useHeadersInDisplayName = true)
    void agreesWithSumsDrawnUpApart(
            String kind,
            String material,
            String drive,
            int checks,
            double minutes,
            double stop,
            double stopPhysical,
            double mean,
            double median,
            double ninth) {
        Boat boat = SampleBoats.boat(
                Coded.parse(BoatKind.class, kind),
                Coded.parse(HullMaterial.class, material),
                Coded.parse(DriveKind.class, drive));
        ConditionAssessment unseen = ConditionAssessment.of(CATALOGUE, boat, AGE_YEARS, USE_DAYS, List.of());

        assertThat(unseen.progress().applicable()).isEqualTo(checks);
        assertThat(unseen.progress().minutesLeft()).isEqualTo(minutes);
        assertThat(stopChance(boat)).isCloseTo(stop, within(0.006));
        assertThat(unseen.hidden().stopChance()).isCloseTo(stopPhysical, within(0.006));
        assertThat(unseen.hidden().mean()).isCloseTo(mean, within(0.06 * mean));

        double[] simulated = simulate(boat);
        // The standard error of the mean is sd / sqrt(20000), 0.5 to 2.9 USD here; four of them.
        double standardError = standardDeviation(simulated) / Math.sqrt(FUTURES);
        assertThat(Arrays.stream(simulated).average().orElseThrow())
                .isCloseTo(unseen.hidden().mean(), within(4 * standardError));
        assertThat(simulated[FUTURES / 2]).isCloseTo(median, within(0.12 * median + 10));
        assertThat(simulated[FUTURES * 9 / 10]).isCloseTo(ninth, within(0.12 * ninth + 10));
    }

    private static double stopChance(Boat boat) {
        double standing = 1;
        for (Check check : CATALOGUE.applicable(boat)) {
            standing *= check.grade(Outcome.STOP)
                    .filter(grade -> grade.stop() == StopRule.YES)
                    .map(grade -> 1 - grade.chance())
                    .orElse(1.0);
        }
        return 1 - standing;
    }

    private static double[] simulate(Boat boat) {
        SplittableRandom random = new SplittableRandom(SEED);
        List<Check> checks = CATALOGUE.applicable(boat).stream()
                .filter(check -> check.group().hiddenInBoat())
                .toList();
        double[] spends = new double[FUTURES];
        for (int i = 0; i < FUTURES; i++) {
            Map<RepairGroup, Double> largest = new EnumMap<>(RepairGroup.class);
            for (Check check : checks) {
                largest.merge(check.group(), spend(check, random.nextDouble()), Math::max);
            }
            spends[i] =
                    largest.values().stream().mapToDouble(Double::doubleValue).sum();
        }
        Arrays.sort(spends);
        return spends;
    }

    private static double spend(Check check, double uniform) {
        double reached = 0;
        for (Grade grade : check.grades()) {
            reached += grade.chance();
            if (uniform < reached) {
                return grade.stop() == StopRule.YES ? 0 : grade.expectedSpend();
            }
        }
        return 0;
    }

    private static double standardDeviation(double[] values) {
        double mean = Arrays.stream(values).average().orElseThrow();
        double squares = Arrays.stream(values)
                .map(value -> (value - mean) * (value - mean))
                .sum();
        return Math.sqrt(squares / (values.length - 1));
    }
}
