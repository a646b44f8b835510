package org.coachskin.reference;

import java.util.ArrayList;
import java.util.List;

/**
 * Exact 3-D elasticity of a simply supported rectangular stack, wave by wave; the witness of every
 * plate theory.
 *
 * <p>With u = U cos &alpha;x sin &beta;y, v = V sin cos, w = W sin sin in each layer the equations
 * become ordinary ones in z, on a curved panel with coefficients that vary. They are solved by
 * elements of the eighth degree through the thickness (nodes at Gauss-Lobatto points), short
 * against the wave, so the error is that of rounding. Shares no code with the library.
 */
final class Elasticity3d {

    private static final int DEGREE = GaussLobatto.DEGREE;

    /** Longest element, as a multiple of the reciprocal wave number. */
    private static final double REACH = 3;

    private static final double[] NODE = GaussLobatto.NODE;

    private static final double[] WEIGHT = GaussLobatto.WEIGHT;

    private static final double[][] SLOPE = GaussLobatto.SLOPE;

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
    private final double curvatureX;
    private final double curvatureY;
    private final double lowest;

    Elasticity3d(List<Solid> layers) {
        this(layers, 0, 0);
    }

    /**
     * A curved stack in coordinates along its mid-height, where lengths along x at height z are 1 +
     * z/Rx times as long. With one curvature that is the exact cylinder; with two, what is left out
     * is the Gaussian curvature of the plan, of the order of rise over side squared.
     *
     * @param curvatureX 1/Rx [1/m], bulging toward the top
     * @param curvatureY 1/Ry [1/m]
     */
    Elasticity3d(List<Solid> layers, double curvatureX, double curvatureY) {
        this.layers = List.copyOf(layers);
        this.curvatureX = curvatureX;
        this.curvatureY = curvatureY;
        lowest = -layers.stream().mapToDouble(Solid::t).sum() / 2;
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

        /** Columns at height z, from the element that holds it; at an interface the lower one. */
        double[] at(double z) {
            int from = 0;
            while (from + DEGREE + 1 < nodes.size() && nodes.get(from + DEGREE)[Z] < z) {
                from += DEGREE + 1;
            }
            double[] sum = new double[SZ + 1];
            for (int i = 0; i <= DEGREE; i++) {
                double share = 1;
                double own = nodes.get(from + i)[Z];
                for (int j = 0; j <= DEGREE; j++) {
                    double other = nodes.get(from + j)[Z];
                    share *= i == j ? 1 : (z - other) / (own - other);
                }
                for (int column = 0; column <= SZ; column++) {
                    sum[column] += share * nodes.get(from + i)[column];
                }
            }
            return sum;
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

    /** Solves one wave under a unit pressure on the top, upward, per area at mid-height. */
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
        double bottom = lowest;
        for (int e = 0; e < elements.size(); e++) {
            assemble(elements.get(e), bottom, alpha, beta, matrix, 3 * e * DEGREE);
            bottom += elements.get(e).t;
        }
        double[] x = new double[n];
        x[n - 1] = 1;
        solve(matrix, x, band);
        return recover(elements, alpha, beta, x);
    }

    /**
     * Strains at one node of an element per unit of U, V, W there: those that hold the value, and
     * {@code d}, the slope along z.
     */
    private record Strains(
            double exu,
            double exw,
            double eyv,
            double eyw,
            double gxyu,
            double gxyv,
            double gxzu,
            double gxzw,
            double gyzv,
            double gyzw,
            double d) {}

    /** Strains at point q by node i; on a curved panel lengths grow with height. */
    private Strains strains(double t, double z, double alpha, double beta, int q, int i) {
        double n = i == q ? 1 : 0;
        double d = SLOPE[q][i] * 2 / t;
        double hx = 1 + curvatureX * z;
        double hy = 1 + curvatureY * z;
        double a = alpha / hx * n;
        double b = beta / hy * n;
        double x = curvatureX / hx * n;
        double y = curvatureY / hy * n;
        return new Strains(-a, x, -b, y, b, a, d - x, a, d - y, b, d);
    }

    private void assemble(Solid s, double bottom, double a, double b, double[][] matrix, int at) {
        int count = DEGREE + 1;
        Strains[] at0 = new Strains[count];
        for (int q = 0; q < count; q++) {
            double z = bottom + s.t * (1 + NODE[q]) / 2;
            double w = WEIGHT[q] * s.t / 2 * (1 + curvatureX * z) * (1 + curvatureY * z);
            for (int i = 0; i < count; i++) {
                at0[i] = strains(s.t, z, a, b, q, i);
            }
            for (int i = 0; i < count; i++) {
                for (int j = 0; j <= i; j++) {
                    int row = at + 3 * i;
                    int column = at + 3 * j;
                    if (i != q && j != q) {
                        double dd = w * at0[i].d * at0[j].d;
                        matrix[row][row - column] += s.c55 * dd;
                        matrix[row + 1][row - column] += s.c44 * dd;
                        matrix[row + 2][row - column] += s.c33 * dd;
                    } else {
                        addBlock(s, w, at0[i], at0[j], matrix, row, column);
                    }
                }
            }
        }
    }

    private static void addBlock(
            Solid s, double w, Strains p, Strains r, double[][] matrix, int row, int column) {
        double uu = s.c11 * p.exu * r.exu + s.c66 * p.gxyu * r.gxyu + s.c55 * p.gxzu * r.gxzu;
        double vv = s.c22 * p.eyv * r.eyv + s.c66 * p.gxyv * r.gxyv + s.c44 * p.gyzv * r.gyzv;
        add(matrix, row, column, w * uu);
        add(matrix, row + 1, column + 1, w * vv);
        add(matrix, row, column + 1, w * (s.c12 * p.exu * r.eyv + s.c66 * p.gxyu * r.gxyv));
        add(matrix, row + 1, column, w * (s.c12 * p.eyv * r.exu + s.c66 * p.gxyv * r.gxyu));
        add(matrix, row, column + 2, w * (p.exu * alongX(s, r) + s.c55 * p.gxzu * r.gxzw));
        add(matrix, row + 2, column, w * (r.exu * alongX(s, p) + s.c55 * r.gxzu * p.gxzw));
        add(matrix, row + 1, column + 2, w * (p.eyv * alongY(s, r) + s.c44 * p.gyzv * r.gyzw));
        add(matrix, row + 2, column + 1, w * (r.eyv * alongY(s, p) + s.c44 * r.gyzv * p.gyzw));
        double through = s.c13 * r.exw + s.c23 * r.eyw + s.c33 * r.d;
        double ww =
                p.exw * alongX(s, r)
                        + p.eyw * alongY(s, r)
                        + p.d * through
                        + s.c55 * p.gxzw * r.gxzw
                        + s.c44 * p.gyzw * r.gyzw;
        add(matrix, row + 2, column + 2, w * ww);
    }

    /** Stress along x that a deflection makes. */
    private static double alongX(Solid s, Strains r) {
        return s.c11 * r.exw + s.c12 * r.eyw + s.c13 * r.d;
    }

    private static double alongY(Solid s, Strains r) {
        return s.c12 * r.exw + s.c22 * r.eyw + s.c23 * r.d;
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

    private Wave recover(List<Solid> elements, double alpha, double beta, double[] x) {
        Wave wave = new Wave();
        double bottom = 0;
        for (int e = 0; e < elements.size(); e++) {
            Solid s = elements.get(e);
            for (int q = 0; q <= DEGREE; q++) {
                double z = bottom + s.t * (1 + NODE[q]) / 2;
                double hx = 1 + curvatureX * (lowest + z);
                double hy = 1 + curvatureY * (lowest + z);
                double a = alpha / hx;
                double b = beta / hy;
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
                double ex = -a * u + curvatureX / hx * w;
                double ey = -b * v + curvatureY / hy * w;
                wave.nodes.add(
                        new double[] {
                            z,
                            u,
                            v,
                            w,
                            s.c11 * ex + s.c12 * ey + s.c13 * dw,
                            s.c12 * ex + s.c22 * ey + s.c23 * dw,
                            s.c66 * (b * u + a * v),
                            s.c55 * (du + a * w - curvatureX / hx * u),
                            s.c44 * (dv + b * w - curvatureY / hy * v),
                            s.c13 * ex + s.c23 * ey + s.c33 * dw
                        });
            }
            bottom += s.t;
        }
        return wave;
    }
}
