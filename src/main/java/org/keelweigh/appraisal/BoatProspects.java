package org.keelweigh.appraisal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.keelweigh.condition.Belief;
import org.keelweigh.condition.Check;
import org.keelweigh.condition.ConditionAssessment;
import org.keelweigh.condition.HiddenRepairs;
import org.keelweigh.condition.Inspection;
import org.keelweigh.condition.Method;
import org.keelweigh.condition.OutcomeChances;
import org.keelweigh.condition.Reliability;
import org.keelweigh.condition.ReportForecast;
import org.keelweigh.condition.WaterNeed;

/**
 * How each report that a check of one boat could bring moves what its hidden repairs and its chance of being a dud are
 * expected to be. It does not depend on weights.
 */
final class BoatProspects {

    /**
     * A check that could be made.
     *
     * @param check the check
     * @param probability the chance of each report
     * @param repairs by how much each report moves the expected hidden repairs, in money; the mean is zero
     * @param dud by how much each report moves the chance of a dud; the mean is zero
     */
    record Prospective(Check check, double[] probability, double[] repairs, double[] dud) {}

    private final Catalogues catalogues;
    private final BoatReport report;
    private final Inspection inspection;
    private final double money;
    private final boolean perfect;
    private final Map<String, Integer> place = new HashMap<>();

    private BoatProspects(Catalogues catalogues, BoatReport report, double money, boolean perfect) {
        this.perfect = perfect;
        this.catalogues = catalogues;
        this.report = report;
        this.money = money;
        this.inspection = Inspection.of(
                catalogues.inspection(),
                report.boat(),
                report.candidate().data().findings());
        for (int i = 0; i < report.belief().checks().size(); i++) {
            place.put(report.belief().checks().get(i).id(), i);
        }
    }

    /**
     * Lists the checks of a boat that nobody has made.
     *
     * @param perfect whether each look finds exactly what is there, which bounds what a real one can tell
     */
    static List<Prospective> of(Catalogues catalogues, BoatReport report, double money, boolean perfect) {
        BoatProspects prospects = new BoatProspects(catalogues, report, money, perfect);
        List<Prospective> all = new ArrayList<>();
        for (Check check : prospects.inspection.unmade()) {
            if (prospects.place.containsKey(check.id())) {
                all.add(prospects.prospective(check));
            }
        }
        return all;
    }

    private Prospective prospective(Check check) {
        Belief belief = report.belief();
        Method method = check.water() == WaterNeed.NEEDS ? Method.ON_WATER : Method.TOUCHED;
        Reliability reliability =
                perfect ? Reliability.CERTAIN : catalogues.causes().reliability(check.id(), method);
        List<ReportForecast> forecasts = belief.reports(check.id(), reliability);
        int n = forecasts.size();
        double[] probability = new double[n];
        double[] repairs = new double[n];
        double[] dud = new double[n];
        for (int r = 0; r < n; r++) {
            List<OutcomeChances> chances = forecasts.get(r).checks();
            HiddenRepairs hidden = ConditionAssessment.hidden(
                    inspection, report.condition().repairs(), each -> chances.get(place.get(each.id())));
            probability[r] = forecasts.get(r).chance();
            repairs[r] = hidden.mean() * money;
            dud[r] = hidden.stopChance();
        }
        return new Prospective(check, probability, centred(repairs, probability), centred(dud, probability));
    }

    /**
     * Takes off the mean over the reports. A belief does not move on average; the largest repair of a group, taken as if its
     * checks were independent, does by a little, and that little is no news.
     */
    private static double[] centred(double[] values, double[] probability) {
        double mean = 0;
        for (int r = 0; r < values.length; r++) {
            mean += probability[r] * values[r];
        }
        double[] centred = new double[values.length];
        for (int r = 0; r < values.length; r++) {
            centred[r] = values[r] - mean;
        }
        return centred;
    }
}
