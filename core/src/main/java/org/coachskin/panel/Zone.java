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
 */
public record Zone(String name, Region region, Laminate laminate, double depth) {
    /** Checks that the depth is a number. */
    public Zone {
        Require.finite("depth of " + name, depth, "m");
    }
}
