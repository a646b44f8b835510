package org.coachskin.sparse;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;
import org.jspecify.annotations.Nullable;

/**
 * Block Lanczos with full reorthogonalisation and thick restart on A<sup>-1</sup> B, which is
 * symmetric in the inner product of A (Ericsson and Ruhe, Math. Comp. 35, 1980, pp. 1251-1268; Wu
 * and Simon, SIAM J. Matrix Anal. Appl. 22, 2000, pp. 602-616; both from memory). Its largest
 * eigenvalues are 1 over the lowest above zero of A x = &lambda; B x.
 */
final class Krylov {

    /** Directions at a time where several values are wanted, any of which may be multiple. */
    private static final int BLOCK = 4;

    private static final int RESTARTS = 200;

    /** After so many restarts values above zero that have not shown up are taken not to exist. */
    private static final int SURE = 5;

    /** A direction of which so little is left was rounded; what A does to it is worked out anew. */
    private static final double ROUNDED = 1e-3;

    /** Residual that a further restart does not halve, and is taken for rounding. */
    private static final double ROUNDING = 1e-5;

    /** What orthogonalising must leave of a vector for it to be a direction of its own. */
    private static final double OWN = 1e-11;

    private final SymmetricMatrix a;
    private final SymmetricMatrix b;
    private final Inverse inverse;
    private final int n;
    private final int wanted;
    private final int block;
    private final double good;
    private final int most;

    /** A direction, and what A does to it. */
    private static final class Direction {
        final double[] x;
        final double[] ax;

        Direction(double[] x, double[] ax) {
            this.x = x;
            this.ax = ax;
        }

        void add(double factor, Direction other) {
            Vectors.add(factor, other.x, x);
            Vectors.add(factor, other.ax, ax);
        }

        void scale(double factor) {
            Vectors.scale(factor, x);
            Vectors.scale(factor, ax);
        }

        double length() {
            return Math.sqrt(Math.max(0, Vectors.dot(x, ax)));
        }
    }

    /** Orthonormal in the inner product of A. */
    private final List<Direction> basis = new ArrayList<>();

    /** Next directions, orthonormal to the basis and to one another. */
    private List<Direction> next = new ArrayList<>();

    /** A^-1 B seen from the basis. */
    private final double[][] seen;

    /** Next directions times this are what A^-1 B does to the last block beyond the basis. */
    private double[][] beyond = new double[0][];

    /** Where the last block starts in the basis. */
    private int last;

    private final Random random = new Random(1);

    /**
     * @param good length of a residual, relative to its own eigenvalue, at which a vector is good
     *     enough
     */
    Krylov(SymmetricMatrix a, SymmetricMatrix b, Inverse inverse, int wanted, double good) {
        this.a = a;
        this.b = b;
        this.inverse = inverse;
        n = a.size();
        this.wanted = wanted;
        block = wanted == 1 ? 1 : BLOCK;
        this.good = good;
        most = Math.min(n, (2 * wanted + 28) / block * block);
        seen = new double[most + block][most + block];
    }

    /**
     * Returns eigenvectors, that of the lowest value above zero first; at most as many as wanted.
     */
    List<double[]> vectors() {
        growTo(Math.min(block, n));
        double before = Double.POSITIVE_INFINITY;
        for (int restart = 0; restart < RESTARTS; ) {
            if (!next.isEmpty()) {
                expand();
            }
            int size = basis.size();
            boolean exhausted = next.isEmpty();
            boolean full = exhausted || size + next.size() > most;
            EigenDecomposition_F64<DMatrixRMaj> ritz = ritz(size);
            Integer[] order = falling(ritz, size);
            int positive = positive(ritz, order);
            double worst = 0;
            for (int i = 0; i < positive; i++) {
                double left = left(vector(ritz, order[i])) / real(ritz, order[i]);
                worst = Math.max(worst, left);
            }
            boolean rounded = full && worst <= ROUNDING && worst > before / 2;
            boolean complete = positive == wanted || (full && restart >= SURE);
            boolean settled = complete && (worst <= good || rounded);
            if (settled || exhausted) {
                turn(ritz, order, positive);
                return basis.stream().map(direction -> direction.x).toList();
            }
            if (full) {
                turn(ritz, order, Math.min(size, wanted + block));
                before = worst;
                restart++;
            }
        }
        throw new ArithmeticException("eigenvalues did not settle in " + RESTARTS + " restarts");
    }

    private static Integer[] falling(EigenDecomposition_F64<DMatrixRMaj> ritz, int size) {
        Integer[] order = new Integer[size];
        for (int i = 0; i < size; i++) {
            order[i] = i;
        }
        Arrays.sort(order, (i, j) -> Double.compare(real(ritz, j), real(ritz, i)));
        return order;
    }

    /** Returns how many of the wanted values have shown up above zero. */
    private int positive(EigenDecomposition_F64<DMatrixRMaj> ritz, Integer[] order) {
        if (order.length == 0) {
            return 0;
        }
        double first = Math.abs(real(ritz, order[0]));
        double floor = 1e-12 * Math.max(first, Math.abs(real(ritz, order[order.length - 1])));
        int positive = 0;
        while (positive < Math.min(wanted, order.length) && real(ritz, order[positive]) > floor) {
            positive++;
        }
        return positive;
    }

    private static double real(EigenDecomposition_F64<DMatrixRMaj> ritz, int i) {
        return ritz.getEigenvalue(i).real;
    }

