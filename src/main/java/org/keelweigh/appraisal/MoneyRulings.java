package org.keelweigh.appraisal;

import java.util.HashSet;
import java.util.Set;
import org.keelweigh.shortlist.Display;

/** The hard rules about money: more cash than there is, and repairs that take too much of the price. */
final class MoneyRulings {

    private static final double MOST_CASH_SHARE = 1.15;
    private static final double MOST_REPAIR_SHARE = 0.45;

    private final Situation situation;
    private final Display display;
    private final BoatMeasurer.Evidence found;
    private final Rulings.Broken broken;

    MoneyRulings(Situation situation, BoatMeasurer.Evidence found, Rulings.Broken broken) {
        this.situation = situation;
        this.display = situation.display();
        this.found = found;
        this.broken = broken;
    }

    void look() {
        if (!found.price().isAssumed()) {
            cash();
            repairs();
        }
    }

    private void cash() {
        Double budget = situation.trip().budget();
        double dayOne = BoatReport.dayOneCash(found.cost());
        if (budget != null && budget > 0 && dayOne - assumedCash() > MOST_CASH_SHARE * budget) {
            broken.add(
                    Rule.CASH,
                    "Before the first launch it takes " + display.money(dayOne) + ", and you have "
                            + display.money(budget) + ".",
                    "Bargain, or leave out kit that can wait.");
        }
    }

    /** What is in the cash before the first launch only because nobody said otherwise. */
    private double assumedCash() {
        Set<String> assumed = new HashSet<>();
        if (situation.trip().car().hasBars() == null) {
            assumed.add("rack-bars");
        }
        if (situation.trip().salesTax() == null) {
            assumed.add("sales-tax");
        }
        if (found.boat().bareMassKg().isAssumed()) {
            assumed.addAll(Set.of("cart", "cart-balloon", "loading-aid", "trailer", "hitch"));
        }
        return found.cost().lines().stream()
                .filter(line -> assumed.contains(line.id()))
                .flatMap(line -> line.flows().stream())
                .filter(flow -> flow.year() == 0)
                .mapToDouble(flow -> flow.amount())
                .sum();
    }

    /**
     * The boat's own serious repairs against what such a boat goes for before they come off; a seller who takes them off the
     * price has met the rule.
     */
    private void repairs() {
        double repairs = found.condition().seriousRepairsLikely() * situation.priceFactor();
        double sound = found.fair().sound();
        boolean known = !found.boat().modelYear().isAssumed()
                && !found.boat().priceNew().isAssumed();
        boolean takenOff = found.price().value() + repairs <= sound;
        if (known && repairs > 0 && repairs > MOST_REPAIR_SHARE * sound && !takenOff) {
            broken.add(
                    Rule.REPAIRS,
                    "Its serious repairs cost about " + display.money(repairs)
                            + ", and without them such a boat goes for " + display.money(sound) + ".",
                    "Get a price of " + display.money(Math.max(0, sound - repairs))
                            + " or less, which takes the repairs off, or a written quote that is lower.");
        }
    }
}
