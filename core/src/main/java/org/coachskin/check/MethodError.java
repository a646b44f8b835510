package org.coachskin.check;

import java.util.List;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.LayeredStiffness;
import org.coachskin.laminate.Patch;
import org.coachskin.local.LocalEffect;
import org.coachskin.panel.Crown;
import org.coachskin.panel.Load;
import org.coachskin.panel.Panel;

/**
 * Error of the theory against 3-D elasticity, relative to our own figure; what a reserve is divided
 * by before it counts as a plain yes.
 *
 * <p>From the sweep on the evidence page, whose test holds these numbers: foam of 32 to 160 kg/m^3
 * and 6 to 50 mm, one to four plies a skin, one skin, none, patches of 20 to 200 mm, in the middle
 * and at the rim, radii of 1 and 2.5 m. What decides is the thickness of the foam over the side of
 * the patch (a disc by its square of equal area), a rim that is near, and a tight crown.
 *
 * @param deflection of how far the outside surface goes in [-]
 * @param skinStress of the stress in a ply, on the unsafe side [-]
 * @param coreShear of the shear stress in the foam, on the unsafe side [-]
 * @param remark what has to be said beside the figure; empty where nothing has
 */
record MethodError(double deflection, double skinStress, double coreShear, String remark) {

    /** Of a dent and the force that makes it [-]. */
    static final double DENT = 0.10;

    /** Of wrinkling and crimping [-]. */
    static final double WRINKLING = 0.10;

    /** Away from every patch, where the layered theory stands alone. */
    static final MethodError AWAY = new MethodError(0.01, 0.05, 0.06, "");

    /** Foam thickness over the side of the patch to which all stays near its aim. */
    private static final double SLENDER = 0.4;

    private static final double STOUT = 1.3;

    private static final MethodError MIDDLING = new MethodError(0.01, 0.11, 0.08, "");

    private static final MethodError SMALL =
            new MethodError(
                    0.065, 0.36, 0.08, "the patch is small against the foam: good to 35 % only");

    /** With the edge of a patch nearer to the rim than the panel is thick. */
    private static final MethodError RIM = new MethodError(0.01, 0.08, 0.06, "");

    private static final MethodError CROWNED = new MethodError(0.02, 0.05, 0.06, "");

    /** A small patch right on foam. */
    private static final MethodError ON_FOAM = new MethodError(0.01, 0.05, 0.17, "");

    /** Radius below which a crown counts as tight [m]. */
    private static final double TIGHT = 2.4;

    private static final MethodError TIGHTLY_CROWNED =
            new MethodError(0.02, 0.20, 0.06, "the crown is tight for this theory: good to 20 %");

    /** Returns the error under and beside the smallest of these patches. */
    static MethodError beside(Panel panel, List<Load.Press> presses) {
        Laminate laminate = panel.laminate();
        if (presses.isEmpty() || laminate.isBare()) {
            return AWAY;
        }
        MethodError found = bySize(laminate, presses.stream().map(Load.Press::patch).toList());
        if (presses.stream().anyMatch(press -> toRim(panel, press) < laminate.thickness())) {
            found = found.or(RIM);
        }
        return found.crowned(panel.crown());
    }

    private MethodError crowned(Crown crown) {
        double sharpest = Math.max(Math.abs(crown.across()), Math.abs(crown.along()));
        return crown.isFlat() ? this : or(sharpest * TIGHT > 1 ? TIGHTLY_CROWNED : CROWNED);
    }

    /**
     * Returns the error under and beside one patch.
     *
     * @param laminate as seen from the face that is pressed: that one is its outside
     * @param site where the patch stands
     */
    static MethodError under(Laminate laminate, Patch patch, Crown crown, LocalEffect.Site site) {
        double toX = Math.min(site.left(), site.right()) - patch.halfX();
        double toY = Math.min(site.front(), site.rear()) - patch.halfY();
        MethodError found = bySize(laminate, List.of(patch));
        if (Math.min(toX, toY) < laminate.thickness()) {
            found = found.or(RIM);
        }
        return found.crowned(crown);
    }

    /** From the edge of a patch to the nearest rim [m]. */
    private static double toRim(Panel panel, Load.Press press) {
        double x = Math.min(press.x(), panel.width() - press.x()) - press.patch().halfX();
        double y = Math.min(press.y(), panel.length() - press.y()) - press.patch().halfY();
        return Math.min(x, y);
    }

    private static MethodError bySize(Laminate laminate, List<? extends Patch> patches) {
        if (laminate.hasNoOutsideSkin()) {
            return ON_FOAM;
        }
        if (laminate.hasNoInsideSkin()) {
            return AWAY;
        }
        LayeredStiffness stack = LayeredStiffness.of(laminate);
        double foam = stack.foamTop() - stack.foamBottom();
        double ratio = 0;
        for (Patch patch : patches) {
            ratio = Math.max(ratio, foam / Math.sqrt(patch.area()));
        }
        return ratio <= SLENDER ? AWAY : ratio <= STOUT ? MIDDLING : SMALL;
    }

    /** The larger of two errors, figure by figure. */
    MethodError or(MethodError other) {
        return new MethodError(
                Math.max(deflection, other.deflection),
                Math.max(skinStress, other.skinStress),
                Math.max(coreShear, other.coreShear),
                remark.isEmpty() ? other.remark : remark);
    }
}
