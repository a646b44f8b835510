package org.coachskin.mesh;

import java.util.Arrays;

/**
 * A constrained Delaunay triangulation of a box, as half-edges: triangle t owns 3t, 3t + 1, 3t + 2,
 * counter-clockwise.
 */
final class Triangulation {

    double[] x = new double[1024];
    double[] y = new double[1024];
    int vertexCount;

    /** Vertex from which a half-edge starts. */
    int[] org = new int[6144];

    /** The same edge seen from the other side, or -1. */
    int[] twin = new int[6144];

    /** Number of the segment that lies on the edge, or -1. */
    int[] seg = new int[6144];

    boolean[] inside = new boolean[2048];
    int triangleCount;

    /** A half-edge that starts from a vertex. */
    private int[] from = new int[1024];

    /** Triangles changed since the list was last emptied; may hold one twice. */
    int[] touched = new int[256];

    int touchedCount;

    private int[] stack = new int[256];
    private int stackSize;

    /** Starts with a box well around everything. */
    Triangulation(Box box) {
        double margin = Math.max(box.right() - box.left(), box.rear() - box.front());
        addVertex(box.left() - margin, box.front() - margin);
        addVertex(box.right() + margin, box.front() - margin);
        addVertex(box.right() + margin, box.rear() + margin);
        addVertex(box.left() - margin, box.rear() + margin);
        int t = newTriangle();
        int u = newTriangle();
        set(t, 0, 1, 2);
        set(u, 0, 2, 3);
        link(2, 3);
    }

    static int next(int h) {
        return h % 3 == 2 ? h - 2 : h + 1;
    }

    static int prev(int h) {
        return h % 3 == 0 ? h + 2 : h - 1;
    }

    int dest(int h) {
        return org[next(h)];
    }

    int apex(int h) {
        return org[prev(h)];
    }

    double turn(int a, int b, int c) {
        return Predicates.turn(x[a], y[a], x[b], y[b], x[c], y[c]);
    }

    int addVertex(double px, double py) {
        if (vertexCount == x.length) {
            x = Arrays.copyOf(x, 2 * vertexCount);
            y = Arrays.copyOf(y, 2 * vertexCount);
            from = Arrays.copyOf(from, 2 * vertexCount);
        }
        x[vertexCount] = px;
        y[vertexCount] = py;
        return vertexCount++;
    }

    private int newTriangle() {
        if (triangleCount == inside.length) {
            inside = Arrays.copyOf(inside, 2 * triangleCount);
            org = Arrays.copyOf(org, 6 * triangleCount);
            twin = Arrays.copyOf(twin, 6 * triangleCount);
            seg = Arrays.copyOf(seg, 6 * triangleCount);
        }
        Arrays.fill(twin, 3 * triangleCount, 3 * triangleCount + 3, -1);
        Arrays.fill(seg, 3 * triangleCount, 3 * triangleCount + 3, -1);
        return triangleCount++;
    }

    private void set(int t, int a, int b, int c) {
        org[3 * t] = a;
        org[3 * t + 1] = b;
        org[3 * t + 2] = c;
        from[a] = 3 * t;
        from[b] = 3 * t + 1;
        from[c] = 3 * t + 2;
        touch(t);
    }

    private void touch(int t) {
        if (touchedCount == touched.length) {
            touched = Arrays.copyOf(touched, 2 * touchedCount);
        }
        touched[touchedCount++] = t;
    }

    private void link(int h, int g) {
        twin[h] = g;
        if (g >= 0) {
            twin[g] = h;
        }
    }

    private void link(int h, int g, int segment) {
        link(h, g);
        mark(h, segment);
    }

    /** Lays a segment on an edge, both sides. */
    void mark(int h, int segment) {
        seg[h] = segment;
        if (twin[h] >= 0) {
            seg[twin[h]] = segment;
        }
    }

    /** Returns the half-edge from a to b, or -1. */
    int edge(int a, int b) {
        int start = from[a];
        int h = start;
        do {
            if (dest(h) == b) {
                return h;
            }
            h = twin[prev(h)];
        } while (h >= 0 && h != start);
        if (h < 0) {
            for (h = twin[start]; h >= 0; h = twin[next(h)]) {
                if (dest(next(h)) == b) {
                    return next(h);
                }
            }
        }
        return -1;
    }

    /** Returns a half-edge that starts from a vertex. */
    int from(int vertex) {
        return from[vertex];
    }

    /** Walks to the triangle that holds a place. */
    int locate(double px, double py, int start) {
        int t = start;
        int came = -1;
        for (int steps = 0; steps < 4 * triangleCount + 16; steps++) {
            int out = -1;
            for (int k = 0; k < 3 && out < 0; k++) {
                int h = 3 * t + (k + steps) % 3;
                if (h != came && beyond(h, px, py)) {
                    out = h;
                }
            }
            if (out < 0) {
                return t;
            }
            if (twin[out] < 0) {
                throw new IllegalStateException("a place outside the box");
            }
            came = twin[out];
            t = came / 3;
        }
        throw new IllegalStateException("a walk that goes round and round");
    }

    boolean beyond(int h, double px, double py) {
        return turnAt(h, px, py) < 0;
    }

