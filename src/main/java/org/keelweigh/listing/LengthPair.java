package org.keelweigh.listing;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;

/** Length and beam written as one, with units that one half may lend the other. */
record LengthPair(double lengthM, double beamM, String note) {

    private static final String NO_UNIT_OF_BEAM =
            "The width has no unit; taken as that of the length, or inches after feet.";
    private static final String NO_UNIT = "Neither number has a unit; taken as what a boat can measure.";

    static Optional<LengthPair> of(Matcher pair) {
        OptionalDouble feet = pair.group("number") == null ? LengthWriting.feetInches(pair) : OptionalDouble.empty();
        double firstUnit = feet.isPresent() ? LengthWriting.FOOT_M : LengthWriting.metresPer(pair.group("unit"));
        double secondUnit =
                LengthWriting.metresPer(pair.group("unit2") != null ? pair.group("unit2") : pair.group("unit3"));
        String note = "";
        if (Double.isNaN(firstUnit) && Double.isNaN(secondUnit)) {
            firstUnit = pair.group("number") == null ? Double.NaN : guessedUnit(pair.group("number"));
            secondUnit = firstUnit;
            note = NO_UNIT;
        } else if (Double.isNaN(secondUnit)) {
            secondUnit = firstUnit == LengthWriting.FOOT_M ? LengthWriting.INCH_M : firstUnit;
            note = NO_UNIT_OF_BEAM;
        } else if (Double.isNaN(firstUnit)) {
            firstUnit = secondUnit == LengthWriting.INCH_M ? LengthWriting.FOOT_M : secondUnit;
        }
        OptionalDouble length = feet.isPresent()
                ? feet
                : pair.group("number") == null
                        ? OptionalDouble.empty()
                        : WrittenNumber.of(pair.group("number"))
                                .within(firstUnit, Lengths.SHORTEST_M, Lengths.LONGEST_M);
        OptionalDouble beam =
                WrittenNumber.of(pair.group("second")).within(secondUnit, Lengths.NARROWEST_M, Lengths.WIDEST_M);
        if (length.isEmpty() || beam.isEmpty() || outside(length.getAsDouble())) {
            return Optional.empty();
        }
        double more = pair.group("more") == null ? 0 : Integer.parseInt(pair.group("more")) * LengthWriting.INCH_M;
        return Optional.of(new LengthPair(length.getAsDouble(), beam.getAsDouble() + more, note));
    }

    private static boolean outside(double lengthM) {
        return lengthM < Lengths.SHORTEST_M || lengthM > Lengths.LONGEST_M;
    }

    private static double guessedUnit(String number) {
        double value = WrittenNumber.of(number).asMoney();
        if (value >= Lengths.SHORTEST_M && value <= Lengths.LONGEST_M && !number.matches("\\d+")) {
            return 1;
        }
        return value >= 1500 ? 0.001 : value >= 150 ? 0.01 : Double.NaN;
    }
}
