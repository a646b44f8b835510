package org.coachskin.reference;

/**
 * A round hole in an endless plate with shear, bent one way: closed form (Reissner 1945) with
 * Bessel functions from their integrals. Shares no code with the library.
 */
final class HoleByHand {

    private HoleByHand() {}

    /**
     * Returns the largest moment at the rim over that far away, shear factor 5/6.
     *
     * @param wide diameter over thickness
     */
    static double bending(double wide, double nu) {
        // Radius and D are 1; the shear stiffness in those units.
        double h = 2 / wide;
        double s = 5 * (1 - nu) / (h * h);
        double z = Math.sqrt(2 * s / (1 - nu));
        // K2 is 1 at the rim.
        double d1 = -z * (bessel(1, z) + bessel(3, z)) / 2 / bessel(2, z);
        double d2 = z * z + 4 - d1;
        // Deflection (f r^2 + a + b/r^2) cos 2t, and c K2(z r) sin 2t.
        double f = -1 / (4 * (1 - nu));
        double[][] m = new double[3][];
        double[] load = new double[3];
        double[] far = at(f, 2 * f, 2 * f, 0, 0, 0, nu);
        // a: with the part that shears, a (1 - 4/(s r^2)); its Laplacian is -4 a/r^2.
        double[] a = at(1 - 4 / s, 8 / s, -24 / s, 0, 0, 0, nu);
        double[] b = at(1, -2, 6, 0, 0, 0, nu);
        double[] c = at(0, 0, 0, 1, d1, d2, nu);
        double[][] parts = {a, b, c};
        double[] force = {-8, 0, 2 * s};
        for (int row = 0; row < 3; row++) {
            m[row] = new double[3];
            for (int p = 0; p < 3; p++) {
                m[row][p] = row == 2 ? force[p] : parts[p][row];
            }
            load[row] = row == 2 ? 0 : -far[row];
        }
        double[] x = ByHand.solve(m, load);
        double around = far[2] + x[0] * a[2] + x[1] * b[2] + x[2] * c[2];
        // The even half of the moment far away gives 1 at the rim.
        return 1 - around;
    }

    /** Moments across, twisting and around the rim: shares of cos 2t, sin 2t and cos 2t. */
    private static double[] at(
            double w, double w1, double w2, double p, double p1, double p2, double nu) {
        // Rotations -w' + 2 p/r and 2 w/r - p', of cos 2t and sin 2t, at r = 1.
        double across = -w1 + 2 * p;
        double acrossBy = -w2 + 2 * p1 - 2 * p;
        double along = 2 * w - p1;
        double alongBy = 2 * w1 - 2 * w - p2;
        double round = across + 2 * along;
        return new double[] {
            acrossBy + nu * round,
            (1 - nu) / 2 * (-2 * across + alongBy - along),
            round + nu * acrossBy
        };
    }

    private static double bessel(int n, double z) {
        double sum = 0;
        double step = 1e-3;
        for (int i = 0; i < 20_000; i++) {
            double t = (i + 0.5) * step;
            double cosh = Math.cosh(t);
            sum += z * (cosh - 1) > 700 ? 0 : Math.exp(-z * (cosh - 1)) * Math.cosh(n * t) * step;
        }
        return sum;
    }
}
