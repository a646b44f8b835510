package org.coachskin.mesh;

/** Bends a curve so that it ends where it has to. */
final class Fit {

    private static final double EXACT = 1e-12;

    private Fit() {}

    /**
     * Returns a line of the same kind from {@code a} to {@code b}: an arc keeps its sweep, and
     * keeps all else if it ends there already.
     */
    static Curve through(Curve curve, Point a, Point b) {
        if (curve instanceof Curve.Line) {
            return new Curve.Line(a.x(), a.y(), b.x(), b.y());
        }
        Curve.Arc arc = (Curve.Arc) curve;
        Point start = arc.start();
        Point end = arc.end();
        double dx = a.x() - start.x();
        double dy = a.y() - start.y();
        boolean same = start.distance(a) <= EXACT && end.distance(b) <= EXACT;
        if (same) {
            return arc;
        }
        if (arc.whole()) {
            return new Curve.Arc(
                    arc.centreX() + dx,
                    arc.centreY() + dy,
                    arc.radius(),
                    arc.startAngle(),
                    arc.sweep());
        }
        if (Math.abs(arc.sweep()) > Math.PI) {
            return throughMiddle(arc, a, b);
        }
        double half = arc.sweep() / 2;
        double chord = a.distance(b);
        double radius = chord / (2 * Math.abs(StrictMath.sin(half)));
        double toCentre = chord / 2 / StrictMath.tan(half);
        double ux = (b.x() - a.x()) / chord;
        double uy = (b.y() - a.y()) / chord;
        double cx = (a.x() + b.x()) / 2 - uy * toCentre;
        double cy = (a.y() + b.y()) / 2 + ux * toCentre;
        return new Curve.Arc(cx, cy, radius, StrictMath.atan2(a.y() - cy, a.x() - cx), arc.sweep());
    }

    /** More than half a circle keeps its middle, so that a little at its ends stays a little. */
    private static Curve throughMiddle(Curve.Arc arc, Point a, Point b) {
        Point m = arc.at(0.5);
        double ax = a.x() - m.x();
        double ay = a.y() - m.y();
        double bx = b.x() - m.x();
        double by = b.y() - m.y();
        double a2 = ax * ax + ay * ay;
        double b2 = bx * bx + by * by;
        double twice = 2 * (ax * by - ay * bx);
        double ux = (by * a2 - ay * b2) / twice;
        double uy = (ax * b2 - bx * a2) / twice;
        double cx = m.x() + ux;
        double cy = m.y() + uy;
        double start = StrictMath.atan2(a.y() - cy, a.x() - cx);
        Curve.Arc whole = new Curve.Arc(cx, cy, Math.sqrt(ux * ux + uy * uy), start, 2 * Math.PI);
        double left = whole.turned(b.x(), b.y());
        double sweep = arc.sweep() > 0 ? left : left - 2 * Math.PI;
        return new Curve.Arc(cx, cy, whole.radius(), start, sweep);
    }
}
