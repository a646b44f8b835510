package org.coachskin.check;

import java.util.List;
import java.util.function.Function;
import org.coachskin.failure.Factors;
import org.coachskin.failure.Mode;
import org.coachskin.failure.PlyCriterion;
import org.coachskin.failure.PlyFailure;
import org.coachskin.failure.SkinBond;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.PlyStress;
import org.coachskin.laminate.Triple;
import org.coachskin.material.Strength;

/**
 * Judges plies, and the pull of skins off the foam, whatever makes it.
 *
 * @param job with the limits
 * @param sign 1 under the load, -1 under the load the other way round
 * @param worst where it is kept
 */
record SkinJudge(Job job, int sign, Worst worst) {

    /**
     * Judges the stress between a skin and the foam.
     *
     * @param pull of the load, off the foam positive [Pa]
     * @param still what of it stands all the time [Pa]
     * @param tension what the foam bears
     */
    void pulledOff(
            Place place,
            double pull,
            double still,
            Strength tension,
            double methodError,
            String remark) {
        worst.keep(
                Mode.BOND,
                sign,
                place,
                Math.max(0, pull),
                tension.value(),
                SkinBond.reserve(pull, still, tension),
                List.of(job.limits().factors().on(Factors.On.BOND)),
                methodError,
                remark);
    }

    /**
     * Judges a ply at one height.
     *
     * @param mode by which it is kept, of how it breaks
     * @param strain of the load in panel axes
     * @param still what of it stands all the time
     */
    void ply(
            Function<PlyFailure, Mode> mode,
            Layer.Laid laid,
            Place place,
            Triple strain,
            Triple still,
            double methodError,
            String remark) {
        PlyStress stress = PlyStress.of(laid.ply(), laid.angle(), strain);
        PlyStress stands = PlyStress.of(laid.ply(), laid.angle(), still);
        PlyFailure event = PlyCriterion.event(stress, stands, laid.ply());
        worst.keep(
                mode.apply(event),
                sign,
                place,
                Math.abs(event.stress()),
                event.strength().value(),
                job.limits().criterion().reserve(stress, stands, laid.ply()),
                List.of(job.limits().factors().skin(event.strength())),
                methodError,
                remark);
    }
}
