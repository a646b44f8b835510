package org.coachskin.reference;

import java.util.Arrays;

/** Lowest frequencies of two dense matrices, for second methods: steps of a whole subspace. */
final class Vibration {

    private static final double LIFT = 1;

    private static final int STEPS = 40;

    private Vibration() {}

    /** Returns the lowest circular frequencies; overwrites the stiffness. */
    static double[] omegas(double[][] stiff, double[][] mass, int count) {
        int n = stiff.length;
        int width = Math.min(n, count + 8);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                stiff[i][j] += LIFT * mass[i][j];
            }
        }
        double[][] inverse = inverse(stiff);
        double[][] x = new double[width][n];
        for (int v = 0; v < width; v++) {
            for (int i = 0; i < n; i++) {
                x[v][i] = Math.sin(1 + (v + 1) * 0.7 * i) + (i % width == v ? 3 : 0);
            }
        }
        double[] values = new double[width];
        for (int step = 0; step < STEPS; step++) {
            double[][] force = new double[width][];
            double[][] next = new double[width][];
            for (int v = 0; v < width; v++) {
                force[v] = times(mass, x[v]);
                next[v] = times(inverse, force[v]);
            }
            double[][] a = new double[width][width];
            double[][] b = new double[width][width];
            for (int v = 0; v < width; v++) {
                double[] inertia = times(mass, next[v]);
                for (int w = 0; w < width; w++) {
                    a[w][v] = dot(next[w], force[v]);
                    b[w][v] = dot(next[w], inertia);
                }
            }
            values = turn(a, b, next);
            x = next;
        }
        Arrays.sort(values);
        double[] out = new double[count];
        for (int i = 0; i < count; i++) {
            out[i] = Math.sqrt(Math.max(0, values[i] - LIFT));
        }
        return out;
    }

    /** Turns vectors so that they shake by themselves; returns a over b of each. */
    private static double[] turn(double[][] a, double[][] b, double[][] vectors) {
        int n = a.length;
        orthogonal(a, b, vectors);
        for (int sweep = 0; sweep < 30; sweep++) {
            for (int p = 0; p < n; p++) {
                for (int q = p + 1; q < n; q++) {
                    if (Math.abs(a[p][q]) > 1e-15 * Math.sqrt(Math.abs(a[p][p] * a[q][q]))) {
                        double angle = Math.atan2(2 * a[p][q], a[p][p] - a[q][q]) / 2;
                        double c = Math.cos(angle);
                        double s = Math.sin(angle);
                        mix(a, p, q, c, s);
                        for (double[] row : a) {
                            double up = c * row[p] + s * row[q];
                            row[q] = c * row[q] - s * row[p];
                            row[p] = up;
                        }
                        mix(vectors, p, q, c, s);
                    }
                }
            }
        }
        double[] values = new double[n];
        for (int i = 0; i < n; i++) {
            values[i] = a[i][i];
        }
        return values;
    }

    private static void mix(double[][] rows, int p, int q, double c, double s) {
        for (int j = 0; j < rows[p].length; j++) {
            double up = c * rows[p][j] + s * rows[q][j];
            rows[q][j] = c * rows[q][j] - s * rows[p][j];
            rows[p][j] = up;
        }
    }

    /** Makes b the unit matrix, row by row and column by column. */
    private static void orthogonal(double[][] a, double[][] b, double[][] vectors) {
        int n = a.length;
        for (int v = 0; v < n; v++) {
            for (int w = 0; w < v; w++) {
                double share = b[v][w];
                subtract(a, v, w, share);
                subtract(b, v, w, share);
                subtractRow(vectors, v, w, share);
            }
            double size = 1 / Math.sqrt(b[v][v]);
            for (double[][] m : new double[][][] {a, b}) {
                for (int j = 0; j < n; j++) {
                    m[v][j] *= size;
                }
                for (int j = 0; j < n; j++) {
                    m[j][v] *= size;
                }
            }
            for (int j = 0; j < vectors[v].length; j++) {
                vectors[v][j] *= size;
            }
        }
    }

    private static void subtract(double[][] m, int v, int w, double share) {
        subtractRow(m, v, w, share);
        for (double[] row : m) {
            row[v] -= share * row[w];
        }
    }

    private static void subtractRow(double[][] m, int v, int w, double share) {
        for (int j = 0; j < m[v].length; j++) {
            m[v][j] -= share * m[w][j];
        }
    }

    private static double[][] inverse(double[][] m) {
        int n = m.length;
        double[][] out = new double[n][n];
        for (int i = 0; i < n; i++) {
            out[i][i] = 1;
        }
        for (int i = 0; i < n; i++) {
            double pivot = m[i][i];
            for (int j = 0; j < n; j++) {
                m[i][j] /= pivot;
                out[i][j] /= pivot;
            }
            for (int r = 0; r < n; r++) {
                double factor = m[r][i];
                for (int j = 0; r != i && factor != 0 && j < n; j++) {
                    m[r][j] -= factor * m[i][j];
                    out[r][j] -= factor * out[i][j];
                }
            }
        }
        return out;
    }

    private static double[] times(double[][] m, double[] x) {
        double[] out = new double[m.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = dot(m[i], x);
        }
        return out;
    }

    private static double dot(double[] x, double[] y) {
        double sum = 0;
        for (int i = 0; i < x.length; i++) {
            sum += x[i] * y[i];
        }
        return sum;
    }
}
