package org.keelweigh.exchange;

import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.stream.DoubleStream;
import org.keelweigh.shortlist.Documents;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Draws documents from the published schema itself, so that every field it names is tried. */
final class RandomDocuments {

    private static final JsonNodeFactory MAKE = JsonNodeFactory.instance;
    private static final List<String> CRITERIA = List.of("cost", "lift", "stability", "delight");
    private static final String[] LETTERS = {"a", "Z", "é", "\"", "\\", "\n", "\t", "渡", "🛶", "/", "0", "\u2028", "<"};

    private final JsonNode schema = DocumentSchema.shipped().root();
    private final Random random;
    private final ArrayNode people = MAKE.arrayNode();

    RandomDocuments(long seed) {
        this.random = new Random(seed);
    }

    ShortlistDocument next() {
        ObjectNode root = MAKE.objectNode();
        root.put("format", ShortlistDocument.FORMAT);
        root.put("formatVersion", ShortlistDocument.VERSION);
        root.set("shortlist", value("shortlist", def("ShortlistPart")));
        for (int i = random.nextInt(4); i > 0; i--) {
            people.add(value("people", def("PersonPart")));
        }
        root.set("people", people);
        ArrayNode candidates = root.putArray("candidates");
        for (int i = random.nextInt(4); i > 0; i--) {
            candidates.add(value("candidates", def("CandidatePart")));
        }
        return Documents.read(root, ShortlistDocument.class);
    }

    private JsonNode def(String name) {
        return schema.at("/$defs/" + name);
    }

    private JsonNode value(String name, JsonNode written) {
        JsonNode rule =
                written.has("$ref") ? schema.at(written.get("$ref").asString().substring(1)) : written;
        if (rule.has("enum")) {
            return MAKE.stringNode(pick(rule.get("enum")));
        }
        String type = rule.get("type").isString()
                ? rule.get("type").asString()
                : rule.get("type").get(0).asString();
        return switch (type) {
            case "object" -> rule.has("properties") ? object(name, rule) : map(name, rule);
            case "array" -> array(name, rule);
            case "boolean" -> MAKE.booleanNode(random.nextBoolean());
            case "integer" -> MAKE.numberNode(whole(name, rule));
            case "number" -> MAKE.numberNode(between(rule));
            default -> MAKE.stringNode(text(name, rule));
        };
    }

    private ObjectNode object(String name, JsonNode rule) {
        ObjectNode object = MAKE.objectNode();
        Set<String> required = new HashSet<>();
        rule.get("required").forEach(each -> required.add(each.asString()));
        for (Map.Entry<String, JsonNode> each : rule.get("properties").properties()) {
            if (required.contains(each.getKey()) || each.getValue().has("default") || random.nextInt(3) > 0) {
                object.set(each.getKey(), value(each.getKey(), each.getValue()));
            }
        }
        if ("quote".equals(name)) {
            double[] points = DoubleStream.of(1, 2, 3)
                    .map(each -> random.nextDouble() * 1000)
                    .sorted()
                    .toArray();
            object.put("low", points[0]).put("likely", points[1]).put("high", points[2]);
        }
        return object;
    }

    private ObjectNode map(String name, JsonNode rule) {
        ObjectNode map = MAKE.objectNode();
        for (int i = random.nextInt(4); i > 0; i--) {
            String key =
                    switch (name) {
                        case "weights" -> CRITERIA.get(random.nextInt(CRITERIA.size()));
                        case "liking" ->
                            people.isEmpty()
                                    ? ""
                                    : people.get(random.nextInt(people.size()))
                                            .get("id")
                                            .asString();
                        default -> "key-" + letters(3) + i;
                    };
            if (!key.isEmpty()) {
                map.set(key, value(key, rule.get("additionalProperties")));
            }
        }
        return map;
    }

    private ArrayNode array(String name, JsonNode rule) {
        ArrayNode array = MAKE.arrayNode();
        for (int i = random.nextInt(4); i > 0; i--) {
            JsonNode item = value(name + "-item", rule.get("items"));
            if ("findings".equals(name)) {
                ((ObjectNode) item).put("check", "check-" + i);
            }
            array.add(item);
        }
        return array;
    }

    private long whole(String name, JsonNode rule) {
        if ("seed".equals(name)) {
            return random.nextLong();
        }
        int least = rule.get("minimum").asInt();
        int most = "modelYear".equals(name) ? 2026 : rule.get("maximum").asInt();
        return least + random.nextInt(most - least + 1);
    }

    private double between(JsonNode rule) {
        double least = rule.get("minimum").asDouble();
        double most = rule.get("maximum").asDouble();
        return switch (random.nextInt(8)) {
            case 0 -> least;
            case 1 -> most;
            default -> Math.min(most, least + random.nextDouble() * (most - least));
        };
    }

    private String text(String name, JsonNode rule) {
        if (rule.path("format").asString("").equals("uuid")) {
            return new UUID(random.nextLong(), random.nextLong()).toString();
        }
        if (rule.path("format").asString("").equals("date-time")) {
            return Instant.ofEpochSecond(random.nextInt(), random.nextInt(1000) * 1_000_000L)
                    .plus(Duration.ofDays(30_000))
                    .toString();
        }
        return "currency".equals(name)
                ? "EUR"
                : "x" + letters(Math.min(30, rule.get("maxLength").asInt() - 2));
    }

    private String letters(int most) {
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(most / 2 + 1); i > 0; i--) {
            text.append(LETTERS[random.nextInt(LETTERS.length)]);
        }
        return text.toString();
    }

    private String pick(JsonNode codes) {
        List<String> known = codes.valueStream()
                .filter(JsonNode::isString)
                .map(JsonNode::asString)
                .toList();
        return known.get(random.nextInt(known.size()));
    }
}
