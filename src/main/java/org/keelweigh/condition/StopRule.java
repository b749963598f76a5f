package org.keelweigh.condition;

import org.keelweigh.boat.Coded;

/** What a graded finding does to the purchase by itself. */
public enum StopRule implements Coded {
    /** Carry on; the cost and the effect on resale say it all. */
    NO("no", "carry on"),
    /** Pause, get a fact or a lower price. */
    ASK("ask", "ask first"),
    /** Do not buy unless a person lifts it with a written reason. */
    YES("yes", "do not buy");

    private final String code;
    private final String label;

    StopRule(String code, String label) {
        this.code = code;
        this.label = label;
    }

    @Override
    public String code() {
        return code;
    }

    /** Tells the name in plain words, lower case. */
    public String label() {
        return label;
    }
}
