package org.keelweigh.shortlist;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Brings together two edits of the same document that both began at the same earlier state.
 *
 * <p>Fields changed on one side only take that side's value; fields changed on both sides to the same value are no
 * clash; all others are. Findings are merged check by check; every other list counts as one field.
 */
final class ThreeWayMerge {

    private static final String FINDINGS = "findings";
    private static final String CHECK = "check";
    private static final String OUTCOME = "outcome";
    private static final String NOTE = "note";

    private final List<Clash> clashes = new ArrayList<>();

    /**
     * What came of a merge.
     *
     * @param document the merged document; where there are clashes it holds the other side's value
     * @param clashes the fields that both sides changed to different values
     */
    record Merged(JsonNode document, List<Clash> clashes) {}

    private ThreeWayMerge() {}

    static Merged merge(JsonNode base, JsonNode mine, JsonNode theirs) {
        ThreeWayMerge merge = new ThreeWayMerge();
        JsonNode document = merge.object("", (ObjectNode) base, (ObjectNode) mine, (ObjectNode) theirs);
        return new Merged(document, List.copyOf(merge.clashes));
    }

    private ObjectNode object(String path, ObjectNode base, ObjectNode mine, ObjectNode theirs) {
        ObjectNode merged = JsonNodeFactory.instance.objectNode();
        Set<String> names = new LinkedHashSet<>(theirs.propertyNames());
        names.addAll(mine.propertyNames());
        for (String name : names) {
            String inner = path.isEmpty() ? name : path + "." + name;
            JsonNode value = FINDINGS.equals(inner)
                    ? findings(base.get(name), mine.get(name), theirs.get(name))
                    : value(inner, base.get(name), mine.get(name), theirs.get(name));
            if (value != null) {
                merged.set(name, value);
            }
        }
        return merged;
    }

    private @Nullable JsonNode value(
            String path, @Nullable JsonNode base, @Nullable JsonNode mine, @Nullable JsonNode theirs) {
        if (same(mine, theirs) || same(base, mine)) {
            return theirs;
        }
        if (same(base, theirs)) {
            return mine;
        }
        if (mine instanceof ObjectNode a && theirs instanceof ObjectNode b) {
            ObjectNode from = base instanceof ObjectNode c ? c : JsonNodeFactory.instance.objectNode();
            return object(path, from, a, b);
        }
        clashes.add(new Clash(path, words(mine), words(theirs)));
        return theirs;
    }

    private @Nullable JsonNode findings(@Nullable JsonNode base, @Nullable JsonNode mine, @Nullable JsonNode theirs) {
        Map<String, JsonNode> from = byCheck(base);
        Map<String, JsonNode> here = byCheck(mine);
        Map<String, JsonNode> there = byCheck(theirs);
        Set<String> checks = new LinkedHashSet<>(there.keySet());
        checks.addAll(here.keySet());
        ArrayNode merged = JsonNodeFactory.instance.arrayNode();
        for (String check : checks) {
            JsonNode value = value(FINDINGS + "." + check, from.get(check), here.get(check), there.get(check));
            if (value != null) {
                merged.add(value);
            }
        }
        return merged.isEmpty() ? null : merged;
    }

    private static Map<String, JsonNode> byCheck(@Nullable JsonNode findings) {
        Map<String, JsonNode> byCheck = new LinkedHashMap<>();
        if (findings != null) {
            findings.forEach(each -> byCheck.put(each.path(CHECK).asString(""), each));
        }
        return byCheck;
    }

    private static boolean same(@Nullable JsonNode one, @Nullable JsonNode other) {
        return one == null ? other == null : one.equals(other);
    }

    private static String words(@Nullable JsonNode value) {
        if (value == null) {
            return "empty";
        }
        if (value.has(OUTCOME)) {
            String note = value.path(NOTE).asString("");
            return value.path(OUTCOME).asString("") + (note.isEmpty() ? "" : " (“" + note + "”)");
        }
        return value.isValueNode()
                ? value.asString("")
                : value.isArray() ? "a list of " + value.size() : "another value";
    }
}
