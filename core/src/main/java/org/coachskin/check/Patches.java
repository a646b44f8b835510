package org.coachskin.check;

import org.coachskin.laminate.Patch;

/** A patch as the solvers take it: a disc is the square of equal area. */
final class Patches {

    private Patches() {}

    static double halfX(Patch patch) {
        return patch instanceof Patch.Disc ? Math.sqrt(patch.area()) / 2 : patch.halfX();
    }

    static double halfY(Patch patch) {
        return patch instanceof Patch.Disc ? Math.sqrt(patch.area()) / 2 : patch.halfY();
    }
}
