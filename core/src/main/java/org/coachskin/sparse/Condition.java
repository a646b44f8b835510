package org.coachskin.sparse;

import java.util.Arrays;

/** Estimates how much an error in A or b may grow in A<sup>-1</sup> b. */
public final class Condition {

    private static final int MOST = 5;

    private Condition() {}

    /**
     * Returns a lower bound, nearly always within a factor of three, of the condition number in the
     * norm of the largest column sum (Hager, SIAM J. Sci. Stat. Comput. 5, 1984, pp. 311-316;
     * Higham, ACM Trans. Math. Softw. 14, 1988, pp. 381-396; both from memory). It takes at most
     * eleven solutions.
     *
     * @param solver of a factor of {@code a}
     * @throws ArithmeticException when a pivot is null, naming its unknown
     */
    public static double estimate(SymmetricMatrix a, Solver solver) {
        return a.norm() * inverseNorm(a.size(), solver);
    }

    private static double inverseNorm(int n, Solver solver) {
        double[] x = new double[n];
        double[] y = new double[n];
        double[] sign = new double[n];
        double[] z = new double[n];
        Arrays.fill(x, 1.0 / n);
        double best = 0;
        for (int turn = 0; turn < MOST; turn++) {
            solver.solve(x, y);
            best = Math.max(best, sum(y));
            for (int i = 0; i < n; i++) {
                sign[i] = y[i] < 0 ? -1 : 1;
            }
            solver.solve(sign, z);
            int top = 0;
            for (int i = 1; i < n; i++) {
                if (Math.abs(z[i]) > Math.abs(z[top])) {
                    top = i;
                }
            }
            if (turn > 0 && Math.abs(z[top]) <= Vectors.dot(z, x)) {
                break;
            }
            Arrays.fill(x, 0);
            x[top] = 1;
        }
        for (int i = 0; i < n; i++) {
            x[i] = (i % 2 == 0 ? 1 : -1) * (1 + i / Math.max(1.0, n - 1.0));
        }
        solver.solve(x, y);
        return Math.max(best, 2 * sum(y) / (3.0 * n));
    }

    private static double sum(double[] x) {
        double sum = 0;
        for (double v : x) {
            sum += Math.abs(v);
        }
        return sum;
    }
}
