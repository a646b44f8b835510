package org.coachskin.check;

import java.util.Map;
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
}
