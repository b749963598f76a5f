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
    },
    SHARE("share") {
        @Override
        public String write(double measure, Display display) {
            return display.percent(measure);
        }
    },
    POINTS("points") {
        @Override
        public String write(double measure, Display display) {
            return Display.number(measure, 0) + " of 100";
        }
    },
    LIKING("liking") {
        @Override
        public String write(double measure, Display display) {
            return Display.number(measure, 0) + " of 10";
        }
    },
    LENGTH("m") {
        @Override
        public String write(double measure, Display display) {
            return (measure > 0 ? "+" : "") + display.small(measure).replace('-', '−');
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
            return Display.number(measure, 0) + (Math.round(measure) == 1 ? " day" : " days");
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
}
