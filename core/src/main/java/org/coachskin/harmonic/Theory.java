package org.coachskin.harmonic;

/** Which movements of the section are allowed. */
public enum Theory {
    /** The whole section turns as one: A, B, D and H. What published tables use. */
    FIRST_ORDER("first-order shear theory"),
    /** Both skins turn together, the foam by itself. What the verdict uses. */
    LAYERED("layered theory (skins turn together, foam by itself)"),
    /**
     * Each skin is a plate of its own, the foam a solid between them, cubic through its thickness.
     */
    FULL_LAYERED("full layered theory (each skin a plate, foam a solid)");

    private final String words;

    Theory(String words) {
        this.words = words;
    }

    /** Returns the theory in words. */
    public String words() {
        return words;
    }
}
