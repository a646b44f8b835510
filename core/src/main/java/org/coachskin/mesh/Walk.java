package org.coachskin.mesh;

/** A straight walk from the middle of a triangle to a place, which ends at the first segment. */
final class Walk {

    private int triangle;
    private int blockedBy = -1;

    Walk(Triangulation tri, int start, Point p) {
        int a = tri.org[3 * start];
        int b = tri.org[3 * start + 1];
        int c = tri.org[3 * start + 2];
        double gx = (tri.x[a] + tri.x[b] + tri.x[c]) / 3;
        double gy = (tri.y[a] + tri.y[b] + tri.y[c]) / 3;
        triangle = start;
        int h = -1;
        for (int k = 3 * start; k < 3 * start + 3; k++) {
            if (!left(tri, gx, gy, p, tri.org[k]) && left(tri, gx, gy, p, tri.dest(k))) {
                h = k;
            }
        }
        while (h >= 0 && tri.beyond(h, p.x(), p.y())) {
            if (tri.seg[h] >= 0) {
                blockedBy = tri.seg[h];
                return;
            }
            int g = tri.twin[h];
            triangle = g / 3;
            h = left(tri, gx, gy, p, tri.apex(g)) ? Triangulation.next(g) : Triangulation.prev(g);
        }
    }

    private static boolean left(Triangulation tri, double gx, double gy, Point p, int v) {
        return Predicates.turn(gx, gy, p.x(), p.y(), tri.x[v], tri.y[v]) > 0;
    }

    /** Returns the triangle that holds the place, or the last one before a segment. */
    int triangle() {
        return triangle;
    }

    /** Returns the segment in the way, or -1. */
    int blockedBy() {
        return blockedBy;
    }
}
