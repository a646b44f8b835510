package org.coachskin.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Makes four triangles of each: new vertices in the middle of its sides, on the arc where round.
 */
final class Quartering {

    private Quartering() {}

    static Mesh of(Mesh mesh) {
        int old = mesh.vertices();
        double[] x = Arrays.copyOf(mesh.copyX(), old + mesh.edges());
        double[] y = Arrays.copyOf(mesh.copyY(), old + mesh.edges());
        List<Trace> traces = new ArrayList<>();
        for (int e = 0; e < mesh.edges(); e++) {
            int a = mesh.start(e);
            int b = mesh.end(e);
            Curve.Arc arc = mesh.arc(e);
            Point mid = arc == null ? new Point((x[a] + x[b]) / 2, (y[a] + y[b]) / 2) : arc.at(0.5);
            x[old + e] = mid.x();
            y[old + e] = mid.y();
            if (!mesh.curves(e).isEmpty()) {
                Curve.Arc first = arc == null ? null : arc.part(0, 0.5);
                Curve.Arc second = arc == null ? null : arc.part(0.5, 1);
                boolean rim = mesh.rim(e);
                traces.add(new Trace(a, old + e, first, mesh.curves(e), rim));
                traces.add(new Trace(old + e, b, second, mesh.curves(e), rim));
            }
        }
        int[] corners = new int[12 * mesh.triangles()];
        int at = 0;
        for (int t = 0; t < mesh.triangles(); t++) {
            int[] mid = new int[3];
            for (int i = 0; i < 3; i++) {
                mid[i] = old + mesh.side(t, i);
            }
            for (int i = 0; i < 3; i++) {
                corners[at++] = mesh.corner(t, i);
                corners[at++] = mid[i];
                corners[at++] = mid[(i + 2) % 3];
            }
            for (int i = 0; i < 3; i++) {
                corners[at++] = mid[i];
            }
        }
        return new Mesh(x, y, corners, traces, mesh.origin());
    }
}
