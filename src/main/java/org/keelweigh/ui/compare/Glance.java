package org.keelweigh.ui.compare;

import java.util.List;
import org.keelweigh.appraisal.BoatReport;
import org.keelweigh.appraisal.Confidence;
import org.keelweigh.appraisal.Measured;
import org.keelweigh.appraisal.Perspective;
import org.keelweigh.appraisal.Yardstick;
import org.keelweigh.shortlist.Display;
import org.keelweigh.shortlist.ShortlistId;

/**
 * What the page shows at one moment: the measured boats, as somebody weighs them.
 *
 * @param measured what does not depend on weights
 * @param perspective the weights and what follows from them
 * @param confidence how often each boat comes where, over many futures and weighings
 */
record Glance(Measured measured, Perspective perspective, Confidence confidence) {

    Display display() {
        return measured.situation().display();
    }

    ShortlistId shortlist() {
        return measured.facts().shortlist().id();
    }

    /** Lists the places of the boats from first to last. */
    List<Integer> order() {
        return perspective.ranking().order();
    }

    BoatReport boat(int place) {
        return measured.boats().get(place);
    }

    String name(int place) {
        return boat(place).name();
    }

    String id(int place) {
        return boat(place).id().toString();
    }

    List<Yardstick> yardsticks() {
        return measured.yardsticks().all();
    }

    /** Writes value points with their unit. */
    static String points(double value) {
        String number = Display.number(value, Math.abs(value) < 9.95 ? 1 : 0);
        return number + ("1.0".equals(number) ? " point" : " points");
    }
}
