package org.keelweigh.ui.compare;

import org.keelweigh.appraisal.BoatReport;
import org.keelweigh.shortlist.Display;
import org.keelweigh.ui.chart.Family;
import org.keelweigh.ui.chart.Figure;
import org.keelweigh.ui.chart.Spread;

/** Puts figures into the words and looks of the drawings. */
final class Looks {

    private Looks() {}

    static Family family(org.keelweigh.appraisal.Family family) {
        return switch (family) {
            case MONEY -> Family.MONEY;
            case CONDITION -> Family.CONDITION;
            case WATER -> Family.WATER;
            case LAND -> Family.LAND;
        };
    }

    /** Rounding of sums may leave the scale by a hair. */
    static Figure points(double value) {
        double within = Math.clamp(value, 0, 100);
        return new Figure(within, Glance.points(within));
    }

    static Figure money(double amount, Display display) {
        return new Figure(amount, display.money(amount));
    }

    static Spread cost(BoatReport boat, Display display) {
        return new Spread(
                money(boat.futures().p10(), display),
                money(boat.futures().median(), display),
                money(boat.futures().p90(), display));
    }
}
