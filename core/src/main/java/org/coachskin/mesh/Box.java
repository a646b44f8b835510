package org.coachskin.mesh;

/**
 * A rectangle around something, to rule things out quickly.
 *
 * @param left m
 * @param front m
 * @param right m
 * @param rear m
 */
record Box(double left, double front, double right, double rear) {

    static Box of(Curve curve) {
        if (curve instanceof Curve.Line p) {
            return new Box(
                    Math.min(p.x1(), p.x2()),
                    Math.min(p.y1(), p.y2()),
                    Math.max(p.x1(), p.x2()),
                    Math.max(p.y1(), p.y2()));
        }
        Curve.Arc arc = (Curve.Arc) curve;
        if (Math.abs(arc.sweep()) > 1) {
            return around(arc.centreX(), arc.centreY(), arc.radius());
        }
        Point a = arc.start();
        Point b = arc.end();
        return around((a.x() + b.x()) / 2, (a.y() + b.y()) / 2, arc.length() / 2);
    }

    static Box around(double x, double y, double radius) {
        return new Box(x - radius, y - radius, x + radius, y + radius);
    }

    static boolean near(Curve a, Curve b, double distance) {
        return of(a).distance(of(b)) <= distance;
    }

    static boolean near(Curve a, Point p, double distance) {
        return of(a).distance(p.x(), p.y()) <= distance;
    }

    double distance(Box o) {
        double dx = Math.max(0, Math.max(o.left - right, left - o.right));
        double dy = Math.max(0, Math.max(o.front - rear, front - o.rear));
        return Math.sqrt(dx * dx + dy * dy);
    }

    double distance(double x, double y) {
        double dx = Math.max(0, Math.max(left - x, x - right));
        double dy = Math.max(0, Math.max(front - y, y - rear));
        return Math.sqrt(dx * dx + dy * dy);
    }

    Box with(Box o) {
        return new Box(
                Math.min(left, o.left),
                Math.min(front, o.front),
                Math.max(right, o.right),
                Math.max(rear, o.rear));
    }

    static Box of(Loop loop) {
        Box box = of(loop.curves().get(0));
        for (Curve curve : loop.curves()) {
            box = box.with(of(curve));
        }
        return box;
    }
}