    private static DMatrixRMaj vector(EigenDecomposition_F64<DMatrixRMaj> ritz, int i) {
        return ritz.getEigenVector(i);
    }

    private EigenDecomposition_F64<DMatrixRMaj> ritz(int size) {
        DMatrixRMaj small = new DMatrixRMaj(size, size);
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                small.set(i, j, 0.5 * (seen[i][j] + seen[j][i]));
            }
        }
        EigenDecomposition_F64<DMatrixRMaj> found = DecompositionFactory_DDRM.eig(size, true, true);
        if (!found.decompose(small)) {
            throw new ArithmeticException("the small eigenproblem did not settle");
        }
        return found;
    }

    /** Length of what A^-1 B does to a Ritz vector beyond the basis. */
    private double left(DMatrixRMaj ritz) {
        double sum = 0;
        for (double[] row : beyond) {
            double part = 0;
            for (int i = 0; i < row.length; i++) {
                part += row[i] * ritz.get(last + i, 0);
            }
            sum += part * part;
        }
        return Math.sqrt(sum);
    }

    /** Keeps the first Ritz vectors as the basis. */
    private void turn(EigenDecomposition_F64<DMatrixRMaj> ritz, Integer[] order, int keep) {
        List<Direction> turned = new ArrayList<>();
        for (int i = 0; i < keep; i++) {
            DMatrixRMaj s = vector(ritz, order[i]);
            Direction sum = new Direction(new double[n], new double[n]);
            for (int j = 0; j < basis.size(); j++) {
                sum.add(s.get(j, 0), basis.get(j));
            }
            turned.add(sum);
        }
        for (double[] row : seen) {
            Arrays.fill(row, 0);
        }
        for (int i = 0; i < keep; i++) {
            seen[i][i] = real(ritz, order[i]);
        }
        basis.clear();
        basis.addAll(turned);
    }

    /** Takes the next directions into the basis and finds those after them. */
    private void expand() {
        int wide = next.size();
        last = basis.size();
        basis.addAll(next);
        double[] forces = new double[wide * n];
        for (int c = 0; c < wide; c++) {
            double[] image = new double[n];
            b.multiply(next.get(c).x, image);
            for (int i = 0; i < basis.size(); i++) {
                double h = Vectors.dot(basis.get(i).x, image);
                seen[i][last + c] = h;
                seen[last + c][i] = h;
            }
            System.arraycopy(image, 0, forces, c * n, n);
        }
        double[] images = new double[wide * n];
        inverse.solve(forces, images, wide);
        List<Direction> found = new ArrayList<>();
        List<double[]> rows = new ArrayList<>();
        for (int c = 0; c < wide; c++) {
            Direction w = new Direction(part(images, c), part(forces, c));
            double before = w.length();
            orthogonal(w, basis, null);
            double[] part = new double[found.size()];
            orthogonal(w, found, part);
            for (int i = 0; i < part.length; i++) {
                rows.get(i)[c] = part[i];
            }
            double after = w.length();
            if (after < ROUNDED * before) {
                a.multiply(w.x, w.ax);
                after = w.length();
            }
            if (after > OWN * before) {
                w.scale(1 / after);
                found.add(w);
                double[] row = new double[wide];
                row[c] = after;
                rows.add(row);
            }
        }
        beyond = rows.toArray(double[][]::new);
        next = found;
        growTo(wide);
    }

    private double[] part(double[] all, int column) {
        return Arrays.copyOfRange(all, column * n, (column + 1) * n);
    }

    /** Adds random directions until there are so many, or none is left. */
    private void growTo(int wide) {
        int missing = wide - next.size();
        while (missing > 0) {
            int before = next.size();
            for (Direction w : random(missing)) {
                add(w);
            }
            missing = next.size() == before ? 0 : wide - next.size();
        }
    }

    /** Adds a direction, if anything of it is left beside the others. */
    private void add(Direction w) {
        double before = w.length();
        if (before == 0) {
            return;
        }
        orthogonal(w, basis, null);
        orthogonal(w, next, null);
        a.multiply(w.x, w.ax);
        double after = w.length();
        if (after <= 1e-8 * before) {
            return;
        }
        // Rounding of what was left has been blown up: once more.
        w.scale(1 / after);
        orthogonal(w, basis, null);
        orthogonal(w, next, null);
        a.multiply(w.x, w.ax);
        w.scale(1 / w.length());
        next.add(w);
    }

    /** A^-1 B of random vectors: nothing in them that B does not see. */
    private List<Direction> random(int count) {
        double[] forces = new double[count * n];
        double[] x = new double[n];
        double[] force = new double[n];
        for (int c = 0; c < count; c++) {
            for (int i = 0; i < n; i++) {
                x[i] = random.nextDouble() - 0.5;
            }
            b.multiply(x, force);
            System.arraycopy(force, 0, forces, c * n, n);
        }
        double[] images = new double[count * n];
        inverse.solve(forces, images, count);
        List<Direction> out = new ArrayList<>();
        for (int c = 0; c < count; c++) {
            out.add(new Direction(part(images, c), part(forces, c)));
        }
        return out;
    }

    /** Takes what lies along {@code directions} out of {@code w}, twice. */
    private static void orthogonal(
            Direction w, List<Direction> directions, double @Nullable [] sum) {
        for (int turn = 0; turn < 2; turn++) {
            for (int i = 0; i < directions.size(); i++) {
                double h = Vectors.dot(directions.get(i).ax, w.x);
                w.add(-h, directions.get(i));
                if (sum != null) {
                    sum[i] += h;
                }
            }
        }
    }
}
