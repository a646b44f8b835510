package org.coachskin.panel;

import org.coachskin.Require;

/**
 * A hole right through the panel. A slot is a rectangle whose corner radius is half its shorter
 * side.
 *
 * @param name how it is called, for example {@code window}
 * @param shape its shape
 * @param x of its centre, from the left edge [m]
 * @param y of its centre, from the front edge [m]
 */
public record Opening(String name, Shape shape, double x, double y) {
    /** Checks that the place is a number. */
    public Opening {
        Require.finite("x of " + name, x, "m");
        Require.finite("y of " + name, y, "m");
    }

    /** Returns how far a place lies from its rim [m]; negative in the opening. */
    public double distance(double placeX, double placeY) {
        return Places.offset(shape, placeX - x, placeY - y);
    }
}
