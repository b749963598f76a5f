package org.keelweigh.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.keelweigh.boat.Boat;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.haul.ExampleBoats;
import org.keelweigh.shortlist.Display;
import org.keelweigh.shortlist.UnitSystem;

class FitLawTests {

    private static final Display METRIC = new Display(UnitSystem.METRIC, "USD");

    private static final FitCatalogue CATALOGUE = FitCatalogue.read(Catalogue.shipped());

    @Property(tries = 300)
    void pointsStayBetween0And100(
            @ForAll BoatKind kind,
            @ForAll @DoubleRange(min = 20, max = 250) double massKg,
            @ForAll PaddlingUse use,
            @ForAll Waters water) {
        Setting setting =
                new Setting(10.0, water, null, 2, 0.5, 5.0, 4.0, null, 4.2, 0.8, 0.9, null, null, 200.0, null, null);
        Aboard person = Aboard.of(new Paddler("Kim", massKg, 1.7, 0.4, use));
        FitAssessment fit = FitAssessment.of(CATALOGUE, ExampleBoats.usual(kind), List.of(person), setting, METRIC);
        assertThat(fit.people().getFirst().points().orElseThrow()).isBetween(0.0, 100.0);
        assertThat(fit.waterPoints().orElseThrow()).isBetween(0.0, 100.0);
        assertThat(fit.placePoints().orElseThrow()).isBetween(0.0, 100.0);
    }

    @Property
    void weakestLinkLiesBetweenWorstAndMean(
            @ForAll @Size(min = 1, max = 12) List<@DoubleRange(min = 0, max = 100) Double> points) {
        double fit = PersonFit.weakestLink(points).orElseThrow();
        double worst = points.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
        double mean = points.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        assertThat(fit).isBetween(worst - 1e-9, mean + 1e-9);
    }

    @Property
    void heavierPeopleNeverNeedLessBeam(
            @ForAll BoatKind kind,
            @ForAll PaddlingUse use,
            @ForAll @DoubleRange(min = 20, max = 200) double massKg,
            @ForAll @DoubleRange(min = 0, max = 50) double more) {
        assertThat(CATALOGUE.beam(kind, use, massKg + more).forMassM(massKg + more))
                .isGreaterThanOrEqualTo(CATALOGUE.beam(kind, use, massKg).forMassM(massKg));
    }

    @Property(tries = 200)
    void narrowerBoatOfTheSameLengthIsNeverSlower(
            @ForAll @DoubleRange(min = 0.5, max = 0.9) double beamM,
            @ForAll @DoubleRange(min = 0, max = 0.3) double more) {
        assertThat(EasySpeed.of(withBeam(beamM), 90).kmPerH())
                .isGreaterThanOrEqualTo(EasySpeed.of(withBeam(beamM + more), 90).kmPerH());
    }

    private static Boat withBeam(double beamM) {
        Boat like = ExampleBoats.CANOE;
        return ExampleBoats.boat(like.kind(), like.material(), like.drive(), 4.5, beamM, 20, 0, 0, 300);
    }
}