    /** Puts a vertex into a triangle that holds it, or on its edge, and flips; no edge marked. */
    int insert(double px, double py, int t) {
        for (int h = 3 * t; h < 3 * t + 3; h++) {
            if (turnAt(h, px, py) == 0) {
                int m = addVertex(px, py);
                splitEdge(h, m, seg[h], seg[h]);
                legalize();
                return m;
            }
        }
        int m = addVertex(px, py);
        int h = 3 * t;
        int a = org[h];
        int b = org[h + 1];
        int c = org[h + 2];
        int t1 = newTriangle();
        int t2 = newTriangle();
        inside[t1] = inside[t];
        inside[t2] = inside[t];
        int g1 = twin[h + 1];
        int s1 = seg[h + 1];
        int g2 = twin[h + 2];
        int s2 = seg[h + 2];
        set(t1, b, c, m);
        set(t2, c, a, m);
        org[h + 2] = m;
        set(t, a, b, m);
        link(3 * t1, g1, s1);
        link(3 * t2, g2, s2);
        link(h + 1, 3 * t1 + 2, -1);
        link(3 * t1 + 1, 3 * t2 + 2, -1);
        link(3 * t2 + 1, h + 2, -1);
        push(h);
        push(3 * t1);
        push(3 * t2);
        legalize();
        return m;
    }

    /** Whether an edge may be split at m without turning a triangle over. */
    boolean canSplit(int h, double px, double py) {
        return clear(h, px, py) && clear(twin[h], px, py);
    }

    private boolean clear(int h, double px, double py) {
        return turnAt(next(h), px, py) > 0 && turnAt(prev(h), px, py) > 0;
    }

    private double turnAt(int h, double px, double py) {
        int a = org[h];
        int b = dest(h);
        return Predicates.turn(x[a], y[a], x[b], y[b], px, py);
    }

    /** Splits an edge; m may lie a little beside it. To be followed by {@link #legalize}. */
    void splitEdge(int h, int m, int firstSegment, int secondSegment) {
        int g = twin[h];
        int a = org[h];
        int b = org[g];
        int c = apex(h);
        int d = apex(g);
        int bc = twin[next(h)];
        int bcSeg = seg[next(h)];
        int ca = twin[prev(h)];
        int caSeg = seg[prev(h)];
        int ad = twin[next(g)];
        int adSeg = seg[next(g)];
        int db = twin[prev(g)];
        int dbSeg = seg[prev(g)];
        int t = h / 3;
        int u = g / 3;
        int t2 = newTriangle();
        int u2 = newTriangle();
        inside[t2] = inside[t];
        inside[u2] = inside[u];
        set(t, a, m, c);
        set(t2, m, b, c);
        set(u, b, m, d);
        set(u2, m, a, d);
        link(3 * t, 3 * u2, firstSegment);
        link(3 * t2, 3 * u, secondSegment);
        link(3 * t + 1, 3 * t2 + 2, -1);
        link(3 * u + 1, 3 * u2 + 2, -1);
        link(3 * t + 2, ca, caSeg);
        link(3 * t2 + 1, bc, bcSeg);
        link(3 * u + 2, db, dbSeg);
        link(3 * u2 + 1, ad, adSeg);
        push(3 * t + 2);
        push(3 * t2 + 1);
        push(3 * u + 2);
        push(3 * u2 + 1);
    }

    void push(int h) {
        if (stackSize == stack.length) {
            stack = Arrays.copyOf(stack, 2 * stackSize);
        }
        stack[stackSize++] = h;
    }

    /** Flips what is pushed until every unmarked edge is Delaunay. */
    void legalize() {
        while (stackSize > 0) {
            int h = stack[--stackSize];
            int g = twin[h];
            if (g < 0 || seg[h] >= 0) {
                continue;
            }
            int a = org[h];
            int b = org[g];
            int c = apex(h);
            int d = apex(g);
            if (Predicates.surelyInCircle(x[a], y[a], x[b], y[b], x[c], y[c], x[d], y[d])) {
                flip(h);
                push(next(h));
                push(prev(h));
                push(next(g));
                push(prev(g));
            }
        }
    }

    /** Turns an edge a-b into d-c; h and its twin keep their numbers. */
    void flip(int h) {
        int g = twin[h];
        int a = org[h];
        int b = org[g];
        int c = apex(h);
        int d = apex(g);
        int bc = twin[next(h)];
        int bcSeg = seg[next(h)];
        int ca = twin[prev(h)];
        int caSeg = seg[prev(h)];
        int ad = twin[next(g)];
        int adSeg = seg[next(g)];
        int db = twin[prev(g)];
        int dbSeg = seg[prev(g)];
        org[h] = d;
        org[next(h)] = c;
        org[prev(h)] = a;
        org[g] = c;
        org[next(g)] = d;
        org[prev(g)] = b;
        link(next(h), ca, caSeg);
        link(prev(h), ad, adSeg);
        link(next(g), db, dbSeg);
        link(prev(g), bc, bcSeg);
        from[a] = prev(h);
        from[b] = prev(g);
        from[c] = g;
        from[d] = h;
        touch(h / 3);
        touch(g / 3);
    }
}
