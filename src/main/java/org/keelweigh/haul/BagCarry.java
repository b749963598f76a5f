package org.keelweigh.haul;

import java.util.List;
import org.keelweigh.quantity.FigureWriter;

/**
 * An inflatable that travels deflated in its bag.
 *
 * @param verdict how many people it takes
 * @param reasons why, as sentences
 * @param massKg mass in the bag, kilograms; gear is carried apart
 * @param haulers each hauler; the ratio is 0, for nothing is pulled
 * @param assumptions what was assumed, as sentences
 * @param cautions what to keep in mind, as sentences
 */
public record BagCarry(
        CartVerdict verdict,
        List<String> reasons,
        double massKg,
        List<HaulerAnswer> haulers,
        List<String> assumptions,
        List<String> cautions)
        implements CartAnswer {

    /** What one person carries on the back without strain, kilograms: estimate. */
    private static final double ON_ONE_BACK_KG = 20;

    public BagCarry {
        reasons = List.copyOf(reasons);
        haulers = List.copyOf(haulers);
        assumptions = List.copyOf(assumptions);
        cautions = List.copyOf(cautions);
    }

    static BagCarry of(CartRequest request, List<Hauler> haulers, List<String> assumptions, FigureWriter in) {
        double massKg = request.boat().riggedMassKg();
        boolean one = massKg <= ON_ONE_BACK_KG;
        boolean two = massKg <= 2 * ON_ONE_BACK_KG;
        String reason = "Deflated in its bag it is " + in.mass(massKg) + " to carry"
                + (one ? ", which one person takes on the back; no cart is needed." : ".");
        List<String> help = one
                ? List.of()
                : List.of("More than " + in.mass(ON_ONE_BACK_KG) + " on one back is too much for most.");
        return new BagCarry(
                one ? CartVerdict.ONE_PERSON : two ? CartVerdict.TWO_PEOPLE : CartVerdict.NOT_BY_CART,
                two
                        ? List.of(reason)
                        : List.of(reason, "That is too much for two people to carry: look at it on a cart, blown up."),
                massKg,
                haulers.stream()
                        .map(each -> new HaulerAnswer(each, 0, 0, each.restAfterM(0), help))
                        .toList(),
                assumptions,
                CartAnswer.cautions(in));
    }

    @Override
    public double worstPullN() {
        return 0;
    }
}
