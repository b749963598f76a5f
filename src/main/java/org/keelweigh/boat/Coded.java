package org.keelweigh.boat;

import java.util.Arrays;
import java.util.stream.Collectors;

/** Something that catalogue tables and documents name by a short code. */
public interface Coded {

    /** Tells the short code, lower case, unique within its kind of thing. */
    String code();

    /**
     * Finds the constant with a code.
     *
     * @param type the enumeration to look in
     * @param code the code as written in a table
     * @throws IllegalArgumentException naming the code and those that exist, when there is none
     */
    static <E extends Enum<E> & Coded> E parse(Class<E> type, String code) {
        for (E each : type.getEnumConstants()) {
            if (each.code().equals(code)) {
                return each;
            }
        }
        String known = Arrays.stream(type.getEnumConstants()).map(Coded::code).collect(Collectors.joining(", "));
        throw new IllegalArgumentException("\"" + code + "\" is not one of " + known);
    }
}
