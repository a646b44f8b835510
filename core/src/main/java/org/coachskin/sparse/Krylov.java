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

    private static final int BLOCK = 4;
    private static final int RESTARTS = 200;

    /** After so many restarts values above zero that have not shown up are taken not to exist. */
    private static final int SURE = 5;

    /**
     * Length of a residual, relative to its own eigenvalue, at which a vector is good enough; the
     * error of the value is about its square.
     */
    private static final double GOOD = 1e-9;

    /** The same where a further restart does not halve it, which is rounding. */
    private static final double ROUNDING = 1e-5;

    /** What orthogonalising must leave of a vector for it to be a direction of its own. */
    private static final double OWN = 1e-11;

    private final SymmetricMatrix a;
    private final SymmetricMatrix b;
    private final Solver solver;
    private final int n;
    private final int wanted;
    private final int most;

    /** Orthonormal in the inner product of A. */
    private final List<double[]> basis = new ArrayList<>();

    /** Next directions, orthonormal to the basis and to one another. */
    private List<double[]> next = new ArrayList<>();

    /** A^-1 B seen from the basis. */
    private final double[][] seen;

    /** Next directions times this are what A^-1 B does to the last block beyond the basis. */
    private double[][] beyond = new double[0][];

    /** Where the last block starts in the basis. */
    private int last;

    private final Random random = new Random(1);
    private final double[] image;

    Krylov(SymmetricMatrix a, SymmetricMatrix b, Factor factor, int wanted) {
        this.a = a;
        this.b = b;
        solver = factor.solver();
        n = a.size();
        this.wanted = wanted;
        most = Math.min(n, (2 * wanted + 28) / BLOCK * BLOCK);
        seen = new double[most + BLOCK][most + BLOCK];
        image = new double[n];
    }

    /**
     * Returns eigenvectors, that of the lowest value above zero first; at most as many as wanted.
     */
    List<double[]> vectors() {
        growTo(Math.min(BLOCK, n));
        double before = Double.POSITIVE_INFINITY;
        for (int restart = 0; restart < RESTARTS; restart++) {
            while (!next.isEmpty() && basis.size() + next.size() <= most) {
                expand();
            }
            int size = basis.size();
            EigenDecomposition_F64<DMatrixRMaj> ritz = ritz(size);
            Integer[] order = new Integer[size];
            for (int i = 0; i < size; i++) {
                order[i] = i;
            }
            Arrays.sort(order, (i, j) -> Double.compare(real(ritz, j), real(ritz, i)));
            double floor =
                    size == 0
                            ? 0
                            : 1e-12
                                    * Math.max(
                                            Math.abs(real(ritz, order[0])),
                                            Math.abs(real(ritz, order[size - 1])));
            int positive = 0;
            double worst = 0;
            while (positive < Math.min(wanted, size) && real(ritz, order[positive]) > floor) {
                double left = left(vector(ritz, order[positive])) / real(ritz, order[positive]);
                worst = Math.max(worst, left);
                positive++;
            }
            boolean good = worst <= GOOD || (worst <= ROUNDING && worst > before / 2);
            before = worst;
            boolean settled = good && (positive == wanted || restart >= SURE);
            boolean exhausted = next.isEmpty();
            int keep = settled || exhausted ? positive : Math.min(size, wanted + BLOCK);
            turn(ritz, order, keep);
            if (settled || exhausted) {
                return basis;
            }
        }
        throw new ArithmeticException("eigenvalues did not settle in " + RESTARTS + " restarts");
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
        List<double[]> turned = new ArrayList<>();
        for (int i = 0; i < keep; i++) {
            DMatrixRMaj s = vector(ritz, order[i]);
            double[] x = new double[n];
            for (int j = 0; j < basis.size(); j++) {
                Vectors.add(s.get(j, 0), basis.get(j), x);
            }
            turned.add(x);
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
        double[] images = new double[wide * n];
        for (int c = 0; c < wide; c++) {
            b.multiply(next.get(c), image);
            for (int i = 0; i < basis.size(); i++) {
                double h = Vectors.dot(basis.get(i), image);
                seen[i][last + c] = h;
                seen[last + c][i] = h;
            }
            System.arraycopy(image, 0, images, c * n, n);
        }
        solver.solve(images, images, wide);
        List<double[]> found = new ArrayList<>();
        List<double[]> rows = new ArrayList<>();
        for (int c = 0; c < wide; c++) {
            double[] w = Arrays.copyOfRange(images, c * n, (c + 1) * n);
            double before = length(w);
            orthogonal(w, basis, null);
            double[] part = new double[found.size()];
            orthogonal(w, found, part);
            for (int i = 0; i < part.length; i++) {
                rows.get(i)[c] = part[i];
            }
            double after = length(w);
            if (after > OWN * before) {
                Vectors.scale(1 / after, w);
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

    private void growTo(int wide) {
        boolean more = true;
        while (more && next.size() < wide) {
            more = grow();
        }
    }

    /** Adds a random direction; false when there is none left. */
    private boolean grow() {
        double[] w = random();
        double before = length(w);
        if (before == 0) {
            return false;
        }
        orthogonal(w, basis, null);
        orthogonal(w, next, null);
        double after = length(w);
        if (after <= 1e-8 * before) {
            return false;
        }
        // Rounding of what was left has been blown up: once more.
        Vectors.scale(1 / after, w);
        orthogonal(w, basis, null);
        orthogonal(w, next, null);
        Vectors.scale(1 / length(w), w);
        next.add(w);
        return true;
    }

    /** A^-1 B of a random vector: nothing in it that B does not see. */
    private double[] random() {
        double[] x = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = random.nextDouble() - 0.5;
        }
        b.multiply(x, image);
        solver.solve(image, x);
        return x;
    }

    /** Takes what lies along {@code directions} out of {@code w}, twice. */
    private void orthogonal(double[] w, List<double[]> directions, double @Nullable [] sum) {
        for (int turn = 0; turn < 2; turn++) {
            a.multiply(w, image);
            for (int i = 0; i < directions.size(); i++) {
                double h = Vectors.dot(directions.get(i), image);
                Vectors.add(-h, directions.get(i), w);
                if (sum != null) {
                    sum[i] += h;
                }
            }
        }
    }

    private double length(double[] x) {
        a.multiply(x, image);
        return Math.sqrt(Math.max(0, Vectors.dot(x, image)));
    }
}
