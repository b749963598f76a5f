package org.keelweigh.condition;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import org.keelweigh.boat.Boat;
import org.keelweigh.quantity.Estimate;

/**
 * What the findings on one boat mean: repairs known and still hidden, effect on its price, reasons to stop, how much is
 * known, and what to look at next.
 *
 * @param repairs the found faults as repair lines, in zone order
 * @param hidden what faults not found yet will probably cost
 * @param resaleLossIfLeft share of the fair price that all found faults take while they are left, 0 to 0.7
 * @param resaleLossExpected the same when each fault is put right as often as its spend assumes, and always with a written
 *     quote, 0 to 0.7
 * @param stops findings that stop the purchase until a person lifts them with a written reason
 * @param asks findings that ask for a fact or a lower price first
 * @param unsafe findings that can kill and have to be put right before launch, whatever they do to the purchase
 * @param progress how much of the inspection is done
 * @param conditionClass the condition in one word
 * @param nextChecks the checks not made yet in the order of their worth, those that need water last
 * @param ignored findings that do not count, each with a sentence
 */
public record ConditionAssessment(
        List<RepairLine> repairs,
        HiddenRepairs hidden,
        double resaleLossIfLeft,
        double resaleLossExpected,
        List<SeriousFinding> stops,
        List<SeriousFinding> asks,
        List<SeriousFinding> unsafe,
        Progress progress,
        ConditionClass conditionClass,
        List<NextCheck> nextChecks,
        List<IgnoredFinding> ignored) {

    /** However bad the faults, something is left of the price. */
    private static final double GREATEST_RESALE_LOSS = 0.7;

    private static final int CAN_KILL = 4;

    public ConditionAssessment {
        repairs = List.copyOf(repairs);
        stops = List.copyOf(stops);
        asks = List.copyOf(asks);
        unsafe = List.copyOf(unsafe);
        nextChecks = List.copyOf(nextChecks);
        ignored = List.copyOf(ignored);
    }

    /**
     * Assesses a boat with each check's own chances: the prior after age and use, and after Bayes' rule where somebody
     * reported it fine.
     *
     * @param ageYears the boat's age, years, 0 or more
     * @param useDays days of use over its whole life, 0 or more
     * @param findings what was found, in any order, quotes in the money of the catalogue; a check without a finding has not
     *     been made
     */
    public static ConditionAssessment of(
            InspectionCatalogue catalogue, Boat boat, double ageYears, double useDays, List<Finding> findings) {
        Inspection inspection = Inspection.of(catalogue, boat, findings);
        Function<Check, OutcomeChances> prior = check -> catalogue.priorOutcomes(check, ageYears, useDays);
        Function<Check, OutcomeChances> now = check -> inspection
                .finding(check)
                .map(finding -> catalogue.afterReportedFine(check, prior.apply(check), finding.method()))
                .orElseGet(() -> prior.apply(check));
        return of(catalogue, inspection, prior, now);
    }

    /**
     * Assesses a boat with chances from outside, such as those of hidden causes.
     *
     * @param truth for each check not made or reported fine, how likely its true outcomes are given everything known
     */
    public static ConditionAssessment of(
            InspectionCatalogue catalogue,
            Boat boat,
            double ageYears,
            double useDays,
            List<Finding> findings,
            Function<Check, OutcomeChances> truth) {
        Inspection inspection = Inspection.of(catalogue, boat, findings);
        return of(catalogue, inspection, check -> catalogue.priorOutcomes(check, ageYears, useDays), truth);
    }

    private static ConditionAssessment of(
            InspectionCatalogue catalogue,
            Inspection inspection,
            Function<Check, OutcomeChances> prior,
            Function<Check, OutcomeChances> truth) {
        List<FoundFault> faults = inspection.faults();
        List<RepairLine> repairs = RepairList.of(faults);
        Progress progress = Progress.of(catalogue, inspection, prior);
        return new ConditionAssessment(
                repairs,
                hidden(inspection, repairs, truth),
                resaleLoss(faults, false),
                resaleLoss(faults, true),
                serious(faults, fault -> fault.grade().stop() == StopRule.YES),
                serious(faults, fault -> fault.grade().stop() == StopRule.ASK),
                serious(faults, fault -> fault.grade().safety() >= CAN_KILL),
                progress,
                conditionClass(faults, progress),
                NextCheck.inOrder(catalogue, inspection.unmade(), truth),
                inspection.ignored());
    }

    /**
     * Works out what may be hidden under other chances, such as those after one more report.
     *
     * @param inspection what was found
     * @param repairs the repairs of what was found, which are not paid for twice
     * @param truth how likely each true outcome is
     */
    public static HiddenRepairs hidden(
            Inspection inspection, List<RepairLine> repairs, Function<Check, OutcomeChances> truth) {
        return HiddenRepairs.of(unsettled(inspection), truth, spendByGroup(repairs));
    }

    private static List<Check> unsettled(Inspection inspection) {
        return inspection.applicable().stream()
                .filter(check -> inspection
                        .finding(check)
                        .map(finding -> finding.outcome() == Outcome.FINE)
                        .orElse(true))
                .toList();
    }

    private static Map<RepairGroup, Double> spendByGroup(List<RepairLine> repairs) {
        Map<RepairGroup, Double> spend = new EnumMap<>(RepairGroup.class);
        repairs.forEach(line -> spend.merge(line.group(), line.expected().likely(), Double::sum));
        return spend;
    }

    private static List<SeriousFinding> serious(List<FoundFault> faults, Predicate<FoundFault> which) {
        return faults.stream().filter(which).map(SeriousFinding::of).toList();
    }

    /** Combines {@code 1 - Π(1 - r)}: faults take from what the others have left. */
    private static double resaleLoss(List<FoundFault> faults, boolean someMended) {
        double kept = 1;
        for (FoundFault fault : faults) {
            kept *= 1 - fault.grade().resaleEffect() * (someMended ? fault.leftShare() : 1);
        }
        return Math.min(GREATEST_RESALE_LOSS, 1 - kept);
    }

    private static ConditionClass conditionClass(List<FoundFault> faults, Progress progress) {
        List<FoundFault> ofBoat = faults.stream()
                .filter(fault -> fault.check().group().hiddenInBoat())
                .toList();
        List<FoundFault> serious = new ArrayList<>(ofBoat);
        serious.removeIf(fault -> fault.grade().outcome() == Outcome.MINOR);
        boolean stopped = ofBoat.stream()
                .anyMatch(fault ->
                        fault.grade().stop() == StopRule.YES && fault.finding().quote() == null);
        return ConditionClass.of(
                resaleLoss(serious, true),
                stopped,
                serious.size(),
                ofBoat.size() - serious.size(),
                progress.evidenceShare());
    }

    /** Tells the expected spend on known faults at three points. */
    public Estimate knownRepairs() {
        return repairs.stream().map(RepairLine::expected).reduce(Estimate.ZERO, Estimate::plus);
    }

    /** Tells the expected spend on repairs, known at their likely cost and hidden at their mean. */
    public double expectedRepairs() {
        return knownRepairs().likely() + hidden.mean();
    }

    /**
     * Tells the whole likely cost of the boat's own serious faults that count, for the rule that a boat whose serious
     * repairs take more than 45 % of its price is not worth buying. A missing life jacket or a worn trailer is bought or
     * left behind, and says nothing about the boat.
     */
    public double seriousRepairsLikely() {
        return repairs.stream()
                .filter(line -> line.group().hiddenInBoat())
                .filter(line -> line.expectedShare() > 0 && line.outcome() != Outcome.MINOR)
                .mapToDouble(line -> line.cost().likely())
                .sum();
    }
}
