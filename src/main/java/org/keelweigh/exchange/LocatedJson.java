package org.keelweigh.exchange;

import java.util.HashMap;
import java.util.Map;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.exc.UnexpectedEndOfInputException;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * JSON text as a tree that still knows the line of each field.
 *
 * <p>Jackson's own trees forget where they were read, and the schema library that remembers works on an older Jackson
 * beside ours; so this reads token by token, once, with the parser that the rest of the program uses.
 *
 * @param root the tree
 * @param lines the line of each field by its path, such as {@code candidates[0].data.name}
 */
record LocatedJson(JsonNode root, Map<String, Integer> lines) {

    private static final int DEEPEST = 24;
    private static final int LONGEST_NUMBER = 100;

    private static final JsonMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(DEEPEST)
                            .maxNumberLength(LONGEST_NUMBER)
                            .build())
                    .build())
            .build();

    /** Reads a text. */
    static LocatedJson read(String text) throws RefusedFile {
        if (text.isBlank()) {
            throw new RefusedFile("", 1, "The file is empty.");
        }
        try (JsonParser parser = MAPPER.createParser(text)) {
            return read(parser);
        }
    }

    private static LocatedJson read(JsonParser parser) throws RefusedFile {
        try {
            return new Reader(parser).read();
        } catch (UnexpectedEndOfInputException e) {
            throw new RefusedFile(
                    "", line(parser), "The file ends in the middle: it was cut off. Export or download it again.");
        } catch (StreamConstraintsException e) {
            throw new RefusedFile(
                    "",
                    line(parser),
                    "Here is something no shortlist holds: brackets in each other more than " + DEEPEST
                            + " deep, or a number of more than " + LONGEST_NUMBER + " digits.");
        } catch (JacksonException e) {
            throw new RefusedFile(
                    "",
                    line(parser),
                    "This is not JSON: " + e.getOriginalMessage() + ". A shortlist file is JSON text.");
        }
    }

    /** Tells the line of a path, or of the nearest thing around it that is there. */
    int line(String path) {
        String at = path;
        while (!lines.containsKey(at) && !at.isEmpty()) {
            at = at.substring(0, Math.max(0, Math.max(at.lastIndexOf('.'), at.lastIndexOf('['))));
        }
        return lines.getOrDefault(at, 1);
    }

    /** Tells the path of a member. */
    static String member(String path, String name) {
        return path.isEmpty() ? name : path + "." + name;
    }

    /** Not the place in the exception: that is missing where a limit was passed. */
    private static int line(JsonParser parser) {
        return Math.max(1, parser.currentLocation().getLineNr());
    }

    private static final class Reader {
        private final JsonParser parser;
        private final Map<String, Integer> lines = new HashMap<>();

        Reader(JsonParser parser) {
            this.parser = parser;
        }

        LocatedJson read() throws RefusedFile {
            parser.nextToken();
            JsonNode root = value("");
            if (parser.nextToken() != null) {
                throw new RefusedFile(
                        "", here(), "Something follows after the end of the shortlist; there may be two files in one.");
            }
            return new LocatedJson(root, Map.copyOf(lines));
        }

        private JsonNode value(String path) throws RefusedFile {
            lines.putIfAbsent(path, here());
            JsonToken token = parser.currentToken();
            JsonNodeFactory make = JsonNodeFactory.instance;
            return switch (token) {
                case START_OBJECT -> object(path);
                case START_ARRAY -> array(path);
                case VALUE_STRING -> make.stringNode(string(path, parser.getString()));
                case VALUE_TRUE -> make.booleanNode(true);
                case VALUE_FALSE -> make.booleanNode(false);
                case VALUE_NULL -> make.nullNode();
                case VALUE_NUMBER_INT ->
                    parser.getNumberType() == JsonParser.NumberType.BIG_INTEGER
                            ? make.numberNode(parser.getBigIntegerValue())
                            : make.numberNode(parser.getLongValue());
                case VALUE_NUMBER_FLOAT -> make.numberNode(finite(path));
                case END_OBJECT, END_ARRAY, PROPERTY_NAME, VALUE_EMBEDDED_OBJECT, NOT_AVAILABLE ->
                    throw new RefusedFile(path, here(), "A value is missing here.");
            };
        }

        private ObjectNode object(String path) throws RefusedFile {
            ObjectNode object = JsonNodeFactory.instance.objectNode();
            while (parser.nextToken() != JsonToken.END_OBJECT) {
                String name = string(path, parser.currentName());
                String inner = member(path, name);
                if (object.has(name)) {
                    throw new RefusedFile(
                            inner, here(), "\"" + name + "\" stands here for the second time; which one counts?");
                }
                lines.putIfAbsent(inner, here());
                parser.nextToken();
                object.set(name, value(inner));
            }
            return object;
        }

        private ArrayNode array(String path) throws RefusedFile {
            ArrayNode array = JsonNodeFactory.instance.arrayNode();
            while (parser.nextToken() != JsonToken.END_ARRAY) {
                array.add(value(path + "[" + array.size() + "]"));
            }
            return array;
        }

        private double finite(String path) throws RefusedFile {
            double value = parser.getDoubleValue();
            if (!Double.isFinite(value)) {
                throw new RefusedFile(path, here(), parser.getString() + " is too great for a number.");
            }
            return value;
        }

        /** Half of a two-part character, or the character zero, could not be stored and given back. */
        private String string(String path, String text) throws RefusedFile {
            for (int i = 0; i < text.length(); i++) {
                char c = text.charAt(i);
                boolean pair = Character.isHighSurrogate(c)
                        && i + 1 < text.length()
                        && Character.isLowSurrogate(text.charAt(i + 1));
                if (c == 0 || Character.isSurrogate(c) && !pair) {
                    throw new RefusedFile(path, here(), "The text holds a character that does not exist.");
                }
                i += pair ? 1 : 0;
            }
            return text;
        }

        private int here() {
            return Math.max(1, parser.currentTokenLocation().getLineNr());
        }
    }
}
