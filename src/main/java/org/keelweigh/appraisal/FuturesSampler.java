package org.keelweigh.appraisal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.keelweigh.condition.Belief;
import org.keelweigh.condition.Check;
import org.keelweigh.condition.ConditionAssessment;
import org.keelweigh.condition.Grade;
import org.keelweigh.condition.Inspection;
import org.keelweigh.condition.Outcome;
import org.keelweigh.condition.RepairGroup;
import org.keelweigh.condition.StopRule;
import org.keelweigh.condition.WorldSampler;
import org.keelweigh.cost.CostSampler;
import org.keelweigh.cost.Pert;
import org.keelweigh.cost.PertTable;

/** Draws the futures of one boat: hidden causes, true outcomes of what is not settled, repairs, and the money of the years. */
final class FuturesSampler {

    private static final Outcome[] OUTCOMES = Outcome.values();

    private final Draws draws;
    private final String boat;
    private final double money;

    /**
     * Prepares the drawing.
     *
     * @param boat a name that no other boat has, for what is the boat's own
     * @param money units of the shortlist's currency for one of the catalogue's
     */
    FuturesSampler(Draws draws, String boat, double money) {
        this.draws = draws;
        this.boat = boat;
        this.money = money;
    }

    /** Draws unseen repairs alone and tells how far they go above their mean in one draw of ten. */
    RepairSurprise repairSurprise(Belief belief, Inspection inspection, ConditionAssessment condition) {
        double[] hidden = new double[draws.size()];
        hiddenFaults(belief, inspection, condition, hidden, new boolean[hidden.length]);
        return RepairSurprise.of(hidden);
    }

    BoatFutures sample(
            Belief belief,
            Inspection inspection,
            ConditionAssessment condition,
            CostSampler cost,
            double price,
            double priceSlope,
            double outings,
            RepairSurprise repairSurprise) {
        double[] hidden = new double[draws.size()];
        boolean[] dud = new boolean[hidden.length];
        hiddenFaults(belief, inspection, condition, hidden, dud);
        return withCost(cost, price, priceSlope, outings, hidden, dud, repairSurprise);
    }

    private double[][] causeUniforms(Belief belief) {
        return belief.causes().stream()
                .map(each -> draws.uniform(boat + "/cause/" + each.id()))
                .toArray(double[][]::new);
    }

    /** Within a repair group the dearest fault counts and what was found there already is not paid again. */
    private void hiddenFaults(
            Belief belief, Inspection inspection, ConditionAssessment condition, double[] hidden, boolean[] dud) {
        WorldSampler worlds = belief.sampler();
        int[] states = new int[hidden.length];
        worlds.drawCauses(causeUniforms(belief), states);
        Map<RepairGroup, double[]> spend = new EnumMap<>(RepairGroup.class);
        Map<RepairGroup, Double> known = UnseenRepairs.known(condition);
        known.replaceAll((group, each) -> each * money);
        byte[] outcomes = new byte[states.length];
        for (int c = 0; c < belief.checks().size(); c++) {
            String id = belief.checks().get(c).id();
            Check check = unsettled(inspection, id);
            if (check == null || !check.group().hiddenInBoat()) {
                continue;
            }
            worlds.drawOutcomes(c, states, draws.uniform(boat + "/check/" + id), outcomes);
            double[] group = spend.computeIfAbsent(check.group(), key -> start(known.getOrDefault(key, 0.0)));
            addFaults(check, outcomes, group, dud);
        }
        spend.forEach((group, total) -> {
            double already = known.getOrDefault(group, 0.0);
            for (int w = 0; w < hidden.length; w++) {
                hidden[w] += total[w] - already;
            }
        });
    }

    private double[] start(double known) {
        double[] row = new double[draws.size()];
        Arrays.fill(row, known);
        return row;
    }

    private void addFaults(Check check, byte[] outcomes, double[] group, boolean[] dud) {
        double[] uniform = draws.uniform(boat + "/repair/" + check.id());
        PertTable[] prices = new PertTable[OUTCOMES.length];
        double[] shares = new double[OUTCOMES.length];
        boolean[] stops = new boolean[OUTCOMES.length];
        for (Grade grade : check.grades()) {
            int at = grade.outcome().ordinal();
            prices[at] = new Pert(grade.repairCost()).table();
            shares[at] = grade.spendShare() * money;
            stops[at] = grade.outcome() == Outcome.STOP && grade.stop() == StopRule.YES;
        }
        for (int w = 0; w < outcomes.length; w++) {
            int outcome = outcomes[w];
            if (stops[outcome]) {
                dud[w] = true;
            } else if (prices[outcome] != null && shares[outcome] > 0) {
                double paid = prices[outcome].quantile(uniform[w]) * shares[outcome];
                group[w] = check.group().addsUp() ? group[w] + paid : Math.max(group[w], paid);
            }
        }
    }

    private static @Nullable Check unsettled(Inspection inspection, String id) {
        return inspection.applicable().stream()
                .filter(check -> check.id().equals(id))
                .filter(check -> UnseenRepairs.unsettled(inspection, check))
                .findFirst()
                .orElse(null);
    }

    private BoatFutures withCost(
            CostSampler cost,
            double price,
            double priceSlope,
            double outings,
            double[] hidden,
            boolean[] dud,
            RepairSurprise repairSurprise) {
        int n = draws.size();
        double[][] rows = cost.items().stream()
                .map(item -> draws.uniform((item.shared() ? "" : boat) + "/cost/" + item.id()))
                .toArray(double[][]::new);
        double[] resale = draws.normal(boat + "/resale");
        double[] outingsDraw = draws.uniform("/outings");
        PertTable spread = new Pert(OwnershipNeeds.OUTINGS_SPREAD).table();
        double[] one = new double[rows.length];
        double[] presentValue = new double[n];
        double[][] byYear = null;
        for (int w = 0; w < n; w++) {
            for (int i = 0; i < rows.length; i++) {
                one[i] = rows[i][w];
            }
            double[] spent = cost.spentByYear(price, outings * spread.quantile(outingsDraw[w]), one, resale[w]);
            byYear = byYear == null ? new double[spent.length][n] : byYear;
            for (int year = 0; year < spent.length; year++) {
                byYear[year][w] = spent[year] + hidden[w];
            }
            presentValue[w] = byYear[spent.length - 1][w];
        }
        return new BoatFutures(hidden, dud, presentValue, bands(byYear), priceSlope, repairSurprise);
    }

    private static List<BoatFutures.YearBand> bands(double[][] byYear) {
        List<BoatFutures.YearBand> bands = new ArrayList<>();
        for (int year = 0; year < byYear.length; year++) {
            double[] sorted = byYear[year].clone();
            Arrays.sort(sorted);
            bands.add(new BoatFutures.YearBand(
                    year,
                    BoatFutures.quantile(sorted, 0.1),
                    BoatFutures.quantile(sorted, 0.5),
                    BoatFutures.quantile(sorted, 0.9)));
        }
        return bands;
    }
}
