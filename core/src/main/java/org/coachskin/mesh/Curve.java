package org.coachskin.mesh;

import org.coachskin.Require;

/**
 * A line on the panel, straight or round, run through from {@code t = 0} to {@code t = 1} at even
 * speed.
 */
public sealed interface Curve {

    /** Returns the place at {@code t}, from 0 to 1. */
    Point at(double t);

    /** Returns the direction of travel at {@code t}, rad from x toward y. */
    double heading(double t);

    /** Returns the length, m. */
    double length();

    /** Returns the {@code t} of the place on the curve that is nearest to (x, y). */
    double nearest(double x, double y);

    /** Returns the part from {@code t0} to {@code t1}; backwards where t1 lies below t0. */
    Curve part(double t0, double t1);

    /** Returns the first place. */
    default Point start() {
        return at(0);
    }

    /** Returns the last place. */
    default Point end() {
        return at(1);
    }

    /** Returns the same places, run through backwards. */
    default Curve reversed() {
        return part(1, 0);
    }

    /** Returns the distance from (x, y) to the curve, m. */
    default double distance(double x, double y) {
        return at(nearest(x, y)).distance(x, y);
    }

    /** Returns the area between the curve and the origin, swept counter-clockwise, m^2. */
    double sweptArea();

    /**
     * A straight line.
     *
     * @param x1 start, m from the left
     * @param y1 start, m from the front
     * @param x2 end, m from the left
     * @param y2 end, m from the front
     */
    record Line(double x1, double y1, double x2, double y2) implements Curve {

        /** Checks that the line has a length. */
        public Line {
            Require.finite("start from the left", x1, "m");
            Require.finite("start from the front", y1, "m");
            Require.finite("end from the left", x2, "m");
            Require.finite("end from the front", y2, "m");
            Require.positive("length of a line", span(x2 - x1, y2 - y1), "m");
        }

        @Override
        public Point at(double t) {
            return t == 1 ? new Point(x2, y2) : new Point(x1 + t * (x2 - x1), y1 + t * (y2 - y1));
        }

        @Override
        public double heading(double t) {
            return StrictMath.atan2(y2 - y1, x2 - x1);
        }

        @Override
        public double length() {
            return span(x2 - x1, y2 - y1);
        }

        @Override
        public double nearest(double x, double y) {
            double dx = x2 - x1;
            double dy = y2 - y1;
            double t = ((x - x1) * dx + (y - y1) * dy) / (dx * dx + dy * dy);
            return Math.max(0, Math.min(1, t));
        }

        @Override
        public Line part(double t0, double t1) {
            Point a = at(t0);
            Point b = at(t1);
            return new Line(a.x(), a.y(), b.x(), b.y());
        }

        @Override
        public double sweptArea() {
            return (x1 * y2 - x2 * y1) / 2;
        }

        private static double span(double dx, double dy) {
            return Math.sqrt(dx * dx + dy * dy);
        }
    }

    /**
     * A part of a circle, or a whole one.
     *
     * @param centreX m from the left
     * @param centreY m from the front
     * @param radius m
     * @param startAngle where it starts as seen from the centre, rad from x toward y
     * @param sweep how far it turns, rad; positive counter-clockwise, at most one whole turn
     */
    record Arc(double centreX, double centreY, double radius, double startAngle, double sweep)
            implements Curve {

        /** Checks radius and sweep. */
        public Arc {
            Require.finite("centre from the left", centreX, "m");
            Require.finite("centre from the front", centreY, "m");
            Require.positive("radius", radius, "m");
            Require.finite("start angle", startAngle, "rad");
            Require.positive("sweep, whichever way,", Math.abs(sweep), "rad");
            Require.within("sweep", sweep, -2 * Math.PI, 2 * Math.PI, "rad");
        }

        /** Whether the arc is a whole circle. */
        public boolean whole() {
            return Math.abs(sweep) == 2 * Math.PI;
        }

        @Override
        public Point at(double t) {
            double angle = startAngle + (t == 1 && whole() ? 0 : t * sweep);
            return new Point(
                    centreX + radius * StrictMath.cos(angle),
                    centreY + radius * StrictMath.sin(angle));
        }

        @Override
        public double heading(double t) {
            return startAngle + t * sweep + Math.copySign(Math.PI / 2, sweep);
        }

        @Override
        public double length() {
            return radius * Math.abs(sweep);
        }

        @Override
        public double nearest(double x, double y) {
            double full = Math.abs(sweep);
            double turned = turned(x, y);
            if (turned <= full) {
                return turned / full;
            }
            return turned - full < 2 * Math.PI - turned ? 1 : 0;
        }

        /** Returns how far the arc has turned when it faces (x, y), rad from 0 to a whole turn. */
        double turned(double x, double y) {
            double angle = StrictMath.atan2(y - centreY, x - centreX) - startAngle;
            double turn = Math.copySign(1, sweep) * angle;
            turn -= 2 * Math.PI * Math.floor(turn / (2 * Math.PI));
            return turn < 2 * Math.PI ? turn : 0;
        }

        @Override
        public Arc part(double t0, double t1) {
            return new Arc(centreX, centreY, radius, startAngle + t0 * sweep, (t1 - t0) * sweep);
        }

        @Override
        public double sweptArea() {
            Point a = start();
            Point b = end();
            return (radius * radius * sweep + centreX * (b.y() - a.y()) - centreY * (b.x() - a.x()))
                    / 2;
        }
    }
}
