package org.coachskin.reference;

import java.util.List;

/**
 * Second methods for rows where a print and ours differ: closed forms and sums written out here,
 * sharing no code with the library.
 */
final class ByHand {

    private ByHand() {}

    /** Simply supported plate 1 by r, even pressure: w D/(q a^4) by the double sine series. */
    static double evenDeflection(double r) {
        double sum = 0;
        for (int m = 1; m < 200; m += 2) {
            for (int n = 1; n < 200; n += 2) {
                double k = m * m + n * n / (r * r);
                sum += (m + n) / 2 % 2 == 1 ? 1 / (m * n * k * k) : -1 / (m * n * k * k);
            }
        }
        return 16 / Math.pow(Math.PI, 6) * sum;
    }

    /**
     * Simply supported plate 1 by r, force in the middle: w D/(P a^2) by the double sine series.
     */
    static double pointDeflection(double r) {
        double sum = 0;
        for (int m = 1; m < 3000; m += 2) {
            for (int n = 1; n < 3000; n += 2) {
                double k = (double) m * m + (double) n * n / (r * r);
                sum += 1 / (k * k);
            }
        }
        return 4 / (Math.pow(Math.PI, 4) * r) * sum;
    }

    /**
     * Simply supported square plate, a force W spread over a line of length v in the middle: 6 M/W,
     * M across the line, nu 0.3. Waves along the line, each in closed form across it.
     */
    static double lineMoment(double v) {
        double sum = 0;
        for (int n = 1; n < 2_000_000; n += 2) {
            double b = n * Math.PI;
            double cosh = Math.cosh(Math.min(b / 2, 300));
            double across = 1.3 * Math.tanh(b / 2) + 0.7 * b / 2 / (cosh * cosh);
            sum += 4 * Math.sin(b * v / 2) / (v * b) * across / (4 * b);
        }
        return 6 * sum;
    }

    /**
     * Wrinkling coefficient where the foam's movement falls off linearly over a depth h: least over
     * wave number and depth of D k^2 + E/(h k^2) + G h/3, for Ef = t = 1 over the cube root.
     */
    static double linearDecay() {
        // The depth that is least: E/(h^2 k^2) = G/3; leaves D k^2 + 2 sqrt(E G/3)/k.
        double pull = 2 / Math.sqrt(3);
        double k = Math.cbrt(pull * 6);
        return k * k / 12 + pull / k;
    }

    /** A ply of the book's cross-ply plates at 0 or 90 degrees: Q11, Q12, Q22, Q66, G13, G23. */
    private static double[] graphite(boolean turned) {
        double minor = 0.25 / 25;
        double q11 = 25 / (1 - 0.25 * minor);
        double q22 = 1 / (1 - 0.25 * minor);
        double q12 = 0.25 * q22;
        return turned
                ? new double[] {q22, q12, q11, 0.5, 0.2, 0.5}
                : new double[] {q11, q12, q22, 0.5, 0.5, 0.2};
    }

    /**
     * Spherical cross-ply panel of side 1 under one sine wave of pressure 1, first-order theory
     * with shear factor 5/6: deflection.
     *
     * @param turned ply by ply, whether at 90 degrees
     * @param curvature 1/R
     * @param slide whether u/R counts in the transverse shear strain
     */
    static double shell(List<Boolean> turned, double h, double curvature, boolean slide) {
        double k = Math.PI;
        double c = curvature;
        double s = slide ? c : 0;
        double[][] strain = {
            {-k, 0, c, 0, 0},
            {0, -k, c, 0, 0},
            {k, k, 0, 0, 0},
            {0, 0, 0, -k, 0},
            {0, 0, 0, 0, -k},
            {0, 0, 0, k, k},
            {-s, 0, k, 1, 0},
            {0, -s, k, 0, 1}
        };
        double[][] stiffness = new double[8][8];
        double t = h / turned.size();
        double z = -h / 2;
        for (boolean ply : turned) {
            double[] q = graphite(ply);
            double[] moments = {
                t, ((z + t) * (z + t) - z * z) / 2, (Math.pow(z + t, 3) - Math.pow(z, 3)) / 3
            };
            for (int i = 0; i < 2; i++) {
                for (int j = 0; j < 2; j++) {
                    double moment = moments[i + j];
                    stiffness[3 * i][3 * j] += q[0] * moment;
                    stiffness[3 * i][3 * j + 1] += q[1] * moment;
                    stiffness[3 * i + 1][3 * j] += q[1] * moment;
                    stiffness[3 * i + 1][3 * j + 1] += q[2] * moment;
                    stiffness[3 * i + 2][3 * j + 2] += q[3] * moment;
                }
            }
            stiffness[6][6] += 5.0 / 6 * q[4] * t;
            stiffness[7][7] += 5.0 / 6 * q[5] * t;
            z += t;
        }
        return solve(energy(strain, stiffness), new double[] {0, 0, 1, 0, 0})[2];
    }

    /** Returns B^T C B. */
    static double[][] energy(double[][] b, double[][] c) {
        int n = b[0].length;
        double[][] k = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                for (int p = 0; p < b.length; p++) {
                    for (int q = 0; q < b.length; q++) {
                        k[i][j] += b[p][i] * c[p][q] * b[q][j];
                    }
                }
            }
        }
        return k;
    }

    /** Elimination with exchange of rows; overwrites both. */
    static double[] solve(double[][] a, double[] x) {
        int n = x.length;
        for (int i = 0; i < n; i++) {
            int best = i;
            for (int r = i + 1; r < n; r++) {
                best = Math.abs(a[r][i]) > Math.abs(a[best][i]) ? r : best;
            }
            double[] row = a[i];
            a[i] = a[best];
            a[best] = row;
            double value = x[i];
            x[i] = x[best];
            x[best] = value;
            for (int r = i + 1; r < n; r++) {
                double factor = a[r][i] / a[i][i];
                for (int c = i; c < n; c++) {
                    a[r][c] -= factor * a[i][c];
                }
                x[r] -= factor * x[i];
            }
        }
        for (int i = n - 1; i >= 0; i--) {
            for (int c = i + 1; c < n; c++) {
                x[i] -= a[i][c] * x[c];
            }
            x[i] /= a[i][i];
        }
        return x;
    }
}
