package org.keelweigh.condition;

import java.util.List;
import java.util.Optional;
import org.keelweigh.boat.Coded;
import org.keelweigh.catalogue.Row;

/**
 * A sign about a listing and its seller, from the table {@code listing-signals.csv}.
 *
 * @param id its id
 * @param group signs of one group say much the same and count less together
 * @param phrase how a sentence names it
 * @param fraudRatio how many times as often it goes with fraud as without, above 0
 * @param stolenRatio how many times as often it goes with a stolen boat as without, above 0
 * @param proof what a buyer can ask for to get this sign, where it is a proof
 * @param replaces ids of signs that it makes void
 * @param settle what would settle the sign, where it speaks against the sale
 * @param check the inspection check whose finding is this sign
 * @param outcome the outcome of that check which is this sign
 * @param source where the figures come from
 */
public record ListingSignal(
        String id,
        String group,
        String phrase,
        double fraudRatio,
        double stolenRatio,
        Optional<String> proof,
        List<String> replaces,
        Optional<String> settle,
        Optional<String> check,
        Optional<Outcome> outcome,
        String source) {

    private static final double LEAST_RATIO = 0.001;
    private static final double GREATEST_RATIO = 1000;

    public ListingSignal {
        replaces = List.copyOf(replaces);
        if (check.isPresent() != outcome.isPresent()) {
            throw new IllegalArgumentException("The sign " + id + " needs both a check and its outcome, or neither");
        }
    }

    static ListingSignal of(Row row) {
        return new ListingSignal(
                row.text("signal"),
                row.text("group"),
                row.text("phrase"),
                row.number("fraud_ratio", LEAST_RATIO, GREATEST_RATIO),
                row.number("stolen_ratio", LEAST_RATIO, GREATEST_RATIO),
                row.optional("proof"),
                row.words("replaces"),
                row.optional("settle"),
                row.optional("check"),
                row.optional("outcome").map(code -> Coded.parse(Outcome.class, code)),
                row.text("source"));
    }

    /** Tells its weight of evidence for fraud: the natural logarithm of the ratio. */
    public double fraudWeight() {
        return Math.log(fraudRatio);
    }

    /** Tells its weight of evidence for a stolen boat: the natural logarithm of the ratio. */
    public double stolenWeight() {
        return Math.log(stolenRatio);
    }
}
