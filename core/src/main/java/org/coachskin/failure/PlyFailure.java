package org.coachskin.failure;

import org.coachskin.material.Strength;

/**
 * What happens first in a ply, and the strength that is met.
 *
 * @param reserve factor on the load [-]
 * @param mode pulled apart, crushed or sheared
 * @param strength the strength that is met
 * @param stress stress of the load in that direction [Pa]
 * @param direction in words
 */
public record PlyFailure(
        double reserve, Mode mode, Strength strength, double stress, String direction) {

    PlyFailure orWorse(
            double load, double standing, Strength tension, Strength compression, String along) {
        double reach =
                PlyCriterion.MaxStress.reach(load, standing, tension.value(), compression.value());
        if (reach >= reserve) {
            return this;
        }
        boolean pulled = reach == 0 ? standing > 0 : load > 0;
        return new PlyFailure(
                reach,
                pulled ? Mode.PLY_PULLED : Mode.PLY_CRUSHED,
                pulled ? tension : compression,
                load,
                along);
    }
}
