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
