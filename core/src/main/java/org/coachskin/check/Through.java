package org.coachskin.check;

import java.util.List;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Triple;

/**
 * Stress through the thickness at one place under one load, all that stands included.
 *
 * @param margin whose place and load it is
 * @param laminate the stack there, inside to outside
 * @param inPlane two rows a layer, at its inner and its outer face
 * @param foam shear stress of the foam from its inside face to its outside face; empty where there
 *     is no foam
 */
public record Through(Margin margin, Laminate laminate, List<InPlane> inPlane, List<Shear> foam) {

    /** Copies the lists. */
    public Through {
        inPlane = List.copyOf(inPlane);
        foam = List.copyOf(foam);
    }

    /**
     * Stress in the plane at one face of a layer.
     *
     * @param layer counted from the inside surface, from 0
     * @param z outward from mid-height of the stack [m]
     * @param stress in panel axes [Pa]
     */
    public record InPlane(int layer, double z, Triple stress) {}

    /**
     * Shear stress of the foam at one height.
     *
     * @param z outward from mid-height of the stack [m]
     * @param xz on faces across x [Pa]
     * @param yz on faces across y [Pa]
     */
    public record Shear(double z, double xz, double yz) {
        /** Returns the shear stress whichever way it acts [Pa]. */
        public double amount() {
            return Math.hypot(xz, yz);
        }
    }
}
