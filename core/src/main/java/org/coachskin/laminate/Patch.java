package org.coachskin.laminate;

import org.coachskin.Require;

/** The area a force presses on. */
public sealed interface Patch {

    /** Returns the area [m^2]. */
    double area();

    /** Returns half of the extent along x [m]. */
    double halfX();

    /** Returns half of the extent along y [m]. */
    double halfY();

    /**
     * A rectangle along the panel's sides.
     *
     * @param x extent along x [m]
     * @param y extent along y [m]
     */
    record Rectangle(double x, double y) implements Patch {
        /** Checks that both are above zero. */
        public Rectangle {
            Require.positive("patch along x", x, "m");
            Require.positive("patch along y", y, "m");
        }

        @Override
        public double area() {
            return x * y;
        }

        @Override
        public double halfX() {
            return x / 2;
        }

        @Override
        public double halfY() {
            return y / 2;
        }
    }

    /**
     * A disc.
     *
     * @param diameter [m]
     */
    record Disc(double diameter) implements Patch {
        /** Checks that the diameter is above zero. */
        public Disc {
            Require.positive("patch diameter", diameter, "m");
        }

        @Override
        public double area() {
            return Math.PI * diameter * diameter / 4;
        }

        @Override
        public double halfX() {
            return diameter / 2;
        }

        @Override
        public double halfY() {
            return diameter / 2;
        }
    }
}
