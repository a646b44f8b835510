package org.coachskin.failure;

import org.coachskin.laminate.Triple;
import org.coachskin.material.Strength;

/**
 * Pull between a skin and the foam of a crowned panel: a curved skin under force presses on what
 * carries it with N<sub>x</sub>/R<sub>x</sub> + N<sub>y</sub>/R<sub>y</sub> (membrane equilibrium
 * of a shell; Timoshenko and Woinowsky-Krieger, <i>Theory of Plates and Shells</i>, 2nd ed. 1959,
 * section 105; from memory). On a panel that bulges outward the outside skin comes off where it is
 * compressed, the inside skin where it is pulled. It holds for skins thin against their radius;
 * what the skin's own bending and a suction add is left out.
 */
public final class SkinBond {

    private SkinBond() {}

    /**
     * Returns the stress between skin and foam [Pa], positive where it pulls the skin off.
     *
     * @param n forces per width in the skin [N/m], tension positive
     * @param across curvature of a cut along x [1/m], bulging outward positive
     * @param along curvature of a cut along y [1/m]
     */
    public static double pull(Face face, Triple n, double across, double along) {
        double inward = n.x() * across + n.y() * along;
        return face == Face.OUTSIDE ? -inward : inward;
    }

    /**
     * Returns the factor on the load at which the pull reaches the foam's tensile strength; 0 where
     * what stands does it alone, infinite where the load presses the skin on.
     *
     * @param pull stress of the load [Pa]
     * @param standing stress that stands all the time [Pa]
     */
    public static double reserve(double pull, double standing, Strength strength) {
        if (standing >= strength.value()) {
            return 0;
        }
        return pull > 0 ? (strength.value() - standing) / pull : Double.POSITIVE_INFINITY;
    }
}
