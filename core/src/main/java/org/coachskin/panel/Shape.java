package org.coachskin.panel;

import java.util.List;
import org.coachskin.Require;

/** The shape of an outline or an opening, about its own centre unless it says otherwise. */
public sealed interface Shape {

    /** Returns the area [m^2]. */
    double area();

    /**
     * A rectangle along the panel's sides with round corners.
     *
     * @param x extent along x [m]
     * @param y extent along y [m]
     * @param cornerRadius radius of the corners, 0 for sharp ones [m]
     */
    record Rectangle(double x, double y, double cornerRadius) implements Shape {
        /** Checks the sides and that the corners find room. */
        public Rectangle {
            Require.positive("side along x", x, "m");
            Require.positive("side along y", y, "m");
            Require.finite("corner radius", cornerRadius, "m");
            if (cornerRadius < 0 || cornerRadius > Math.min(x, y) / 2) {
                throw new IllegalArgumentException(
                        "corner radius "
                                + cornerRadius
                                + " m does not fit sides of "
                                + x
                                + " and "
                                + y
                                + " m");
            }
        }

        @Override
        public double area() {
            return x * y - (4 - Math.PI) * cornerRadius * cornerRadius;
        }
    }

    /**
     * A circle.
     *
     * @param diameter [m]
     */
    record Circle(double diameter) implements Shape {
        /** Checks the diameter. */
        public Circle {
            Require.positive("diameter", diameter, "m");
        }

        @Override
        public double area() {
            return Math.PI * diameter * diameter / 4;
        }
    }

    /**
     * A polygon.
     *
     * @param corners in order, at least three; measured from the centre for an opening, from left
     *     and front for an outline
     */
    record Polygon(List<Point> corners) implements Shape {
        /** Copies the list and checks that there is an area. */
        public Polygon {
            corners = List.copyOf(corners);
            if (corners.size() < 3) {
                throw new IllegalArgumentException("a polygon needs three corners or more");
            }
        }

        @Override
        public double area() {
            double twice = 0;
            for (int i = 0; i < corners.size(); i++) {
                Point p = corners.get(i);
                Point q = corners.get((i + 1) % corners.size());
                twice += p.x() * q.y() - q.x() * p.y();
            }
            return Math.abs(twice) / 2;
        }
    }

    /**
     * A corner.
     *
     * @param x [m]
     * @param y [m]
     */
    record Point(double x, double y) {
        /** Checks that both are numbers. */
        public Point {
            Require.finite("x of a corner", x, "m");
            Require.finite("y of a corner", y, "m");
        }
    }
}
