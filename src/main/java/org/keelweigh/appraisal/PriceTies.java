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
    private static final double FIVE_YEARS = 5;

    /**
     * Where one boat's price would change its place.
     *
     * @param boat its place in the shortlist
     * @param price what it is compared at now
     * @param rival the best other boat; empty when there is none
     * @param tie where it ties with it; empty for a boat that is ruled out or alone
     * @param sentence the same in words
     */
    public record PriceTie(int boat, double price, OptionalInt rival, Optional<BreakEven> tie, String sentence) {}

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

    private PriceTie of(int boat) {
        double price = measured.boats().get(boat).price().value();
        OptionalInt rival = bestOther(boat);
        if (perspective.ruledOut(boat)) {
            return new PriceTie(
                    boat, price, rival, Optional.empty(), name(boat) + " is ruled out, and no price changes that.");
        }
        if (rival.isEmpty()) {
            return new PriceTie(
                    boat,
                    price,
                    rival,
                    Optional.empty(),
                    "There is no other boat left for " + name(boat) + " to tie with.");
        }
        double most = Math.max(LEAST_SEARCHED, FARTHEST * price);
        BreakEven tie = BreakEven.find(p -> totalAt(boat, p) - total(rival.getAsInt()), 0, most);
        return new PriceTie(boat, price, rival, Optional.of(tie), sentence(boat, rival.getAsInt(), price, most, tie));
    }

    private OptionalInt bestOther(int boat) {
        return perspective.ranking().order().stream()
                .mapToInt(Integer::intValue)
                .filter(other -> other != boat && !perspective.ruledOut(other))
                .findFirst();
    }

    private double total(int boat) {
        return perspective.ranking().total(boat);
    }

    private double totalAt(int boat, double price) {
        BoatReport report = measured.boats().get(boat);
        ValueFunction value =
                measured.yardsticks().all().get(column).criterion().valueFunction();
        double cost = report.measures().getFirst().get(column);
        double perPrice = report.futures().priceSlope()
                * FIVE_YEARS
                / measured.situation().horizonYears();
        double change = value.value(cost + perPrice * (price - report.price().value())) - value.value(cost);
        return total(boat) + perspective.share(column) * change;
    }

    private String sentence(int boat, int rival, double price, double most, BreakEven tie) {
        return switch (tie) {
            case BreakEven.Found(double at) -> found(boat, rival, price, at);
            case BreakEven.AlwaysAbove above ->
                name(boat) + " stays ahead of " + name(rival) + " at any price up to " + display.money(most) + ".";
            case BreakEven.AlwaysBelow below ->
                name(boat) + " would not catch up with " + name(rival) + " even as a gift.";
        };
    }

    private String found(int boat, int rival, double price, double at) {
        String tie = name(boat) + " ties with " + name(rival) + " at " + display.money(at);
        double room = at - price;
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
