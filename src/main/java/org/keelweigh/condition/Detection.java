package org.keelweigh.condition;

import org.keelweigh.boat.Coded;
import org.keelweigh.catalogue.Row;

/**
 * How well one way of knowing finds faults, from the table {@code methods.csv}.
 *
 * @param method the way of knowing
 * @param base which of a check's own figures it starts from
 * @param factor what that figure is multiplied by
 * @param added what is then added
 * @param most the most it can reach, unless the figure it starts from is higher already
 * @param repeats how many independent looks it is worth
 * @param falseAlarm chance that it reports a fault where none is, 0 to 1
 */
record Detection(
        Method method, Base base, double factor, double added, double most, double repeats, double falseAlarm) {

    private static final double MOST_LOOKS = 10;

    enum Base implements Coded {
        NOTHING("nothing"),
        PHOTO("photo"),
        PERSON("person");

        private final String code;

        Base(String code) {
            this.code = code;
        }

        @Override
        public String code() {
            return code;
        }
    }

    static Detection of(Row row) {
        return new Detection(
                Coded.parse(Method.class, row.text("method")),
                Coded.parse(Base.class, row.text("base")),
                row.number("factor", 0, 1),
                row.number("added", 0, 1),
                row.number("most", 0, 1),
                row.number("repeats", 1, MOST_LOOKS),
                row.number("false_alarm", 0, 0.99));
    }

    /** Tells the chance that it finds a fault that is there, 0 to 1. */
    double sensitivity(Check check) {
        double start =
                switch (base) {
                    case NOTHING -> 0;
                    case PHOTO -> check.photoSensitivity();
                    case PERSON -> check.personSensitivity();
                };
        if (base != Base.NOTHING && start == 0) {
            return 0;
        }
        double scaled = start * factor;
        double once = Math.max(scaled, Math.min(most, scaled + added));
        return 1 - Math.pow(1 - once, repeats);
    }
}
