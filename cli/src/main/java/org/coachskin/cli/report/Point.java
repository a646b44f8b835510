package org.coachskin.cli.report;

import java.util.List;

/** A place in a drawing, y downward. */
record Point(double x, double y) {

    double distance(Point other) {
        return Math.hypot(x - other.x, y - other.y);
    }

    /** Returns the length of a line through places. */
    static double length(List<Point> line) {
        double sum = 0;
        for (int i = 1; i < line.size(); i++) {
            sum += line.get(i).distance(line.get(i - 1));
        }
        return sum;
    }
}
