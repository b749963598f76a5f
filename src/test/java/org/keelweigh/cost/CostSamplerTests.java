package org.keelweigh.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.DriveKind;
import org.keelweigh.boat.HullMaterial;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.quantity.Estimate;

class CostSamplerTests {

    private static final Depreciation DEPRECIATION = Depreciation.read(Catalogue.shipped());
    private static final PriceBook BOOK = PriceBook.read(Catalogue.shipped());
    private static final OwnershipFacts FACTS = OwnershipFacts.of(
                    BoatKind.PEDAL_KAYAK, HullMaterial.POLYETHYLENE, DriveKind.PROPELLER, 900, 2650, 6)
            .withNeeds(OwnershipTests.everyNeed())
            .withUse(18, 40, 15, false);
    private static final CostSampler SAMPLER = CostSampler.of(FACTS, BOOK, DEPRECIATION);

    @Test
    void equalsTheLinesWhenEveryEstimateIsCertain() {
        PriceBook certain = new PriceBook(BOOK.items().stream()
                .map(each -> each.withEach(Estimate.exactly(each.each().likely()), each.why()))
                .toList());
        CostSampler sampler = CostSampler.of(FACTS, certain, DEPRECIATION);
        double lines = Ownership.cost(FACTS, certain, DEPRECIATION).presentValue();
        double middle = sampler.resaleSigma() / 2;
        double[] draws = draws(sampler, new SplittableRandom(1));
        assertThat(sampler.presentValue(900, 18, draws, middle)).isCloseTo(lines, within(1e-6));
    }

    /** 40 000 seeded futures, within four standard errors. */
    @Test
    void hasTheMeanOfTheLines() {
        SplittableRandom random = new SplittableRandom(20_250);
        int n = 40_000;
        double sum = 0;
        double squares = 0;
        double expected = Ownership.cost(FACTS, BOOK, DEPRECIATION).presentValue();
        for (int i = 0; i < n; i++) {
            double x = SAMPLER.presentValue(900, 18, draws(SAMPLER, random), random.nextGaussian()) - expected;
            sum += x;
            squares += x * x;
        }
        double standardError = Math.sqrt(squares / n / n);
        assertThat(sum / n).isCloseTo(0, within(4 * standardError));
        assertThat(standardError).isLessThan(5);
    }

    @Property(tries = 100)
    void endsTheYearsAtThePresentValue(
            @ForAll long seed,
            @ForAll @DoubleRange(min = 0, max = 3000) double price,
            @ForAll @DoubleRange(min = 0, max = 200) double outings) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] draws = draws(SAMPLER, random);
        double z = random.nextGaussian();
        double[] spent = SAMPLER.spentByYear(price, outings, draws, z);
        assertThat(spent).hasSize(6);
        assertThat(spent[5]).isCloseTo(SAMPLER.presentValue(price, outings, draws, z), within(1e-6));
        for (int year = 1; year < 5; year++) {
            assertThat(spent[year]).isGreaterThanOrEqualTo(spent[year - 1]);
        }
    }

    @Property(tries = 100)
    void risesStraightWithThePrice(@ForAll long seed, @ForAll @DoubleRange(min = 0, max = 3000) double price) {
        double[] draws = draws(SAMPLER, new SplittableRandom(seed));
        double slope = SAMPLER.priceSlope(draws);
        assertThat(slope).isBetween(1.0, 1.10);
        assertThat(SAMPLER.presentValue(price + 100, 18, draws, 0.3) - SAMPLER.presentValue(price, 18, draws, 0.3))
                .isCloseTo(100 * slope, within(1e-6));
    }

    @Property(tries = 100)
    void costsMoreForADearerDraw(@ForAll long seed, @ForAll @DoubleRange(min = 0, max = 1) double up) {
        double[] draws = draws(SAMPLER, new SplittableRandom(seed));
        double before = SAMPLER.presentValue(900, 18, draws, 0);
        double[] dearer = Arrays.stream(draws).map(u -> u + up * (1 - u)).toArray();
        assertThat(SAMPLER.presentValue(900, 18, dearer, 0)).isGreaterThanOrEqualTo(before - 1e-9);
        assertThat(SAMPLER.presentValue(900, 18, draws, 1)).isLessThan(before);
    }

    @Test
    void sharesFeesButNotRepairs() {
        List<String> shared = new ArrayList<>();
        List<String> own = new ArrayList<>();
        for (UncertainItem each : SAMPLER.items()) {
            (each.shared() ? shared : own).add(each.id());
        }
        assertThat(shared).contains("launch-parking", "water-drive", "vest");
        assertThat(own).contains("unplanned-pedal", "drive-service-prop").doesNotContain("unplanned-laminate");
    }

    @Test
    void spreadsTheResaleOfWoodMoreThanOfPlastic() {
        OwnershipFacts wood = OwnershipFacts.of(BoatKind.CANOE, HullMaterial.WOOD, DriveKind.NONE, 900, 3800, 6);
        double widely = CostSampler.of(wood, BOOK, DEPRECIATION).resaleSigma();
        double closely = SAMPLER.resaleSigma();
        assertThat(Math.sqrt(Math.expm1(widely * widely))).isCloseTo(0.22, within(1e-12));
        assertThat(Math.sqrt(Math.expm1(closely * closely))).isCloseTo(0.12, within(1e-12));
    }

    private static double[] draws(CostSampler sampler, SplittableRandom random) {
        return random.doubles(sampler.items().size()).toArray();
    }
}
