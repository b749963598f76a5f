package org.keelweigh.boat;

/** What moves the boat beside a paddle or oars. */
public enum DriveKind implements Coded {
    NONE("none", "paddle or oars only"),
    PROPELLER("prop", "pedals with a propeller"),
    FINS("fins", "pedals with fins"),
    MOTOR("emotor", "electric motor");

    private final String code;
    private final String label;

    DriveKind(String code, String label) {
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

    /** Tells whether legs drive it. */
    public boolean pedalled() {
        return this == PROPELLER || this == FINS;
    }
}
