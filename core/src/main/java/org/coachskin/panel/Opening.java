package org.coachskin.panel;

import java.util.ArrayList;
import java.util.List;
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

    /** Places on a straight part of its rim that are told of. */
    private static final int PLACES = 96;

    /** Checks that the place is a number. */
    public Opening {
        Require.finite("x of " + name, x, "m");
        Require.finite("y of " + name, y, "m");
    }

    /** Returns how far a place lies from its rim [m]; negative in the opening. */
    public double distance(double placeX, double placeY) {
        return Places.offset(shape, placeX - x, placeY - y);
    }

    /**
     * Returns places close together along its rim, every corner among them, from left and front.
     */
    public List<Shape.Point> rim() {
        List<Shape.Point> points = new ArrayList<>();
        List<Shape.Point> corners = corners(shape);
        for (int i = 0; i < corners.size(); i++) {
            Shape.Point p = corners.get(i);
            Shape.Point q = corners.get((i + 1) % corners.size());
            for (int k = 0; k < PLACES; k++) {
                double t = (double) k / PLACES;
                points.add(
                        new Shape.Point(
                                x + p.x() + t * (q.x() - p.x()), y + p.y() + t * (q.y() - p.y())));
            }
        }
        return points;
    }

    /** Corners of a shape; round ones by short chords. */
    private static List<Shape.Point> corners(Shape shape) {
        if (shape instanceof Shape.Polygon polygon) {
            return polygon.corners();
        }
        Shape.Rectangle r =
                shape instanceof Shape.Circle circle
                        ? new Shape.Rectangle(
                                circle.diameter(), circle.diameter(), circle.diameter() / 2)
                        : (Shape.Rectangle) shape;
        double hx = r.x() / 2 - r.cornerRadius();
        double hy = r.y() / 2 - r.cornerRadius();
        int arc = r.cornerRadius() > 0 ? 12 : 0;
        List<Shape.Point> corners = new ArrayList<>();
        for (int quarter = 0; quarter < 4; quarter++) {
            int sx = quarter == 0 || quarter == 3 ? 1 : -1;
            int sy = quarter < 2 ? 1 : -1;
            for (int k = 0; k <= arc; k++) {
                double angle = Math.PI / 2 * (quarter + (arc == 0 ? 0 : (double) k / arc));
                corners.add(
                        new Shape.Point(
                                sx * hx + r.cornerRadius() * StrictMath.cos(angle),
                                sy * hy + r.cornerRadius() * StrictMath.sin(angle)));
            }
        }
        return corners;
    }
}
