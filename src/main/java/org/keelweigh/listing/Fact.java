package org.keelweigh.listing;

/** What a listing can tell about a boat. Quantities are in the unit of the name. */
public enum Fact {
    /** Length over all in metres. */
    LENGTH_M,
    /** Greatest width in metres. */
    BEAM_M,
    /** Mass of the boat in kilograms. */
    HULL_MASS_KG,
    /** Load the maker allows in kilograms. */
    RATED_LOAD_KG,
    /** What the seller asks, in the listing's currency. */
    ASKING_PRICE,
    /** What the boat cost new, in the listing's currency. */
    PRICE_NEW,
    /** ISO 4217 code. */
    CURRENCY,
    /** Model year, four digits. */
    MODEL_YEAR,
    /** Age in years. */
    AGE_YEARS,
    /** One of sot, sink, pedal, canoe, isup, hsup, ikayak, row. */
    KIND,
    /** One of pe1, pe3, pex, thermo, absfoam, frp, aramid, carbon, eps, ds, tube, alu, wood. */
    MATERIAL,
    /** One of none, prop, fins, emotor. */
    DRIVE,
    /** One thing that goes with the boat, such as paddle, vest, cart. */
    INCLUDED_GEAR,
    /** Where the boat is. */
    PLACE,
    /** Hull identification number, as written; not checked here. */
    HULL_NUMBER
}
