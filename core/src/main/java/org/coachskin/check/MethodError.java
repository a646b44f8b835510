package org.coachskin.check;

import java.util.List;
import org.coachskin.laminate.LayeredStiffness;
import org.coachskin.panel.Load;

/**
 * Error of the theory against 3-D elasticity, relative; what a reserve is divided by before it
 * counts as a plain yes.
 *
 * <p>What decides is the thickness of the foam over the side of the patch (a disc by its square of
 * equal area). From a sweep of 768 flat panels with two skins, foam of 32 to 160 kg/m^3 and 6 to 50
 * mm, one to four plies a skin, patches of 20 to 200 mm: up to 0.4 skin stress is within 5 %, up to
 * 1.3 within 15 % (a thumb on 12 mm foam stands at 0.7), beyond that only within about 45 %. Foam
 * shear is never more than 3 % too low; on thick foam under a small patch it is up to 60 % too
 * high, which is on the safe side.
 *
 * @param skinStress of the stress in a ply [-]
 * @param coreShear of the shear stress in the foam, on the unsafe side [-]
 * @param remark what has to be said beside the figure; empty where nothing has
 */
record MethodError(double skinStress, double coreShear, String remark) {

    /** Of a deflection [-]. */
    static final double DEFLECTION = 0.01;

    /** Of a dent and the force that makes it [-]. */
    static final double DENT = 0.10;

    /** Of wrinkling and crimping [-]. */
    static final double WRINKLING = 0.10;

    /** Away from every patch, where the layered theory stands alone. */
    static final MethodError AWAY = new MethodError(0.05, 0.05, "");

    private static final double SLENDER = 0.4;

    private static final double STOUT = 1.3;

    /** Returns the error under and beside the smallest of these patches. */
    static MethodError beside(LayeredStiffness stack, List<Load.Press> presses) {
        double foam = stack.foamTop() - stack.foamBottom();
        double ratio = 0;
        for (Load.Press press : presses) {
            ratio = Math.max(ratio, foam / Math.sqrt(press.patch().area()));
        }
        if (ratio <= SLENDER) {
            return AWAY;
        }
        return ratio <= STOUT
                ? new MethodError(0.15, 0.05, "")
                : new MethodError(
                        0.45, 0.05, "the patch is small against the foam: good to about 45 % only");
    }
}
