package org.coachskin.check;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.SectionState;
import org.coachskin.laminate.TransverseShear;
import org.coachskin.laminate.Triple;
import org.coachskin.local.LocalEffect;

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
        /** Returns that of a stack at several heights, local effects included. */
        static List<Shear> of(
                Stack stack, SectionState total, List<LocalForces.Acting> acting, int sign) {
            if (stack.laminate.isBare()) {
                return List.of();
            }
            List<TransverseShear> foam = stack.foamShear(total);
            double bottom = stack.layered.foamBottom();
            double thickness = stack.layered.foamTop() - bottom;
            List<Shear> shear = new ArrayList<>();
            for (int k = 0; k < foam.size(); k++) {
                double share = (double) k / (foam.size() - 1);
                double x = foam.get(k).xz();
                double y = foam.get(k).yz();
                for (LocalForces.Acting effect : acting) {
                    LocalEffect.FoamShear more = effect.foam(share);
                    double times = effect.times(sign) + effect.still();
                    x += times * more.x();
                    y += times * more.y();
                }
                shear.add(new Shear(bottom + share * thickness, x, y));
            }
            return shear;
        }

        /** Returns the shear stress whichever way it acts [Pa]. */
        public double amount() {
            return Math.hypot(xz, yz);
        }
    }
}
