package org.coachskin.panel;

/** Which part of a panel a place belongs to. */
final class Places {

    private Places() {}

    /** Returns whether a region holds a place. */
    static boolean holds(Panel panel, Region region, double x, double y) {
        return distance(panel, region, x, y) < 0;
    }

    /** Returns how far a place lies outside of a region [m]; below 0 in it. */
    static double distance(Panel panel, Region region, double x, double y) {
        if (region instanceof Region.Box box) {
            double qx = Math.max(box.x1() - x, x - box.x2());
            double qy = Math.max(box.y1() - y, y - box.y2());
            return Math.hypot(Math.max(qx, 0), Math.max(qy, 0)) + Math.min(Math.max(qx, qy), 0);
        }
        if (region instanceof Region.AlongEdges band) {
            double nearest = Double.POSITIVE_INFINITY;
            for (Edge edge : band.edges()) {
                double at = edge.alongX() ? y : x;
                nearest = Math.min(nearest, Math.abs(at - edge.position(panel)) - band.width());
            }
            return nearest;
        }
        Region.Around ring = (Region.Around) region;
        Opening opening = panel.opening(ring.opening());
        return opening.distance(x, y) - ring.width();
    }

    /** Returns the distance from a shape's rim, negative inside. */
    static double offset(Shape shape, double x, double y) {
        if (shape instanceof Shape.Circle circle) {
            return Math.hypot(x, y) - circle.diameter() / 2;
        }
        if (shape instanceof Shape.Rectangle r) {
            double qx = Math.abs(x) - r.x() / 2 + r.cornerRadius();
            double qy = Math.abs(y) - r.y() / 2 + r.cornerRadius();
            double outside = Math.hypot(Math.max(qx, 0), Math.max(qy, 0));
            return outside + Math.min(Math.max(qx, qy), 0) - r.cornerRadius();
        }
        Shape.Polygon polygon = (Shape.Polygon) shape;
        double nearest = Double.POSITIVE_INFINITY;
        boolean inside = false;
        for (int i = 0; i < polygon.corners().size(); i++) {
            Shape.Point p = polygon.corners().get(i);
            Shape.Point q = polygon.corners().get((i + 1) % polygon.corners().size());
            nearest = Math.min(nearest, distance(p, q, x, y));
            boolean crosses =
                    p.y() > y != q.y() > y
                            && x < (q.x() - p.x()) * (y - p.y()) / (q.y() - p.y()) + p.x();
            inside ^= crosses;
        }
        return inside ? -nearest : nearest;
    }

    private static double distance(Shape.Point p, Shape.Point q, double x, double y) {
        double dx = q.x() - p.x();
        double dy = q.y() - p.y();
        double s = ((x - p.x()) * dx + (y - p.y()) * dy) / (dx * dx + dy * dy);
        double t = Math.min(Math.max(s, 0), 1);
        return Math.hypot(x - p.x() - t * dx, y - p.y() - t * dy);
    }
}
