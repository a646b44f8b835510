package org.coachskin.check;

import java.util.List;
import org.coachskin.failure.Factor;
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
 * @param factors the factors of safety that are wanted, multiplied; one for a load that stays
 *     included; empty where the limit itself is cautious
 * @param methodError error of the theory in the figure, relative [-]
 * @param meshError error of the numerical solution, relative, from two coarser ones; 0 for a series
 *     [-]
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
        List<Factor> factors,
        double methodError,
        double meshError,
        String remark) {

    /** Copies the factors. */
    public Margin {
        factors = List.copyOf(factors);
    }

    /** Returns this margin with an error of the numerical solution. */
    Margin withMeshError(double error) {
        return new Margin(
                mode,
                loadCase,
                reversed,
                place,
                applied,
                allowable,
                multiplier,
                factors,
                methodError,
                error,
                remark);
    }

    /** Returns the multiplier that is wanted: all factors of safety, multiplied [-]. */
    public double factor() {
        double product = 1;
        for (Factor factor : factors) {
            product *= factor.value();
        }
        return product;
    }

    /** Returns multiplier over factor: below 1 it does not hold. */
    public double reserve() {
        return multiplier / factor();
    }

    /** Returns whether the numerical solution is within a hundredth. */
    public boolean isSettled() {
        return meshError <= Convergence.WANTED;
    }

    /** Returns whether the mode holds. */
    public boolean holds() {
        return reserve() >= 1;
    }
}
