package org.keelweigh.appraisal;

import java.util.List;
import org.keelweigh.boat.Boat;
import org.keelweigh.boat.BoatDefaults;
import org.keelweigh.boat.Coded;
import org.keelweigh.boat.Figure;
import org.keelweigh.condition.Belief;
import org.keelweigh.condition.ConditionAssessment;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.Inspection;
import org.keelweigh.condition.InspectionCatalogue;
import org.keelweigh.cost.ConditionClass;
import org.keelweigh.cost.CostSampler;
import org.keelweigh.cost.Depreciation;
import org.keelweigh.cost.FairPrice;
import org.keelweigh.cost.FiveYearCost;
import org.keelweigh.cost.Ownership;
import org.keelweigh.cost.OwnershipFacts;
import org.keelweigh.cost.PriceBook;
import org.keelweigh.cost.PriceResponse;
import org.keelweigh.cost.PricedBoat;
import org.keelweigh.fit.FitAssessment;
import org.keelweigh.haul.CartAnswer;
import org.keelweigh.haul.CartPlanner;
import org.keelweigh.haul.CartRequest;
import org.keelweigh.haul.RoofLoading;
import org.keelweigh.haul.RoofRack;
import org.keelweigh.shortlist.Candidate;
import org.keelweigh.shortlist.CandidateData;

/** Measures one boat in a situation: the order of the work, each step in the room that knows how. */
final class BoatMeasurer {

    /** Draws of unseen repairs for each future; see {@code docs/method/appraisal.md}. */
    private static final int REPAIR_DRAWS = 8;

    private final Catalogues catalogues;
    private final Situation situation;
    private final Yardsticks yardsticks;
    private final BoatDefaults defaults;
    private final PriceBook prices;
    private final Depreciation depreciation;
    private final Draws draws;

    BoatMeasurer(Catalogues catalogues, Situation situation, Yardsticks yardsticks, Draws draws) {
        this.catalogues = catalogues;
        this.situation = situation;
        this.yardsticks = yardsticks;
        this.defaults = catalogues.defaults().inCurrency(situation.priceFactor());
        this.prices = catalogues.prices().inCurrency(situation.priceFactor());
        this.depreciation = catalogues.depreciation().inCurrency(situation.priceFactor());
        this.draws = draws;
    }

    /**
     * Measures a boat.
     *
     * @param drawName a name that no other boat has, for the draws that are its own
     */
    BoatReport measure(Candidate candidate, String drawName) {
        CandidateData data = candidate.data();
        Boat boat = defaults.resolve(data.boat(), situation.thisYear());
        int age = boat.ageIn(situation.thisYear());
        double useDays =
                Math.clamp(age, 1, InspectionCatalogue.AGES_UNTIL_YEARS) * InspectionCatalogue.USUAL_USE_DAYS_PER_YEAR;
        List<Finding> findings = inCatalogueMoney(data.findings());
        Belief belief = catalogues
                .causes()
                .believe(boat, age, useDays, findings, data.listing().signals());
        ConditionAssessment condition = ConditionAssessment.of(
                catalogues.inspection(), boat, age, useDays, findings, check -> belief.check(check.id())
                        .now());
        ConditionClass state =
                Coded.parse(ConditionClass.class, condition.conditionClass().code());
        CartRequest request = HaulAnswers.request(boat, situation);
        CartPlanner planner = new CartPlanner(catalogues.haul(), situation.display());
        CartAnswer cart = planner.plan(request);
        List<RoofLoading> loading = HaulAnswers.loading(boat, situation, catalogues.lift());
        RoofRack rack = HaulAnswers.rack(boat, situation);
        OwnershipNeeds needs =
                new OwnershipNeeds(situation, catalogues, boat, data.listing(), condition, cart, loading, rack);
        ComingGear gear = ComingGear.of(data);
        FairPrice fair = fairPrice(boat, age, state, condition, gear.extras(prices, needs.needs(ComingGear.none())));
        Figure price = data.listing().askingPrice() == null
                ? Figure.assumed(fair.amount(), "no asking price yet: the usual price for such a boat")
                : Figure.typed(data.listing().askingPrice());
        FitAssessment fit = FitAnswers.assess(boat, situation, catalogues.fit(), cart, loading, rack);
        OwnershipFacts facts = needs.facts(gear, age, price, state);
        Inspection inspection = Inspection.of(catalogues.inspection(), boat, findings);
        double hidden = UnseenRepairs.expected(belief, inspection, condition) * situation.priceFactor();
        OwnershipFacts withHidden = OwnershipNeeds.withHidden(facts, hidden);
        FiveYearCost cost = Ownership.cost(withHidden, prices, depreciation);
        BoatFutures futures = futures(drawName, inspection, belief, condition, facts);
        Trust trust = trust(data, boat, fair);
        Evidence evidence = new Evidence(
                candidate, boat, condition, fair, price, facts, cost, cart, loading, rack, fit, trust, futures, belief);
        return new BoatReport(
                candidate,
                boat,
                age,
                condition,
                belief,
                catalogues.causes().histories(belief),
                price,
                fair,
                withHidden,
                cost,
                request,
                cart,
                loading,
                rack,
                fit,
                trust,
                futures,
                new Rulings(situation, evidence).all(),
                new Measurement(situation, yardsticks, catalogues, evidence).all(),
                BoatAssumptions.of(boat, data.listing(), price, situation.display()));
    }

    /** Quotes are typed in the shortlist's currency; everything else about condition counts in the catalogue's. */
    private List<Finding> inCatalogueMoney(List<Finding> findings) {
        return findings.stream()
                .map(each -> each.withQuoteTimes(1 / situation.priceFactor()))
                .toList();
    }

    /**
     * What the rules and the measures look at.
     *
     * @param candidate what was typed
     */
    record Evidence(
            Candidate candidate,
            Boat boat,
            ConditionAssessment condition,
            FairPrice fair,
            Figure price,
            OwnershipFacts ownership,
            FiveYearCost cost,
            CartAnswer cart,
            List<RoofLoading> loading,
            RoofRack rack,
            FitAssessment fit,
            Trust trust,
            BoatFutures futures,
            Belief belief) {}

    private FairPrice fairPrice(
            Boat boat, int age, ConditionClass state, ConditionAssessment condition, List<PricedBoat.Extra> extras) {
        double repairs = condition.knownRepairs().likely() * situation.priceFactor();
        return depreciation.fairPrice(new PricedBoat(
                boat.kind(),
                boat.material(),
                boat.drive(),
                Math.max(1, boat.priceNew().value()),
                age,
                state,
                null,
                false,
                false,
                false,
                extras,
                repairs));
    }

    private BoatFutures futures(
            String drawName,
            Inspection inspection,
            Belief belief,
            ConditionAssessment condition,
            OwnershipFacts facts) {
        CostSampler sampler = CostSampler.of(facts, prices, depreciation);
        double slope = PriceResponse.of(facts, prices, depreciation).slope();
        RepairSurprise surprise = new FuturesSampler(draws.more(REPAIR_DRAWS), drawName, situation.priceFactor())
                .repairSurprise(belief, inspection, condition);
        return new FuturesSampler(draws, drawName, situation.priceFactor())
                .sample(
                        belief,
                        inspection,
                        condition,
                        sampler,
                        facts.price(),
                        slope,
                        situation.outingsPerYear(),
                        surprise);
    }

    private Trust trust(CandidateData data, Boat boat, FairPrice fair) {
        return Trust.of(data, boat, Math.max(1, fair.amount()), situation, catalogues.listing());
    }
}
