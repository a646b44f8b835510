package org.coachskin.panel;

import java.util.ArrayList;
import java.util.List;

/**
 * A place on the rim of a shape, from its middle, and the way from it out of the shape: into the
 * panel, round an opening.
 *
 * @param x [m]
 * @param y [m]
 * @param outX cosine of the way to the x axis [-]
 * @param outY to the y axis [-]
 * @param along rim that it stands for [m]
 * @param turn by which the rim turns along that [rad]
 */
public record RimPlace(double x, double y, double outX, double outY, double along, double turn) {

    /** Two places on an arc or round a sharp corner are no further apart [rad]. */
    private static final double TURN = Math.PI / 24;

    /** Nor two on a straight side [m]. */
    private static final double STEP = 0.02;

    /** Returns places all round a shape, on straight sides no further than 20 mm apart. */
    public static List<RimPlace> round(Shape shape) {
        return round(shape, STEP);
    }

    /**
     * Returns places all round a shape.
     *
     * @param step how far apart they are at most on straight sides [m]
     */
    static List<RimPlace> round(Shape shape, double step) {
        List<RimPlace> places = new ArrayList<>();
        if (shape instanceof Shape.Circle circle) {
            arc(places, 0, 0, circle.diameter() / 2, 0, 2 * Math.PI);
        } else if (shape instanceof Shape.Rectangle r) {
            double hx = r.x() / 2 - r.cornerRadius();
            double hy = r.y() / 2 - r.cornerRadius();
            for (int k = 0; k < 4; k++) {
                double cx = k == 0 || k == 3 ? hx : -hx;
                double cy = k < 2 ? hy : -hy;
                arc(places, cx, cy, r.cornerRadius(), k * Math.PI / 2, Math.PI / 2);
            }
            for (int side = -1; side <= 1; side += 2) {
                line(places, step, side * r.x() / 2, -side * hy, side * r.x() / 2, side * hy);
                line(places, step, side * hx, side * r.y() / 2, -side * hx, side * r.y() / 2);
            }
        } else if (shape instanceof Shape.Polygon polygon) {
            polygon(places, step, polygon.corners());
        }
        return places;
    }

    private static void polygon(List<RimPlace> places, double step, List<Shape.Point> corners) {
        int n = corners.size();
        double twice = 0;
        for (int i = 0; i < n; i++) {
            Shape.Point p = corners.get(i);
            Shape.Point q = corners.get((i + 1) % n);
            twice += p.x() * q.y() - q.x() * p.y();
        }
        int way = twice > 0 ? 1 : -1;
        for (int i = 0; i < n; i++) {
            Shape.Point p = corners.get(((i - way) % n + n) % n);
            Shape.Point q = corners.get(i);
            Shape.Point r = corners.get(((i + way) % n + n) % n);
            line(places, step, p.x(), p.y(), q.x(), q.y());
            double before = StrictMath.atan2(p.x() - q.x(), q.y() - p.y());
            double after = StrictMath.atan2(q.x() - r.x(), r.y() - q.y());
            double turn = after - before;
            turn -= 2 * Math.PI * Math.rint(turn / (2 * Math.PI));
            // Where the panel juts into the opening nothing is drawn together.
            if (turn > 0) {
                arc(places, q.x(), q.y(), 0, before, turn);
            }
        }
    }

    private static void arc(
            List<RimPlace> places, double cx, double cy, double radius, double from, double turn) {
        int steps = (int) Math.ceil(turn / TURN - 1e-9);
        for (int k = 0; k <= steps; k++) {
            double c = StrictMath.cos(from + turn * k / steps);
            double s = StrictMath.sin(from + turn * k / steps);
            double part = turn / steps * (k == 0 || k == steps ? 0.5 : 1);
            places.add(new RimPlace(cx + radius * c, cy + radius * s, c, s, radius * part, part));
        }
    }

    /** Along a straight side with the opening on its left. */
    private static void line(
            List<RimPlace> places, double step, double x1, double y1, double x2, double y2) {
        double length = Math.hypot(x2 - x1, y2 - y1);
        int steps = (int) Math.ceil(length / step - 1e-9);
        for (int k = 0; k < steps; k++) {
            double s = (k + 0.5) / steps;
            places.add(
                    new RimPlace(
                            x1 + s * (x2 - x1),
                            y1 + s * (y2 - y1),
                            (y2 - y1) / length,
                            (x1 - x2) / length,
                            length / steps,
                            0));
        }
    }
}
