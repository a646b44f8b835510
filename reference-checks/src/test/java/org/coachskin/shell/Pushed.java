package org.coachskin.shell;

import java.util.List;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.coachskin.laminate.Triple;
import org.coachskin.panel.Panel;

/** Buckling in first-order theory under forces in the plane, which the library has no load for. */
public final class Pushed {

    private Pushed() {}

    /**
     * Returns how many times the forces {@code n} per width on its whole rim a panel takes, lowest
     * first; tension is positive. Its membrane forces are those of the solution.
     */
    public static List<Double> onItsRim(Panel panel, int order, Triple n, int count) {
        ShellPanel shell = shell(panel, order);
        double[] load = new double[shell.model.unknowns.count];
        for (Rim.Piece piece : shell.rim) {
            add(shell, piece, n, load);
        }
        double[][] free = new double[shell.model.grid.triangles()][];
        return factors(shell, new ShellResponse(shell, shell.linear(load), free), count);
    }

    /** Returns the same for a panel in which {@code n} is even throughout. */
    public static List<Double> evenly(Panel panel, int order, Triple n, int count) {
        ShellPanel shell = shell(panel, order);
        double[][] free = new double[shell.model.grid.triangles()][];
        for (int t = 0; t < free.length; t++) {
            // A stretch the panel would have without force: it is not there, so it is pulled by n.
            free[t] = new double[Section.STRAINS];
            Triple e = shell.model.section(t).layered.a().inverse().times(n);
            free[t][0] = -e.x();
            free[t][1] = -e.y();
            free[t][2] = -e.xy();
        }
        double[] still = new double[shell.model.unknowns.count];
        return factors(shell, new ShellResponse(shell, still, free), count);
    }

    private static ShellPanel shell(Panel panel, int order) {
        Grid grid = Drawn.grid(Drawn.mesh(panel, List.of()), order);
        return new ShellPanel(panel, grid, order, true);
    }

    private static List<Double> factors(ShellPanel shell, ShellResponse pushed, int count) {
        double[][] free = new double[shell.model.grid.triangles()][];
        ShellResponse rest = new ShellResponse(shell, new double[shell.model.unknowns.count], free);
        return Eigenshapes.buckling(shell, rest, pushed, count).stream()
                .map(Buckling::factor)
                .toList();
    }

    private static void add(ShellPanel shell, Rim.Piece piece, Triple n, double[] load) {
        double x = n.x() * piece.normalX() + n.xy() * piece.normalY();
        double y = n.xy() * piece.normalX() + n.y() * piece.normalY();
        Unknowns unknowns = shell.model.unknowns;
        Basis basis = shell.model.reference.basis;
        double[] turn = shell.model.section(piece.triangle()).turn(0);
        double[] force = {x, y, 0, turn[0] * x, turn[0] * y, turn[1] * x, turn[1] * y};
        int[] functions = unknowns.ofEdge(shell.model.grid, piece.edge());
        GaussIntegrator gauss = ReferenceTriangle.line(basis.order + 1);
        for (int q = 0; q < basis.order + 1; q++) {
            double[] trace = basis.onEdge(gauss.getPoint(q));
            double[] way = shell.model.grid.onEdge(piece.edge(), gauss.getPoint(q));
            double length = gauss.getWeight(q) * Math.hypot(way[2], way[3]);
            for (int i = 0; i < trace.length; i++) {
                int f = functions[i];
                for (int k = 0; k < unknowns.width(f); k++) {
                    double work = 0;
                    for (int field = 0; field < Section.FIELDS; field++) {
                        work += unknowns.share(f, k, field) * force[field];
                    }
                    load[unknowns.start(f) + k] += length * trace[i] * work;
                }
            }
        }
    }
}
