package org.coachskin.reference;

/**
 * A long strip with a round hole in its middle, pulled along its length: Kolosov's potentials,
 * waves along the strip and odd powers of 1/z, fitted to the forces on hole, side and end (least
 * squares). Shares no code with the library.
 */
final class StripByHand {

    /** Half the length over the width. */
    private static final double LONG = 3;

    private static final int WAVES = 30;
    private static final int POWERS = 16;
    private static final int COLUMNS = 2 * (WAVES + POWERS);

    private final double r;

    private StripByHand(double hole) {
        r = hole / 2;
    }

    /** Returns the stress beside a hole of this diameter in a strip of width 1, pulled by 1. */
    static double beside(double hole) {
        StripByHand strip = new StripByHand(hole);
        double[] c = strip.potentials();
        double sum = 0;
        for (int k = 0; k < COLUMNS; k++) {
            sum += c[k] * strip.stress(k, strip.r, 0)[1];
        }
        return sum;
    }

    private double[] potentials() {
        int points = 80;
        double[][] a = new double[6 * points][];
        double[] b = new double[6 * points];
        for (int i = 0; i < points; i++) {
            double s = (i + 0.5) / points;
            double angle = s * Math.PI / 2;
            double c = Math.cos(angle);
            double n = Math.sin(angle);
            pull(a, 6 * i, r * c, r * n, c, n);
            pull(a, 6 * i + 2, 0.5, s * LONG, 1, 0);
            pull(a, 6 * i + 4, s / 2, LONG, 0, 1);
            b[6 * i + 5] = 1;
        }
        return leastSquares(a, b);
    }

    /** Writes two rows: the force of every potential on a cut, along x and along y. */
    private void pull(double[][] a, int row, double x, double y, double nx, double ny) {
        a[row] = new double[COLUMNS];
        a[row + 1] = new double[COLUMNS];
        for (int k = 0; k < COLUMNS; k++) {
            double[] s = stress(k, x, y);
            a[row][k] = s[0] * nx + s[2] * ny;
            a[row + 1][k] = s[2] * nx + s[1] * ny;
        }
    }

    /**
     * Returns sx, sy and txy of one potential, phi first and then psi: sx + sy = 4 Re phi', sy - sx
     * + 2 i txy = 2 (conj(z) phi'' + psi').
     */
    private double[] stress(int column, double x, double y) {
        boolean phi = column < WAVES + POWERS;
        int k = column % (WAVES + POWERS);
        double[] f = k < WAVES ? wave(k, x, y) : power(-2 * (k - WAVES) - 2, x, y);
        if (!phi) {
            return new double[] {-f[0], f[0], f[1]};
        }
        double re = x * f[2] + y * f[3];
        double im = x * f[3] - y * f[2];
        return new double[] {2 * f[0] - re, 2 * f[0] + re, im};
    }

    /** Returns cosh(k c z) over its size at the sides, and its derivative: real, imaginary. */
    private static double[] wave(int k, double x, double y) {
        // Longer than the strip, so that the ends need not be alike in slope.
        double c = k * Math.PI / (1.3 * LONG);
        double size = Math.cosh(c / 2);
        double even = Math.cosh(c * x) / size;
        double odd = Math.sinh(c * x) / size;
        double cos = Math.cos(c * y);
        double sin = Math.sin(c * y);
        return new double[] {even * cos, odd * sin, c * odd * cos, c * even * sin};
    }

    /** Returns (z/r)^power and its derivative: real, imaginary. */
    private double[] power(int power, double x, double y) {
        double length = Math.hypot(x, y);
        double angle = Math.atan2(y, x);
        double size = Math.pow(length / r, power);
        double slope = power * size / length;
        return new double[] {
            size * Math.cos(power * angle),
            size * Math.sin(power * angle),
            slope * Math.cos((power - 1) * angle),
            slope * Math.sin((power - 1) * angle)
        };
    }

    /** Householder's reflections; overwrites both. */
    private static double[] leastSquares(double[][] a, double[] b) {
        int n = a[0].length;
        for (int k = 0; k < n; k++) {
            double norm = 0;
            for (int i = k; i < a.length; i++) {
                norm = Math.hypot(norm, a[i][k]);
            }
            norm = a[k][k] > 0 ? -norm : norm;
            double[] v = new double[a.length];
            for (int i = k; i < a.length; i++) {
                v[i] = a[i][k];
            }
            v[k] -= norm;
            double square = -norm * v[k];
            for (int j = k; j < n; j++) {
                double dot = 0;
                for (int i = k; i < a.length; i++) {
                    dot += v[i] * a[i][j];
                }
                for (int i = k; i < a.length; i++) {
                    a[i][j] -= dot / square * v[i];
                }
            }
            double dot = 0;
            for (int i = k; i < a.length; i++) {
                dot += v[i] * b[i];
            }
            for (int i = k; i < a.length; i++) {
                b[i] -= dot / square * v[i];
            }
        }
        double[] x = new double[n];
        for (int i = n - 1; i >= 0; i--) {
            x[i] = b[i];
            for (int j = i + 1; j < n; j++) {
                x[i] -= a[i][j] * x[j];
            }
            x[i] /= a[i][i];
        }
        return x;
    }
}
