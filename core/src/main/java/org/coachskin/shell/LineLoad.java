package org.coachskin.shell;

import java.util.NavigableSet;
import java.util.TreeSet;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.coachskin.panel.Load;

/** A force along a line, as forces on the unknowns of a model. */
final class LineLoad {

    /** What is nearer to a line lies on it, and what is shorter is nothing, as a share of it. */
    private static final double SAME = 1e-9;

    private LineLoad() {}

    /** Adds the work of every unknown under the line; triangle by triangle, so none is rounded. */
    static void add(Model model, Load.Line line, double[] load) {
        GaussIntegrator gauss = ReferenceTriangle.line(model.reference.basis.order + 1);
        double dx = line.x2() - line.x1();
        double dy = line.y2() - line.y1();
        double[] local = new double[2];
        double from = 0;
        for (double to : cuts(model.grid, line)) {
            for (int q = 0; q < gauss.getNumberOfPoints(); q++) {
                double s = from + gauss.getPoint(q) * (to - from);
                double x = line.x1() + s * dx;
                double y = line.y1() + s * dy;
                int t = model.grid.locate(x, y, local);
                if (t < 0) {
                    throw new IllegalArgumentException(
                            "a load along a line leaves the panel at " + x + ", " + y + " m");
                }
                double force = line.force() * gauss.getWeight(q) * (to - from) * line.length();
                model.addPoint(t, local, Loading.outward(-force), load);
            }
            from = to;
        }
    }

    /** Returns where edges of triangles cut a line, as shares of its length upwards, and 1. */
    private static NavigableSet<Double> cuts(Grid grid, Load.Line line) {
        double length = line.length();
        double dx = (line.x2() - line.x1()) / length;
        double dy = (line.y2() - line.y1()) / length;
        NavigableSet<Double> cuts = new TreeSet<>();
        double[] along = new double[grid.vertices];
        double[] off = new double[grid.vertices];
        for (int v = 0; v < grid.vertices; v++) {
            double px = grid.x[v] - line.x1();
            double py = grid.y[v] - line.y1();
            along[v] = (px * dx + py * dy) / length;
            off[v] = (px * dy - py * dx) / length;
        }
        for (int e = 0; e < grid.edges(); e++) {
            int a = grid.ends[2 * e];
            int b = grid.ends[2 * e + 1];
            if (Math.abs(off[a]) < SAME) {
                enter(cuts, along[a]);
            }
            if (Math.abs(off[b]) < SAME) {
                enter(cuts, along[b]);
            }
            if (off[a] * off[b] < 0) {
                double s = off[a] / (off[a] - off[b]);
                enter(cuts, along[a] + s * (along[b] - along[a]));
            }
        }
        cuts.add(1.0);
        return cuts;
    }

    private static void enter(NavigableSet<Double> cuts, double at) {
        if (at > SAME && at < 1 - SAME) {
            cuts.add(at);
        }
    }
}
