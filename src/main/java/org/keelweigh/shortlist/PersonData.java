package org.keelweigh.shortlist;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.keelweigh.fit.PaddlingUse;

/**
 * What people typed about somebody who will paddle, carry or decide; {@code null} means nobody said.
 *
 * @param name what people call them
 * @param massKg kilograms, dressed for the water
 * @param heightM metres
 * @param hipWidthM width across the hips, seated, metres
 * @param use how they mean to use the boat
 * @param paddles whether they will be aboard
 * @param decides whether their weights count
 * @param liftLimitKg what they have lifted to roof height themselves, kilograms
 * @param haulLimitN what they can pull without strain, newtons
 * @param weightSet the weight set they started from, by its id
 * @param weights swing weights in points, 0 to 100: criterion id to points; empty means the weight set as it is
 * @param certainty how sure they are of them
 * @param weighed whether they have said that they are done weighing
 */
public record PersonData(
        String name,
        @Nullable Double massKg,
        @Nullable Double heightM,
        @Nullable Double hipWidthM,
        @Nullable PaddlingUse use,
        boolean paddles,
        boolean decides,
        @Nullable Double liftLimitKg,
        @Nullable Double haulLimitN,
        @Nullable String weightSet,
        SortedMap<String, Double> weights,
        Certainty certainty,
        boolean weighed) {

    public PersonData {
        weights = Collections.unmodifiableSortedMap(new TreeMap<>(weights));
    }

    /** Makes a person who paddles and decides and of whom only the name is known. */
    public static PersonData named(String name) {
        return new PersonData(
                name,
                null,
                null,
                null,
                null,
                true,
                true,
                null,
                null,
                null,
                new TreeMap<>(),
                Certainty.FAIRLY_SURE,
                false);
    }

    /** Tells the same with other weights. */
    public PersonData withWeights(SortedMap<String, Double> others) {
        return new PersonData(
                name,
                massKg,
                heightM,
                hipWidthM,
                use,
                paddles,
                decides,
                liftLimitKg,
                haulLimitN,
                weightSet,
                others,
                certainty,
                weighed);
    }

    /** Tells the same started afresh from a weight set. */
    public PersonData withWeightSet(String set) {
        return new PersonData(
                name,
                massKg,
                heightM,
                hipWidthM,
                use,
                paddles,
                decides,
                liftLimitKg,
                haulLimitN,
                set,
                new TreeMap<>(),
                certainty,
                weighed);
    }

    /** Tells the same with another certainty. */
    public PersonData withCertainty(Certainty other) {
        return new PersonData(
                name,
                massKg,
                heightM,
                hipWidthM,
                use,
                paddles,
                decides,
                liftLimitKg,
                haulLimitN,
                weightSet,
                weights,
                other,
                weighed);
    }

    /** Tells the same having said whether the weighing is done. */
    public PersonData withWeighed(boolean done) {
        return new PersonData(
                name,
                massKg,
                heightM,
                hipWidthM,
                use,
                paddles,
                decides,
                liftLimitKg,
                haulLimitN,
                weightSet,
                weights,
                certainty,
                done);
    }

    /** Tells the same without anything that was said about weights. */
    public PersonData withoutWeights() {
        return new PersonData(
                name,
                massKg,
                heightM,
                hipWidthM,
                use,
                paddles,
                decides,
                liftLimitKg,
                haulLimitN,
                null,
                new TreeMap<>(),
                Certainty.FAIRLY_SURE,
                false);
    }
}
