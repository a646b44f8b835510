package org.coachskin.panel;

import org.coachskin.Require;

/**
 * How a panel is curved: shallow, with constant curvature along each side; bulging outward is
 * positive.
 *
 * @param across curvature of a cut along x, 1/Rx [1/m]
 * @param along curvature of a cut along y, 1/Ry [1/m]
 */
public record Crown(double across, double along) {

    /** Not curved. */
    public static final Crown FLAT = new Crown(0, 0);

    /** Checks that both are numbers. */
    public Crown {
        Require.finite("curvature across", across, "1/m");
        Require.finite("curvature along", along, "1/m");
    }

    /**
     * Returns the crown of a panel that rises by these heights at the middle of each side's cut
     * (arc of a circle: R = s^2/(8 r) + r/2).
     *
     * @param riseAcross rise at the middle of a cut along x, over the width [m]
     * @param width along x [m]
     * @param riseAlong rise at the middle of a cut along y, over the length [m]
     * @param length along y [m]
     */
    public static Crown ofRise(double riseAcross, double width, double riseAlong, double length) {
        return new Crown(curvature(riseAcross, width), curvature(riseAlong, length));
    }

    private static double curvature(double rise, double side) {
        return rise == 0 ? 0 : 1 / (side * side / (8 * rise) + rise / 2);
    }

    /** Returns whether there is no curvature. */
    public boolean isFlat() {
        return across == 0 && along == 0;
    }
}
