package org.coachskin.mesh;

/**
 * A place on the panel.
 *
 * @param x from the left, m
 * @param y from the front, m
 */
public record Point(double x, double y) {

    /** Returns the distance to another place, m. */
    public double distance(Point other) {
        return distance(other.x, other.y);
    }

    double distance(double otherX, double otherY) {
        double dx = otherX - x;
        double dy = otherY - y;
        return Math.sqrt(dx * dx + dy * dy);
    }
}
