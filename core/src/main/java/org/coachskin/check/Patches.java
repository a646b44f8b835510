package org.coachskin.check;

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

    /** What a patch does beyond the layered theory where it presses. */
    static LocalEffect local(Panel panel, Load.Press press) {
        LocalEffect.Site site =
                new LocalEffect.Site(
                        press.x(),
                        panel.width() - press.x(),
                        press.y(),
                        panel.length() - press.y(),
                        panel.crown().across(),
                        panel.crown().along());
        return LocalEffect.of(panel.laminate(), press.patch(), press.force(), site);
    }
}
