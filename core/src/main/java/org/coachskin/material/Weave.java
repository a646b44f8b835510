package org.coachskin.material;

/** How a cloth is made; what decides how much its tows undulate. */
public enum Weave {
    /** One over, one under. */
    PLAIN("plain"),
    /** Two over, two under, shifted: diagonal ribs. */
    TWILL("twill"),
    /** Over several, under one: drapes well, undulates least of the woven ones. */
    SATIN("satin"),
    /** Heavy plain weave of flat rovings. */
    ROVING("woven roving"),
    /** Layers of straight tows sewn together. */
    STITCHED("stitched"),
    /** Chopped strands in every direction of the plane. */
    MAT("mat");

    private final String words;

    Weave(String words) {
        this.words = words;
    }

    /** Returns the weave as the trade calls it. */
    public String words() {
        return words;
    }
}
