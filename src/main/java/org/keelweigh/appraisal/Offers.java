package org.keelweigh.appraisal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.keelweigh.condition.ListingFacts;
import org.keelweigh.condition.RepairLine;
import org.keelweigh.condition.SellerKind;
import org.keelweigh.cost.Argument;
import org.keelweigh.cost.CostGroup;
import org.keelweigh.cost.CostLine;
import org.keelweigh.cost.Dealing;
import org.keelweigh.cost.OfferPlan;
import org.keelweigh.decision.acceptability.WeightSample;
import org.keelweigh.shortlist.Display;

/** Works out what to offer for each boat: where it ties with the best other, and how its chances hang on its price. */
public final class Offers {

    private static final int CURVE_POINTS = 49;
    private static final double HIGHEST_OF_ASKING = 1.6;

    private final Outlook outlook;
    private final Perspective perspective;
    private final Catalogues catalogues;
    private final double[][] rests;
    private final double[] costWeights;

    private Offers(Outlook outlook, Perspective perspective, Catalogues catalogues) {
        this.outlook = outlook;
        this.perspective = perspective;
        this.catalogues = catalogues;
        WeightSample weights = outlook.draw(perspective);
        this.rests = rests(outlook, perspective, weights);
        this.costWeights = costWeights(outlook, weights);
    }

    /** Works out an offer for every boat, in their order. */
    public static List<BoatOffer> of(Outlook outlook, Perspective perspective, Catalogues catalogues) {
        Offers offers = new Offers(outlook, perspective, catalogues);
        List<BoatOffer> all = new ArrayList<>();
        for (int boat = 0; boat < perspective.size(); boat++) {
            all.add(offers.offer(boat));
        }
        return all;
    }

    private BoatOffer offer(int boat) {
        BoatReport report = outlook.measured().boats().get(boat);
        if (perspective.ruledOut(boat)) {
            String reason = report.ruledOutBy().map(Ruling::reason).orElse("");
            return new BoatOffer.None(boat, "No offer: this boat is ruled out. " + reason);
        }
        if (outlook.costColumn() < 0) {
            return new BoatOffer.None(boat, "No offer can be worked out, because no criterion counts money.");
        }
        double asking = report.price().value();
        double highest = Math.max(1, asking * HIGHEST_OF_ASKING);
        Tie tie = PriceTies.tie(outlook.measured(), perspective, boat, highest);
        Dealing dealing = dealing(report);
        List<Argument> arguments = arguments(report, dealing.seller());
        Optional<OfferPlan> plan = asking <= 0
                ? Optional.empty()
                : catalogues
                        .negotiation()
                        .plan(
                                asking,
                                report.fair().amount(),
                                tie.capped(highest),
                                budgetLeft(report, asking),
                                arguments,
                                dealing);
        return new BoatOffer.Offer(boat, asking, tie, plan, arguments, curve(boat, asking, highest), report.fair());
    }

    /** The chance of being best against the price: the same futures and weights at every price, so that it falls smoothly. */
    private List<BoatOffer.ChanceAt> curve(int boat, double asking, double highest) {
        double[] lead = new double[costWeights.length];
        for (int s = 0; s < lead.length; s++) {
            double best = Double.NEGATIVE_INFINITY;
            for (int other = 0; other < rests.length; other++) {
                if (other != boat && !perspective.ruledOut(other)) {
                    best = Math.max(best, rests[other][s] + costWeights[s] * outlook.costValue(other, s));
                }
            }
            lead[s] = rests[boat][s] - best;
        }
        List<BoatOffer.ChanceAt> curve = new ArrayList<>();
        for (int i = 0; i < CURVE_POINTS; i++) {
            double price = highest * i / (CURVE_POINTS - 1);
            double[] values = outlook.costValues(boat, price - asking);
            int first = 0;
            for (int s = 0; s < lead.length; s++) {
                first += lead[s] + costWeights[s] * values[s] >= 0 ? 1 : 0;
            }
            curve.add(new BoatOffer.ChanceAt(price, first / (double) lead.length));
        }
        return curve;
    }

    /** The total of each boat in each weighing without its cost. */
    private static double[][] rests(Outlook outlook, Perspective perspective, WeightSample weights) {
        double[][] rests = new double[perspective.size()][weights.samples()];
        for (int c = 0; c < weights.criteria(); c++) {
            if (c != outlook.costColumn()) {
                for (int b = 0; b < rests.length; b++) {
                    double value = perspective.value(b, c);
                    double[] row = rests[b];
                    for (int s = 0; s < row.length; s++) {
                        row[s] += weights.weight(c, s) * value;
                    }
                }
            }
        }
        return rests;
    }

    private static double[] costWeights(Outlook outlook, WeightSample weights) {
        double[] shares = new double[weights.samples()];
        for (int s = 0; s < shares.length && outlook.costColumn() >= 0; s++) {
            shares[s] = weights.weight(outlook.costColumn(), s);
        }
        return shares;
    }

    private double budgetLeft(BoatReport report, double asking) {
        Double budget = outlook.measured().situation().trip().budget();
        if (budget == null) {
            return Double.MAX_VALUE;
        }
        double beside = report.dayOneCash() - report.futures().priceSlope() * asking;
        return (budget - beside) / report.futures().priceSlope();
    }

    /** Month, rivals and cash are not asked for, so they stay out. */
    private static Dealing dealing(BoatReport report) {
        ListingFacts listing = report.candidate().data().listing();
        return new Dealing(
                listing.seller() == null ? SellerKind.PRIVATE : listing.seller(),
                listing.daysListed() == null ? 0 : listing.daysListed(),
                null,
                0,
                false);
    }

    private List<Argument> arguments(BoatReport report, SellerKind seller) {
        Display display = outlook.measured().situation().display();
        double money = outlook.measured().situation().priceFactor();
        List<Argument> arguments = new ArrayList<>();
        for (RepairLine line : report.condition().repairs()) {
            if (line.expectedShare() > 0 && line.cost().likely() > 0) {
                String title = catalogues
                        .inspection()
                        .check(line.check())
                        .map(check -> check.title())
                        .orElse(line.check());
                arguments.add(new Argument(
                        title + ": " + line.outcome().label() + ", repair about "
                                + display.money(line.cost().likely() * money),
                        Argument.Basis.DOCUMENTED,
                        line.cost().times(money),
                        null));
            }
        }
        for (CostLine line : report.cost().lines()) {
            if (line.group() == CostGroup.READY && BoatOffer.SAFETY_KIT.contains(line.id())) {
                arguments.add(new Argument(
                        "Does not come with " + line.label(),
                        Argument.Basis.MISSING_KIT,
                        line.each().times(Math.max(1, line.count())),
                        null));
            }
        }
        return catalogues.negotiation().weigh(arguments, seller);
    }
}
