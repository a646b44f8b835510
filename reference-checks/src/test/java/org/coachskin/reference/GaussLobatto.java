package org.coachskin.reference;

/** The Gauss-Lobatto rule on -1 to 1, and the polynomials through its nodes. */
final class GaussLobatto {

    static final int DEGREE = 8;

    static final double[] NODE = lobatto();

    static final double[] WEIGHT = weights();

    /** Slope at node q of the polynomial that is 1 at node i and 0 at the others. */
    static final double[][] SLOPE = slopes();

    private GaussLobatto() {}

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
