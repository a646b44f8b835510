package org.coachskin.panel;

import org.coachskin.Require;
import org.coachskin.laminate.Laminate;

/**
 * A part of the panel with a stack of its own: a band of extra plies, a foam strip, an insert, a
 * lip without foam. Where zones overlap the one named last wins.
 *
 * @param name how it is called
 * @param region where it is
 * @param laminate its whole stack, inside to outside
 * @param depth of its outside surface under that of the panel around it [m]: 0 for a lip flush with
 *     the outside
 * @param slope rise over run of the inside surface where foam gets thicker or thinner at its edge;
 *     the solvers take it as a step, what the skin over it bears goes by the slope [-]
 */
public record Zone(String name, Region region, Laminate laminate, double depth, double slope) {

    /** Rise over run of bevels unless it is said: 1 in 3 [common practice, no source]. */
    public static final double USUAL_SLOPE = 1 / 3.0;

    /** Checks the numbers. */
    public Zone {
        Require.finite("depth of " + name, depth, "m");
        Require.positive("slope of the bevel of " + name, slope, "");
    }

    /** Bevelled as usual. */
    public Zone(String name, Region region, Laminate laminate, double depth) {
        this(name, region, laminate, depth, USUAL_SLOPE);
    }

    /** Returns this zone with another stack. */
    public Zone withLaminate(Laminate other) {
        return new Zone(name, region, other, depth, slope);
    }
}
