package org.keelweigh.haul;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.keelweigh.quantity.Mass;

class CartStaticsTests {

    private static final double TOLERANCE_N = 0.0002;

    private static CartStatics boat(double massKg, double a, double centreUp, double grip, double gripUp) {
        return new CartStatics(massKg * Mass.STANDARD_GRAVITY, a, centreUp, grip, gripUp);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/oracle/cart-statics.csv", useHeadersInDisplayName = true)
    void agreesWithWorkedCases(
            String name,
            double massKg,
            double a,
            double centreUp,
            double grip,
            double gripUp,
            double c,
            double slopeDeg,
            int direction,
            double weightN,
            double wheelN,
            double handN,
            double pullN,
            double magnitudeN) {
        CartStatics statics = boat(massKg, a, centreUp, grip, gripUp);
        CartForces forces =
                statics.forces(c, Math.toRadians(slopeDeg), direction > 0 ? Heading.UPHILL : Heading.DOWNHILL);
        assertThat(statics.weightN()).isCloseTo(weightN, within(TOLERANCE_N));
        assertThat(forces.wheelN()).as(name).isCloseTo(wheelN, within(TOLERANCE_N));
        assertThat(forces.handN()).isCloseTo(handN, within(TOLERANCE_N));
        assertThat(forces.pullN()).isCloseTo(pullN, within(TOLERANCE_N));
        assertThat(forces.magnitudeN()).isCloseTo(magnitudeN, within(TOLERANCE_N));
        assertThat(forces.perWheelN(2)).isCloseTo(wheelN / 2, within(TOLERANCE_N));
    }

    @ParameterizedTest
    @EnumSource(Heading.class)
    void agreesWithLinearSolveOfEquilibrium(Heading heading) {
        double c = heading.sign() * 0.17;
        double slope = Math.toRadians(8);
        CartStatics boat = boat(58, 0.31, 0.27, 1.9, 0.48);
        CartForces forces = boat.forces(0.17, slope, heading);
        // Unknowns N, F, P. Rows: normal, along, moments about the axle.
        double[][] lhs = {{1, 1, 0}, {-c, 0, 1}, {0, 1.9, -0.48}};
        double w = boat.weightN();
        double[] rhs = {w * Math.cos(slope), w * Math.sin(slope), w * (0.31 * Math.cos(slope) - 0.27 * Math.sin(slope))
        };
        RealVector solved =
                new LUDecomposition(new Array2DRowRealMatrix(lhs)).getSolver().solve(new ArrayRealVector(rhs));
        assertThat(new double[] {forces.wheelN(), forces.handN(), forces.pullN()})
                .containsExactly(solved.toArray(), within(1e-9));
    }

    @Test
    void findsAxleThatNeedsNoLift() {
        // Balance case: 45 kg, centre 0.2 m and grip 0.5 m above the axle, c 0.07, 1 in 12: a* = -0.06 m.
        double slope = Math.atan(1 / 12.0);
        CartStatics boat = boat(45, 0, 0.2, 2.5, 0.5);
        assertThat(boat.axleShiftM(0, 0.07, slope, Heading.UPHILL)).isCloseTo(0.06, within(1e-9));
    }

    @Test
    void findsAxleForFiveKilogramsInTheHand() {
        // Static, level: 45 kg, grip 2.5 m ahead of the axle, 5 kg in the hand: a = 5/45 * 2.5 = 0.277778 m.
        CartStatics boat = boat(45, 0.277778, 0, 2.5, 0);
        assertThat(boat.forces(0, 0, Heading.UPHILL).handN()).isCloseTo(5 * Mass.STANDARD_GRAVITY, within(1e-4));
    }

    @Test
    void tipsBackWhereTheWeightPassesBehindTheAxle() {
        // Tip-back angle atan(a/h) = 51.340192 degrees for a 0.25 m, h 0.2 m, grip at axle height.
        CartStatics boat = boat(45, 0.25, 0.2, 2.5, 0);
        assertThat(boat.forces(0, Math.toRadians(51.340192), Heading.UPHILL).handN())
                .isCloseTo(0, within(1e-5));
        assertThat(boat.forces(0, Math.toRadians(52), Heading.UPHILL).pressesDown())
                .isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        // Common practice, no source: load kg, lever m, axle behind centre m, c, slope %, wheels N, hand N, pull N
        "60,1.6,0.4,0.03,2,471,118,26",
        "60,1.6,0.4,0.02,12,471,118,79",
        "60,1.6,0.4,0.40,0,471,118,188",
        "60,1.6,0.4,0.12,0,471,118,57",
        "25,1.5,0.3,0.03,2,204,41,11",
        "42,1.6,0.35,0.12,5,338,74,61"
    })
    void agreesWithFlatRuleOfTheTrade(
            double massKg,
            double lever,
            double behind,
            double c,
            double percent,
            double wheelN,
            double handN,
            double pullN) {
        CartStatics boat = boat(massKg, behind, 0, lever + behind, 0);
        CartForces level = boat.forces(c, 0, Heading.UPHILL);
        assertThat(level.wheelN()).isCloseTo(wheelN, within(1.0));
        assertThat(level.handN()).isCloseTo(handN, within(1.0));
        assertThat(boat.forces(c, Math.atan(percent / 100), Heading.UPHILL).pullN())
                .isCloseTo(pullN, within(1.0));
    }

    @Test
    void reportsWheelsThatLeaveTheGround() {
        assertThat(boat(30, 2.6, 0.2, 2.5, 0.3).forces(0.05, 0, Heading.UPHILL).wheelsLift())
                .isTrue();
    }

    @ParameterizedTest
    @CsvSource({"0,2.5", "-1,2.5", "NaN,2.5", "400,0", "400,-1", "400,Infinity"})
    void rejectsImpossibleBoats(double weightN, double gripM) {
        assertThatIllegalArgumentException().isThrownBy(() -> new CartStatics(weightN, 0.2, 0.2, gripM, 0.3));
    }

    @ParameterizedTest
    @CsvSource({"-0.1,0", "NaN,0", "0.1,-0.1", "0.1,1.2", "0.1,NaN"})
    void rejectsImpossibleGround(double c, double slope) {
        CartStatics boat = boat(40, 0.2, 0.2, 2, 0.3);
        assertThatIllegalArgumentException().isThrownBy(() -> boat.forces(c, slope, Heading.UPHILL));
    }

    @Test
    void rejectsGripSoHighThatDragTurnsTheBoatOver() {
        CartStatics boat = boat(40, 0.2, 0.2, 0.2, 1);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> boat.forces(0.5, 0, Heading.DOWNHILL))
                .withMessageContaining("lever arm");
    }

    @ParameterizedTest
    @CsvSource({
        // Common practice, no source: 470 N on a kerb of 30 mm needs 402, 301, 282 N with wheels of 250, 380, 420 mm.
        "0.250,402",
        "0.380,301",
        "0.420,282"
    })
    void agreesWithKerbRuleOfTheTrade(double diameterM, double pullN) {
        assertThat(KerbStep.pullN(470, diameterM / 2, 0.03)).isCloseTo(pullN, within(1.0));
    }

    @Test
    void cannotRollOverAStepAsHighAsTheWheelsCentre() {
        assertThat(KerbStep.pullN(470, 0.1, 0.1)).isInfinite();
    }
}
