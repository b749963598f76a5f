package org.keelweigh.boat.identity;

/** Whether the boat has to carry a hull number, with the reason where it does not. */
public enum NumberDuty {
    /** Made or imported for sale in a country that demands one. */
    REQUIRED("This kind of boat has to carry a hull number."),
    /** Stand-up paddleboard in the United States: makers have been excused since 2008 (secondary source). */
    PADDLEBOARD_WAIVED("Makers of stand-up paddleboards have been excused from hull numbers in the United States since"
            + " 2008, so none is no fault."),
    /** Moved by people only and sold under the European directive, which leaves out canoes and kayaks. */
    OUTSIDE_DIRECTIVE("Canoes and kayaks moved by people only are outside the European craft directive, so none is no"
            + " fault."),
    /** Built before 1 November 1972. */
    BEFORE_RULES("Boats built before 1 November 1972 did not need a hull number, so none is no fault."),
    /** The place of sale and the age do not settle it. */
    UNCERTAIN("Whether this boat has to carry a hull number is not settled: that depends on where and when it was first"
            + " sold.");

    private final String sentence;

    NumberDuty(String sentence) {
        this.sentence = sentence;
    }

    /** The reason as a sentence. */
    public String sentence() {
        return sentence;
    }
}
