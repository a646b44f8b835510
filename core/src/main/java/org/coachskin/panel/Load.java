package org.coachskin.panel;

import org.coachskin.Require;
import org.coachskin.laminate.Patch;

/**
 * One thing that presses, pulls or heats. Forces and pressures are positive when they push the
 * panel in.
 */
public sealed interface Load {

    /** Returns the same load the other way round. */
    Load reversed();

    /**
     * A force spread evenly over a patch of the outside surface.
     *
     * @param force [N], positive inward
     * @param patch the area
     * @param x centre of the patch from the left edge [m]
     * @param y centre of the patch from the front edge [m]
     */
    record Press(double force, Patch patch, double x, double y) implements Load {
        /** Checks that the numbers are finite. */
        public Press {
            Require.finite("force", force, "N");
            Require.finite("x", x, "m");
            Require.finite("y", y, "m");
        }

        @Override
        public Load reversed() {
            return new Press(-force, patch, x, y);
        }
    }

    /**
     * A pressure on the whole panel.
     *
     * @param pressure [Pa], positive inward; suction is negative
     */
    record Pressure(double pressure) implements Load {
        /** Checks that the pressure is finite. */
        public Pressure {
            Require.finite("pressure", pressure, "Pa");
        }

        @Override
        public Load reversed() {
            return new Pressure(-pressure);
        }
    }

    /**
     * A pressure on a strip across the whole width.
     *
     * @param pressure [Pa], positive inward; suction is negative
     * @param from where the strip starts, from the front edge [m]
     * @param to where it ends, from the front edge [m]; at most the length of the panel
     */
    record StripPressure(double pressure, double from, double to) implements Load {
        /** Checks that the numbers are finite and that the strip has a depth. */
        public StripPressure {
            Require.finite("pressure", pressure, "Pa");
            Require.notNegative("start of the strip", from, "m");
            Require.positive("depth of the strip", to - from, "m");
        }

        @Override
        public Load reversed() {
            return new StripPressure(-pressure, from, to);
        }
    }

    /**
     * A force spread evenly along a straight line: somebody who leans along an edge, a strap.
     *
     * @param force per length [N/m], positive inward
     * @param x1 one end, from the left edge [m]
     * @param y1 the same end, from the front edge [m]
     * @param x2 the other end [m]
     * @param y2 the other end [m]
     */
    record Line(double force, double x1, double y1, double x2, double y2) implements Load {
        /** Checks that the numbers are finite and that the line has a length. */
        public Line {
            Require.finite("force per length", force, "N/m");
            Require.finite("x of a line", x1, "m");
            Require.finite("y of a line", y1, "m");
            Require.finite("x of a line", x2, "m");
            Require.finite("y of a line", y2, "m");
            Require.positive("length of a line", Math.hypot(x2 - x1, y2 - y1), "m");
        }

        /** Returns its length [m]. */
        public double length() {
            return Math.hypot(x2 - x1, y2 - y1);
        }

        @Override
        public Load reversed() {
            return new Line(-force, x1, y1, x2, y2);
        }
    }

    /**
     * The panel's own weight.
     *
     * @param inward component of gravity along the inward normal [m/s^2]: 9.81 for a lid that lies
     *     flat, 0 for an upright door
     */
    record OwnWeight(double inward) implements Load {
        /** Checks that the component is finite. */
        public OwnWeight {
            Require.finite("gravity", inward, "m/s^2");
        }

        @Override
        public Load reversed() {
            return new OwnWeight(-inward);
        }
    }

    /**
     * A temperature that varies linearly through the thickness. The rim is taken to follow the free
     * growth in the plane, so only the bow is resisted.
     *
     * @param outside rise of the outside surface above the temperature of lay-up [K]
     * @param inside rise of the inside surface [K]
     */
    record Heat(double outside, double inside) implements Load {
        /** Checks that both are finite. */
        public Heat {
            Require.finite("temperature rise outside", outside, "K");
            Require.finite("temperature rise inside", inside, "K");
        }

        @Override
        public Load reversed() {
            return new Heat(-outside, -inside);
        }
    }
}
