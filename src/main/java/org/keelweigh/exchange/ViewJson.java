package org.keelweigh.exchange;

import static org.keelweigh.exchange.AnswerJson.number;
import static org.keelweigh.exchange.AnswerJson.rounded;
import static org.keelweigh.exchange.AnswerJson.sentences;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import org.keelweigh.appraisal.BoatOffer;
import org.keelweigh.appraisal.CatchUp;
import org.keelweigh.appraisal.CheckOutlook;
import org.keelweigh.appraisal.Confidence;
import org.keelweigh.appraisal.NextChecks;
import org.keelweigh.appraisal.Perspective;
import org.keelweigh.appraisal.SecondOpinions;
import org.keelweigh.appraisal.Yardstick;
import org.keelweigh.cost.OfferPlan;
import org.keelweigh.decision.robust.SmallestChange;
import org.keelweigh.decision.robust.WeightStability;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Writes what one perspective makes of the boats as JSON. */
final class ViewJson {

    private final WholeAnswer whole;
    private final WholeAnswer.View view;
    private final Perspective perspective;
    private final Confidence confidence;
    private final List<Yardstick> criteria;

    private ViewJson(WholeAnswer whole, WholeAnswer.View view) {
        this.whole = whole;
        this.view = view;
        this.perspective = view.perspective();
        this.confidence = view.confidence();
        this.criteria = whole.measured().yardsticks().all();
    }

    static void write(ObjectNode node, WholeAnswer whole, WholeAnswer.View view) {
        new ViewJson(whole, view).all(node);
    }

    private void all(ObjectNode node) {
        node.put("name", perspective.name());
        node.put("person", perspective.person().map(Object::toString).orElse(null));
        ObjectNode answer = node.putObject("answer");
        answer.put("headline", view.answer().headline());
        answer.put("strength", view.answer().strength().name().toLowerCase(Locale.ROOT));
        sentences(answer, "sentences", view.answer().sentences());
        sentences(answer, "changes", view.answer().changes());
        node.put("weighings", confidence.samples());
        number(node, "largestShareError", confidence.largestError());
        ArrayNode ranking = node.putArray("ranking");
        perspective.ranking().order().forEach(boat -> place(ranking.addObject(), boat));
        ArrayNode stability = node.putArray("stability");
        perspective.stability().forEach(each -> stability(stability.addObject(), each));
        ArrayNode rivals = node.putArray("rivals");
        view.rivals().forEach(each -> rival(rivals.addObject(), each));
        ArrayNode opinions = node.putArray("secondOpinions");
        view.voices().forEach(each -> opinion(opinions.addObject(), each));
        next(node.putObject("nextChecks"), view.next());
    }

    private void place(ObjectNode node, int boat) {
        node.put("boat", id(boat));
        node.put("name", whole.measured().boats().get(boat).name());
        node.put("rank", perspective.ranking().rank(boat));
        node.put("ruledOut", perspective.ruledOut(boat));
        number(node, "value", perspective.ranking().total(boat));
        number(node, "chanceBest", confidence.chanceBest(boat));
        number(node, "chanceBestError", confidence.chanceBestError(boat));
        number(node, "expectedRank", confidence.expectedRank(boat));
        ArrayNode ranks = node.putArray("rankShares");
        for (int better = 0; better < perspective.size(); better++) {
            ranks.add(rounded(confidence.rankShare(boat, better)));
        }
        duels(node.putArray("winningChances"), boat);
        weights(node.putArray("centralWeights"), confidence.centralWeights(boat));
        offer(node.putObject("offer"), view.offers().get(boat));
        number(node, "breakEvenPrice", WholeAnswer.tie(view.offers().get(boat)));
        node.put(
                "breakEven",
                BreakEvenWords.of(
                        view.offers().get(boat), whole.measured().situation().display()));
        contributions(node.putArray("contributions"), boat);
    }

    private void duels(ArrayNode list, int boat) {
        if (!perspective.ruledOut(boat)) {
            view.choices().stream().filter(other -> other != boat).forEach(other -> {
                ObjectNode duel = list.addObject().put("against", id(other));
                number(duel, "chance", confidence.chanceBetter(boat, other));
            });
        }
    }

