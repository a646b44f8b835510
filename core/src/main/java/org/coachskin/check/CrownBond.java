package org.coachskin.check;

import java.util.List;
import org.coachskin.failure.Face;
import org.coachskin.failure.Factors;
import org.coachskin.failure.Mode;
import org.coachskin.failure.SkinBond;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Triple;
import org.coachskin.material.Strength;
import org.coachskin.panel.Crown;

/** The pull between skin and foam on a crown ({@link SkinBond}). */
final class CrownBond {

    private final Job job;
    private final int sign;
    private final Worst worst;

    /**
     * @param sign 1 under the load, -1 under the load the other way round
     */
    CrownBond(Job job, int sign, Worst worst) {
        this.job = job;
        this.sign = sign;
        this.worst = worst;
    }

    /**
     * Judges one skin; nothing on a flat panel.
     *
     * @param force per width in it [N/m]
     * @param standing what of it stands all the time [N/m]
     */
    void judge(Stations.Station at, Stack stack, Face face, Triple force, Triple standing) {
        Crown crown = job.panel().crown();
        if (crown.isFlat()) {
            return;
        }
        boolean outer = face == Face.OUTSIDE;
        int core = outer ? stack.lastCore : stack.firstCore;
        Strength tension = ((Layer.Core) stack.laminate.layers().get(core)).foam().tension();
        double pull = SkinBond.pull(face, force, crown.across(), crown.along());
        double still = SkinBond.pull(face, standing, crown.across(), crown.along());
        worst.keep(
                Mode.BOND,
                sign,
                new Place(
                        (outer ? "outside skin, " : "inside skin, ") + at.words(),
                        at.x(),
                        at.y(),
                        outer ? stack.layered.foamTop() : stack.layered.foamBottom()),
                Math.max(0, pull),
                tension.value(),
                SkinBond.reserve(pull, still, tension),
                List.of(job.limits().factors().on(Factors.On.BOND)),
                MethodError.AWAY.skinStress(),
                at.remark());
    }
}
