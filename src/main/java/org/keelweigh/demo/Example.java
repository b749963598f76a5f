package org.keelweigh.demo;

/** An example with invented people and boats, shipped in {@code demo-data/}. */
public enum Example {
    COUPLE(
            "couple",
            "A couple and four boats",
            "Two people who weigh different things, with two pedal boats, a canoe and a bargain that is none"),
    SOLO(
            "solo",
            "One person and two light boats",
            "Somebody with a sore shoulder and a small flat, with an inflatable and a sit-on-top");

    private final String file;
    private final String title;
    private final String sentence;

    Example(String file, String title, String sentence) {
        this.file = file;
        this.title = title;
        this.sentence = sentence;
    }

    /** Tells the title. */
    public String title() {
        return title;
    }

    /** Tells what it shows. */
    public String sentence() {
        return sentence;
    }

    String resource() {
        return "/demo-data/" + file + ".json";
    }
}