    private void weights(ArrayNode list, List<Double> weights) {
        for (int c = 0; c < weights.size(); c++) {
            number(list.addObject().put("criterion", criteria.get(c).id()), "weight", weights.get(c));
        }
    }

    private void contributions(ArrayNode list, int boat) {
        for (int c = 0; c < criteria.size(); c++) {
            ObjectNode part = list.addObject();
            part.put("criterion", criteria.get(c).id());
            number(part, "measure", whole.measure(perspective, boat, c));
            number(part, "value", perspective.value(boat, c));
            number(part, "weight", perspective.share(c));
            number(part, "contribution", perspective.ranking().contribution(boat, c));
        }
    }

    private static void offer(ObjectNode node, BoatOffer offer) {
        Optional<OfferPlan> plan = offer instanceof BoatOffer.Offer made ? made.plan() : Optional.empty();
        number(node, "opening", plan.map(OfferPlan::opening).orElse(Double.NaN));
        number(node, "fairDeal", plan.map(OfferPlan::target).orElse(Double.NaN));
        number(node, "walkAway", plan.map(OfferPlan::walkAway).orElse(Double.NaN));
        number(node, "chanceTaken", plan.map(OfferPlan::chanceTaken).orElse(Double.NaN));
        node.put("worthMaking", plan.map(OfferPlan::worthMaking).orElse(false));
        ArrayNode arguments = node.putArray("arguments");
        ArrayNode curve = node.putArray("curve");
        if (offer instanceof BoatOffer.Offer made) {
            made.arguments().forEach(each -> arguments.add(each.label()));
            for (BoatOffer.ChanceAt each : made.curve()) {
                ObjectNode point = curve.addObject();
                number(point, "price", each.price());
                number(point, "chanceBest", each.chanceBest());
            }
        }
    }

    private void stability(ObjectNode node, WeightStability each) {
        node.put("criterion", criteria.get(each.criterion()).id());
        number(node, "weight", each.weight());
        number(node, "from", each.from());
        number(node, "to", each.to());
        node.put("winner", id(each.winner()));
        node.put("winnerBelow", id(each.winnerBelow()));
        node.put("winnerAbove", id(each.winnerAbove()));
    }

    private void rival(ObjectNode node, CatchUp rival) {
        node.put("boat", id(rival.rival()));
        number(node, "moved", rival.change().map(SmallestChange::moved).orElse(Double.NaN));
        node.put("sentence", rival.sentence());
        ArrayNode weights = node.putArray("weights");
        rival.change().ifPresent(change -> {
            for (int c = 0; c < criteria.size(); c++) {
                ObjectNode weight =
                        weights.addObject().put("criterion", criteria.get(c).id());
                number(weight, "weight", change.weights().get(c));
                number(weight, "change", change.changes().get(c));
            }
        });
    }

    private void opinion(ObjectNode node, SecondOpinions.Voice voice) {
        node.put("method", voice.method());
        node.put("how", voice.how());
        node.put("sameLeader", voice.sameLeader());
        number(node, "agreement", voice.agreement());
        node.put("sentence", voice.sentence());
        ArrayNode order = node.putArray("order");
        voice.order().forEach(boat -> order.add(id(boat)));
    }

    private void next(ObjectNode node, NextChecks next) {
        node.put("sentence", next.sentence());
        number(node, "minutes", next.visitMinutes());
        number(node, "gain", next.visitGain());
        number(node, "everyCheckGain", next.everything());
        checks(node.putArray("visit"), next.visit());
        checks(node.putArray("all"), next.outlooks());
    }

    private void checks(ArrayNode list, List<CheckOutlook> checks) {
        for (CheckOutlook each : checks) {
            ObjectNode node = list.addObject();
            node.put("boat", id(each.boat()));
            node.put("check", each.check().id());
            number(node, "minutes", each.minutes());
            number(node, "gain", each.gain());
            number(node, "gainError", each.gainError());
            number(node, "changeChance", each.changeChance());
        }
    }

    private @Nullable String id(OptionalInt boat) {
        return boat.isEmpty() ? null : id(boat.getAsInt());
    }

    private String id(int boat) {
        return whole.measured().boats().get(boat).id().toString();
    }
}
