package org.keelweigh.appraisal;

import java.util.EnumMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.keelweigh.condition.Belief;
import org.keelweigh.condition.Check;
import org.keelweigh.condition.ConditionAssessment;
import org.keelweigh.condition.Grade;
import org.keelweigh.condition.Inspection;
import org.keelweigh.condition.Outcome;
import org.keelweigh.condition.RepairGroup;
import org.keelweigh.condition.RepairLine;
import org.keelweigh.condition.StopRule;
import org.keelweigh.cost.Pert;
import org.keelweigh.cost.PertTable;

/**
 * What repairs nobody has seen yet are expected to cost: the mean that the sampled futures have, worked out instead of drawn,
 * so that it does not hang on a seed. Each grade's cost is cut into cells of equal chance, each with its mean.
 */
final class UnseenRepairs {

    private static final int OUTCOMES = 4;
    private static final int CELLS = 8;
    private static final int POINTS = 16;
    private static final double[] NOTHING = {0};

    private UnseenRepairs() {}

    /** Tells the expected cost, in the money of the catalogue. */
    static double expected(Belief belief, Inspection inspection, ConditionAssessment condition) {
        Map<RepairGroup, Double> known = known(condition);
        Map<RepairGroup, SortedMap<String, double[][]>> groups = new EnumMap<>(RepairGroup.class);
        for (Check check : inspection.applicable()) {
            if (check.group().hiddenInBoat()
                    && unsettled(inspection, check)
                    && belief.network().knowsCheck(check.id())) {
                groups.computeIfAbsent(check.group(), key -> new TreeMap<>()).put(check.id(), spends(check));
            }
        }
        double sum = 0;
        for (Map.Entry<RepairGroup, SortedMap<String, double[][]>> each : groups.entrySet()) {
            sum += belief.expectedLargest(each.getValue(), known.getOrDefault(each.getKey(), 0.0));
        }
        return sum;
    }

    /** A check is settled once a fault was found; one reported fine may still hide something. */
    static boolean unsettled(Inspection inspection, Check check) {
        return inspection
                .finding(check)
                .map(finding -> finding.outcome() == Outcome.FINE)
                .orElse(true);
    }

    /** Tells what is expected to be spent on the faults found in each group: it is not paid again. */
    static Map<RepairGroup, Double> known(ConditionAssessment condition) {
        Map<RepairGroup, Double> known = new EnumMap<>(RepairGroup.class);
        for (RepairLine line : condition.repairs()) {
            known.merge(line.group(), line.expected().mean(), Double::sum);
        }
        return known;
    }

    /** A fault that would make one walk away costs no repair; it is the chance of a dud. */
    private static double[][] spends(Check check) {
        double[][] spends = new double[OUTCOMES][];
        for (int o = 0; o < OUTCOMES; o++) {
            spends[o] = check.grade(Outcome.values()[o])
                    .filter(grade -> grade.outcome() != Outcome.STOP || grade.stop() != StopRule.YES)
                    .filter(grade -> grade.spendShare() > 0)
                    .map(UnseenRepairs::cells)
                    .orElse(NOTHING);
        }
        return spends;
    }

    private static double[] cells(Grade grade) {
        PertTable table = new Pert(grade.repairCost()).table();
        double[] cells = new double[CELLS];
        for (int i = 0; i < CELLS * POINTS; i++) {
            cells[i / POINTS] += grade.spendShare() * table.quantile((i + 0.5) / (CELLS * POINTS)) / POINTS;
        }
        return cells;
    }
}
