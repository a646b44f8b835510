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
     * Returns the least reserve over all directions, infinite where nothing is compressed: one over
     * the larger eigenvalue of H<sup>-1</sup>(-N).
     *
     * @param h transverse shear stiffness [N/m]
     * @param n membrane forces of the panel [N/m], tension positive
     */
    public static double reserve(Sym2 h, Triple n) {
        double size = h.m11() * h.m22() - h.m12() * h.m12();
        double half = (2 * h.m12() * n.xy() - h.m22() * n.x() - h.m11() * n.y()) / (2 * size);
        double product = (n.x() * n.y() - n.xy() * n.xy()) / size;
        double largest = half + Math.sqrt(Math.max(0, half * half - product));
        return largest > 0 ? 1 / largest : Double.POSITIVE_INFINITY;
    }
}
