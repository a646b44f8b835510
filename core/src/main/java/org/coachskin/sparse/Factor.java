package org.coachskin.sparse;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * P A P<sup>T</sup> = L D L<sup>T</sup> of a symmetric matrix, without exchange of rows.
 *
 * <p><b>Limits.</b> Backward stable where A is positive definite. Where it is indefinite (a shifted
 * stiffness) it is not in general: judge the answer by {@link Residual}. Single-threaded and of the
 * same bits on every machine.
 *
 * <p><b>Null pivots.</b> A pivot whose magnitude is at most a given share of its own diagonal entry
 * of A is null: what came before has used up all the stiffness of that unknown. It is named by
 * {@link #nullPivots}, left out (held at zero) and elimination goes on, so that every mechanism of
 * a positive semidefinite matrix is found in one run. {@link #nullVectors} says how each moves. Of
 * an indefinite matrix a null pivot says only that this order of elimination meets a zero.
 *
 * <p>Several threads may solve at once, each with its own {@link Solver}, as long as none calls
 * {@link #refactor}.
 */
public final class Factor {

    /**
     * The share taken unless another is given. Rounding leaves up to 2e-12 of a free membrane of
     * 160 000 unknowns and 1e-11 of a free strip of 100 beam elements in a row, while a strip of
     * 400 held at one end keeps 2e-8 (measured). A strip of 1 000 elements, or unknowns tied by
     * springs a thousand million times stiffer than the rest, are beyond what it can tell.
     */
    public static final double NULL = 1e-9;

    private final FactorPlan plan;
    private final double share;

    /** Columns of L by blocks; D stands on the diagonal. Not to be changed elsewhere. */
    final double[] value;

    private final double[] stack;
    private final double[] diagonal;
    private final int[] waiting;
    private final int[] address;
    private final Front front = new Front();
    private final Front.Pivots pivots = this::take;
    private final List<Integer> nulls = new ArrayList<>();
    private int negative;
    private int firstNegative;
    private int column;
    private boolean usable;

    Factor(FactorPlan plan, double share) {
        this.plan = plan;
        this.share = share;
        value = new double[plan.valueStart[plan.blocks]];
        stack = new double[plan.stack];
        diagonal = new double[plan.unknownAt.length];
        waiting = new int[plan.blocks];
        address = new int[plan.blocks];
    }

    /**
     * Factors another matrix in place of this one; allocates nothing after the first time.
     *
     * @throws IllegalArgumentException when it is not on the plan's pattern
     * @throws ArithmeticException when a pivot is not finite; solving is then refused
     */
    public void refactor(SymmetricMatrix matrix) {
        if (matrix.pattern() != plan.pattern()) {
            throw new IllegalArgumentException("the matrix is not on the pattern of the plan");
        }
        usable = false;
        nulls.clear();
        negative = 0;
        firstNegative = -1;
        scatter(matrix);
        int top = 0;
        int count = 0;
        for (int s = 0; s < plan.blocks; s++) {
            int k = plan.columns(s);
            int r = plan.rows(s);
            int own = r * (r + 1) / 2;
            int taken = plan.children[s];
            Arrays.fill(stack, top, top + own, 0);
            for (int c = count - taken; c < count; c++) {
                extend(waiting[c], address[c], s, top);
            }
            column = plan.first[s];
            front.eliminate(value, plan.valueStart[s], k, k + r, stack, top, pivots);
            int to = taken == 0 ? top : address[count - taken];
            if (to != top) {
                System.arraycopy(stack, top, stack, to, own);
            }
            count -= taken;
            waiting[count] = s;
            address[count++] = to;
            top = to + own;
        }
        usable = true;
    }

    /** Returns the plan this was made by. */
    public FactorPlan plan() {
        return plan;
    }

    /** Returns whether every pivot is above zero and none null. */
    public boolean positiveDefinite() {
        return nulls.isEmpty() && negative == 0;
    }

    /** Returns the unknowns whose pivot is null, in order of elimination; a copy. */
    public List<Integer> nullPivots() {
        return List.copyOf(nulls);
    }

    /**
     * Returns how many pivots are below zero: as many as the matrix has eigenvalues below zero
     * (Sylvester's law of inertia), as long as none is null.
     */
    public int negativePivots() {
        return negative;
    }

    /** Returns the unknown with the first pivot below zero, or -1. */
    public int firstNegative() {
        return firstNegative;
    }

    /** Returns a workspace for solving; one for each thread. */
    public Solver solver() {
        return new Solver(this);
    }

    /**
     * Returns A<sup>-1</sup> b.
     *
     * @param b n values, not changed
     * @throws ArithmeticException when a pivot is null, naming its unknown
     */
    public double[] solve(double[] b) {
        double[] x = new double[b.length];
        solver().solve(b, x);
        return x;
    }

    /**
     * Returns an orthonormal basis of what the matrix sends to zero, one vector for each null
     * pivot; empty when there is none. For a positive semidefinite matrix these are its mechanisms,
     * with an error of the order of rounding times the condition of what is left when they are
     * held.
     *
     * @param matrix the one that was factored
     */
    public List<double[]> nullVectors(SymmetricMatrix matrix) {
        int n = plan.unknownAt.length;
        List<double[]> found = new ArrayList<>();
        Solver solver = solver();
        double[] unit = new double[n];
        double[] image = new double[n];
        for (int u : nulls) {
            unit[u] = 1;
            matrix.multiply(unit, image);
            unit[u] = 0;
            double[] vector = new double[n];
            solver.solveHeld(image, vector);
            for (int i = 0; i < n; i++) {
                vector[i] = -vector[i];
            }
            vector[u] += 1;
            Vectors.orthonormal(vector, found);
            found.add(vector);
        }
        return found;
    }

    void requireUsable() {
        if (!usable) {
            throw new IllegalStateException("the last factorisation did not end");
        }
    }

    void requireRegular() {
        requireUsable();
        if (!nulls.isEmpty()) {
            throw new ArithmeticException(
                    "nothing holds unknown " + nulls.get(0) + ": null pivots at " + nulls);
        }
    }

    private void scatter(SymmetricMatrix matrix) {
        double[] from = matrix.values();
        Arrays.fill(value, 0);
        for (int i = 0; i < from.length; i++) {
            value[plan.target[i]] = from[i];
        }
        int[] start = matrix.pattern().starts();
        for (int j = 0; j < diagonal.length; j++) {
            diagonal[plan.placeOf[j]] = Math.abs(from[start[j]]);
        }
    }

    /** Adds what block {@code c} left, at {@code from} on the stack, to the front of its parent. */
    private void extend(int c, int from, int s, int to) {
        int k = plan.columns(s);
        int r = plan.rows(s);
        int m = k + r;
        int[] place = plan.inParent;
        int end = plan.rowStart[c + 1];
        int at = from;
        for (int j = plan.rowStart[c]; j < end; j++) {
            int p = place[j];
            if (p < k) {
                int base = plan.valueStart[s] + p * m;
                for (int i = j; i < end; i++) {
                    value[base + place[i]] += stack[at++];
                }
            } else {
                int base = to + Front.packed(p - k, r) - k;
                for (int i = j; i < end; i++) {
                    stack[base + place[i]] += stack[at++];
                }
            }
        }
    }

    private double take(int inFront, double pivot) {
        int place = column + inFront;
        if (!(Math.abs(pivot) < Double.POSITIVE_INFINITY)) {
            throw new ArithmeticException(
                    "the pivot of unknown " + plan.unknownAt[place] + " is " + pivot);
        }
        if (Math.abs(pivot) <= share * diagonal[place]) {
            nulls.add(plan.unknownAt[place]);
            return 0;
        }
        if (pivot < 0) {
            if (negative++ == 0) {
                firstNegative = plan.unknownAt[place];
            }
        }
        return pivot;
    }
}
