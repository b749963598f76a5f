package org.keelweigh.boat;

/** What a hull is made of. */
public enum HullMaterial implements Coded {
    POLYETHYLENE("pe1", "single-layer polyethylene"),
    POLYETHYLENE_FOAM_CORE("pe3", "three-layer polyethylene with foam core"),
    POLYETHYLENE_CROSS_LINKED("pex", "cross-linked polyethylene"),
    THERMOFORMED("thermo", "thermoformed ABS or acrylic sheet"),
    ABS_FOAM("absfoam", "vinyl, ABS and foam sandwich"),
    GLASS_LAMINATE("frp", "glass-fibre laminate"),
    ARAMID("aramid", "aramid laminate"),
    CARBON("carbon", "carbon laminate"),
    EPOXY_OVER_FOAM("eps", "foam core with a glass and epoxy skin"),
    ALUMINIUM("alu", "aluminium"),
    WOOD("wood", "wood"),
    DROP_STITCH("ds", "drop-stitch fabric"),
    COATED_TUBES("tube", "coated-fabric tubes");

    private final String code;
    private final String label;

    HullMaterial(String code, String label) {
        this.code = code;
        this.label = label;
    }

    @Override
    public String code() {
        return code;
    }

    /** Tells the name in plain words, lower case where the trade does. */
    public String label() {
        return label;
    }

    /** Tells whether it is any polyethylene. */
    public boolean polyethylene() {
        return this == POLYETHYLENE || this == POLYETHYLENE_FOAM_CORE || this == POLYETHYLENE_CROSS_LINKED;
    }
}
