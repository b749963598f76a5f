package org.keelweigh.shortlist;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Where a field stands in a document, such as {@code trip.launches[0].distanceM}: the same path that doubts, clashes and
 * assumptions carry.
 *
 * @param path names set apart by points, places in a list in brackets, counted from 0
 */
public record FieldPath(String path) {

    private static final Pattern MARKS = Pattern.compile("[.\\[\\]]+");

    public FieldPath {
        if (path.isBlank()) {
            throw new IllegalArgumentException("A path must name a field, but is empty");
        }
    }

    /** Reads a number; empty when nobody said. */
    public Optional<Double> number(Object document) {
        return node(document).filter(JsonNode::isNumber).map(JsonNode::asDouble);
    }

    /** Reads a text or code; empty when nobody said. */
    public Optional<String> text(Object document) {
        return node(document).filter(JsonNode::isString).map(JsonNode::asString);
    }

    /** Reads a yes or no; empty when nobody said. */
    public Optional<Boolean> flag(Object document) {
        return node(document).filter(JsonNode::isBoolean).map(JsonNode::asBoolean);
    }

    private Optional<JsonNode> node(Object document) {
        JsonNode at = Documents.tree(document);
        for (String step : steps()) {
            at = at.isArray() ? at.path(Integer.parseInt(step)) : at.path(step);
        }
        return at.isMissingNode() || at.isNull() ? Optional.empty() : Optional.of(at);
    }

    /**
     * Tells the same document with this field changed.
     *
     * @param value the new value; {@code null} for one that nobody knows
     * @throws tools.jackson.core.JacksonException if the value does not fit the field
     * @throws IndexOutOfBoundsException if the path names a place that the list does not have
     */
    @SuppressWarnings("unchecked")
    public <D> D with(D document, @Nullable Object value) {
        JsonNode root = Documents.tree(document);
        List<String> steps = steps();
        JsonNode at = root;
        for (String step : steps.subList(0, steps.size() - 1)) {
            at = inner(at, step);
        }
        ObjectNode owner = (ObjectNode) at;
        if (value == null) {
            owner.remove(steps.getLast());
        } else {
            owner.set(steps.getLast(), Documents.tree(value));
        }
        return (D) Documents.read(root, document.getClass());
    }

    /** Tells {@code to} with this field as it is in {@code from}. */
    public <D> D copied(D from, D to) {
        return with(to, node(from).orElse(null));
    }

    private static JsonNode inner(JsonNode at, String step) {
        if (at instanceof ArrayNode array) {
            int place = Integer.parseInt(step);
            if (place >= array.size()) {
                throw new IndexOutOfBoundsException("There is no place " + place + " in a list of " + array.size());
            }
            return array.get(place);
        }
        if (!(at instanceof ObjectNode object) || step.matches("[0-9]+")) {
            throw new IndexOutOfBoundsException("There is no place " + step + " in an empty list");
        }
        if (!object.has(step)) {
            object.set(step, JsonNodeFactory.instance.objectNode());
        }
        return object.get(step);
    }

    private List<String> steps() {
        return MARKS.splitAsStream(path).filter(each -> !each.isEmpty()).toList();
    }
}
