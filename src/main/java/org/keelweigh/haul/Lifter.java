package org.keelweigh.haul;

import org.jspecify.annotations.Nullable;

/**
 * Somebody who lifts the boat.
 *
 * @param name what people call them
 * @param kind whose guide value stands in while they have tested nothing; {@code null} means nobody said, and the
 *     middle column is assumed
 * @param heightM body height, metres; {@code null} means nobody said
 * @param testedKg what they have lifted to roof height three times themselves, kilograms; {@code null} means not tested
 */
public record Lifter(
        String name,
        @Nullable LifterKind kind,
        @Nullable Double heightM,
        @Nullable Double testedKg) {

    public Lifter {
        if (heightM != null && !(heightM > 0.5 && heightM < 2.6)) {
            throw new IllegalArgumentException("The height of " + name + " must be 0.5 to 2.6 m, not " + heightM);
        }
        if (testedKg != null && !(testedKg > 0 && testedKg <= 200)) {
            throw new IllegalArgumentException(
                    "The tested limit of " + name + " must be above 0 and at most 200 kg, not " + testedKg);
        }
    }
}
