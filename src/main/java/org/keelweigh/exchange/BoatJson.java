package org.keelweigh.exchange;

import static org.keelweigh.exchange.AnswerJson.number;
import static org.keelweigh.exchange.AnswerJson.sentences;

import java.util.List;
import org.keelweigh.appraisal.BoatFutures;
import org.keelweigh.appraisal.BoatReport;
import org.keelweigh.appraisal.Ruling;
import org.keelweigh.condition.BoatHistory;
import org.keelweigh.condition.CauseAccount;
import org.keelweigh.cost.CostLine;
import org.keelweigh.cost.FiveYearCost;
import org.keelweigh.haul.BagCarry;
import org.keelweigh.haul.CartAnswer;
import org.keelweigh.haul.CartPlan;
import org.keelweigh.haul.HaulerAnswer;
import org.keelweigh.haul.Leg;
import org.keelweigh.haul.RoofLift;
import org.keelweigh.haul.RoofLoading;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Writes what was found out about one boat as JSON. */
final class BoatJson {

    private BoatJson() {}

    static void write(ObjectNode node, BoatReport boat, List<CauseAccount> causes) {
        node.put("boat", boat.id().toString());
        node.put("name", boat.name());
        number(node, "price", boat.price().value());
        node.put("priceAssumed", boat.price().isAssumed());
        number(node, "fairPrice", boat.fair().amount());
        ArrayNode rulings = node.putArray("dealBreakers");
        boat.rulings().forEach(each -> ruling(rulings.addObject(), each));
        ArrayNode past = node.putArray("hiddenCauses");
        causes.forEach(each -> cause(past.addObject(), each));
        sentences(
                node,
                "histories",
                boat.histories().stream().map(BoatHistory::sentence).toList());
        cost(node.putObject("cost"), boat);
        cart(node.putObject("cart"), boat.cart());
        ArrayNode lifts = node.putArray("lift");
        boat.loading().forEach(each -> loading(lifts.addObject(), each));
        AnswerJson.assumptions(node, boat.assumptions());
    }

    private static void ruling(ObjectNode node, Ruling ruling) {
        node.put("rule", ruling.rule().code());
        node.put("reason", ruling.reason());
        node.put("remedy", ruling.remedy());
        node.put("lifted", ruling.lifted().orElse(null));
    }

    private static void cause(ObjectNode node, CauseAccount cause) {
        node.put("cause", cause.id());
        node.put("label", cause.label());
        number(node, "before", cause.before());
        number(node, "now", cause.now());
        ArrayNode moved = node.putArray("movedBy");
        for (CauseAccount.Moved each : cause.moved()) {
            ObjectNode mover = moved.addObject().put("about", each.about()).put("phrase", each.phrase());
            number(mover, "logOdds", each.logOdds());
        }
    }

    private static void cost(ObjectNode node, BoatReport boat) {
        FiveYearCost cost = boat.cost();
        node.put("horizonYears", cost.horizonYears());
        number(node, "discountRate", cost.rate().perYear());
        number(node, "presentValue", cost.presentValue());
        number(node, "equivalentYearly", cost.equivalentYearly());
        number(node, "perOuting", cost.perOuting());
        number(node, "p10", boat.futures().p10());
        number(node, "median", boat.futures().median());
        number(node, "p90", boat.futures().p90());
        number(node, "mean", boat.futures().mean());
        number(node, "meanError", boat.futures().meanError());
        number(node, "dayOne", boat.dayOneCash());
        number(node, "resale", cost.resale());
        ArrayNode years = node.putArray("byYear");
        for (BoatFutures.YearBand each : boat.futures().years()) {
            ObjectNode band = years.addObject().put("year", each.year());
            number(band, "p10", each.p10());
            number(band, "median", each.median());
            number(band, "p90", each.p90());
        }
        ArrayNode lines = node.putArray("lines");
        cost.lines().forEach(each -> line(lines.addObject(), each));
    }

