package org.coachskin.shell;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.coachskin.mesh.Curve;
import org.coachskin.mesh.Mesh;

/** Triangles that are still being cut, on their way from a mesh to a {@link Grid}. */
final class Net {

    final List<double[]> places = new ArrayList<>();

    /** Three vertices each. */
    final List<int[]> triangles = new ArrayList<>();

    /** By the key of {@link Grid#key}, from the lower vertex to the higher. */
    final Map<Long, Element.Arc> arcs = new HashMap<>();

    static Net of(Mesh mesh) {
        Net net = new Net();
        for (int v = 0; v < mesh.vertices(); v++) {
            net.places.add(new double[] {mesh.x(v), mesh.y(v)});
        }
        for (int t = 0; t < mesh.triangles(); t++) {
            net.triangles.add(new int[] {mesh.corner(t, 0), mesh.corner(t, 1), mesh.corner(t, 2)});
        }
        for (int e = 0; e < mesh.edges(); e++) {
            Curve.Arc arc = mesh.arc(e);
            if (arc != null) {
                net.bend(
                        mesh.start(e),
                        mesh.end(e),
                        new Element.Arc(
                                arc.centreX(),
                                arc.centreY(),
                                arc.radius(),
                                arc.startAngle(),
                                arc.startAngle() + arc.sweep()));
            }
        }
        return net;
    }

    /** Lays the edge from {@code a} to {@code b} on an arc. */
    private void bend(int a, int b, Element.Arc arc) {
        arcs.put(Grid.key(a, b), a < b ? arc : arc.reversed());
    }

    /**
     * Cuts an edge.
     *
     * @param shares of the way from {@code a} to {@code b}, rising
     * @return the vertices there
     */
    int[] cut(int a, int b, double... shares) {
        Element.Arc arc = arcs.get(Grid.key(a, b));
        int[] vertices = new int[shares.length];
        for (int i = 0; i < shares.length; i++) {
            vertices[i] = places.size();
            places.add(
                    arc == null ? between(a, b, shares[i]) : arc.at(angle(arc, a < b, shares[i])));
        }
        for (int i = 0; arc != null && i <= shares.length; i++) {
            double from = angle(arc, a < b, i == 0 ? 0 : shares[i - 1]);
            double to = angle(arc, a < b, i == shares.length ? 1 : shares[i]);
            int start = i == 0 ? a : vertices[i - 1];
            int end = i == shares.length ? b : vertices[i];
            bend(start, end, arc.part(from, to));
        }
        return vertices;
    }

    private static double angle(Element.Arc arc, boolean up, double share) {
        double along = up ? share : 1 - share;
        return arc.start() + along * (arc.end() - arc.start());
    }

    private double[] between(int a, int b, double share) {
        double[] p = places.get(a);
        double[] q = places.get(b);
        return new double[] {p[0] + share * (q[0] - p[0]), p[1] + share * (q[1] - p[1])};
    }

    /** Adds a vertex in the middle of a triangle. */
    int middle(int[] triangle) {
        places.add(centre(triangle));
        return places.size() - 1;
    }

    /** Returns the mean of a triangle's corners. */
    double[] centre(int[] triangle) {
        double x = 0;
        double y = 0;
        for (int v : triangle) {
            x += places.get(v)[0] / 3;
            y += places.get(v)[1] / 3;
        }
        return new double[] {x, y};
    }

    double length(int a, int b) {
        double[] p = places.get(a);
        double[] q = places.get(b);
        return Math.hypot(q[0] - p[0], q[1] - p[1]);
    }

    /** Returns these triangles for polynomials of one order. */
    Grid grid(int order) {
        double[] x = places.stream().mapToDouble(p -> p[0]).toArray();
        double[] y = places.stream().mapToDouble(p -> p[1]).toArray();
        int[] corners = triangles.stream().flatMapToInt(java.util.Arrays::stream).toArray();
        return new Grid(x, y, corners, arcs, order);
    }
}
