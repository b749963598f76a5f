package org.keelweigh.exchange;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import org.keelweigh.appraisal.Assumption;
import org.keelweigh.appraisal.BoatOffer;
import org.keelweigh.appraisal.CheckOutlook;
import org.keelweigh.appraisal.NextChecks;
import org.keelweigh.appraisal.Perspective;
import org.keelweigh.appraisal.Yardstick;
import org.keelweigh.cost.OfferPlan;
import org.keelweigh.decision.robust.WeightStability;
import org.keelweigh.shortlist.ShortlistData;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Writes the whole answer as JSON. Every field is described in {@code docs/data-format.md}. */
final class AnswerJson {

    static final String FORMAT = "keelweigh-answer";
    static final int VERSION = 1;

    private static final double SMALLEST = 1e6;

    private final WholeAnswer whole;
    private final List<Yardstick> criteria;

    private AnswerJson(WholeAnswer whole) {
        this.whole = whole;
        this.criteria = whole.measured().yardsticks().all();
    }

    static String of(WholeAnswer whole) {
        return new AnswerJson(whole).root().toPrettyString() + "\n";
    }

    private ObjectNode root() {
        ShortlistData shortlist = whole.measured().facts().shortlist().data();
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("format", FORMAT);
        root.put("formatVersion", VERSION);
        root.put("name", shortlist.name());
        root.put("currency", shortlist.currency());
        root.put("year", whole.measured().situation().thisYear());
        assumptions(root, whole.measured().situation().assumptions());
        ArrayNode list = root.putArray("criteria");
        for (Yardstick each : criteria) {
            list.addObject()
                    .put("criterion", each.id())
                    .put("name", each.name())
                    .put("unit", each.unit().code());
        }
        ArrayNode views = root.putArray("perspectives");
        whole.views().forEach(view -> view(views.addObject(), view));
        root.put("oneCart", whole.oneCart());
        ArrayNode boats = root.putArray("boats");
        whole.measured().boats().forEach(boat -> BoatJson.write(boats.addObject(), boat, whole.measured()));
        return root;
    }

    private void view(ObjectNode node, WholeAnswer.View view) {
        Perspective perspective = view.perspective();
        node.put("name", perspective.name());
        node.put("person", perspective.person().map(Object::toString).orElse(null));
        ObjectNode answer = node.putObject("answer");
        answer.put("headline", view.answer().headline());
        answer.put("strength", view.answer().strength().name().toLowerCase(Locale.ROOT));
        sentences(answer, "sentences", view.answer().sentences());
        sentences(answer, "changes", view.answer().changes());
        ArrayNode ranking = node.putArray("ranking");
        perspective.ranking().order().forEach(boat -> place(ranking.addObject(), view, boat));
        ArrayNode stability = node.putArray("stability");
        perspective.stability().forEach(each -> stability(stability.addObject(), each));
        next(node.putObject("nextChecks"), view.next());
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

    private static void offer(ObjectNode node, BoatOffer offer) {
        Optional<OfferPlan> plan = offer instanceof BoatOffer.Offer made ? made.plan() : Optional.empty();
        number(node, "opening", plan.map(OfferPlan::opening).orElse(Double.NaN));
        number(node, "fairDeal", plan.map(OfferPlan::target).orElse(Double.NaN));
        number(node, "walkAway", plan.map(OfferPlan::walkAway).orElse(Double.NaN));
        number(node, "chanceTaken", plan.map(OfferPlan::chanceTaken).orElse(Double.NaN));
        node.put("worthMaking", plan.map(OfferPlan::worthMaking).orElse(false));
        ArrayNode curve = node.putArray("curve");
        if (offer instanceof BoatOffer.Offer made) {
            for (BoatOffer.ChanceAt each : made.curve()) {
                ObjectNode point = curve.addObject();
                number(point, "price", each.price());
                number(point, "chanceBest", each.chanceBest());
            }
        }
    }

    private void place(ObjectNode node, WholeAnswer.View view, int boat) {
        Perspective perspective = view.perspective();
        node.put("boat", id(boat));
        node.put("name", whole.measured().boats().get(boat).name());
        node.put("rank", perspective.ranking().rank(boat));
        node.put("ruledOut", perspective.ruledOut(boat));
        number(node, "value", perspective.ranking().total(boat));
        number(node, "chanceBest", view.confidence().chanceBest(boat));
        number(node, "chanceBestError", view.confidence().chanceBestError(boat));
        number(node, "expectedRank", view.confidence().expectedRank(boat));
        ArrayNode ranks = node.putArray("rankShares");
        for (int better = 0; better < perspective.size(); better++) {
            ranks.add(Math.rint(view.confidence().rankShare(boat, better) * SMALLEST) / SMALLEST);
        }
        offer(node.putObject("offer"), view.offers().get(boat));
        number(node, "breakEvenPrice", WholeAnswer.tie(view.offers().get(boat)));
        node.put(
                "breakEven",
                BreakEvenWords.of(
                        view.offers().get(boat), whole.measured().situation().display()));
        ArrayNode contributions = node.putArray("contributions");
        for (int c = 0; c < criteria.size(); c++) {
            ObjectNode part = contributions.addObject();
            part.put("criterion", criteria.get(c).id());
            number(part, "measure", whole.measure(perspective, boat, c));
            number(part, "value", perspective.value(boat, c));
            number(part, "weight", perspective.share(c));
            number(part, "contribution", perspective.ranking().contribution(boat, c));
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

    private @Nullable String id(OptionalInt boat) {
        return boat.isEmpty() ? null : id(boat.getAsInt());
    }

    private String id(int boat) {
        return whole.measured().boats().get(boat).id().toString();
    }

    static void assumptions(ObjectNode node, List<Assumption> assumptions) {
        ArrayNode list = node.putArray("assumptions");
        assumptions.forEach(each -> list.addObject().put("field", each.field()).put("sentence", each.sentence()));
    }

    static void sentences(ObjectNode node, String field, List<String> sentences) {
        ArrayNode list = node.putArray(field);
        sentences.forEach(list::add);
    }

    static void number(ObjectNode node, String field, OptionalDouble value) {
        number(node, field, value.orElse(Double.NaN));
    }

    /** Writes a figure to a millionth, and {@code null} for what is not a number or without bound. */
    static void number(ObjectNode node, String field, double value) {
        if (Double.isFinite(value)) {
            node.put(field, Math.rint(value * SMALLEST) / SMALLEST + 0.0);
        } else {
            node.putNull(field);
        }
    }
}
