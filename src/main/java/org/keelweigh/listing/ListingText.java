package org.keelweigh.listing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Reads facts out of the text of a classified listing in US or metric writing.
 *
 * <p>Each fact is proposed at most once (gear once per item) with the words it came from; whatever else the text
 * says about it is in the note. Rules and measured shares: docs/method/listing-text.md.
 */
public final class ListingText {

    /** Only so many characters are read; what follows is left out, so that the work stays bounded. */
    public static final int LONGEST_READ = Source.LONGEST_READ;

    private ListingText() {}

    /**
     * Proposes facts, in the order of {@link Fact} and, within gear, of the text.
     *
     * @param listing any text; control characters count as blanks
     * @return proposals whose {@code start} and {@code end} are places in {@code listing}
     */
    public static List<Proposal> read(String listing) {
        Source source = Source.of(listing);
        Lengths lengths = Lengths.in(source);
        Masses masses = Masses.in(source);
        Claims taken = new Claims();
        taken.claim(lengths.claims());
        taken.claim(masses.claims());
        Prices prices = Prices.in(source, taken);
        taken.claim(prices.claims());

        List<Proposal> proposals = new ArrayList<>(lengths.proposals());
        proposals.addAll(masses.proposals());
        proposals.addAll(prices.proposals());
        proposals.addAll(Years.in(source, taken));
        proposals.addAll(Words.in(source));
        proposals.addAll(Gear.in(source));
        Places.in(source).ifPresent(proposals::add);
        HullNumbers.in(source).ifPresent(proposals::add);
        proposals.sort(Comparator.comparing(Proposal::fact).thenComparing(Proposal::start));
        return List.copyOf(proposals);
    }
}
