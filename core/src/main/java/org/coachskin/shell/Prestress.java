package org.coachskin.shell;

import org.coachskin.sparse.SymmetricMatrix;

/**
 * What the membrane forces N of a loaded panel add to its stiffness: their work on the slopes of
 * the deflection, half of N<sub>ab</sub> w<sub>,a</sub> w<sub>,b</sub> per area. Skins and foam
 * deflect alike, so the N of the whole stack counts, whatever surface it is taken about.
 */
final class Prestress {

    private static final int W = 2;

    /** Membrane forces this far below what they are the sum of are rounding. */
    private static final double ROUNDING = 1e-7;

    private final Model model;
    private final ReferenceTriangle reference;

    Prestress(Model model) {
        this.model = model;
        // N is of the order of the basis, the slopes of one less.
        Basis basis = model.reference.basis;
        reference = new ReferenceTriangle(basis, Math.max(2, basis.order - 2));
    }

    /**
     * Adds it to a matrix on the pattern of the panel.
     *
     * @param by factor; -1 for what compression takes
     * @return whether there is any membrane force
     */
    boolean add(double by, ShellResponse response, SymmetricMatrix matrix) {
        boolean any = false;
        for (int t = 0; t < model.grid.triangles(); t++) {
            double[] n = forces(t, response);
            if (n.length > 0) {
                matrix.add(t, matrix(t, by, n));
                any = true;
            }
        }
        return any;
    }

    /** Returns area times Nx, Ny, Nxy at every point of the rule; empty where all are rounding. */
    private double[] forces(int t, ShellResponse response) {
        double[] out = new double[3 * reference.points];
        boolean any = false;
        Element element = model.grid.elements[t];
        double[] local = new double[2];
        for (int q = 0; q < reference.points; q++) {
            local[0] = reference.xi[q];
            local[1] = reference.eta[q];
            double[] e = response.stretched(t, local);
            double[] rigidity = model.section(t).rigidity;
            double area = element.area(reference, q);
            for (int r = 0; r < 3; r++) {
                double n = 0;
                double size = 0;
                for (int i = 0; i < Section.STRAINS; i++) {
                    double part = rigidity[r * Section.STRAINS + i] * e[i];
                    n += part;
                    size += Math.abs(part);
                }
                if (Math.abs(n) > ROUNDING * size) {
                    out[3 * q + r] = area * n;
                    any = true;
                }
            }
        }
        return any ? out : new double[0];
    }

    private double[] matrix(int t, double by, double[] n) {
        int size = reference.basis.size;
        int[] functions = model.unknowns.functions(model.grid, t);
        double[] pairs = new double[size * size];
        double[] g = new double[3 * size];
        for (int q = 0; q < reference.points; q++) {
            model.grid.elements[t].gradients(reference, q, g);
            double nx = by * n[3 * q];
            double ny = by * n[3 * q + 1];
            double nxy = by * n[3 * q + 2];
            for (int m = 0; m < size; m++) {
                double wx = g[size + m];
                double wy = g[2 * size + m];
                double fx = nx * wx + nxy * wy;
                double fy = nxy * wx + ny * wy;
                for (int k = 0; k <= m; k++) {
                    pairs[m * size + k] += fx * g[size + k] + fy * g[2 * size + k];
                }
            }
        }
        return onUnknowns(functions, pairs);
    }

    /** Returns the matrix of a triangle over its unknowns from that of the deflection alone. */
    private double[] onUnknowns(int[] functions, double[] pairs) {
        Unknowns unknowns = model.unknowns;
        int size = functions.length;
        int[] start = new int[size + 1];
        for (int m = 0; m < size; m++) {
            start[m + 1] = start[m] + unknowns.width(functions[m]);
        }
        int all = start[size];
        double[] out = new double[all * all];
        for (int m = 0; m < size; m++) {
            for (int i = start[m]; i < start[m + 1]; i++) {
                double row = unknowns.share(functions[m], i - start[m], W);
                for (int k = 0; row != 0 && k <= m; k++) {
                    for (int j = start[k]; j < start[k + 1]; j++) {
                        double column = unknowns.share(functions[k], j - start[k], W);
                        out[i * all + j] = row * column * pairs[m * size + k];
                    }
                }
            }
        }
        return out;
    }
}
