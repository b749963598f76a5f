package org.keelweigh.appraisal;

import java.util.List;
import java.util.OptionalInt;

/**
 * The answer in words, each sentence made from the figures behind it.
 *
 * @param headline which boat, in one short sentence
 * @param strength how firmly it stands
 * @param sentences why, with figures
 * @param figures the three figures that matter most about the leader
 * @param changes what would change the answer, as sentences
 * @param leader the place of the boat that leads; empty when none does
 */
public record Answer(
        String headline,
        Strength strength,
        List<String> sentences,
        List<KeyFigure> figures,
        List<String> changes,
        OptionalInt leader) {

    public Answer {
        sentences = List.copyOf(sentences);
        figures = List.copyOf(figures);
        changes = List.copyOf(changes);
    }

    /** How firmly an answer stands. */
    public enum Strength {
        /** There is nothing to compare yet. */
        NONE,
        /** It is likelier than not too close: the leader comes first in fewer than 7 of 10 weighings. */
        OPEN,
        /** One boat leads, but it could be another. */
        LIKELY,
        /** One boat leads clearly. */
        SURE
    }

    /**
     * A figure worth seeing first.
     *
     * @param label what it is
     * @param value the figure with its unit
     * @param note a word on how to read it
     */
    public record KeyFigure(String label, String value, String note) {}
}
