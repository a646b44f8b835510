package org.coachskin.reference;

import java.util.Arrays;

/**
 * An endless strip with a round hole in its middle, pulled at its ends: multipoles at the hole, the
 * traction each of them leaves along both edges taken off by a Fourier integral whose coefficients
 * are closed forms, the rim made free by least squares (the way of Howland 1930, written anew).
 * Shares no code with the library.
 */
final class StripByHand {

    private static final int TERMS = 10;

    private static final int PLACES = 30;

    private static final double STEP = 0.01;

    private static final double END = 40;

    /** Radius of the hole; half the width of the strip is 1. */
    private final double radius;

    private StripByHand(double radius) {
        this.radius = radius;
    }

    /**
     * Returns the largest stress at the rim over that far away.
     *
     * @param share of the width that the hole takes
     */
    static double factor(double share) {
        return new StripByHand(share).factor();
    }

    private double factor() {
        int n = 2 * TERMS;
        double[][] normal = new double[n][n];
        double[] right = new double[n];
        double[] beside = new double[n];
        double far = 0;
        for (int place = 0; place <= PLACES; place++) {
            double turn = Math.PI / 2 * Math.min(1, (place + 0.5) / PLACES);
            double[] uniform = polar(new double[] {1, 0, 0}, turn);
            double[][] terms = new double[n][];
            for (int j = 0; j < n; j++) {
                terms[j] = polar(stress(j < TERMS, j % TERMS + 1, turn), turn);
            }
            if (place == PLACES) {
                far = uniform[2];
                Arrays.setAll(beside, j -> terms[j][2]);
                break;
            }
            for (int row = 0; row < 2; row++) {
                for (int i = 0; i < n; i++) {
                    for (int j = 0; j < n; j++) {
                        normal[i][j] += terms[i][row] * terms[j][row];
                    }
                    right[i] -= terms[i][row] * uniform[row];
                }
            }
        }
        double[] shares = ByHand.solve(normal, right);
        for (int j = 0; j < n; j++) {
            far += shares[j] * beside[j];
        }
        return far;
    }

    /** Stresses x, y, xy of one multipole of phi' or psi', edges made free. */
    private double[] stress(boolean phi, int k, double turn) {
        double x = radius * Math.cos(turn);
        double y = radius * Math.sin(turn);
        // (r/z)^2k at the rim, and conj(z) times its derivative.
        double cos = Math.cos(2 * k * turn);
        double sin = -Math.sin(2 * k * turn);
        double turned = Math.cos((2 * k + 2) * turn);
        double turnedSin = -Math.sin((2 * k + 2) * turn);
        double sum = phi ? 4 * cos : 0;
        double real = phi ? -2 * k * turned : cos;
        double xy = phi ? -2 * k * turnedSin : sin;
        double sx = sum / 2 - real;
        double sy = sum / 2 + real;
        double size = (k % 2 == 0 ? 1 : -1) * Math.pow(radius, 2 * k);
        for (double u = STEP / 2; u < END; u += STEP) {
            double even = size * Math.exp((2 * k - 1) * Math.log(u) - u - logFactorial(2 * k - 1));
            double odd = size * Math.exp(2 * k * Math.log(u) - u - logFactorial(2 * k));
            double q = phi ? -2 * k * (even - 2 * odd) : even;
            double p = phi ? 2 * even + q : even;
            double c = Math.cosh(u);
            double s = Math.sinh(u);
            double d = (c * s + u) / STEP;
            double a = (p * (s + u * c) + q * u * s) / d;
            double b = -(q * c + p * s) / d;
            double cy = Math.cosh(u * y);
            double shy = Math.sinh(u * y);
            double uy = u * y;
            sx += (a * cy + b * (2 * cy + uy * shy)) * Math.cos(u * x);
            sy -= (a * cy + b * uy * shy) * Math.cos(u * x);
            xy += (a * shy + b * (shy + uy * cy)) * Math.sin(u * x);
        }
        return new double[] {sx, sy, xy};
    }

    private static double logFactorial(int n) {
        double sum = 0;
        for (int i = 2; i <= n; i++) {
            sum += Math.log(i);
        }
        return sum;
    }

    /** Stresses across the rim, in shear along it, and round it. */
    private static double[] polar(double[] s, double turn) {
        double c = Math.cos(turn);
        double n = Math.sin(turn);
        return new double[] {
            s[0] * c * c + s[1] * n * n + 2 * s[2] * n * c,
            (s[1] - s[0]) * n * c + s[2] * (c * c - n * n),
            s[0] * n * n + s[1] * c * c - 2 * s[2] * n * c
        };
    }
}
