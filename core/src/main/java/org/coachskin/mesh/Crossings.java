package org.coachskin.mesh;

import java.util.ArrayList;
import java.util.List;

/** Where two curves meet, and where they are nearest. */
final class Crossings {

    /** Ends that miss the other curve by less than this still meet it, m. */
    private static final double MEET = 1e-9;

    private Crossings() {}

    /** Two places, one on each curve. */
    record Pair(Point first, Point second) {
        double distance() {
            return first.distance(second);
        }
    }

    /** Returns the places where the curves meet; none where they run along one another. */
    static List<Point> of(Curve a, Curve b) {
        List<Point> found = new ArrayList<>();
        for (Point p : ofWhole(a, b)) {
            if (a.distance(p.x(), p.y()) <= MEET && b.distance(p.x(), p.y()) <= MEET) {
                found.add(p);
            }
        }
        return found;
    }

    private static List<Point> ofWhole(Curve a, Curve b) {
        if (a instanceof Curve.Line p) {
            return b instanceof Curve.Line q ? lines(p, q) : lineCircle(p, (Curve.Arc) b);
        }
        Curve.Arc arc = (Curve.Arc) a;
        return b instanceof Curve.Line q ? lineCircle(q, arc) : circles(arc, (Curve.Arc) b);
    }

    private static List<Point> lines(Curve.Line p, Curve.Line q) {
        double px = p.x2() - p.x1();
        double py = p.y2() - p.y1();
        double qx = q.x2() - q.x1();
        double qy = q.y2() - q.y1();
        double cross = px * qy - py * qx;
        if (Math.abs(cross) <= 1e-9 * p.length() * q.length()) {
            return List.of();
        }
        double t = ((q.x1() - p.x1()) * qy - (q.y1() - p.y1()) * qx) / cross;
        return List.of(new Point(p.x1() + t * px, p.y1() + t * py));
    }

    private static List<Point> lineCircle(Curve.Line line, Curve.Arc arc) {
        double length = line.length();
        double ux = (line.x2() - line.x1()) / length;
        double uy = (line.y2() - line.y1()) / length;
        double along = (arc.centreX() - line.x1()) * ux + (arc.centreY() - line.y1()) * uy;
        double off = (arc.centreY() - line.y1()) * ux - (arc.centreX() - line.x1()) * uy;
        return eitherSide(
                line.x1() + along * ux, line.y1() + along * uy, ux, uy, arc.radius(), off);
    }

    private static List<Point> circles(Curve.Arc a, Curve.Arc b) {
        double dx = b.centreX() - a.centreX();
        double dy = b.centreY() - a.centreY();
        double d = Math.sqrt(dx * dx + dy * dy);
        if (d < MEET) {
            return List.of();
        }
        double along = (d + (a.radius() - b.radius()) * (a.radius() + b.radius()) / d) / 2;
        double ux = dx / d;
        double uy = dy / d;
        return eitherSide(
                a.centreX() + along * ux, a.centreY() + along * uy, -uy, ux, a.radius(), along);
    }

    /** Places on a chord through a foot point, {@code off} away from the centre. */
    private static List<Point> eitherSide(
            double footX, double footY, double ux, double uy, double radius, double off) {
        double square = radius * radius - off * off;
        if (Math.abs(Math.abs(off) - radius) < MEET) {
            return List.of(new Point(footX, footY));
        }
        if (square < 0) {
            return List.of();
        }
        double half = Math.sqrt(square);
        return List.of(
                new Point(footX - half * ux, footY - half * uy),
                new Point(footX + half * ux, footY + half * uy));
    }

    /** Returns a place on each curve such that no others are nearer to one another. */
    static Pair nearest(Curve a, Curve b) {
        List<Point> meet = of(a, b);
        if (!meet.isEmpty()) {
            return new Pair(meet.get(0), meet.get(0));
        }
        List<Pair> pairs = new ArrayList<>();
        for (double t = 0; t <= 1; t++) {
            Point p = a.at(t);
            pairs.add(new Pair(p, b.at(b.nearest(p.x(), p.y()))));
            Point q = b.at(t);
            pairs.add(new Pair(a.at(a.nearest(q.x(), q.y())), q));
        }
        if (a instanceof Curve.Arc arc) {
            fromCentre(arc, b).forEach(p -> pairs.add(onto(a, b, p)));
        }
        if (b instanceof Curve.Arc arc) {
            fromCentre(arc, a).forEach(p -> pairs.add(onto(a, b, p)));
        }
        Pair best = pairs.get(0);
        for (Pair pair : pairs) {
            if (pair.distance() < best.distance()) {
                best = pair;
            }
        }
        return best;
    }

    private static Pair onto(Curve a, Curve b, Point p) {
        Point onA = a.at(a.nearest(p.x(), p.y()));
        Point onB = b.at(b.nearest(onA.x(), onA.y()));
        return new Pair(a.at(a.nearest(onB.x(), onB.y())), onB);
    }

    /** Places on the arc's circle that face the other curve, near side and far side. */
    private static List<Point> fromCentre(Curve.Arc arc, Curve other) {
        double tx;
        double ty;
        if (other instanceof Curve.Line line) {
            Point foot = line.at(line.nearest(arc.centreX(), arc.centreY()));
            tx = foot.x() - arc.centreX();
            ty = foot.y() - arc.centreY();
        } else {
            Curve.Arc o = (Curve.Arc) other;
            tx = o.centreX() - arc.centreX();
            ty = o.centreY() - arc.centreY();
        }
        double d = Math.sqrt(tx * tx + ty * ty);
        if (d < MEET) {
            return List.of();
        }
        double s = arc.radius() / d;
        return List.of(
                new Point(arc.centreX() + s * tx, arc.centreY() + s * ty),
                new Point(arc.centreX() - s * tx, arc.centreY() - s * ty));
    }

    /** Returns the curve moved sideways by {@code by}, m; null where nothing of it is left. */
    static @org.jspecify.annotations.Nullable Curve beside(Curve curve, double by) {
        if (curve instanceof Curve.Line line) {
            double s = by / line.length();
            double dx = -(line.y2() - line.y1()) * s;
            double dy = (line.x2() - line.x1()) * s;
            return new Curve.Line(line.x1() + dx, line.y1() + dy, line.x2() + dx, line.y2() + dy);
        }
        Curve.Arc arc = (Curve.Arc) curve;
        double radius = arc.radius() + by;
        return radius <= 0
                ? null
                : new Curve.Arc(
                        arc.centreX(), arc.centreY(), radius, arc.startAngle(), arc.sweep());
    }
}
