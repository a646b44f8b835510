package org.coachskin.check;

import org.coachskin.failure.Face;
import org.coachskin.failure.SkinBond;
import org.coachskin.laminate.Triple;
import org.coachskin.panel.Crown;

/** The pull between skin and foam on a crown ({@link SkinBond}). */
final class CrownBond {

    private CrownBond() {}

    /**
     * Judges one skin; nothing on a flat panel.
     *
     * @param force per width in it [N/m]
     * @param standing what of it stands all the time [N/m]
     */
    static void judge(
            SkinJudge skins,
            Stations.Station at,
            Stack stack,
            Face face,
            Triple force,
            Triple standing) {
        Crown crown = skins.job().panel().crown();
        if (crown.isFlat()) {
            return;
        }
        boolean outer = face == Face.OUTSIDE;
        skins.pulledOff(
                new Place(
                        (outer ? "outside skin, " : "inside skin, ") + at.words(),
                        at.x(),
                        at.y(),
                        outer ? stack.layered.foamTop() : stack.layered.foamBottom()),
                SkinBond.pull(face, force, crown.across(), crown.along()),
                SkinBond.pull(face, standing, crown.across(), crown.along()),
                stack.foam(face).tension(),
                MethodError.AWAY.skinStress(),
                at.remark());
    }
}
