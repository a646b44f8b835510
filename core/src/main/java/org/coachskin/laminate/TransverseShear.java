package org.coachskin.laminate;

/**
 * Transverse shear stress at one height [Pa].
 *
 * @param xz on the faces across x, outward positive on the face that looks along x
 * @param yz on the faces across y, outward positive on the face that looks along y
 */
public record TransverseShear(double xz, double yz) {

    /** Returns the magnitude of the two together [Pa]. */
    public double magnitude() {
        return Math.sqrt(xz * xz + yz * yz);
    }
}
