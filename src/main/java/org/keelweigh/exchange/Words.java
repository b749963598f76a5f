package org.keelweigh.exchange;

import java.math.BigDecimal;
import tools.jackson.databind.JsonNode;

/** Names pieces of JSON the way people call them. */
final class Words {

    private static final int BRIEF = 40;
    private static final int LONGEST_PLAIN = 20;

    private Words() {}

    static String expected(String type) {
        return switch (type) {
            case "object" -> "A group of fields in { } belongs here";
            case "array" -> "A list in [ ] belongs here";
            case "string" -> "A text in quotation marks belongs here";
            case "boolean" -> "true or false belongs here";
            case "integer" -> "A whole number belongs here";
            default -> "A number belongs here";
        };
    }

    static String of(JsonNode value) {
        return switch (value.getNodeType()) {
            case OBJECT -> "a group of fields";
            case ARRAY -> "a list";
            case STRING -> "the text \"" + brief(value.asString()) + "\"";
            case BOOLEAN -> value.asString();
            case NUMBER -> "the number " + number(value.decimalValue());
            default -> "nothing (null)";
        };
    }

    static String brief(String text) {
        return text.length() <= BRIEF ? text : text.substring(0, BRIEF) + "…";
    }

    static String number(BigDecimal value) {
        BigDecimal stripped = value.stripTrailingZeros();
        return stripped.precision() - stripped.scale() > LONGEST_PLAIN || stripped.scale() > LONGEST_PLAIN
                ? stripped.toString()
                : stripped.toPlainString();
    }
}
