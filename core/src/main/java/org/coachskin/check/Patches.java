package org.coachskin.check;

import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Patch;
import org.coachskin.local.LocalEffect;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Load;
import org.coachskin.panel.Panel;

/** A patch as the solvers take it: a disc is the square of equal area; where it stands. */
final class Patches {

    private Patches() {}

    static double halfX(Patch patch) {
        return patch instanceof Patch.Disc ? Math.sqrt(patch.area()) / 2 : patch.halfX();
    }

    static double halfY(Patch patch) {
        return patch instanceof Patch.Disc ? Math.sqrt(patch.area()) / 2 : patch.halfY();
    }

    /** What a patch does beyond the layered theory where it presses. */
    static LocalEffect local(Panel panel, Load.Press press) {
        LocalEffect.Site site = site(panel, press.x(), press.y());
        Laminate stack = panel.laminateAt(press.x(), press.y());
        return LocalEffect.of(stack, press.patch(), press.force(), site);
    }

    /**
     * Where a place is from the edges that are carried from end to end; an edge that is not, or not
     * of a plain rectangle, is taken as far away.
     */
    static LocalEffect.Site site(Panel panel, double x, double y) {
        return new LocalEffect.Site(
                carried(panel, Edge.LEFT, x),
                carried(panel, Edge.RIGHT, panel.width() - x),
                carried(panel, Edge.FRONT, y),
                carried(panel, Edge.REAR, panel.length() - y),
                panel.crown().across(),
                panel.crown().along());
    }

    private static double carried(Panel panel, Edge edge, double distance) {
        boolean held =
                panel.isPlain()
                        && panel.support().fittings().contains(Fitting.HeldEdge.carried(edge));
        return held ? distance : Double.POSITIVE_INFINITY;
    }
}
