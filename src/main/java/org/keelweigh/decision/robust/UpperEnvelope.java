package org.keelweigh.decision.robust;

import java.util.ArrayList;
import java.util.List;

/**
 * The highest of several straight lines {@code y_a(t) = start_a + t slope_a} for t from 0 to 1, exactly, by walking from
 * crossing to crossing.
 */
public final class UpperEnvelope {

    /** Says that coincident lines are named by lowest index. */
    public static final int NONE_PREFERRED = -1;

    /** Lines closer than this in value points, or crossings closer than this in t, are taken as one. */
    static final double SAME = 1e-9;

    private UpperEnvelope() {}

    /**
     * Divides 0 to 1 by the line that is highest.
     *
     * @param starts values at t = 0
     * @param ends values at t = 1
     * @param ruledOut lines left aside
     * @param preferred line that is named where several coincide, or {@link #NONE_PREFERRED}
     * @return segments without gap from 0 to 1; empty if all lines are ruled out
     */
    public static List<Segment> segments(double[] starts, double[] ends, boolean[] ruledOut, int preferred) {
        int current = highestAtStart(starts, ends, ruledOut, preferred);
        List<Segment> segments = new ArrayList<>();
        double from = 0;
        while (current >= 0) {
            int next = -1;
            double border = 1;
            for (int a = 0; a < starts.length; a++) {
                double gain = slope(starts, ends, a) - slope(starts, ends, current);
                if (ruledOut[a] || gain <= SAME) {
                    continue;
                }
                double crossing = Math.max(from, (starts[current] - starts[a]) / gain);
                if (crossing < border - SAME
                        || next >= 0 && crossing <= border + SAME && steeper(starts, ends, a, next, preferred)) {
                    border = next < 0 ? crossing : Math.min(border, crossing);
                    next = a;
                }
            }
            if (border > from) {
                segments.add(new Segment(from, border, current));
            }
            from = border;
            current = next;
        }
        return List.copyOf(segments);
    }

    private static int highestAtStart(double[] starts, double[] ends, boolean[] ruledOut, int preferred) {
        int best = -1;
        for (int a = 0; a < starts.length; a++) {
            if (!ruledOut[a]
                    && (best < 0
                            || starts[a] > starts[best] + SAME
                            || starts[a] >= starts[best] - SAME && steeper(starts, ends, a, best, preferred))) {
                best = a;
            }
        }
        return best;
    }

    private static boolean steeper(double[] starts, double[] ends, int a, int b, int preferred) {
        double gain = slope(starts, ends, a) - slope(starts, ends, b);
        return gain > SAME || gain >= -SAME && a == preferred;
    }

    private static double slope(double[] starts, double[] ends, int a) {
        return ends[a] - starts[a];
    }
}
