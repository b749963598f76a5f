package org.keelweigh.haul;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class CartStaticsLawTests {

    @Property
    void forcesAndMomentsBalance(
            @ForAll @DoubleRange(min = 50, max = 1500) double weightN,
            @ForAll @DoubleRange(min = -0.5, max = 1) double a,
            @ForAll @DoubleRange(min = 0, max = 0.6) double centreUp,
            @ForAll @DoubleRange(min = 1.2, max = 3) double grip,
            @ForAll @DoubleRange(min = 0, max = 0.9) double gripUp,
            @ForAll @DoubleRange(min = 0, max = 0.6) double c,
            @ForAll @DoubleRange(min = 0, max = 0.5) double slope,
            @ForAll Heading heading) {
        CartForces f = new CartStatics(weightN, a, centreUp, grip, gripUp).forces(c, slope, heading);
        double drag = heading.sign() * c;
        double near = 1e-9 * weightN;
        assertThat(f.wheelN() + f.handN()).isCloseTo(weightN * Math.cos(slope), within(near));
        assertThat(f.pullN()).isCloseTo(weightN * Math.sin(slope) + drag * f.wheelN(), within(near));
        assertThat(grip * f.handN() - gripUp * f.pullN())
                .isCloseTo(weightN * (a * Math.cos(slope) - centreUp * Math.sin(slope)), within(near));
    }

    @Property
    void heavierBoatNeverNeedsLessPull(
            @ForAll @DoubleRange(min = 50, max = 1000) double weightN,
            @ForAll @DoubleRange(min = 0, max = 500) double more,
            @ForAll @DoubleRange(min = 0, max = 0.6) double c,
            @ForAll @DoubleRange(min = 0, max = 0.3) double slope) {
        double light = new CartStatics(weightN, 0.3, 0.25, 2, 0.4)
                .forces(c, slope, Heading.UPHILL)
                .pullN();
        double heavy = new CartStatics(weightN + more, 0.3, 0.25, 2, 0.4)
                .forces(c, slope, Heading.UPHILL)
                .pullN();
        assertThat(heavy).isGreaterThanOrEqualTo(light);
    }

    @Property
    void axleNearerTheCentreLightensTheHand(
            @ForAll @DoubleRange(min = 0.1, max = 0.8) double a,
            @ForAll @DoubleRange(min = 0, max = 1) double share,
            @ForAll @DoubleRange(min = 0, max = 0.5) double c) {
        CartStatics far = new CartStatics(500, a, 0.25, 1.5 + a, 0.4);
        CartStatics near = far.withAxleForward(a * share);
        assertThat(near.forces(c, 0, Heading.UPHILL).handN())
                .isLessThanOrEqualTo(far.forces(c, 0, Heading.UPHILL).handN() + 1e-9);
    }

    @Property
    void forcesScaleWithWeight(
            @ForAll @DoubleRange(min = 0.1, max = 10) double factor,
            @ForAll @DoubleRange(min = 0, max = 0.5) double c,
            @ForAll @DoubleRange(min = 0, max = 0.5) double slope,
            @ForAll Heading heading) {
        CartForces one = new CartStatics(300, 0.2, 0.3, 2, 0.4).forces(c, slope, heading);
        CartForces scaled = new CartStatics(300 * factor, 0.2, 0.3, 2, 0.4).forces(c, slope, heading);
        assertThat(scaled.wheelN()).isCloseTo(one.wheelN() * factor, within(1e-8 * factor));
        assertThat(scaled.handN()).isCloseTo(one.handN() * factor, within(1e-8 * factor));
        assertThat(scaled.pullN()).isCloseTo(one.pullN() * factor, within(1e-8 * factor));
    }

    @Property
    void axleShiftGivesTheHandLoadAskedFor(
            @ForAll @DoubleRange(min = -20, max = 150) double handN,
            @ForAll @DoubleRange(min = 0, max = 0.4) double c,
            @ForAll @DoubleRange(min = 0, max = 0.25) double slope,
            @ForAll Heading heading) {
        CartStatics boat = new CartStatics(500, 0.3, 0.25, 2, 0.4);
        CartStatics moved = boat.withAxleForward(boat.axleShiftM(handN, c, slope, heading));
        assertThat(moved.forces(c, slope, heading).handN()).isCloseTo(handN, within(1e-8));
    }
}
