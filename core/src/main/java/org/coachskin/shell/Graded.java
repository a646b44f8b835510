package org.coachskin.shell;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.coachskin.panel.Shape;

/**
 * Triangles made small towards places where the theory has no limit. Around such a place every
 * triangle is cut near its corner there, a few times over, each time at the same share of what is
 * left; polynomials then lose no accuracy to it (Babuska and Guo, Comput. Mech. 1, 1986; from
 * memory).
 */
final class Graded {

    /** Where edges are cut, as a share of them from the place. */
    private static final double SHARE = 0.2;

    /** How many times over. */
    private static final int TIMES = 2;

    /** A vertex stands for a place that is as near as this [m]. */
    private static final double SAME = 1e-6;

    private final Net net;
    private final Set<Integer> marked;

    /** Vertex near the first end of an edge, by both its ends. */
    private final Map<List<Integer>, Integer> cuts = new HashMap<>();

    private Graded(Net net, Set<Integer> marked) {
        this.net = net;
        this.marked = marked;
    }

    static void towards(Net net, List<Shape.Point> places) {
        Set<Integer> marked = new TreeSet<>();
        for (int v = 0; v < net.places.size(); v++) {
            double[] p = net.places.get(v);
            for (Shape.Point place : places) {
                if (Math.hypot(p[0] - place.x(), p[1] - place.y()) < SAME) {
                    marked.add(v);
                }
            }
        }
        for (int i = 0; i < TIMES && !marked.isEmpty(); i++) {
            new Graded(net, marked).cut();
        }
    }

    private void cut() {
        List<int[]> all = List.copyOf(net.triangles);
        net.triangles.clear();
        for (int[] v : all) {
            int count = 0;
            int first = 0;
            for (int s = 0; s < 3; s++) {
                boolean leads = marked.contains(v[s]) && !marked.contains(v[(s + 2) % 3]);
                count += marked.contains(v[s]) ? 1 : 0;
                first = leads ? s : first;
            }
            int a = v[first];
            int b = v[(first + 1) % 3];
            int c = v[(first + 2) % 3];
            switch (count) {
                case 0 -> add(a, b, c);
                case 1 -> cutOne(a, b, c);
                case 2 -> cutTwo(a, b, c);
                default -> {
                    int m = net.middle(v);
                    cutTwo(a, b, m);
                    cutTwo(b, c, m);
                    cutTwo(c, a, m);
                }
            }
        }
    }

    private void cutOne(int a, int b, int c) {
        int p = near(a, b);
        int q = near(a, c);
        add(a, p, q);
        addQuad(p, b, c, q);
    }

    private void cutTwo(int a, int b, int c) {
        int p = near(a, c);
        int q = near(b, c);
        int r = near(a, b);
        int s = near(b, a);
        add(p, q, c);
        add(a, r, p);
        add(b, q, s);
        addQuad(r, s, q, p);
    }

    /** Adds a quadrangle, cut along its shorter diagonal. */
    private void addQuad(int a, int b, int c, int d) {
        if (net.length(a, c) <= net.length(b, d)) {
            add(a, b, c);
            add(a, c, d);
        } else {
            add(a, b, d);
            add(b, c, d);
        }
    }

    private void add(int a, int b, int c) {
        net.triangles.add(new int[] {a, b, c});
    }

    /** Returns the cut in an edge near its end {@code a}. */
    private int near(int a, int b) {
        if (!cuts.containsKey(List.of(a, b))) {
            if (marked.contains(b)) {
                int[] two = net.cut(a, b, SHARE, 1 - SHARE);
                cuts.put(List.of(a, b), two[0]);
                cuts.put(List.of(b, a), two[1]);
            } else {
                cuts.put(List.of(a, b), net.cut(a, b, SHARE)[0]);
            }
        }
        return Objects.requireNonNull(cuts.get(List.of(a, b)));
    }
}
