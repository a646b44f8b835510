package org.coachskin.shell;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The triangles of a panel and how they hang together. Corners of a triangle are listed by rising
 * vertex number, so every edge runs the same way in both of its triangles. Immutable.
 */
final class Grid {

    final int vertices;
    final double[] x;
    final double[] y;

    /** Three a triangle. */
    final int[] corners;

    /** Edges 0-1, 1-2 and 0-2 of each triangle. */
    final int[] sides;

    /** Two vertices an edge, the lower number first. */
    final int[] ends;

    /** Two triangles an edge; -1 where there is none. */
    final int[] neighbours;

    final Element[] elements;

    /** Arc of each edge, from its lower vertex to its higher; null where straight. */
    final Element.@Nullable Arc[] arcs;

    /** The polynomial that follows each arc; null where straight. */
    private final @Nullable Bulge[] bulges;

    private final Lookup lookup;

    /**
     * @param triangles three vertices each, in any order
     * @param arcs by the key of {@link #key}
     * @param order of the polynomials that follow the arcs
     */
    Grid(double[] x, double[] y, int[] triangles, Map<Long, Element.Arc> arcs, int order) {
        this.x = x;
        this.y = y;
        vertices = x.length;
        int count = triangles.length / 3;
        corners = triangles.clone();
        sides = new int[3 * count];
        Map<Long, Integer> known = new HashMap<>();
        int[] firstEnds = new int[6 * count];
        int[] firstNeighbours = new int[6 * count];
        Arrays.fill(firstNeighbours, -1);
        for (int t = 0; t < count; t++) {
            Arrays.sort(corners, 3 * t, 3 * t + 3);
            for (int s = 0; s < 3; s++) {
                int a = corners[3 * t + (s == 1 ? 1 : 0)];
                int b = corners[3 * t + (s == 0 ? 1 : 2)];
                int edge = known.computeIfAbsent(key(a, b), k -> known.size());
                sides[3 * t + s] = edge;
                firstEnds[2 * edge] = a;
                firstEnds[2 * edge + 1] = b;
                firstNeighbours[2 * edge + (firstNeighbours[2 * edge] < 0 ? 0 : 1)] = t;
            }
        }
        ends = Arrays.copyOf(firstEnds, 2 * known.size());
        neighbours = Arrays.copyOf(firstNeighbours, 2 * known.size());
        this.arcs = new Element.Arc[known.size()];
        bulges = new Bulge[known.size()];
        for (int e = 0; e < known.size(); e++) {
            Element.Arc arc = arcs.get(key(ends[2 * e], ends[2 * e + 1]));
            this.arcs[e] = arc;
            bulges[e] = arc == null ? null : new Bulge(arc, order);
        }
        elements = new Element[count];
        for (int t = 0; t < count; t++) {
            elements[t] = element(t);
        }
        lookup = new Lookup(this);
    }

    /** Returns the key of the edge between two vertices, the lower number first. */
    static long key(int a, int b) {
        return ((long) Math.min(a, b) << 32) | Math.max(a, b);
    }

    private Element element(int t) {
        double[] px = new double[3];
        double[] py = new double[3];
        @Nullable Bulge[] bent = new Bulge[3];
        for (int i = 0; i < 3; i++) {
            px[i] = x[corners[3 * t + i]];
            py[i] = y[corners[3 * t + i]];
            bent[i] = bulges[sides[3 * t + i]];
        }
        return new Element(px, py, bent);
    }

    int triangles() {
        return elements.length;
    }

    /** Returns the mean of a triangle's corners. */
    double[] centre(int t) {
        double cx = 0;
        double cy = 0;
        for (int i = 0; i < 3; i++) {
            cx += x[corners[3 * t + i]] / 3;
            cy += y[corners[3 * t + i]] / 3;
        }
        return new double[] {cx, cy};
    }

    int edges() {
        return arcs.length;
    }

    /** Returns whether only one triangle has this edge. */
    boolean onRim(int edge) {
        return neighbours[2 * edge + 1] < 0;
    }

    /**
     * Returns the triangle that holds a place, or -1.
     *
     * @param local its reference coordinates there; overwritten
     */
    int locate(double px, double py, double[] local) {
        return lookup.find(px, py, local);
    }

    /**
     * Returns the place on an edge, and the way along it per unit of {@code s}: x, y, dx, dy.
     *
     * @param s 0 at the lower vertex, 1 at the higher
     */
    double[] onEdge(int edge, double s) {
        int a = ends[2 * edge];
        int b = ends[2 * edge + 1];
        double dx = x[b] - x[a];
        double dy = y[b] - y[a];
        double[] out = {x[a] + s * dx, y[a] + s * dy, dx, dy};
        Bulge bulge = bulges[edge];
        for (int axis = 0; bulge != null && axis < 2; axis++) {
            double[] k = bulge.at(axis, 2 * s - 1);
            out[axis] += s * (1 - s) * k[0];
            out[2 + axis] += (1 - 2 * s) * k[0] + 2 * s * (1 - s) * k[1];
        }
        return out;
    }
}
