package org.coachskin.sparse;

import java.util.ArrayList;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.decomposition.LUDecomposition_F64;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * A matrix with some rows made stiffer without another factorisation: A + U C U<sup>T</sup>, where
 * each column of U is a combination of a few unknowns and the diagonal C says how stiff it is, from
 * 0 (let go) to infinity (held at zero). For one-sided supports, which come and go while A stays
 * (Woodbury's formula).
 *
 * <p>Building it costs one solution for each combination; after that an answer for other
 * stiffnesses costs a dense system of as many unknowns as combinations are at work. Immutable.
 */
public final class LowRank {

    private static final double DEPENDENT = 1e-13;

    private final int size;
    private final int[][] unknowns;
    private final double[][] factors;

    /** A^-1 U, column after column. */
    private final double[] answers;

    /** U^T A^-1 U by rows. */
    private final double[] flexibility;

    private LowRank(Factor factor, List<int[]> unknowns, List<double[]> factors) {
        size = factor.plan().pattern().size();
        this.unknowns = unknowns.toArray(int[][]::new);
        this.factors = factors.toArray(double[][]::new);
        int k = this.unknowns.length;
        if ((long) k * size > Integer.MAX_VALUE - 8) {
            throw new IllegalArgumentException(k + " combinations are too many");
        }
        answers = new double[k * size];
        for (int c = 0; c < k; c++) {
            for (int i = 0; i < this.unknowns[c].length; i++) {
                answers[c * size + this.unknowns[c][i]] += this.factors[c][i];
            }
        }
        factor.solver().solve(answers, answers, k);
        flexibility = new double[k * k];
        for (int r = 0; r < k; r++) {
            for (int c = 0; c < k; c++) {
                flexibility[r * k + c] = along(r, answers, c * size);
            }
        }
    }

    /** Collects combinations of unknowns. */
    public static final class Builder {

        private final Factor factor;
        private final List<int[]> unknowns = new ArrayList<>();
        private final List<double[]> factors = new ArrayList<>();

        private Builder(Factor factor) {
            this.factor = factor;
        }

        /**
         * Adds a combination; they count from 0 in the order of these calls.
         *
         * @param unknowns which unknowns; copied
         * @param factors how much of each; copied
         * @throws IllegalArgumentException when the two differ in length or one is out of range
         */
        public Builder row(int[] unknowns, double[] factors) {
            if (unknowns.length != factors.length || unknowns.length == 0) {
                throw new IllegalArgumentException(
                        unknowns.length + " unknowns with " + factors.length + " factors");
            }
            int n = factor.plan().pattern().size();
            for (int u : unknowns) {
                if (u < 0 || u >= n) {
                    throw new IllegalArgumentException(
                            "unknown " + u + " is not one of 0 to " + (n - 1));
                }
            }
            this.unknowns.add(unknowns.clone());
            this.factors.add(factors.clone());
            return this;
        }

        /**
         * Solves for every combination.
         *
         * @throws ArithmeticException when a pivot of A is null, naming its unknown
         */
        public LowRank build() {
            return new LowRank(factor, unknowns, factors);
        }
    }

    /** Starts with a factor of A. */
    public static Builder on(Factor factor) {
        return new Builder(factor);
    }

    /** Returns the number of combinations. */
    public int rows() {
        return unknowns.length;
    }

    /** Returns how far combination {@code i} moves for a unit along combination {@code j}. */
    public double flexibility(int i, int j) {
        return flexibility[i * rows() + j];
    }

    /** Returns the value of a combination, given all n unknowns. */
    public double along(int row, double[] x) {
        SymmetricMatrix.check(x, size);
        return along(row, x, 0);
    }

    /**
     * Turns an answer of A alone into that of A + U C U<sup>T</sup>.
     *
     * @param stiffness C, one for each combination: 0, finite of either sign, or +infinity
     * @param x A<sup>-1</sup> b, n values; overwritten by the answer
     * @return C U<sup>T</sup> x, what each combination is held back with
     * @throws ArithmeticException when combinations held at zero depend on one another, or the sum
     *     is singular
     */
    public double[] correct(double[] stiffness, double[] x) {
        SymmetricMatrix.check(stiffness, rows());
        SymmetricMatrix.check(x, size);
        int[] active = new int[rows()];
        int k = 0;
        for (int r = 0; r < rows(); r++) {
            if (stiffness[r] != 0) {
                active[k++] = r;
            }
        }
        double[] held = new double[rows()];
        if (k == 0) {
            return held;
        }
        DMatrixRMaj system = new DMatrixRMaj(k, k);
        DMatrixRMaj right = new DMatrixRMaj(k, 1);
        for (int i = 0; i < k; i++) {
            for (int j = 0; j < k; j++) {
                system.set(i, j, flexibility(active[i], active[j]));
            }
            system.add(i, i, 1 / stiffness[active[i]]);
            right.set(i, 0, along(active[i], x, 0));
        }
        DMatrixRMaj force = new DMatrixRMaj(k, 1);
        solved(system, right, force);
        for (int i = 0; i < k; i++) {
            held[active[i]] = force.get(i, 0);
            for (int u = 0; u < size; u++) {
                x[u] -= force.get(i, 0) * answers[active[i] * size + u];
            }
        }
        return held;
    }

    /**
     * Returns A condensed to the combinations: the inverse of their flexibility, k by k by rows.
     * Where each combination is one unknown this is the Schur complement on those unknowns.
     *
     * @throws ArithmeticException when combinations depend on one another
     */
    public double[] condensed() {
        int k = rows();
        DMatrixRMaj identity = new DMatrixRMaj(k, k);
        for (int i = 0; i < k; i++) {
            identity.set(i, i, 1);
        }
        DMatrixRMaj inverse = new DMatrixRMaj(k, k);
        solved(new DMatrixRMaj(k, k, true, flexibility.clone()), identity, inverse);
        double[] found = new double[k * k];
        for (int i = 0; i < k; i++) {
            for (int j = 0; j < k; j++) {
                found[i * k + j] = 0.5 * (inverse.get(i, j) + inverse.get(j, i));
            }
        }
        return found;
    }

    /** Solves, scaled to a diagonal of ones, so that units and stiffnesses may differ at will. */
    private static void solved(DMatrixRMaj system, DMatrixRMaj right, DMatrixRMaj answer) {
        int k = system.numRows;
        double[] scale = new double[k];
        for (int i = 0; i < k; i++) {
            double own = Math.abs(system.get(i, i));
            scale[i] = own > 0 ? 1 / Math.sqrt(own) : 1;
        }
        for (int i = 0; i < k; i++) {
            for (int j = 0; j < k; j++) {
                system.set(i, j, scale[i] * system.get(i, j) * scale[j]);
            }
            for (int c = 0; c < right.numCols; c++) {
                right.set(i, c, scale[i] * right.get(i, c));
            }
        }
        LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.lu(k);
        if (!solver.setA(system) || dependent(solver.getDecomposition(), k)) {
            throw new ArithmeticException("combinations of unknowns depend on one another");
        }
        solver.solve(right, answer);
        for (int i = 0; i < k; i++) {
            for (int c = 0; c < right.numCols; c++) {
                answer.set(i, c, scale[i] * answer.get(i, c));
            }
        }
    }

    private static boolean dependent(LUDecomposition_F64<DMatrixRMaj> lu, int k) {
        DMatrixRMaj upper = lu.getUpper(null);
        double largest = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < k; i++) {
            double pivot = Math.abs(upper.get(i, i));
            largest = Math.max(largest, pivot);
            least = Math.min(least, pivot);
        }
        return !(least > DEPENDENT * largest);
    }

    private double along(int row, double[] x, int from) {
        double sum = 0;
        for (int i = 0; i < unknowns[row].length; i++) {
            sum += factors[row][i] * x[from + unknowns[row][i]];
        }
        return sum;
    }
}
