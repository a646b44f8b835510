package org.coachskin.mesh;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;

/** Brings segments into a triangulation by flips, and tells inside from outside. */
final class Constrain {

    private final Triangulation tri;

    Constrain(Triangulation tri) {
        this.tri = tri;
    }

    /** A segment that runs through a vertex or across another segment. */
    static final class ClashException extends RuntimeException {

        private static final long serialVersionUID = 1L;

        private final transient Point place;

        ClashException(Point place) {
            this.place = place;
        }

        Point place() {
            return place;
        }
    }

    ClashException clash(int vertex) {
        return new ClashException(new Point(tri.x[vertex], tri.y[vertex]));
    }

    private record Pair(int p, int q) {}

    /** Makes a-b an edge and lays a segment on it. Method: S. W. Sloan, 1993; from memory. */
    void recover(int a, int b, int segment) {
        int there = tri.edge(a, b);
        if (there >= 0) {
            tri.mark(there, segment);
            return;
        }
        Deque<Pair> crossing = crossing(a, b);
        Deque<Pair> made = new ArrayDeque<>();
        int limit = 64 + crossing.size() * crossing.size() * 8;
        while (!crossing.isEmpty()) {
            if (limit-- < 0) {
                throw clash(a);
            }
            Pair pair = crossing.removeFirst();
            int h = tri.edge(pair.p, pair.q);
            int c = tri.apex(h);
            int d = tri.apex(tri.twin[h]);
            if (tri.turn(d, c, pair.p) <= 0 || tri.turn(c, d, pair.q) <= 0) {
                crossing.addLast(pair);
                continue;
            }
            tri.flip(h);
            boolean ends = c == a || c == b || d == a || d == b;
            if (!ends && tri.turn(a, b, c) > 0 != tri.turn(a, b, d) > 0) {
                crossing.addLast(new Pair(d, c));
            } else {
                made.addLast(new Pair(d, c));
            }
        }
        int h = tri.edge(a, b);
        if (h < 0) {
            throw clash(a);
        }
        tri.mark(h, segment);
        for (Pair pair : made) {
            int edge = tri.edge(pair.p, pair.q);
            if (edge >= 0) {
                tri.push(edge);
                tri.legalize();
            }
        }
    }

    /** Edges that the straight line from a to b crosses, in its order. */
    private Deque<Pair> crossing(int a, int b) {
        Deque<Pair> found = new ArrayDeque<>();
        int h = tri.from(a);
        int start = h;
        while (!(tri.turn(a, tri.dest(h), b) > 0 && tri.turn(a, tri.apex(h), b) < 0)) {
            h = tri.twin[Triangulation.prev(h)];
            if (h < 0 || h == start) {
                throw clash(a);
            }
        }
        int e = Triangulation.next(h);
        while (true) {
            if (tri.seg[e] >= 0) {
                throw clash(a);
            }
            found.addLast(new Pair(tri.org[e], tri.dest(e)));
            int g = tri.twin[e];
            int v = tri.apex(g);
            if (v == b) {
                return found;
            }
            double side = tri.turn(a, b, v);
            if (side == 0) {
                throw clash(a);
            }
            e = side > 0 ? Triangulation.next(g) : Triangulation.prev(g);
        }
    }

    /**
     * Marks triangles inside, from the box inward; every segment for which rim says so flips it.
     */
    void flood(boolean[] rim) {
        boolean[] seen = new boolean[tri.triangleCount];
        Arrays.fill(tri.inside, 0, tri.triangleCount, false);
        int first = tri.from(0) / 3;
        int[] stack = new int[3 * tri.triangleCount + 1];
        int size = 0;
        stack[size++] = first;
        seen[first] = true;
        while (size > 0) {
            int t = stack[--size];
            for (int h = 3 * t; h < 3 * t + 3; h++) {
                int g = tri.twin[h];
                if (g >= 0 && !seen[g / 3]) {
                    seen[g / 3] = true;
                    boolean across = tri.seg[h] >= 0 && rim[tri.seg[h]];
                    tri.inside[g / 3] = tri.inside[t] ^ across;
                    stack[size++] = g / 3;
                }
            }
        }
    }
}
