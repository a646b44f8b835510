package org.coachskin.mesh;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.Require;

/**
 * A closed line: each curve starts where the one before it ends, to 1e-9 m.
 *
 * @param curves in the order of travel, either way round
 */
public record Loop(List<Curve> curves) {

    private static final double CLOSED = 1e-9;

    /** Checks that the loop is closed. */
    public Loop {
        curves = List.copyOf(curves);
        for (int i = 0; i < curves.size(); i++) {
            Point end = curves.get(i).end();
            Point next = curves.get((i + 1) % curves.size()).start();
            if (end.distance(next) > CLOSED) {
                throw new IllegalArgumentException(
                        "the loop is open: it ends at " + end + " and goes on at " + next);
            }
        }
        if (curves.isEmpty() || (curves.size() == 1 && curves.get(0) instanceof Curve.Line)) {
            throw new IllegalArgumentException("a loop needs a circle or two curves and more");
        }
    }

    /** Returns a rectangle by two opposite corners, m. */
    public static Loop rectangle(double left, double front, double right, double rear) {
        return rectangle(left, front, right, rear, 0);
    }

    /** Returns a rectangle by two opposite corners, with rounded corners of {@code radius}, m. */
    public static Loop rectangle(
            double left, double front, double right, double rear, double radius) {
        double width = Require.positive("width of a rectangle", right - left, "m");
        double depth = Require.positive("depth of a rectangle", rear - front, "m");
        double half = Math.min(width, depth) / 2;
        Require.within("corner radius", radius, 0, half * (1 + 1e-12), "m");
        double r = Math.min(radius, half);
        double x1 = left + r;
        double x2 = right - r;
        double y1 = front + r;
        double y2 = rear - r;
        List<Curve> curves = new ArrayList<>();
        side(curves, x1, front, x2, front);
        corner(curves, x2, y1, r, 3);
        side(curves, right, y1, right, y2);
        corner(curves, x2, y2, r, 0);
        side(curves, x2, rear, x1, rear);
        corner(curves, x1, y2, r, 1);
        side(curves, left, y2, left, y1);
        corner(curves, x1, y1, r, 2);
        return new Loop(curves);
    }

    private static void side(List<Curve> curves, double x1, double y1, double x2, double y2) {
        if (Math.abs(x2 - x1) + Math.abs(y2 - y1) > CLOSED) {
            curves.add(new Curve.Line(x1, y1, x2, y2));
        }
    }

    private static void corner(List<Curve> curves, double x, double y, double r, int quarter) {
        if (r > 0) {
            curves.add(new Curve.Arc(x, y, r, quarter * Math.PI / 2, Math.PI / 2));
        }
    }

    /** Returns a circle, m. */
    public static Loop circle(double centreX, double centreY, double radius) {
        return new Loop(List.of(new Curve.Arc(centreX, centreY, radius, 0, 2 * Math.PI)));
    }

    /** Returns a slot with round ends, from the centre of one end to that of the other, m. */
    public static Loop slot(double x1, double y1, double x2, double y2, double radius) {
        double along = new Curve.Line(x1, y1, x2, y2).heading(0);
        double side = along - Math.PI / 2;
        double dx = radius * StrictMath.cos(side);
        double dy = radius * StrictMath.sin(side);
        return new Loop(
                List.of(
                        new Curve.Line(x1 + dx, y1 + dy, x2 + dx, y2 + dy),
                        new Curve.Arc(x2, y2, radius, side, Math.PI),
                        new Curve.Line(x2 - dx, y2 - dy, x1 - dx, y1 - dy),
                        new Curve.Arc(x1, y1, radius, side + Math.PI, Math.PI)));
    }

    /** Returns straight lines from corner to corner and back to the first. */
    public static Loop polygon(List<Point> corners) {
        List<Curve> curves = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % corners.size());
            curves.add(new Curve.Line(a.x(), a.y(), b.x(), b.y()));
        }
        return new Loop(curves);
    }

    /** Returns the area inside, m^2; positive where the loop runs counter-clockwise. */
    public double signedArea() {
        double sum = 0;
        for (Curve curve : curves) {
            sum += curve.sweptArea();
        }
        return sum;
    }

    /** Returns whether (x, y) lies inside; on the loop itself either answer may come. */
    public boolean contains(double x, double y) {
        boolean inside = false;
        for (int i = 0; i < curves.size(); i++) {
            Curve curve = curves.get(i);
            Point a = curve.start();
            Point b = curves.get((i + 1) % curves.size()).start();
            if (curve instanceof Curve.Arc arc) {
                inside ^= oddCrossings(arc, a, b, x, y);
            } else if (a.y() <= y != b.y() <= y) {
                inside ^= a.x() + (y - a.y()) / (b.y() - a.y()) * (b.x() - a.x()) > x;
            }
        }
        return inside;
    }

    /** Whether a ray from (x, y) to the right crosses the arc an odd number of times. */
    private static boolean oddCrossings(Curve.Arc arc, Point a, Point b, double x, double y) {
        boolean odd = false;
        double from = 0;
        Point p = a;
        while (from < 1) {
            double to = nextQuarter(arc, from);
            Point q = to == 1 ? b : arc.at(to);
            if (p.y() <= y != q.y() <= y) {
                double dy = y - arc.centreY();
                double dx = Math.sqrt(Math.max(0, arc.radius() * arc.radius() - dy * dy));
                boolean right = arc.at((from + to) / 2).x() > arc.centreX();
                odd ^= arc.centreX() + (right ? dx : -dx) > x;
            }
            p = q;
            from = to;
        }
        return odd;
    }

    /** Returns the next {@code t} at which the arc passes a whole quarter of its circle, or 1. */
    private static double nextQuarter(Curve.Arc arc, double from) {
        double quarter = Math.PI / 2;
        double place = (arc.startAngle() + from * arc.sweep()) / quarter;
        double next =
                arc.sweep() > 0 ? Math.floor(place + 1e-12) + 1 : Math.ceil(place - 1e-12) - 1;
        double to = (next * quarter - arc.startAngle()) / arc.sweep();
        return to > 1 - 1e-12 ? 1 : to;
    }
}
