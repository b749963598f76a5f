package org.keelweigh.haul;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.keelweigh.boat.PlacedMass;
import org.keelweigh.quantity.Mass;

/**
 * Several masses that move as one stiff body.
 *
 * @param masses the masses with where they sit; together more than 0 kg
 */
public record RigidLoad(List<PlacedMass> masses) {

    public RigidLoad {
        masses = List.copyOf(masses);
        if (!(masses.stream().mapToDouble(PlacedMass::massKg).sum() > 0)) {
            throw new IllegalArgumentException("The load must be more than 0 kg to have a centre of gravity");
        }
    }

    /** Tells the total mass, kilograms. */
    public double massKg() {
        return masses.stream().mapToDouble(PlacedMass::massKg).sum();
    }

    /** Tells the weight {@code m·g0}, newtons. */
    public double weightN() {
        return massKg() * Mass.STANDARD_GRAVITY;
    }

    /** Tells where the centre of gravity lies: {@code Σ m·x / Σ m}, metres forward of the stern. */
    public double stationM() {
        return meanOf(PlacedMass::stationM);
    }

    /** Tells how high the centre of gravity lies: {@code Σ m·z / Σ m}, metres above the underside of the hull. */
    public double heightM() {
        return meanOf(PlacedMass::heightM);
    }

    private double meanOf(ToDoubleFunction<PlacedMass> place) {
        return masses.stream()
                        .mapToDouble(each -> each.massKg() * place.applyAsDouble(each))
                        .sum()
                / massKg();
    }
}
