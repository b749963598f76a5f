package org.keelweigh.cost;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.special.Erf;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.catalogue.Row;
import org.keelweigh.condition.SellerKind;
import org.keelweigh.quantity.Estimate;

/** What sellers take and what to offer. Every figure is an estimate from common practice, kept in negotiation.csv. */
public final class Negotiation {

    private static final int PATIENT_DAYS = 14;
    private static final int CROWD = 3;
    /** An offer taken in fewer than one case of twenty is not worth the drive: an estimate. */
    private static final double HOPELESS = 0.05;
    /** However long the list of faults, a seller asks for something. */
    private static final double LEFT_AT_LEAST = 0.1;

    private final Map<String, Estimate> figures;

    private Negotiation(Map<String, Estimate> figures) {
        this.figures = figures;
    }

    /**
     * Reads {@code negotiation.csv}.
     *
     * @param catalogue where the table is
     * @throws org.keelweigh.catalogue.CatalogueException naming file and line of what is wrong
     */
    public static Negotiation read(Catalogue catalogue) {
        Map<String, Estimate> figures = new HashMap<>();
        for (Figure each : catalogue.table("negotiation.csv").unique("key").map(Figure::read)) {
            figures.put(each.key(), each.share());
        }
        Negotiation made = new Negotiation(Map.copyOf(figures));
        made.requireComplete();
        return made;
    }

    /**
     * Tells what share of the asking price is likely paid: 1 less the seller's usual discount, 1 % for each week listed
     * beyond two (6 % at most), the season and cash, plus what rivals add. Low and high are the cheapest and dearest
     * readings; all shares are at least 0.
     */
    public Estimate paidShare(Dealing dealing) {
        Estimate off = figure("paid-off-" + dealing.seller().code());
        off = off.plus(Estimate.exactly(listedOff(dealing)));
        if (dealing.offSeason()) {
            off = off.plus(figure("off-season"));
        }
        if (dealing.cashToday()) {
            off = off.plus(figure("cash-today"));
        }
        double rivals = dealing.otherBuyers() >= CROWD ? likely("rivals") : 0;
        return new Estimate(
                Math.max(0, 1 + rivals - off.high()),
                Math.max(0, 1 + rivals - off.likely()),
                Math.max(0, 1 + rivals - off.low()));
    }

    private double listedOff(Dealing dealing) {
        double weeks = Math.max(0, dealing.daysListed() - PATIENT_DAYS) / 7.0;
        return Math.min(likely("listed-most"), Math.floor(weeks) * likely("listed-per-week"));
    }

    /**
     * Tells the chance that a seller takes an offer, {@code Φ((o − m·A)/(0.06·A))}; m is 0.88 for a private seller, less what a
     * long listing takes off.
     *
     * @param offer the offer o; at least 0
     * @param asking the asking price A; above 0
     * @param dealing who sells, and for how long already
     */
    public double acceptChance(double offer, double asking, Dealing dealing) {
        Amounts.requireNotNegative("offer", offer);
        Amounts.requirePositive("asking price", asking);
        double mean = likely("accept-mean-" + dealing.seller().code()) - listedOff(dealing);
        double distance = (offer / asking - mean) / likely("accept-sd");
        return 0.5 * Erf.erfc(-distance / Math.sqrt(2));
    }

    /**
     * Weighs arguments: what each may take off, as low, likely and high share of its likely cost (of its mean for a
     * suspected fault).
     *
     * @param arguments repairs and missing gear, each money once
     * @param seller who sells; a shop takes less off for a repair
     */
    public List<Argument> weigh(List<Argument> arguments, SellerKind seller) {
        return arguments.stream().map(each -> weigh(each, seller)).toList();
    }

    /**
     * Plans the offer. The walk-away price is the least of the asking price, the tie price and what the budget leaves;
     * the target is the fair price or, if lower, the walk-away price; the first offer is 92 % of the target, though not
     * under 80 % of asking when no fault is listed, and never above the target. An offer is not worth making when the walk-away
     * price lies under that least first offer, or would be taken in fewer than one case of twenty.
     *
     * @param asking the asking price; above 0
     * @param fair the fair price with repairs already taken off; at least 0
     * @param tie the price at which the best other boat is as good; any number
     * @param budgetLeft the budget for the first day less all that has to be paid beside the price; any number
     * @param arguments repairs and missing gear to show, weighed; the seller's mind is reckoned from the asking price less what
     *     they likely take off
     * @param dealing who sells, and for how long already
     * @return empty when no price above 0 is worth paying
     */
    public Optional<OfferPlan> plan(
            double asking, double fair, double tie, double budgetLeft, List<Argument> arguments, Dealing dealing) {
        Amounts.requirePositive("asking price", asking);
        Amounts.requireNotNegative("fair price", fair);
        double walkAway = Math.min(asking, Math.min(tie, budgetLeft));
        if (!(walkAway > 0)) {
            return Optional.empty();
        }
        double target = Math.min(fair, walkAway);
        boolean faultsListed = arguments.stream().anyMatch(each -> each.basis() == Argument.Basis.DOCUMENTED);
        double least = faultsListed ? 0 : likely("opening-least") * asking;
        double opening = Math.min(target, Math.max(likely("opening") * target, least));
        double argued = Math.max(LEFT_AT_LEAST * asking, asking - off(arguments));
        double chance = acceptChance(walkAway, argued, dealing);
        boolean worthMaking = walkAway >= least && chance >= HOPELESS;
        Estimate paid = paidShare(dealing).times(argued);
        return Optional.of(new OfferPlan(opening, target, walkAway, chance, worthMaking, paid));
    }

    private static double off(List<Argument> arguments) {
        double sum = 0;
        for (Argument each : arguments) {
            Estimate off = each.off();
            sum += off == null ? 0 : off.likely();
        }
        return sum;
    }

    private Argument weigh(Argument argument, SellerKind seller) {
        Estimate share =
                switch (argument.basis()) {
                    case DOCUMENTED -> figure(seller == SellerKind.SHOP ? "repair-shop" : "repair-private");
                    case SUSPECTED -> figure("suspected");
                    case MISSING_KIT -> figure("missing-kit");
                };
        Estimate cost = argument.cost();
        double base = argument.basis() == Argument.Basis.SUSPECTED ? cost.mean() : cost.likely();
        return new Argument(argument.label(), argument.basis(), cost, share.times(base));
    }

    private double likely(String key) {
        return figure(key).likely();
    }

    private Estimate figure(String key) {
        Estimate found = figures.get(key);
        if (found == null) {
            throw new IllegalArgumentException("negotiation.csv has no line for " + key + ", which offers need");
        }
        return found;
    }

    private void requireComplete() {
        for (SellerKind each : SellerKind.values()) {
            figure("paid-off-" + each.code());
            figure("accept-mean-" + each.code());
        }
        List.of("listed-per-week", "listed-most", "off-season", "rivals", "cash-today", "repair-private")
                .forEach(this::figure);
        List.of("repair-shop", "suspected", "missing-kit", "opening", "opening-least")
                .forEach(this::figure);
        Amounts.requirePositive("spread accept-sd", likely("accept-sd"));
    }

    private record Figure(String key, Estimate share) {

        static Figure read(Row row) {
            row.text("source");
            return new Figure(
                    row.text("key"),
                    new Estimate(row.number("low", 0, 2), row.number("likely", 0, 2), row.number("high", 0, 2)));
        }
    }
}
