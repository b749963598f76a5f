package org.keelweigh.shortlist;

/**
 * What a form edits of a shortlist.
 *
 * @param name what people call it
 * @param units the units people read and type in
 * @param currency the ISO 4217 code of the money, such as USD
 * @param seed the seed of everything sampled, so that the same facts give the same answer everywhere
 * @param trip how the boat will be used
 */
public record ShortlistData(String name, UnitSystem units, String currency, long seed, Trip trip) {

    /** Makes a shortlist of which only the name is known. */
    public static ShortlistData named(String name) {
        return new ShortlistData(name, UnitSystem.METRIC, "USD", 20_260_101L, Trip.unknown());
    }

    /** Tells the same with another trip. */
    public ShortlistData withTrip(Trip other) {
        return new ShortlistData(name, units, currency, seed, other);
    }

    /** Tells the same in other units. */
    public ShortlistData withUnits(UnitSystem other) {
        return new ShortlistData(name, other, currency, seed, trip);
    }
}
