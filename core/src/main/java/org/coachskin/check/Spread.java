package org.coachskin.check;

import java.util.EnumMap;
import java.util.Map;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.coachskin.laminate.PrimaryInput;

/**
 * Scatter of one figure from hand work, by linear propagation of the primary inputs.
 *
 * @param nominal the figure as drawn
 * @param low what nine of ten panels reach or exceed
 * @param high what nine of ten panels stay under
 * @param shares part of the variance that comes from each input; they add up to 1
 */
public record Spread(double nominal, double low, double high, Map<PrimaryInput, Double> shares) {

    /** Standard deviations from the middle to the tenth percentile of a normal distribution. */
    public static final double TENTH = 1.2815515655446004;

    /** Copies the shares. */
    public Spread {
        shares = Map.copyOf(shares);
    }

    /**
     * Returns the scatter of a figure that changes by these amounts when each input moves by one of
     * its standard deviations; the inputs are independent.
     */
    static Spread of(double nominal, Map<PrimaryInput, Double> changes) {
        Map<PrimaryInput, Double> squares = new EnumMap<>(changes);
        squares.replaceAll((input, change) -> change * change);
        double variance = squares.values().stream().mapToDouble(Double::doubleValue).sum();
        squares.replaceAll((input, square) -> variance == 0 ? 0 : square / variance);
        double half = TENTH * Math.sqrt(variance);
        return new Spread(nominal, nominal - half, nominal + half, squares);
    }

    /** Returns the standard deviation of the figure. */
    public double deviation() {
        return (high - nominal) / TENTH;
    }

    /** Returns the share of panels laid alike that stay under a limit [-], normally distributed. */
    public double below(double limit) {
        double sigma = deviation();
        return sigma == 0
                ? nominal < limit ? 1 : 0
                : new NormalDistribution(nominal, sigma).cumulativeProbability(limit);
    }

    /** Returns the scatter of this figure times {@code factor}. */
    Spread times(double factor) {
        return new Spread(factor * nominal, factor * low, factor * high, shares);
    }

    /** Returns this scatter of a figure that cannot fall below zero. */
    Spread notNegative() {
        return new Spread(nominal, Math.max(0, low), high, shares);
    }
}
