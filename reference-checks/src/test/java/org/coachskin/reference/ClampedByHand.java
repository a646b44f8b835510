package org.coachskin.reference;

/**
 * A clamped thin plate 1 by r, force of 1 in the middle, D = 1, as Timoshenko does it: a supported
 * plate, and moments along its edges, in sine waves, that undo the slope there. Shares no code with
 * the library.
 */
final class ClampedByHand {

    private static final int WAVES = 120;

    private final double r;
    private final double[] moments;

    ClampedByHand(double r) {
        this.r = r;
        double[][] a = new double[2 * WAVES][2 * WAVES];
        double[] b = new double[2 * WAVES];
        for (int i = 0; i < WAVES; i++) {
            double alpha = alpha(i);
            a[i][i] = slope(alpha, alpha * r / 2);
            for (int j = 0; j < 50 * WAVES; j++) {
                double beta = beta(j);
                double stiff = Math.pow(alpha * alpha + beta * beta, 2);
                b[i] -= 4 * beta * sign(i) * sign(j) / (r * stiff);
                if (j < WAVES) {
                    a[i][WAVES + j] = 4 * alpha * beta / stiff;
                }
            }
            double own = beta(i);
            a[WAVES + i][WAVES + i] = slope(own, own / 2);
            for (int j = 0; j < 50 * WAVES; j++) {
                double other = alpha(j);
                double stiff = Math.pow(other * other + own * own, 2);
                b[WAVES + i] -= 4 * other * sign(i) * sign(j) / (r * stiff);
                if (j < WAVES) {
                    a[WAVES + i][j] = 4 * other * own / (r * stiff);
                }
            }
        }
        moments = ByHand.solve(a, b);
    }

    private static double alpha(int i) {
        return (2 * i + 1) * Math.PI;
    }

    private double beta(int i) {
        return alpha(i) / r;
    }

    private static int sign(int i) {
        return i % 2 == 0 ? 1 : -1;
    }

    /** Slope at an edge from a wave of moment of 1 on it and on the one opposite. */
    private static double slope(double k, double c) {
        double cosh = Math.cosh(Math.min(c, 300));
        return (Math.tanh(c) + c / (cosh * cosh)) / (2 * k);
    }

    private static double middle(double k, double c) {
        return c * Math.tanh(c) / (2 * k * k * Math.cosh(Math.min(c, 300)));
    }

    double deflection() {
        double w = ByHand.pointDeflection(r);
        for (int i = 0; i < WAVES; i++) {
            double alpha = alpha(i);
            double beta = beta(i);
            w += sign(i) * moments[i] * middle(alpha, alpha * r / 2);
            w += sign(i) * moments[WAVES + i] * middle(beta, beta / 2);
        }
        return w;
    }

    /** Moment in the middle of the edges of length 1. */
    double edgeMoment() {
        double sum = 0;
        for (int i = 0; i < WAVES; i++) {
            sum += sign(i) * moments[i];
        }
        return sum;
    }
}
