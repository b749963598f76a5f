package org.keelweigh.ui.chart;

/** The four families of criteria, each with a colour and pattern of its own in every chart. */
public enum Family {
    MONEY("money"),
    CONDITION("condition"),
    WATER("on the water"),
    LAND("on land");

    private final String words;

    Family(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
