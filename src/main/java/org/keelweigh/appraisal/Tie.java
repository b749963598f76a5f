package org.keelweigh.appraisal;

/** The price at which a boat is worth as much as the best other one. */
public sealed interface Tie {

    /**
     * They tie at a price.
     *
     * @param price the price
     */
    record At(double price) implements Tie {}

    /**
     * It is the best at any price that was tried.
     *
     * @param upTo the highest price tried
     */
    record AtAnyPrice(double upTo) implements Tie {}

    /** Another boat is worth more even if this one were a gift. */
    record AtNoPrice() implements Tie {}

    /** There is no other boat to tie with. */
    record NoOther() implements Tie {}

    /** Tells the price as one number, at most {@code highest}; 0 where no price will do. */
    default double capped(double highest) {
        return switch (this) {
            case At(double price) -> price;
            case AtAnyPrice any -> highest;
            case AtNoPrice none -> 0;
            case NoOther none -> highest;
        };
    }
}
