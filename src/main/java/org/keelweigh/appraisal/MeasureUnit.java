package org.keelweigh.appraisal;

import org.keelweigh.boat.Coded;
import org.keelweigh.shortlist.Display;

/** What a criterion is measured in, and how a measure is written. */
public enum MeasureUnit implements Coded {
    MONEY("money") {
        @Override
        public String write(double measure, Display display) {
            return display.money(measure);
        }
    },
    PROBABILITY("probability") {
        @Override
        public String write(double measure, Display display) {
            return display.percent(measure);
        }

        @Override
        public String writeDifference(double difference, Display display) {
            return percentagePoints(difference);
        }
    },
    SHARE("share") {
        @Override
        public String write(double measure, Display display) {
            return display.percent(measure);
        }

        @Override
        public String writeDifference(double difference, Display display) {
            return percentagePoints(difference);
        }
    },
    POINTS("points") {
        @Override
        public String write(double measure, Display display) {
            return Display.number(measure, 0) + " of 100";
        }

        @Override
        public String writeDifference(double difference, Display display) {
            return counted(difference, "point");
        }
    },
    LIKING("liking") {
        @Override
        public String write(double measure, Display display) {
            return Display.number(measure, 0) + " of 10";
        }

        @Override
        public String writeDifference(double difference, Display display) {
            return counted(difference, "point");
        }
    },
    LENGTH("m") {
        @Override
        public String write(double measure, Display display) {
            return (measure > 0 ? "+" : "") + display.small(measure).replace('-', '−');
        }

        @Override
        public String writeDifference(double difference, Display display) {
            return display.small(difference);
        }
    },
    SPEED("m/s") {
        @Override
        public String write(double measure, Display display) {
            return display.speed(measure);
        }
    },
    RATIO("ratio") {
        @Override
        public String write(double measure, Display display) {
            return Display.number(measure, 2) + " of your limit";
        }
    },
    DAYS("days") {
        @Override
        public String write(double measure, Display display) {
            return counted(measure, "day");
        }
    };

    private final String code;

    MeasureUnit(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }

    /** Writes a measure with its unit. */
    public abstract String write(double measure, Display display);

    /** Writes how far two measures lie apart, with its unit. */
    public String writeDifference(double difference, Display display) {
        return write(difference, display);
    }

    private static String counted(double number, String what) {
        return Display.number(number, 0) + " " + what + (Math.round(number) == 1 ? "" : "s");
    }

    private static String percentagePoints(double share) {
        String number = Display.number(100 * share, share < 0.1 ? 1 : 0);
        return number + ("1.0".equals(number) ? " percentage point" : " percentage points");
    }
}
