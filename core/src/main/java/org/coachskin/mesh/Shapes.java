package org.coachskin.mesh;

/** Lengths, angles and circles of the triangles of a triangulation. */
final class Shapes {

    private final Triangulation tri;

    Shapes(Triangulation tri) {
        this.tri = tri;
    }

    /** Whether a place sees an edge under more than a right angle. */
    boolean seenWide(int h, double px, double py) {
        int a = tri.org[h];
        int b = tri.dest(h);
        return (tri.x[a] - px) * (tri.x[b] - px) + (tri.y[a] - py) * (tri.y[b] - py) < 0;
    }

    /** Returns the square of the distance between two vertices. */
    double square(int a, int b) {
        double dx = tri.x[b] - tri.x[a];
        double dy = tri.y[b] - tri.y[a];
        return dx * dx + dy * dy;
    }

    /** Returns the corner from which a half-edge starts, rad. */
    double cornerAngle(int h) {
        int v = tri.org[h];
        int b = tri.dest(h);
        int c = tri.apex(h);
        double dot =
                (tri.x[b] - tri.x[v]) * (tri.x[c] - tri.x[v])
                        + (tri.y[b] - tri.y[v]) * (tri.y[c] - tri.y[v]);
        return StrictMath.atan2(tri.turn(v, b, c), dot);
    }

    /**
     * Returns the circumcentre, or a place on the way to it from the middle of the shortest edge.
     */
    Point candidate(int h, double offCentre) {
        int a = tri.org[h];
        int b = tri.dest(h);
        int c = tri.apex(h);
        double bx = tri.x[b] - tri.x[a];
        double by = tri.y[b] - tri.y[a];
        double cx = tri.x[c] - tri.x[a];
        double cy = tri.y[c] - tri.y[a];
        double b2 = bx * bx + by * by;
        double c2 = cx * cx + cy * cy;
        double twice = 2 * (bx * cy - by * cx);
        double ux = (cy * b2 - by * c2) / twice;
        double uy = (bx * c2 - cx * b2) / twice;
        double height = ((uy - by / 2) * bx - (ux - bx / 2) * by) / Math.sqrt(b2);
        double most = offCentre * Math.sqrt(b2);
        if (height > most) {
            ux = bx / 2 - by * offCentre;
            uy = by / 2 + bx * offCentre;
        }
        return new Point(tri.x[a] + ux, tri.y[a] + uy);
    }

    /** Whether a place lies inside the circle through the corners beyond doubt. */
    boolean inCircle(int t, Point p) {
        int a = tri.org[3 * t];
        int b = tri.org[3 * t + 1];
        int c = tri.org[3 * t + 2];
        return Predicates.surelyInCircle(
                tri.x[a], tri.y[a], tri.x[b], tri.y[b], tri.x[c], tri.y[c], p.x(), p.y());
    }
}
