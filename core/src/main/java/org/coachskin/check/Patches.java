package org.coachskin.check;

import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Patch;
import org.coachskin.local.LocalEffect;
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

    /**
     * What a patch does beyond the layered theory where it presses; a rim that is not carried all
     * round is taken as far away.
     */
    static LocalEffect local(Panel panel, Load.Press press) {
        boolean whole = panel.isPlain() && panel.rimCarried();
        double far = Double.POSITIVE_INFINITY;
        LocalEffect.Site site =
                new LocalEffect.Site(
                        whole ? press.x() : far,
                        whole ? panel.width() - press.x() : far,
                        whole ? press.y() : far,
                        whole ? panel.length() - press.y() : far,
                        panel.crown().across(),
                        panel.crown().along());
        Laminate stack = panel.laminateAt(press.x(), press.y());
        return LocalEffect.of(stack, press.patch(), press.force(), site);
    }
}
