package org.keelweigh.exchange;

import java.util.List;
import java.util.OptionalDouble;
import org.keelweigh.appraisal.Assumption;
import org.keelweigh.appraisal.Yardstick;
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
        whole.views().forEach(view -> ViewJson.write(views.addObject(), whole, view));
        root.put("oneCart", whole.oneCart());
        ArrayNode boats = root.putArray("boats");
        for (int boat = 0; boat < whole.measured().boats().size(); boat++) {
            BoatJson.write(
                    boats.addObject(),
                    whole.measured().boats().get(boat),
                    whole.causes().get(boat));
        }
        return root;
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
            node.put(field, rounded(value));
        } else {
            node.putNull(field);
        }
    }

    static double rounded(double value) {
        return Math.rint(value * SMALLEST) / SMALLEST + 0.0;
    }
}