    private static void line(ObjectNode node, CostLine line) {
        node.put("item", line.id());
        node.put("label", line.label());
        node.put("group", line.group().code());
        node.put("timing", line.timing());
        number(node, "total", line.total());
        number(node, "presentValue", line.presentValue());
        number(node, "leastPresentValue", line.leastPresentValue());
        number(node, "likelyPresentValue", line.likelyPresentValue());
        number(node, "mostPresentValue", line.mostPresentValue());
        node.put("why", line.why());
    }

    private static void cart(ObjectNode node, CartAnswer cart) {
        node.put("verdict", cart.verdict().label());
        sentences(node, "reasons", cart.reasons());
        number(node, "massKg", cart.massKg());
        number(node, "worstPullN", cart.worstPullN());
        switch (cart) {
            case CartPlan plan -> plan(node, plan);
            case BagCarry bag -> node.put("inBag", true);
        }
        ArrayNode haulers = node.putArray("haulers");
        cart.haulers().forEach(each -> hauler(haulers.addObject(), each));
        sentences(node, "assumed", cart.assumptions());
        sentences(node, "cautions", cart.cautions());
    }

    private static void plan(ObjectNode node, CartPlan plan) {
        node.put("inBag", false);
        node.put("cart", plan.cart().label());
        number(node, "axleStationM", plan.axleStationM());
        number(node, "neededRatingKg", plan.neededRatingKg());
        number(node, "worstStartN", plan.worstStartN());
        number(node, "worstHoldBackN", plan.worstHoldBackN());
        ArrayNode stretches = node.putArray("stretches");
        plan.legs().forEach(each -> stretch(stretches.addObject(), each));
    }

    private static void stretch(ObjectNode node, Leg leg) {
        node.put("name", leg.ground().name());
        number(node, "distanceM", leg.ground().distanceM());
        switch (leg) {
            case Leg.Rolled rolled -> {
                node.put("rolled", true);
                number(node, "pullN", rolled.pullN().likely());
                number(node, "leastPullN", rolled.pullN().low());
                number(node, "mostPullN", rolled.pullN().high());
                number(node, "startN", rolled.startN());
                number(node, "holdBackN", rolled.holdBackN());
                number(node, "handN", rolled.up().handN());
                number(node, "axleN", rolled.up().wheelN());
                number(node, "perWheelN", rolled.perWheelN());
            }
            case Leg.Carried carried -> {
                node.put("rolled", false);
                number(node, "eachKg", carried.eachKg());
            }
        }
    }

    private static void hauler(ObjectNode node, HaulerAnswer hauler) {
        node.put("person", hauler.hauler().name());
        number(node, "ratio", hauler.ratio());
        number(node, "restAfterM", hauler.restAfterM());
        node.put("alone", hauler.alone());
        sentences(node, "needsHelp", hauler.needsHelp());
    }

    private static void loading(ObjectNode node, RoofLoading loading) {
        node.put("person", loading.lifter().name());
        number(node, "barHeightM", loading.barHeightM());
        lift(node.putObject("wholeAlone"), loading.wholeAlone());
        lift(node.putObject("twoPeople"), loading.twoPeople());
        lift(node.putObject("firstEnd"), loading.firstEnd());
        lift(node.putObject("secondEnd"), loading.secondEnd());
        node.put("advice", loading.advice());
        sentences(node, "assumed", loading.assumptions());
        sentences(node, "cautions", loading.cautions());
    }

    private static void lift(ObjectNode node, RoofLift lift) {
        number(node, "loadKg", lift.loadKg());
        number(node, "recommendedKg", lift.recommendedKg());
        number(node, "liftingIndex", lift.index());
        number(node, "personKg", lift.personKg());
        node.put("tested", lift.tested());
        number(node, "ratio", lift.liftRatio());
        node.put("effort", lift.band().label());
    }
}
