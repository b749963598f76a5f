package org.keelweigh.fit;

import org.keelweigh.boat.Boat;
import org.keelweigh.quantity.Mass;

/**
 * How fast a boat goes at an easy effort: an estimate, told in two ways.
 *
 * <p>{@code kmPerH} is the trade's rule and the figure boats are compared by: the speed of a wave as long as the
 * waterline, {@code 4.5 √LWL} km/h with {@code LWL = 0.94 L}, times a share {@code min(0.70, 0.50 + 0.045 (L/B − 3))},
 * times 1.05 with pedals, 0.90 for inflatables, 0.95 for polyethylene with drain holes. The wave speed is theory (J. N.
 * Newman, <i>Marine Hydrodynamics</i>, 1977); the shares are common practice, no source, but they have been matched to
 * boats.
 *
 * <p>{@code frictionKmPerH} is the speed at which 15 W of useful power balances drag: friction by the ITTC-1957 line on
 * a wetted surface {@code 2.6 √(∇ LWL)}, and a share of it for waves and form, {@code (Fn/0.335)⁴}. Only its friction
 * part is published; power, surface and wave share are estimates, and it knows neither beam nor drain holes. It stands
 * beside as a check.
 *
 * @param limitKmPerH speed of a wave as long as the waterline, km/h; long light hulls pass it
 * @param kmPerH easy speed by the trade's rule, km/h
 * @param frictionKmPerH easy speed by friction, km/h
 * @param frictionN friction drag at {@code kmPerH}, newtons
 */
public record EasySpeed(double limitKmPerH, double kmPerH, double frictionKmPerH, double frictionN) {

    /** Speed in m/s of a deep-water wave of 1 m, {@code √(g/2π)}. */
    public static final double WAVE_M_PER_S = Math.sqrt(Mass.STANDARD_GRAVITY / (2 * Math.PI));

    private static final double WATERLINE_SHARE = 0.94;
    private static final double RULE_KM_PER_H = 4.5;
    private static final double EASY_W = 15;
    private static final double SURFACE = 2.6;
    private static final double WAVE_FROUDE = 0.335;
    private static final double FASTEST_M_PER_S = 6;
    private static final int HALVINGS = 50;

    /**
     * Estimates it.
     *
     * @param boat the boat
     * @param aboardKg people and gear aboard, kilograms, 0 or more
     */
    public static EasySpeed of(Boat boat, double aboardKg) {
        double lengthM = boat.lengthM().value();
        double waterlineM = WATERLINE_SHARE * lengthM;
        double limit = RULE_KM_PER_H * Math.sqrt(waterlineM);
        double slender = lengthM / boat.beamM().value();
        double share = Math.min(0.70, 0.50 + 0.045 * (slender - 3));
        double kmPerH = limit * share * factor(boat);
        double volumeM3 = (boat.riggedMassKg() + aboardKg) / FrictionLine.FRESH_KG_PER_M3;
        double wettedM2 = SURFACE * Math.sqrt(volumeM3 * waterlineM);
        return new EasySpeed(
                limit,
                kmPerH,
                3.6 * balance(waterlineM, wettedM2),
                FrictionLine.dragN(kmPerH / 3.6, waterlineM, wettedM2));
    }

    private static double factor(Boat boat) {
        double pedals = boat.drive().pedalled() ? 1.05 : 1;
        double inflated = boat.kind().rigid() ? 1 : 0.90;
        double holes = boat.material().polyethylene() && boat.kind().selfDraining() ? 0.95 : 1;
        return pedals * inflated * holes;
    }

    /**
     * Finds the speed at which drag times speed is the easy power; both rise with speed, so halving the interval finds
     * it.
     */
    private static double balance(double waterlineM, double wettedM2) {
        double slow = 0.1;
        double fast = FASTEST_M_PER_S;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (slow + fast) / 2;
            double froude = middle / Math.sqrt(Mass.STANDARD_GRAVITY * waterlineM);
            double dragN = FrictionLine.dragN(middle, waterlineM, wettedM2) * (1 + Math.pow(froude / WAVE_FROUDE, 4));
            if (dragN * middle > EASY_W) {
                fast = middle;
            } else {
                slow = middle;
            }
        }
        return (slow + fast) / 2;
    }
}
