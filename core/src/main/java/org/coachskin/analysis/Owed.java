package org.coachskin.analysis;

/**
 * What a deflection is owed to; the parts add up to it.
 *
 * @param skins skins stretched, squeezed and bent, and whatever is not named here [m]
 * @param foam foam sheared: what would vanish if it did not shear [m]
 * @param seals rubber seals giving way [m]
 */
public record Owed(double skins, double foam, double seals) {

    /** Returns the parts the other way round. */
    Owed reversed() {
        return new Owed(-skins, -foam, -seals);
    }
}
