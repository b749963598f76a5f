package org.keelweigh.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.StreamSupport;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * The published schema at work: says in sentences where a document does not keep to it.
 *
 * <p>It knows the keywords that {@code docs/shortlist.schema.json} uses, and puts in the defaults that the schema names.
 */
final class DocumentSchema {

    private static final String SHIPPED = "/schema/shortlist.schema.json";
    private static final Pattern UUID =
            Pattern.compile("[0-9a-fA-F]{8}-[0-9a-fA-F]{4}-[0-9a-fA-F]{4}-[0-9a-fA-F]{4}-[0-9a-fA-F]{12}");
    private static final Instant FIRST_MOMENT = Instant.parse("1970-01-01T00:00:00Z");
    private static final Instant LAST_MOMENT = Instant.parse("2200-01-01T00:00:00Z");
    private static final int LONGEST_KEY = 80;
    private static final int ENOUGH_PROBLEMS = 200;

    private final JsonNode root;

    private DocumentSchema(JsonNode root) {
        this.root = root;
    }

    /**
     * What a document does wrong.
     *
     * @param shape what keeps it from being read
     * @param range numbers that are too little or too much
     */
    record Findings(List<ImportProblem> shape, List<ImportProblem> range) {}

    static DocumentSchema shipped() {
        try (InputStream in = DocumentSchema.class.getResourceAsStream(SHIPPED)) {
            return new DocumentSchema(new JsonMapper().readTree(Objects.requireNonNull(in, SHIPPED)));
        } catch (IOException e) {
            throw new UncheckedIOException(SHIPPED + " could not be read", e);
        }
    }

    JsonNode root() {
        return root;
    }

    Findings look(LocatedJson document) {
        Walk walk = new Walk(document);
        walk.value("", document.root(), root);
        return new Findings(walk.shape, walk.range);
    }

    private JsonNode resolved(JsonNode schema) {
        String ref = schema.path("$ref").asString("");
        return ref.isEmpty() ? schema : root.at(ref.substring(1));
    }

    private final class Walk {
        private final LocatedJson document;
        private final List<ImportProblem> shape = new ArrayList<>();
        private final List<ImportProblem> range = new ArrayList<>();

        Walk(LocatedJson document) {
            this.document = document;
        }

        void value(String path, JsonNode value, JsonNode written) {
            JsonNode schema = resolved(written);
            if (shape.size() >= ENOUGH_PROBLEMS) {
                return;
            }
            List<String> types = words(schema.path("type"));
            if (types.stream().noneMatch(type -> is(type, value))) {
                shape(path, Words.expected(types.getFirst()) + ", but here is " + Words.of(value) + ".");
                return;
            }
            if (value.isObject()) {
                object(path, (ObjectNode) value, schema);
            } else if (value.isArray()) {
                array(path, value, schema);
            } else if (value.isString()) {
                string(path, value.asString(), schema);
            } else if (value.isNumber()) {
                number(path, value.decimalValue(), schema);
            }
        }

        private void object(String path, ObjectNode object, JsonNode schema) {
            JsonNode known = schema.path("properties");
            for (String required : words(schema.path("required"))) {
                if (!object.has(required)) {
                    shape(path, "\"" + required + "\" is missing here.");
                }
            }
            known.properties().forEach(each -> putDefault(object, each));
            if (object.size() > schema.path("maxProperties").asInt(Integer.MAX_VALUE)) {
                shape(
                        path,
                        "There are " + object.size() + " entries here; at most "
                                + schema.path("maxProperties").asInt() + " can be read.");
                return;
            }
            object.properties().forEach(each -> member(path, each, known, schema.path("additionalProperties")));
        }

        private void putDefault(ObjectNode object, Map.Entry<String, JsonNode> property) {
            JsonNode usual = property.getValue().path("default");
            if (!usual.isMissingNode() && !object.has(property.getKey())) {
                object.set(property.getKey(), usual.deepCopy());
            }
        }

