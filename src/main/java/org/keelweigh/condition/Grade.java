package org.keelweigh.condition;

import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.Coded;
import org.keelweigh.catalogue.Row;
import org.keelweigh.quantity.Estimate;

/**
 * One way in which a check can come out badly, from the table {@code grades.csv}.
 *
 * @param check the check's id
 * @param outcome {@link Outcome#MINOR}, {@link Outcome#MAJOR} or {@link Outcome#STOP}
 * @param looksLike what it looks like
 * @param chance how likely it is on a boat about five years old, 0 to 1
 * @param repairCost what putting it right costs, USD of 2025
 * @param fixedBy who can put it right
 * @param stop what it does to the purchase by itself
 * @param kinds the kinds of boat for which it is a fault
 * @param resaleEffect the share of the fair price that is lost while it is left, 0 to 1
 * @param safety 0 none, 1 nuisance, 2 can end a trip, 3 can flood or strand you, 4 can kill
 * @param whyNote why it matters, where that needs saying
 * @param source where the figures come from
 */
public record Grade(
        String check,
        Outcome outcome,
        String looksLike,
        double chance,
        Estimate repairCost,
        String fixedBy,
        StopRule stop,
        Set<BoatKind> kinds,
        double resaleEffect,
        int safety,
        @Nullable String whyNote,
        String source) {

    private static final double GREATEST_COST = 20_000;
    private static final double SPEND_SHARE_MINOR = 0.25;
    private static final double SPEND_SHARE_MAJOR = 0.8;

    public Grade {
        kinds = Set.copyOf(kinds);
        if (outcome == Outcome.FINE || outcome == Outcome.NOT_FITTED) {
            throw new IllegalArgumentException("A grade is minor, major or stop, not " + outcome.code());
        }
    }

    static Grade of(Row row) {
        Estimate cost = new Estimate(
                row.number("low", 0, GREATEST_COST),
                row.number("likely", 0, GREATEST_COST),
                row.number("high", 0, GREATEST_COST));
        return new Grade(
                row.text("check"),
                Coded.parse(Outcome.class, row.text("outcome")),
                row.text("looks_like"),
                row.number("chance", 0, 1),
                cost,
                row.text("fixed_by"),
                Coded.parse(StopRule.class, row.text("stop")),
                Applies.kinds(row),
                row.number("resale_effect", 0, 1),
                (int) row.number("safety", 0, 4),
                row.optional("why").orElse(null),
                row.text("source"));
    }

    /** Tells why it matters, where the table says so. */
    public Optional<String> why() {
        return Optional.ofNullable(whyNote);
    }

    /**
     * Tells the share of the repair cost that a buyer is expected to spend: a quarter of minor faults are put right, four
     * fifths of major ones, and a part that has to be replaced is replaced. Estimates from common practice.
     */
    public double spendShare() {
        return switch (outcome) {
            case MINOR -> SPEND_SHARE_MINOR;
            case MAJOR -> SPEND_SHARE_MAJOR;
            case STOP -> 1;
            case FINE, NOT_FITTED -> 0;
        };
    }

    /** Tells the expected spend in USD: {@link #spendShare()} of the likely cost. */
    public double expectedSpend() {
        return spendShare() * repairCost.likely();
    }
}
