package org.keelweigh.ui.boat;

import java.util.List;
import org.keelweigh.condition.Check;
import org.keelweigh.condition.CheckBelief;
import org.keelweigh.condition.Movers;
import org.keelweigh.condition.OutcomeChances;
import org.keelweigh.ui.chart.ChanceGridData;
import org.keelweigh.ui.chart.ChanceGridData.Group;
import org.keelweigh.ui.chart.ChanceGridData.Panel;
import org.keelweigh.ui.chart.ChanceGridData.Tone;

/** The chances of a check's outcomes now, against what they were before anything was seen, as boats out of 100. */
final class Chances {

    private static final int CELLS = 100;
    private static final int MOST_NAMED = 3;
    private static final double LEAST_LOG_ODDS = 0.1;

    private Chances() {}

    static ChanceGridData of(Check check, BoatDesk desk) {
        CheckBelief belief = desk.report().belief().check(check.id());
        String summary = check.title() + ": a major fault or worse has a chance of "
                + desk.display().percent(belief.now().majorOrWorse()) + " now, and had "
                + desk.display().percent(belief.before().majorOrWorse()) + " before anything was seen."
                + moved(check, desk);
        return new ChanceGridData(
                summary, List.of(panel("before anything was seen", belief.before()), panel("now", belief.now())));
    }

    private static String moved(Check check, BoatDesk desk) {
        Wording wording = new Wording(desk);
        List<String> movers = desk.report().belief().movers().ofCheck(check.id()).stream()
                .filter(each -> Math.abs(each.logOdds()) >= LEAST_LOG_ODDS)
                .limit(MOST_NAMED)
                .map(each -> words(each, wording))
                .toList();
        return movers.isEmpty() ? "" : " Moved by " + String.join("; ", movers) + ".";
    }

    private static String words(Movers.Mover mover, Wording wording) {
        return "“" + wording.of(mover.evidence().about()) + "” "
                + (mover.logOdds() > 0 ? "(likelier)" : "(less likely)");
    }

    private static Panel panel(String title, OutcomeChances chances) {
        int minor = cells(chances.minor());
        int major = cells(chances.major());
        int stop = cells(chances.stop());
        return new Panel(
                title,
                List.of(
                        new Group("fine", CELLS - minor - major - stop, Tone.FINE),
                        new Group("minor", minor, Tone.MINOR),
                        new Group("major", major, Tone.MAJOR),
                        new Group("stop", stop, Tone.STOP)));
    }

    private static int cells(double chance) {
        return (int) Math.round(CELLS * chance);
    }
}
