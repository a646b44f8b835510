package org.coachskin.check;

import org.coachskin.failure.Mode;

/**
 * One mode under one load: how far the panel is from it.
 *
 * @param mode what happens
 * @param loadCase the load that governs
 * @param reversed whether it governs with the load the other way round
 * @param place where
 * @param applied what the load causes there, in the unit of the mode
 * @param allowable what is reached when the mode happens, in the same unit
 * @param multiplier factor by which the load may grow until the mode happens; standing load not
 *     multiplied [-]
 * @param factor the multiplier that is wanted: the factor of safety, loads that stay included [-]
 * @param methodError error of the theory in the figure, relative [-]
 * @param remark what has to be said beside the figure, outside a method's range for example; may be
 *     empty
 */
public record Margin(
        Mode mode,
        String loadCase,
        boolean reversed,
        Place place,
        double applied,
        double allowable,
        double multiplier,
        double factor,
        double methodError,
        String remark) {

    /** Returns multiplier over factor: below 1 it does not hold. */
    public double reserve() {
        return multiplier / factor;
    }

    /** Returns whether the mode holds. */
    public boolean holds() {
        return reserve() >= 1;
    }
}