        private void member(String path, Map.Entry<String, JsonNode> each, JsonNode known, JsonNode further) {
            String name = each.getKey();
            String inner = LocatedJson.member(path, name);
            if (known.has(name)) {
                value(inner, each.getValue(), known.get(name));
            } else if (!further.isObject()) {
                List<String> names = List.copyOf(known.propertyNames());
                shape(
                        inner,
                        "\"" + Words.brief(name) + "\" is not a field of a shortlist file here."
                                + NearestName.hint(Words.brief(name), names));
            } else if (name.isBlank() || name.length() > LONGEST_KEY) {
                shape(inner, "The name of this entry must have 1 to " + LONGEST_KEY + " characters.");
            } else {
                value(inner, each.getValue(), further);
            }
        }

        private void array(String path, JsonNode array, JsonNode schema) {
            int most = schema.path("maxItems").asInt(Integer.MAX_VALUE);
            if (array.size() > most) {
                shape(path, "There are " + array.size() + " entries here; at most " + most + " can be read.");
                return;
            }
            for (int i = 0; i < array.size(); i++) {
                value(path + "[" + i + "]", array.get(i), schema.path("items"));
            }
        }

        private void string(String path, String text, JsonNode schema) {
            List<String> codes = words(schema.path("enum"));
            int most = schema.path("maxLength").asInt(Integer.MAX_VALUE);
            if (!codes.isEmpty() && !codes.contains(text)) {
                shape(
                        path,
                        "\"" + Words.brief(text) + "\" is none of " + String.join(", ", codes) + "."
                                + NearestName.hint(Words.brief(text), codes));
            } else if (text.codePointCount(0, text.length()) > most) {
                shape(
                        path,
                        "The text has " + text.codePointCount(0, text.length()) + " characters; at most " + most
                                + " can be kept.");
            } else {
                format(path, text, schema.path("format").asString(""));
            }
        }

        private void format(String path, String text, String format) {
            if (format.equals("uuid") && !UUID.matcher(text).matches()) {
                shape(
                        path,
                        "\"" + Words.brief(text)
                                + "\" is not an identifier such as 6f1c2a30-5b7d-4e89-9a01-23456789abcd.");
            } else if (format.equals("date-time") && !isMoment(text)) {
                shape(
                        path,
                        "\"" + Words.brief(text)
                                + "\" is not a moment between 1970 and 2200 such as 2026-04-01T10:15:30Z.");
            }
        }

        private void number(String path, BigDecimal value, JsonNode schema) {
            if (schema.has("minimum") && value.compareTo(schema.get("minimum").decimalValue()) < 0) {
                range(
                        path,
                        Words.number(value) + " is too little: the least is "
                                + Words.number(schema.get("minimum").decimalValue()) + ".");
            } else if (schema.has("maximum")
                    && value.compareTo(schema.get("maximum").decimalValue()) > 0) {
                range(
                        path,
                        Words.number(value) + " is too much: the most is "
                                + Words.number(schema.get("maximum").decimalValue()) + ".");
            }
        }

        private void shape(String path, String sentence) {
            shape.add(new ImportProblem(path, document.line(path), sentence));
        }

        private void range(String path, String sentence) {
            range.add(new ImportProblem(path, document.line(path), sentence));
        }
    }

    private static boolean isMoment(String text) {
        try {
            Instant moment = Instant.parse(text);
            return !moment.isBefore(FIRST_MOMENT) && moment.isBefore(LAST_MOMENT);
        } catch (DateTimeParseException e) {
            return false;
        }
    }

    private static boolean is(String type, JsonNode value) {
        return switch (type) {
            case "object" -> value.isObject();
            case "array" -> value.isArray();
            case "string" -> value.isString();
            case "boolean" -> value.isBoolean();
            case "number" -> value.isNumber();
            case "integer" ->
                value.isNumber() && value.decimalValue().stripTrailingZeros().scale() <= 0;
            case "null" -> value.isNull();
            default -> throw new IllegalStateException("The schema has an unknown type " + type);
        };
    }

    private static List<String> words(JsonNode node) {
        if (node.isString()) {
            return List.of(node.asString());
        }
        return StreamSupport.stream(node.spliterator(), false)
                .filter(JsonNode::isString)
                .map(JsonNode::asString)
                .toList();
    }
}
