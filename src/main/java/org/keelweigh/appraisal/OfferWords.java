package org.keelweigh.appraisal;

import org.keelweigh.cost.OfferPlan;
import org.keelweigh.shortlist.Display;

/** Says in one or two sentences what to offer. */
public final class OfferWords {

    private OfferWords() {}

    /** Says the three prices, or that no offer worth making is likely to be taken, and what such a seller is usually paid. */
    public static String of(OfferPlan plan, Display display) {
        String prices = plan.worthMaking()
                ? "Open with " + display.money(plan.opening()) + ", aim for " + display.money(plan.target())
                        + ", walk away above " + display.money(plan.walkAway()) + "."
                : "No offer worth making is likely to be taken: above " + display.money(plan.walkAway())
                        + " you are better off without it, and a seller takes that in "
                        + display.percent(plan.chanceTaken()) + " of cases.";
        return prices + " " + paid(plan, display);
    }

    /** Says what such a seller is usually paid. */
    public static String paid(OfferPlan plan, Display display) {
        return "Sellers of this kind usually take "
                + display.money(plan.usuallyPaid().low()) + " to "
                + display.money(plan.usuallyPaid().high()) + ".";
    }
}
