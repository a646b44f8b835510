package org.coachskin.shell;

import java.util.List;
import org.coachskin.panel.Panel;

/**
 * What held edges do to a panel, by the forces that a panel which nothing holds would need to
 * follow the same fields.
 */
final class Reactions {

    /** X, Y, Z, then moments about the x- and y-axis and the upright axis through left front. */
    final double[] total = new double[6];

    /** Largest force on a function that nothing holds. */
    double loose;

    /**
     * @param panel of {@code shell}, with flat crown
     * @param load as {@link ShellPanel} adds it
     */
    Reactions(ShellPanel shell, Panel panel, double[] solution, double[] load) {
        Grid grid = shell.model.grid;
        int order = shell.model.reference.basis.order;
        Fields free = new Fields(panel, grid, order);
        Unknowns held = shell.model.unknowns;
        Unknowns all = free.model.unknowns;
        double[] x = new double[all.count];
        double[] f = new double[all.count];
        double[] fields = new double[Section.FIELDS];
        for (int i = 0; i < functions(grid, shell.model.reference.basis); i++) {
            held.fields(solution, i, fields, 0);
            spread(all, i, fields, x);
        }
        free.matrix.multiply(x, f);
        for (int i = 0; i < f.length; i++) {
            f[i] -= load[i];
        }
        List<double[]> moves =
                List.of(
                        free.of((px, py) -> new double[] {1, 0, 0, 0, 0, 0, 0}),
                        free.of((px, py) -> new double[] {0, 1, 0, 0, 0, 0, 0}),
                        free.of((px, py) -> new double[] {0, 0, 1, 0, 0, 0, 0}),
                        free.of((px, py) -> new double[] {0, 0, py, 0, -1, 0, -1}),
                        free.of((px, py) -> new double[] {0, 0, -px, 1, 0, 1, 0}),
                        free.of((px, py) -> new double[] {-py, px, 0, 0, 0, 0, 0}));
        for (int i = 0; i < functions(grid, shell.model.reference.basis); i++) {
            boolean tied = held.width(i) < all.width(i);
            for (int k = all.start(i); k < all.start(i) + all.width(i); k++) {
                if (!tied) {
                    loose = Math.max(loose, Math.abs(f[k]));
                }
                for (int m = 0; tied && m < 6; m++) {
                    total[m] += f[k] * moves.get(m)[k];
                }
            }
        }
    }

    private static int functions(Grid grid, Basis basis) {
        return grid.vertices + grid.edges() * basis.perEdge + grid.triangles() * basis.bubbles;
    }

    private static void spread(Unknowns all, int function, double[] fields, double[] x) {
        for (int k = 0; k < all.width(function); k++) {
            double sum = 0;
            for (int field = 0; field < Section.FIELDS; field++) {
                sum += all.share(function, k, field) * fields[field];
            }
            x[all.start(function) + k] = sum;
        }
    }
}
