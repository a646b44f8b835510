package org.coachskin.sparse;

import java.util.List;

/**
 * The lowest eigenvalues above zero of A x = &lambda; B x, ascending, with their vectors.
 * Immutable.
 *
 * <p>A must be positive definite. B may be semidefinite (a mass matrix that leaves some unknowns
 * without mass: they get no eigenvalue) or indefinite (a geometric stiffness, of which some loads
 * stiffen): eigenvalues below zero are passed over, those of -B are their negatives. For a free
 * body, whose A is singular, hand in A + s B with some s above zero and subtract s from every
 * eigenvalue.
 *
 * <p>Found by {@link Krylov}. Multiple eigenvalues come out as often as they occur, up to four
 * times for certain; {@link #countBelow} proves for semidefinite B that none was missed.
 */
public final class Eigenpairs {

    /** Length of a residual at which a value is good to rounding and a vector to 1e-9 or so. */
    private static final double FINE = 1e-10;

    private final double[] value;
    private final double[][] vector;
    private final double[] residual;

    private Eigenpairs(double[] value, double[][] vector, double[] residual) {
        this.value = value;
        this.vector = vector;
        this.residual = residual;
    }

    /**
     * Solves.
     *
     * @param factor of {@code a}
     * @param b on any pattern of the same size
     * @param count how many are wanted, at least 1; there may be fewer
     * @throws IllegalArgumentException when sizes differ or {@code count} is below 1
     * @throws ArithmeticException when {@code a} is not positive definite, naming the unknown, or
     *     when the iteration does not settle
     */
    public static Eigenpairs lowest(
            SymmetricMatrix a, SymmetricMatrix b, Factor factor, int count) {
        if (a.size() != factor.plan().pattern().size()) {
            throw new IllegalArgumentException("A and the factor differ in size");
        }
        factor.requireRegular();
        if (factor.negativePivots() > 0) {
            throw new ArithmeticException(
                    "A is not positive definite: see unknown " + factor.firstNegative());
        }
        return lowest(a, b, factor.solver()::solve, count, FINE);
    }

    /**
     * Solves as closely as wanted, by whatever solves A x = b. What that holds at zero stays so in
     * the vectors.
     *
     * @param a positive definite
     * @param b on any pattern of the same size
     * @param count how many are wanted, at least 1; there may be fewer
     * @param good length of the residual of A<sup>-1</sup> B x, relative, at which a vector is good
     *     enough; the value is off by about its square
     * @throws IllegalArgumentException when sizes differ or {@code count} is below 1
     * @throws ArithmeticException when the iteration does not settle
     */
    public static Eigenpairs lowest(
            SymmetricMatrix a, SymmetricMatrix b, Inverse inverse, int count, double good) {
        if (a.size() != b.size()) {
            throw new IllegalArgumentException("A and B differ in size");
        }
        if (count < 1) {
            throw new IllegalArgumentException(count + " eigenpairs wanted; at least 1");
        }
        List<double[]> found = new Krylov(a, b, inverse, count, good).vectors();
        double[] value = new double[found.size()];
        double[] residual = new double[found.size()];
        for (int i = 0; i < value.length; i++) {
            residual[i] = finish(a, b, found.get(i), value, i);
        }
        return new Eigenpairs(value, found.toArray(double[][]::new), residual);
    }

    /**
     * Returns how many eigenvalues of A x = &lambda; B x lie below a bound: as many as A - bound B
     * has pivots below zero (Sylvester's law of inertia). A must be positive definite or
     * semidefinite, B semidefinite; both on the plan's pattern.
     *
     * @throws IllegalArgumentException when one is on another pattern
     * @throws ArithmeticException when the bound is so near an eigenvalue that a pivot is null
     */
    public static int countBelow(
            FactorPlan plan, SymmetricMatrix a, SymmetricMatrix b, double bound) {
        SymmetricMatrix shifted = new SymmetricMatrix(plan.pattern());
        shifted.setSum(1, a, -bound, b);
        Factor factor = plan.factor(shifted);
        factor.requireRegular();
        return factor.negativePivots();
    }

    /** Returns how many were found: fewer than wanted when there are no more. */
    public int count() {
        return value.length;
    }

    /** Returns an eigenvalue, the lowest at 0. */
    public double value(int i) {
        return value[i];
    }

    /** Returns a copy of an eigenvector x, scaled to x<sup>T</sup> B x = 1. */
    public double[] vector(int i) {
        return vector[i].clone();
    }

    /**
     * Returns the length of A x - &lambda; B x over that of A x. The relative error of the value is
     * at most about this times the condition of A, as a rule the square of it.
     */
    public double residual(int i) {
        return residual[i];
    }

    /** Scales a vector, sets its Rayleigh quotient and returns its residual. */
    private static double finish(
            SymmetricMatrix a, SymmetricMatrix b, double[] x, double[] value, int i) {
        double[] ax = new double[x.length];
        double[] bx = new double[x.length];
        b.multiply(x, bx);
        double scale = 1 / Math.sqrt(Vectors.dot(x, bx));
        Vectors.scale(scale, x);
        Vectors.scale(scale, bx);
        a.multiply(x, ax);
        value[i] = Vectors.dot(x, ax);
        double size = Vectors.norm(ax);
        Vectors.add(-value[i], bx, ax);
        return Vectors.norm(ax) / size;
    }
}
