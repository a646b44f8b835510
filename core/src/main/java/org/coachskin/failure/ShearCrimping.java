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
     * Returns the least factor on {@code n} over all directions at which the section shears over: H
     * + standing + f n is no longer positive definite. 0 where what stands does it alone, infinite
     * where nothing is compressed.
     *
     * @param h transverse shear stiffness [N/m]
     * @param n membrane forces of the load [N/m], tension positive
     * @param standing membrane forces that stand all the time [N/m]
     */
    public static double reserve(Sym2 h, Triple n, Triple standing) {
        Sym2 left = h.plus(new Sym2(standing.x(), standing.xy(), standing.y()), 1);
        return PlaneReach.of(left, n.times(-1));
    }
}
