package org.coachskin.laminate;

/** What scatters by itself in hand work; everything else follows from these. */
public enum PrimaryInput {
    /** Areal mass of the cloth. */
    CLOTH_MASS("cloth mass"),
    /** Share of glass in the cured ply. */
    GLASS_SHARE("glass share"),
    /** Density of the foam, and with it all that follows from density. */
    FOAM_DENSITY("foam density"),
    /** Modulus of the foam beside what its density explains. */
    FOAM_MODULUS("foam modulus"),
    /** Thickness of the foam after shaping. */
    FOAM_THICKNESS("foam thickness"),
    /** Resin taken up by the cut foam. */
    SEAL_COAT("seal coat"),
    /** Strengths beside what the other inputs explain. */
    STRENGTHS("strengths");

    private final String words;

    PrimaryInput(String words) {
        this.words = words;
    }

    /** Returns the input in plain words. */
    public String words() {
        return words;
    }
}
