package org.keelweigh.appraisal;

import java.util.List;
import java.util.Optional;
import org.keelweigh.fit.Waters;
import org.keelweigh.haul.CartInHand;
import org.keelweigh.haul.Stretch;
import org.keelweigh.shortlist.Display;
import org.keelweigh.shortlist.Trip;

/**
 * Where, how and by whom the boats are to be used, with everything nobody said filled in by marked assumptions.
 *
 * @param trip what was typed
 * @param display how figures are written
 * @param thisYear the calendar year
 * @param mainWater where most outings go
 * @param hardestWater the hardest water planned
 * @param outingsPerYear outings in a year
 * @param gearMassKg gear aboard on the water, kilograms
 * @param gearOnCartKg gear left aboard on the cart, kilograms
 * @param stretches the way from car to water
 * @param cart the cart that is owned or planned; empty lets one be chosen
 * @param horizonYears years of ownership to count
 * @param discountRate real discount rate a year
 * @param salesTax sales tax as a share of the price
 * @param priceFactor units of the shortlist's currency for one US dollar of the price book
 * @param people everybody, at least one
 * @param assumptions what was assumed
 */
public record Situation(
        Trip trip,
        Display display,
        int thisYear,
        Waters mainWater,
        Waters hardestWater,
        double outingsPerYear,
        double gearMassKg,
        double gearOnCartKg,
        List<Stretch> stretches,
        Optional<CartInHand> cart,
        int horizonYears,
        double discountRate,
        double salesTax,
        double priceFactor,
        List<Participant> people,
        List<Assumption> assumptions) {

    public Situation {
        stretches = List.copyOf(stretches);
        people = List.copyOf(people);
        assumptions = List.copyOf(assumptions);
    }

    /** Lists those who will be aboard; everybody if nobody said they would. */
    public List<Participant> paddlers() {
        List<Participant> paddlers =
                people.stream().filter(each -> each.data().paddles()).toList();
        return paddlers.isEmpty() ? people : paddlers;
    }

    /** Lists those whose weights count; everybody if nobody said theirs do. */
    public List<Participant> deciders() {
        List<Participant> deciders =
                people.stream().filter(each -> each.data().decides()).toList();
        return deciders.isEmpty() ? people : deciders;
    }

    /** Tells the same with people who weigh differently. */
    Situation withPeople(List<Participant> others) {
        return new Situation(
                trip,
                display,
                thisYear,
                mainWater,
                hardestWater,
                outingsPerYear,
                gearMassKg,
                gearOnCartKg,
                stretches,
                cart,
                horizonYears,
                discountRate,
                salesTax,
                priceFactor,
                others,
                assumptions);
    }
}
