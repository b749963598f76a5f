package org.keelweigh.condition;

import java.util.List;

/**
 * A hidden cause that became likelier, why, and what that means for what was not checked.
 *
 * @param cause the cause with its chance before and now
 * @param phrase how a sentence names the cause
 * @param because what speaks for it, strongest first, in words
 * @param consequences the checks without a finding of their own that this cause bears on and that became likelier to come
 *     out badly, most first
 * @param sentence all of that in one sentence
 */
public record BoatHistory(
        CauseBelief cause, String phrase, List<String> because, List<CheckBelief> consequences, String sentence) {

    public BoatHistory {
        because = List.copyOf(because);
        consequences = List.copyOf(consequences);
    }
}
