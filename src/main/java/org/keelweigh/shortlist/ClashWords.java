package org.keelweigh.shortlist;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** Says in sentences where two people's edits met: the field in words, both values as people read them. */
public final class ClashWords {

    private final FieldWords fields;
    private final FieldValues values;

    /**
     * Prepares the saying.
     *
     * @param display how figures are written
     * @param wordsOf the words for the id of a check, a criterion, a kind of cart or a person; the id itself where there are none
     */
    public ClashWords(Display display, UnaryOperator<String> wordsOf) {
        fields = new FieldWords(wordsOf);
        values = new FieldValues(display, wordsOf);
    }

    /** Tells every field that both changed, a sentence each. */
    public String of(String by, List<Clash> clashes) {
        return clashes.stream().map(each -> sentence(by, each)).collect(Collectors.joining(" "));
    }

    private String sentence(String by, Clash clash) {
        return by + " changed the same field (" + fields.of(clash.field()) + ") meanwhile: it is "
                + values.of(clash.field(), clash.theirs()) + " now, and yours is "
                + values.of(clash.field(), clash.mine()) + ".";
    }
}
