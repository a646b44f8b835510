package org.coachskin.failure;

import org.coachskin.laminate.Sym2;
import org.coachskin.laminate.Triple;

/**
 * Shear crimping: under compression in its plane the whole section shears over in one short wave,
 * at a force per width equal to the transverse shear stiffness H (Allen, <i>Analysis and Design of
 * Structural Sandwich Panels</i>, 1969, chapter 8; from memory). No bending enters, so it is the
 * upper limit of every buckling load.
 */
public final class ShearCrimping {

    private ShearCrimping() {}

    /**
     * Returns the least reserve over all directions, infinite where nothing is compressed.
     *
     * @param h transverse shear stiffness [N/m]
     * @param n membrane forces of the panel [N/m], tension positive
     */
    public static double reserve(Sym2 h, Triple n) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 36; i++) {
            double c = StrictMath.cos(Math.PI * i / 36);
            double s = StrictMath.sin(Math.PI * i / 36);
            double compression = -(n.x() * c * c + n.y() * s * s + 2 * n.xy() * c * s);
            if (compression > 0) {
                double stiffness = h.m11() * c * c + 2 * h.m12() * c * s + h.m22() * s * s;
                least = Math.min(least, stiffness / compression);
            }
        }
        return least;
    }
}
