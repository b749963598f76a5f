package org.keelweigh.shortlist;

import org.keelweigh.boat.Coded;

/** Where the boat lives between outings. */
public enum StoragePlace implements Coded {
    INDOORS("indoors", "indoors: shed, garage or cupboard"),
    COVERED("covered", "outdoors under a roof"),
    OUTDOORS("outdoors", "outdoors in the open"),
    RENTED("rented", "a rented rack");

    private final String code;
    private final String label;

    StoragePlace(String code, String label) {
        this.code = code;
        this.label = label;
    }

    @Override
    public String code() {
        return code;
    }

    /** Tells the place in plain words. */
    public String label() {
        return label;
    }
}
