package org.coachskin.sparse;

/**
 * How well x solves A x = b.
 *
 * @param largest largest magnitude of b - A x, in the unit of b
 * @param backward that over (norm of A times largest magnitude of x, plus largest of b): the
 *     relative change of A and b for which x would be exact (Rigal and Gaches, J. ACM 14, 1967, pp.
 *     543-548; from memory); of the order of 1e-16 at best
 * @param steps how often x was refined
 */
public record Residual(double largest, double backward, int steps) {

    /** Judges {@code x}. */
    public static Residual of(SymmetricMatrix a, double[] b, double[] x) {
        return judge(a.norm(), a, b, x, new double[x.length], 0);
    }

    /**
     * Solves and refines: adds the answer to b - A x as long as that at least halves the backward
     * error.
     *
     * @param solver of a factor of {@code a}, or of a matrix near it
     * @param b n values, not changed
     * @param x n values, overwritten by the answer; another array than {@code b}
     * @param most steps of refinement at most, 0 for none
     * @throws ArithmeticException when a pivot is null, naming its unknown
     */
    public static Residual solve(
            SymmetricMatrix a, Solver solver, double[] b, double[] x, int most) {
        if (b == x) {
            throw new IllegalArgumentException("b and x are one array");
        }
        double norm = a.norm();
        double[] rest = new double[x.length];
        double[] better = new double[x.length];
        double[] restOfBetter = new double[x.length];
        solver.solve(b, x);
        Residual now = judge(norm, a, b, x, rest, 0);
        while (now.steps < most && now.backward > 0) {
            solver.solve(rest, better);
            Vectors.add(1, x, better);
            Residual then = judge(norm, a, b, better, restOfBetter, now.steps + 1);
            if (!(then.backward < now.backward)) {
                break;
            }
            boolean worthMore = then.backward <= 0.5 * now.backward;
            System.arraycopy(better, 0, x, 0, x.length);
            System.arraycopy(restOfBetter, 0, rest, 0, rest.length);
            now = then;
            if (!worthMore) {
                break;
            }
        }
        return now;
    }

    private static Residual judge(
            double norm, SymmetricMatrix a, double[] b, double[] x, double[] rest, int steps) {
        a.multiply(x, rest);
        for (int i = 0; i < rest.length; i++) {
            rest[i] = b[i] - rest[i];
        }
        double largest = Vectors.largest(rest);
        double scale = norm * Vectors.largest(x) + Vectors.largest(b);
        return new Residual(largest, largest == 0 ? 0 : largest / scale, steps);
    }
}
