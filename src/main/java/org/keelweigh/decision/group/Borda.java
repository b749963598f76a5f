package org.keelweigh.decision.group;

import org.keelweigh.decision.Ranks;
import org.keelweigh.decision.Tables;

/**
 * Borda's count (1781): from each person an alternative gets one point for every other it beats and half a point for
 * every tie.
 */
public final class Borda {

    private Borda() {}

    /**
     * Counts the points of one person's totals.
     *
     * @param totals total values by alternative
     * @param ruledOut alternatives that get no points and give none
     */
    public static double[] points(double[] totals, boolean[] ruledOut) {
        Tables.requireFlags(ruledOut, totals.length);
        double[] points = new double[totals.length];
        for (int a = 0; a < totals.length; a++) {
            for (int b = 0; b < totals.length; b++) {
                if (a == b || ruledOut[a] || ruledOut[b]) {
                    continue;
                }
                double lead = totals[a] - totals[b];
                points[a] += lead > Ranks.TIE ? 1 : lead >= -Ranks.TIE ? 0.5 : 0;
            }
        }
        return points;
    }
}
