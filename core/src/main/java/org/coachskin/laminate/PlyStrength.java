package org.coachskin.laminate;

import org.coachskin.material.Strength;

/**
 * The strengths of a ply in its own axes.
 *
 * @param tension1 in tension along 1 (the warp)
 * @param compression1 in compression along 1
 * @param tension2 in tension along 2 (the weft)
 * @param compression2 in compression along 2
 * @param shear12 in shear in the plane
 */
public record PlyStrength(
        Strength tension1,
        Strength compression1,
        Strength tension2,
        Strength compression2,
        Strength shear12) {

    /** Returns all strengths times {@code factor}. */
    public PlyStrength times(double factor) {
        return new PlyStrength(
                tension1.times(factor),
                compression1.times(factor),
                tension2.times(factor),
                compression2.times(factor),
                shear12.times(factor));
    }
}
