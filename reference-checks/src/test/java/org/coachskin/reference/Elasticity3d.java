package org.coachskin.reference;

import java.util.ArrayList;
import java.util.List;

/**
 * Exact 3-D elasticity of a simply supported rectangular stack, wave by wave; the witness of every
 * plate theory.
 *
 * <p>With u = U cos &alpha;x sin &beta;y, v = V sin cos, w = W sin sin in each layer the equations
 * become ordinary ones in z. They are solved by elements of the eighth degree through the thickness
 * (nodes at Gauss-Lobatto points), short against the wave, so the error is that of rounding. Shares
 * no code with the library.
 */
final class Elasticity3d {

    private static final int DEGREE = 8;

    /** Longest element, as a multiple of the reciprocal wave number. */
    private static final double REACH = 3;

    private static final double[] NODE = lobatto();

    private static final double[] WEIGHT = weights();

    private static final double[][] SLOPE = slopes();

    /**
     * A layer, bottom to top, orthotropic in panel axes; stiffnesses in Pa.
     *
     * @param t thickness [m]
     */
    record Solid(
            double t,
            double c11,
            double c12,
            double c13,
            double c22,
            double c23,
            double c33,
            double c44,
            double c55,
            double c66) {

        /** From engineering constants. */
        static Solid of(
                double t,
                double e1,
                double e2,
                double e3,
                double nu12,
                double nu13,
                double nu23,
                double g12,
                double g13,
                double g23) {
            double s11 = 1 / e1;
            double s22 = 1 / e2;
            double s33 = 1 / e3;
            double s12 = -nu12 / e1;
            double s13 = -nu13 / e1;
            double s23 = -nu23 / e2;
            double det =
                    s11 * (s22 * s33 - s23 * s23)
                            - s12 * (s12 * s33 - s23 * s13)
                            + s13 * (s12 * s23 - s22 * s13);
            return new Solid(
                    t,
                    (s22 * s33 - s23 * s23) / det,
                    (s13 * s23 - s12 * s33) / det,
                    (s12 * s23 - s22 * s13) / det,
                    (s11 * s33 - s13 * s13) / det,
                    (s12 * s13 - s11 * s23) / det,
                    (s11 * s22 - s12 * s12) / det,
                    g23,
                    g13,
                    g12);
        }
    }

    private final List<Solid> layers;

    Elasticity3d(List<Solid> layers) {
        this.layers = List.copyOf(layers);
    }

    /** A wave: displacements and stresses at the nodes, with their heights. */
    static final class Wave {
        /** Heights from the bottom, node by node; the two sides of an interface share a height. */
        final List<double[]> nodes = new ArrayList<>();

        /** Value of column {@code column} at the first or last node. */
        double first(int column) {
            return nodes.get(0)[column];
        }

        double last(int column) {
            return nodes.get(nodes.size() - 1)[column];
        }
    }

    /** Columns of a node: z, U, V, W, sx, sy, txy, txz, tyz, sz. */
    static final int Z = 0;

    static final int U = 1;
    static final int V = 2;
    static final int W = 3;
    static final int SX = 4;
    static final int SY = 5;
    static final int TXY = 6;
    static final int TXZ = 7;
    static final int TYZ = 8;
    static final int SZ = 9;

    /** Solves one wave under a unit pressure on the top, upward. */
    Wave wave(double alpha, double beta) {
        double k = Math.sqrt(alpha * alpha + beta * beta);
        List<Solid> elements = new ArrayList<>();
        for (Solid layer : layers) {
            int pieces = (int) Math.max(1, Math.ceil(layer.t * k / REACH));
            for (int i = 0; i < pieces; i++) {
                elements.add(
                        new Solid(
                                layer.t / pieces,
                                layer.c11,
                                layer.c12,
                                layer.c13,
                                layer.c22,
                                layer.c23,
                                layer.c33,
                                layer.c44,
                                layer.c55,
                                layer.c66));
            }
        }
        int n = 3 * (elements.size() * DEGREE + 1);
        int band = 3 * (DEGREE + 1);
        double[][] matrix = new double[n][band];
        for (int e = 0; e < elements.size(); e++) {
            assemble(elements.get(e), alpha, beta, matrix, 3 * e * DEGREE);
        }
        double[] x = new double[n];
        x[n - 1] = 1;
        solve(matrix, x, band);
        return recover(elements, alpha, beta, x);
    }

    /** Rows ex, ey, ez, gxy, gxz, gyz of node j at point i: coefficients of U, V, W. */
    private static void assemble(Solid s, double a, double b, double[][] matrix, int at) {
        int count = DEGREE + 1;
        for (int q = 0; q < count; q++) {
            double w = WEIGHT[q] * s.t / 2;
            for (int i = 0; i < count; i++) {
                double ni = i == q ? 1 : 0;
                double di = SLOPE[q][i] * 2 / s.t;
                for (int j = 0; j < count; j++) {
                    double nj = j == q ? 1 : 0;
                    double dj = SLOPE[q][j] * 2 / s.t;
                    add(
                            matrix,
                            at + 3 * i,
                            at + 3 * j,
                            w
                                    * (a * a * s.c11 * ni * nj
                                            + b * b * s.c66 * ni * nj
                                            + s.c55 * di * dj));
                    add(matrix, at + 3 * i, at + 3 * j + 1, w * a * b * (s.c12 + s.c66) * ni * nj);
                    add(
                            matrix,
                            at + 3 * i,
                            at + 3 * j + 2,
                            w * a * (s.c55 * di * nj - s.c13 * ni * dj));
                    add(matrix, at + 3 * i + 1, at + 3 * j, w * a * b * (s.c12 + s.c66) * ni * nj);
                    add(
                            matrix,
                            at + 3 * i + 1,
                            at + 3 * j + 1,
                            w
                                    * (b * b * s.c22 * ni * nj
                                            + a * a * s.c66 * ni * nj
                                            + s.c44 * di * dj));
                    add(
                            matrix,
                            at + 3 * i + 1,
                            at + 3 * j + 2,
                            w * b * (s.c44 * di * nj - s.c23 * ni * dj));
                    add(
                            matrix,
                            at + 3 * i + 2,
                            at + 3 * j,
                            w * a * (s.c55 * ni * dj - s.c13 * di * nj));
                    add(
                            matrix,
                            at + 3 * i + 2,
                            at + 3 * j + 1,
                            w * b * (s.c44 * ni * dj - s.c23 * di * nj));
                    add(
                            matrix,
                            at + 3 * i + 2,
                            at + 3 * j + 2,
                            w * (s.c33 * di * dj + (a * a * s.c55 + b * b * s.c44) * ni * nj));
                }
            }
        }
    }

