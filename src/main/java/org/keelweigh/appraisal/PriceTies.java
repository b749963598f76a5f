package org.keelweigh.appraisal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.keelweigh.decision.ValueFunction;
import org.keelweigh.decision.robust.BreakEven;
import org.keelweigh.shortlist.Display;

/**
 * The price at which each boat ties with the best other one.
 *
 * <p>With all other marks as they are, a boat's total at price p is
 * {@code V − w·v(cost) + w·v(cost + s·(p − price))}, where w is the weight of the cost, v its value function and s what each
 * unit of price adds to the cost.
 */
public final class PriceTies {

    /** How many times its price a boat's price is looked at, before it is said to lead whatever it costs. */
    private static final double FARTHEST = 4;

    private static final double LEAST_SEARCHED = 1000;

    /**
     * Where one boat's price would change its place.
     *
     * @param boat its place in the shortlist
     * @param price what it is compared at now
     * @param rival the best other boat; empty when there is none
     * @param tie where it ties with it; empty for a boat that is ruled out
     * @param sentence the same in words
     */
    public record PriceTie(int boat, double price, OptionalInt rival, Optional<Tie> tie, String sentence) {}

    private final Measured measured;
    private final Perspective perspective;
    private final Display display;
    private final int column;

    private PriceTies(Measured measured, Perspective perspective) {
        this.measured = measured;
        this.perspective = perspective;
        this.display = measured.situation().display();
        this.column = measured.yardsticks().column(Measure.COST);
    }

    /** Finds the tie price of every boat, in their order; none when the catalogue judges no cost. */
    public static List<PriceTie> of(Measured measured, Perspective perspective) {
        PriceTies ties = new PriceTies(measured, perspective);
        List<PriceTie> all = new ArrayList<>();
        for (int boat = 0; boat < measured.boats().size() && ties.column >= 0; boat++) {
            all.add(ties.of(boat));
        }
        return List.copyOf(all);
    }

    /** Finds the price, up to {@code highest}, at which a boat ties with the best other one. */
    static Tie tie(Measured measured, Perspective perspective, int boat, double highest) {
        return new PriceTies(measured, perspective).tie(boat, highest);
    }

    private PriceTie of(int boat) {
        double price = measured.boats().get(boat).price().value();
        OptionalInt rival = bestOther(boat);
        if (perspective.ruledOut(boat)) {
            return new PriceTie(
                    boat, price, rival, Optional.empty(), name(boat) + " is ruled out, and no price changes that.");
        }
        Tie tie = tie(boat, Math.max(LEAST_SEARCHED, FARTHEST * price));
        if (weightless()) {
            return new PriceTie(
                    boat,
                    price,
                    rival,
                    Optional.of(tie),
                    "Cost has no weight here, so no price changes the place of " + name(boat) + ".");
        }
        return new PriceTie(boat, price, rival, Optional.of(tie), sentence(boat, rival, price, tie));
    }

    private Tie tie(int boat, double highest) {
        OptionalInt rival = bestOther(boat);
        if (rival.isEmpty()) {
            return new Tie.NoOther();
        }
        double toBeat = perspective.ranking().total(rival.getAsInt());
        if (weightless()) {
            return perspective.ranking().total(boat) >= toBeat ? new Tie.AtAnyPrice(highest) : new Tie.AtNoPrice();
        }
        return switch (BreakEven.find(price -> totalAt(boat, price) - toBeat, 0, highest)) {
            case BreakEven.Found(double at) -> new Tie.At(at);
            case BreakEven.AlwaysAbove above -> new Tie.AtAnyPrice(highest);
            case BreakEven.AlwaysBelow below -> new Tie.AtNoPrice();
        };
    }

    private boolean weightless() {
        return perspective.share(column) <= 0;
    }

    private OptionalInt bestOther(int boat) {
        return perspective.ranking().order().stream()
                .mapToInt(Integer::intValue)
                .filter(other -> other != boat && !perspective.ruledOut(other))
                .findFirst();
    }

    private double totalAt(int boat, double price) {
        BoatReport report = measured.boats().get(boat);
        ValueFunction value =
                measured.yardsticks().all().get(column).criterion().valueFunction();
        double cost = report.measures().getFirst().get(column);
        double perPrice = report.futures().priceSlope();
        double change = value.value(cost + perPrice * (price - report.price().value())) - value.value(cost);
        return perspective.ranking().total(boat) + perspective.share(column) * change;
    }

    private String sentence(int boat, OptionalInt rival, double price, Tie tie) {
        String other = rival.isPresent() ? name(rival.getAsInt()) : "";
        return switch (tie) {
            case Tie.At(double at) ->
                found(name(boat) + " ties with " + other + " at " + display.money(at), at - price);
            case Tie.AtAnyPrice(double upTo) ->
                name(boat) + " stays ahead of " + other + " at any price up to " + display.money(upTo) + ".";
            case Tie.AtNoPrice none -> name(boat) + " would not catch up with " + other + " even as a gift.";
            case Tie.NoOther none -> "There is no other boat left for " + name(boat) + " to tie with.";
        };
    }

    private String found(String tie, double room) {
        if (Math.round(Math.abs(room)) == 0) {
            return tie + ", which is its price now.";
        }
        return room > 0
                ? tie + ": it leads until it costs " + display.money(room) + " more than now."
                : tie + ": " + display.money(-room) + " less than now.";
    }

    private String name(int boat) {
        return measured.boats().get(boat).name();
    }
}
