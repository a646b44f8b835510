package org.coachskin.cli.report;

/** A place in a drawing, y downward. */
record Point(double x, double y) {

    double distance(Point other) {
        return Math.hypot(x - other.x, y - other.y);
    }
}