    private static void add(double[][] matrix, int row, int column, double value) {
        if (column <= row) {
            matrix[row][row - column] += value;
        }
    }

    /** Banded Cholesky; matrix[i][d] is the entry of row i, d left of the diagonal. */
    private static void solve(double[][] matrix, double[] x, int band) {
        int n = x.length;
        for (int i = 0; i < n; i++) {
            for (int d = Math.min(band - 1, i); d >= 0; d--) {
                int j = i - d;
                double sum = matrix[i][d];
                for (int l = Math.max(0, Math.max(i - band + 1, j - band + 1)); l < j; l++) {
                    sum -= matrix[i][i - l] * matrix[j][j - l];
                }
                matrix[i][d] = d == 0 ? Math.sqrt(sum) : sum / matrix[j][0];
            }
            for (int d = 1; d <= Math.min(band - 1, i); d++) {
                x[i] -= matrix[i][d] * x[i - d];
            }
            x[i] /= matrix[i][0];
        }
        for (int i = n - 1; i >= 0; i--) {
            x[i] /= matrix[i][0];
            for (int d = 1; d <= Math.min(band - 1, i); d++) {
                x[i - d] -= matrix[i][d] * x[i];
            }
        }
    }

    private static Wave recover(List<Solid> elements, double a, double b, double[] x) {
        Wave wave = new Wave();
        double bottom = 0;
        for (int e = 0; e < elements.size(); e++) {
            Solid s = elements.get(e);
            for (int q = 0; q <= DEGREE; q++) {
                double du = 0;
                double dv = 0;
                double dw = 0;
                for (int j = 0; j <= DEGREE; j++) {
                    int at = 3 * (e * DEGREE + j);
                    double slope = SLOPE[q][j] * 2 / s.t;
                    du += slope * x[at];
                    dv += slope * x[at + 1];
                    dw += slope * x[at + 2];
                }
                int at = 3 * (e * DEGREE + q);
                double u = x[at];
                double v = x[at + 1];
                double w = x[at + 2];
                wave.nodes.add(
                        new double[] {
                            bottom + s.t * (1 + NODE[q]) / 2,
                            u,
                            v,
                            w,
                            -s.c11 * a * u - s.c12 * b * v + s.c13 * dw,
                            -s.c12 * a * u - s.c22 * b * v + s.c23 * dw,
                            s.c66 * (b * u + a * v),
                            s.c55 * (du + a * w),
                            s.c44 * (dv + b * w),
                            -s.c13 * a * u - s.c23 * b * v + s.c33 * dw
                        });
            }
            bottom += s.t;
        }
        return wave;
    }

    /**
     * Nodes of the Gauss-Lobatto rule: the ends and the roots of the slope of the Legendre
     * polynomial.
     */
    private static double[] lobatto() {
        double[] x = new double[DEGREE + 1];
        for (int i = 0; i <= DEGREE; i++) {
            double z = -Math.cos(Math.PI * i / DEGREE);
            for (int step = 0; step < 100 && i > 0 && i < DEGREE; step++) {
                double[] p = legendre(z);
                // Newton on (1 - z^2) P' by its relation to P_n and P_(n-1).
                z -= (z * p[0] - p[1]) / ((DEGREE + 1) * p[0]);
            }
            x[i] = i == 0 ? -1 : i == DEGREE ? 1 : z;
        }
        return x;
    }

    private static double[] legendre(double z) {
        double before = 1;
        double now = z;
        for (int k = 2; k <= DEGREE; k++) {
            double next = ((2 * k - 1) * z * now - (k - 1) * before) / k;
            before = now;
            now = next;
        }
        return new double[] {now, before};
    }

    private static double[] weights() {
        double[] w = new double[DEGREE + 1];
        for (int i = 0; i <= DEGREE; i++) {
            double p = legendre(NODE[i])[0];
            w[i] = 2 / (DEGREE * (DEGREE + 1) * p * p);
        }
        return w;
    }

    private static double[][] slopes() {
        double[][] d = new double[DEGREE + 1][DEGREE + 1];
        for (int i = 0; i <= DEGREE; i++) {
            for (int j = 0; j <= DEGREE; j++) {
                if (i != j) {
                    d[i][j] = legendre(NODE[i])[0] / legendre(NODE[j])[0] / (NODE[i] - NODE[j]);
                    d[i][i] -= d[i][j];
                }
            }
        }
        return d;
    }
}
