package org.keelweigh.appraisal;

import java.util.List;
import java.util.Optional;
import org.keelweigh.boat.Boat;
import org.keelweigh.boat.Figure;
import org.keelweigh.condition.Belief;
import org.keelweigh.condition.BoatHistory;
import org.keelweigh.condition.ConditionAssessment;
import org.keelweigh.cost.FairPrice;
import org.keelweigh.cost.FiveYearCost;
import org.keelweigh.cost.OwnershipFacts;
import org.keelweigh.fit.FitAssessment;
import org.keelweigh.haul.CartAnswer;
import org.keelweigh.haul.CartRequest;
import org.keelweigh.haul.RoofLoading;
import org.keelweigh.haul.RoofRack;
import org.keelweigh.shortlist.Candidate;
import org.keelweigh.shortlist.CandidateId;

/**
 * Everything that is found out about one boat before anybody weighs it.
 *
 * @param candidate what was typed
 * @param boat the boat with every figure known or assumed
 * @param ageYears its age in years
 * @param condition what was found and what may be hidden
 * @param belief the chances of causes and outcomes, given what was found
 * @param histories the stories behind it, as sentences
 * @param price what it is compared at: the asking price, or the fair price where none was given
 * @param fair what such a boat usually goes for
 * @param ownership the inputs of the cost
 * @param cost what owning it costs, line by line
 * @param cartRequest the inputs of the haul
 * @param cart how it gets from the car to the water
 * @param loading for each person, in their order, how it gets on the car
 * @param rack how it rides on the car
 * @param fit how it fits people, water, home and car
 * @param trust the listing, the seller and the hull number
 * @param futures what may come: repairs nobody has seen, and the cost over the years
 * @param rulings the hard rules it breaks
 * @param measures for each person, in their order: a measure for each criterion, in their order
 * @param assumptions what was assumed about this boat
 */
public record BoatReport(
        Candidate candidate,
        Boat boat,
        int ageYears,
        ConditionAssessment condition,
        Belief belief,
        List<BoatHistory> histories,
        Figure price,
        FairPrice fair,
        OwnershipFacts ownership,
        FiveYearCost cost,
        CartRequest cartRequest,
        CartAnswer cart,
        List<RoofLoading> loading,
        RoofRack rack,
        FitAssessment fit,
        Trust trust,
        BoatFutures futures,
        List<Ruling> rulings,
        List<List<Double>> measures,
        List<Assumption> assumptions) {

    public BoatReport {
        histories = List.copyOf(histories);
        loading = List.copyOf(loading);
        rulings = List.copyOf(rulings);
        measures = measures.stream().map(List::copyOf).toList();
        assumptions = List.copyOf(assumptions);
    }

    /** Tells which boat it is. */
    public CandidateId id() {
        return candidate.id();
    }

    /** Tells what people call it. */
    public String name() {
        return candidate.data().name();
    }

    /** Tells the first hard rule that rules it out; empty if none does. */
    public Optional<Ruling> ruledOutBy() {
        return rulings.stream().filter(Ruling::stands).findFirst();
    }

    /** Tells whether a hard rule rules it out. */
    public boolean ruledOut() {
        return ruledOutBy().isPresent();
    }

    /** Tells the cash that is needed before the first launch; repairs that nobody has seen yet are not due then. */
    public double dayOneCash() {
        return dayOneCash(cost);
    }

    /** Tells what repairs nobody has seen yet are expected to cost. */
    public double unseenRepairs() {
        return unseenRepairs(cost);
    }

    static double dayOneCash(FiveYearCost cost) {
        return cost.dayOne() - unseenRepairs(cost);
    }

    private static double unseenRepairs(FiveYearCost cost) {
        return cost.lines().stream()
                .filter(line -> line.id().equals(OwnershipNeeds.HIDDEN))
                .mapToDouble(line -> line.total())
                .sum();
    }
}
