package org.keelweigh.shortlist;

import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.Map;
import org.keelweigh.quantity.FigureWriter;
import org.keelweigh.quantity.Force;
import org.keelweigh.quantity.Length;
import org.keelweigh.quantity.Mass;
import org.keelweigh.quantity.Speed;

/**
 * Writes figures the way people read them: in their units, with the unit beside the number.
 *
 * @param units the units people read
 * @param currency the ISO 4217 code of the money
 */
public record Display(UnitSystem units, String currency) implements FigureWriter {

    private static final Map<String, String> SIGNS =
            Map.of("USD", "$", "EUR", "€", "GBP", "£", "CAD", "C$", "AUD", "A$");
    private static final double INCHES_PER_FOOT = 12;
    private static final double FEET_WORTH_A_MILE = 1000;
    private static final double FASTEST_BY_HAND = 15;
    private static final double M_PER_KM = 1000;
    private static final double METRES_WORTH_A_KILOMETRE = 2000;

    /** Tells how a shortlist is to be read. */
    public static Display of(Shortlist shortlist) {
        return new Display(shortlist.data().units(), shortlist.data().currency());
    }

    /** Writes a mass in kilograms, to a tenth when small. */
    @Override
    public String mass(double kg) {
        return us() ? number(new Mass(kg).pounds(), kg < 10 ? 1 : 0) + " lb" : number(kg, kg < 30 ? 1 : 0) + " kg";
    }

    /** Writes a boat's or room's length: metres to the centimetre, or feet and inches. */
    @Override
    public String length(double m) {
        if (!us()) {
            return number(m, 2) + " m";
        }
        long inches = Math.round(new Length(m).inches());
        return inches / (long) INCHES_PER_FOOT + " ft " + inches % (long) INCHES_PER_FOOT + " in";
    }

    /** Writes a breadth or depth: centimetres, or inches. */
    public String breadth(double m) {
        return us() ? number(new Length(m).inches(), 1) + " in" : number(m * 100, 0) + " cm";
    }

    /** Writes a small length, such as a margin: millimetres, or inches. */
    @Override
    public String small(double m) {
        return us() ? number(new Length(m).inches(), 1) + " in" : number(m * 1000, 0) + " mm";
    }

    /** Writes a way to go: metres or kilometres, feet or miles. */
    @Override
    public String way(double m) {
        if (us()) {
            double feet = new Length(m).feet();
            return feet < FEET_WORTH_A_MILE
                    ? number(feet, 0) + " ft"
                    : number(new Length(m).miles(), feet < 10 * FEET_WORTH_A_MILE ? 1 : 0) + " mi";
        }
        return m < METRES_WORTH_A_KILOMETRE ? number(m, 0) + " m" : number(m / 1000, 0) + " km";
    }

    /** Writes a force: newtons with the mass that weighs as much, or pounds-force. */
    @Override
    public String force(double newtons) {
        return us()
                ? number(new Force(newtons).poundsForce(), 0) + " lbf"
                : number(newtons, 0) + " N (" + number(new Force(newtons).kgHeld(), 0) + " kg)";
    }

    /** Writes a speed: through the water to a tenth, of wind and cars to the whole unit. */
    @Override
    public String speed(double mPerS) {
        Speed speed = new Speed(mPerS);
        double shown = us() ? speed.milesPerHour() : speed.kmPerHour();
        return number(shown, shown < FASTEST_BY_HAND ? 1 : 0) + (us() ? " mph" : " km/h");
    }

    /** Writes money to the whole unit. */
    public String money(double amount) {
        return money(amount, 0);
    }

    /** Writes money to the whole unit, but what is under ten to the hundredth, such as a price for each kilometre. */
    public String fineMoney(double amount) {
        return money(amount, amount == Math.rint(amount) || Math.abs(amount) >= 10 ? 0 : 2);
    }

    /** Writes what a way costs, given for a kilometre: for a kilometre, or for a mile. */
    public String moneyByWay(double perKm) {
        return us() ? fineMoney(perKm * Length.M_PER_MILE / M_PER_KM) + " a mile" : fineMoney(perKm) + " a km";
    }

    private String money(double amount, int decimals) {
        String digits = number(Math.abs(amount), decimals);
        String minus = amount < 0 && !digits.matches("0(\\.0+)?") ? "−" : "";
        String sign = SIGNS.get(currency);
        return sign == null ? minus + digits + " " + currency : minus + sign + digits;
    }

    /** Writes a share of one as whole percent; small shares are not rounded down to nothing. */
    @Override
    public String percent(double share) {
        if (share > 0 && share < 0.005) {
            return "under 1 %";
        }
        return number(100 * share, 0) + " %";
    }

    @Override
    public String ratio(double times) {
        return number(times, 2);
    }

    /** Writes a number with a fixed number of decimals and thousands set apart. */
    public static String number(double value, int decimals) {
        DecimalFormat format = new DecimalFormat("#,##0", DecimalFormatSymbols.getInstance(Locale.ROOT));
        format.setMinimumFractionDigits(decimals);
        format.setMaximumFractionDigits(decimals);
        format.setRoundingMode(RoundingMode.HALF_UP);
        String text = format.format(value);
        return text.matches("-0(\\.0+)?") ? text.substring(1) : text;
    }

    private boolean us() {
        return units == UnitSystem.US;
    }
}
