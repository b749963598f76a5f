package org.keelweigh.exchange;

/**
 * A reason for which a file is refused.
 *
 * @param field where, such as {@code candidates[0].data.boat.lengthM}; empty for the file as a whole
 * @param line the line in the file, from 1
 * @param sentence what is wrong and what to do
 */
public record ImportProblem(String field, int line, String sentence) {

    /** Tells line, field and sentence in one. */
    public String message() {
        return "Line " + line + (field.isEmpty() ? "" : ", " + field) + ": " + sentence;
    }
}
