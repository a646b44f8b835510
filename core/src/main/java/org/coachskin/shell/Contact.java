package org.coachskin.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import org.coachskin.NoAnswerException;
import org.coachskin.Problem;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * What a rubber seal does beyond an even spring: it lets go, and it goes solid.
 *
 * <p>The panel with even springs is solved once. Where the seal lets go or is solid an extra force
 * stands at its points; it is found by Newton's method on those points alone. The energy is
 * strictly convex and piecewise quadratic, each step goes to the minimum of the present piece or,
 * where that lies beyond the least energy along the way, to that least energy; such a method ends
 * after finitely many steps (Li and Swetits, SIAM J. Optim. 7, 1997; from memory).
 */
final class Contact {

    private static final int STEPS = 200;

    /** Force per length left over, as a share of the working force of the seal. */
    private static final double SETTLED = 1e-8;

    /** A panel that moves by this many times the squeeze of its seal has left it. */
    private static final double LOST = 1e6;

    private final SealLine seal;
    private final Flexibility flexibility;

    /** The panel on even springs. */
    interface Flexibility {

        /**
         * Returns the deflections of every point of the seal under a unit force per length at some
         * of them, one row for each of those.
         */
        List<double[]> deflections(List<Integer> points);

        /** Returns the solution under a load. */
        double[] solve(double[] load);
    }

    /** Deflections of every point under a unit force per length at one point. */
    private final Map<Integer, double[]> columns = new ConcurrentHashMap<>();

    Contact(SealLine seal, Flexibility flexibility) {
        this.seal = seal;
        this.flexibility = flexibility;
    }

    /**
     * Returns the solution under the load that made {@code even}, the solution on even springs.
     *
     * @throws NoAnswerException when the panel lifts off and only the seal held it
     */
    double[] settle(double[] even) {
        int n = seal.points.size();
        double[] w0 = new double[n];
        for (int i = 0; i < n; i++) {
            w0[i] = seal.deflection(i, even);
        }
        double[] force = new double[n];
        double[] w = w0.clone();
        for (int step = 0; step < STEPS; step++) {
            double[] next = newton(w, w0);
            double[] nextW = deflections(w0, next);
            double[] dw = new double[n];
            for (int i = 0; i < n; i++) {
                if (!(Math.abs(nextW[i]) < LOST * seal.points.get(i).seal.squeeze())) {
                    throw lost();
                }
                dw[i] = nextW[i] - w[i];
            }
            double t = leastEnergy(w, dw, force, next);
            for (int i = 0; i < n; i++) {
                force[i] += t * (next[i] - force[i]);
                w[i] += t * dw[i];
            }
            if (isSettled(w, force)) {
                return solution(even, force);
            }
        }
        throw new IllegalStateException("the rubber seal did not settle in " + STEPS + " steps");
    }

    private static NoAnswerException lost() {
        return new NoAnswerException(
                new Problem(
                        "",
                        "",
                        "The panel lifts off its rubber seal and nothing else holds it down.",
                        "Hold it: a latch, a hinge."));
    }

    private boolean isSettled(double[] w, double[] force) {
        for (int i = 0; i < w.length; i++) {
            SealLine.Point p = seal.points.get(i);
            if (Math.abs(p.beyond(w[i]) - force[i]) > SETTLED * p.seal.force()) {
                return false;
            }
        }
        return true;
    }

    /**
     * Returns what a small load does to the panel in the state of a settled solution, where each
     * point of the seal stays free, soft or solid as it is.
     *
     * @param settled the solution whose state counts
     * @param even the solution under the small load on even springs
     */
    double[] tangent(double[] settled, double[] even) {
        double[] slopes = new double[seal.points.size()];
        double[] w0 = new double[slopes.length];
        for (int i = 0; i < slopes.length; i++) {
            slopes[i] = seal.points.get(i).slope(seal.deflection(i, settled));
            w0[i] = seal.deflection(i, even);
        }
        return solution(even, forces(slopes, new double[slopes.length], w0));
    }

    /** Returns the extra forces that fit the state of every point at {@code w}. */
    private double[] newton(double[] w, double[] w0) {
        double[] slopes = new double[w.length];
        double[] rest = new double[w.length];
        for (int i = 0; i < w.length; i++) {
            SealLine.Point p = seal.points.get(i);
            slopes[i] = p.slope(w[i]);
            rest[i] = p.beyond(w[i]) - slopes[i] * w[i];
        }
        return forces(slopes, rest, w0);
    }

    /**
     * Returns the extra forces that are a slope times the deflection and a rest at every point.
     *
     * @param w0 deflections without extra forces
     */
    private double[] forces(double[] slopes, double[] rest, double[] w0) {
        int n = slopes.length;
        int[] active = new int[n];
        int count = 0;
        for (int i = 0; i < n; i++) {
            if (slopes[i] != 0) {
                active[count++] = i;
            }
        }
        double[] force = new double[n];
        if (count == 0) {
            return force;
        }
        work(active, count);
        // w = w0 + G r and r = r0 + d w at the active points: (1 - d G) r = r0 + d w0.
        DMatrixRMaj matrix = new DMatrixRMaj(count, count);
        DMatrixRMaj right = new DMatrixRMaj(count, 1);
        double[][] moved = new double[count][];
        for (int j = 0; j < count; j++) {
            moved[j] = column(active[j]);
        }
        for (int i = 0; i < count; i++) {
            double d = slopes[active[i]];
            for (int j = 0; j < count; j++) {
                double g = moved[j][active[i]];
                matrix.set(i, j, (i == j ? 1 : 0) - d * g);
            }
            right.set(i, 0, rest[active[i]] + d * w0[active[i]]);
        }
        DMatrixRMaj r = new DMatrixRMaj(count, 1);
        if (!CommonOps_DDRM.solve(matrix, right, r)) {
            throw lost();
        }
        for (int i = 0; i < count; i++) {
            force[active[i]] = r.get(i, 0);
        }
        return force;
    }

    /** Returns the share of the way, at most 1, after which the energy would rise again. */
    private double leastEnergy(double[] w, double[] dw, double[] from, double[] to) {
        if (slope(1, w, dw, from, to) <= 0) {
            return 1;
        }
        double low = 0;
        double high = 1;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (slope(middle, w, dw, from, to) <= 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /** Returns the derivative of the energy along the way. */
    private double slope(double t, double[] w, double[] dw, double[] from, double[] to) {
        double sum = 0;
        double size = 0;
        for (int i = 0; i < w.length; i++) {
            SealLine.Point p = seal.points.get(i);
            double force = from[i] + t * (to[i] - from[i]);
            double term = p.length * dw[i] * (force - p.beyond(w[i] + t * dw[i]));
            sum += term;
            size += Math.abs(term);
        }
        return sum - 1e-12 * size;
    }

    private double[] deflections(double[] w0, double[] force) {
        double[] w = w0.clone();
        for (int j = 0; j < force.length; j++) {
            if (force[j] != 0) {
                double[] g = column(j);
                for (int i = 0; i < w.length; i++) {
                    w[i] += force[j] * g[i];
                }
            }
        }
        return w;
    }

    private double[] solution(double[] even, double[] force) {
        double[] load = new double[seal.unknowns];
        boolean any = false;
        for (int j = 0; j < force.length; j++) {
            if (force[j] != 0) {
                seal.addForce(j, force[j], load);
                any = true;
            }
        }
        return any ? ShellPanel.sum(even, flexibility.solve(load), 1) : even;
    }

    private double[] column(int point) {
        work(new int[] {point}, 1);
        return Objects.requireNonNull(columns.get(point));
    }

    /** Works out the columns of some points that are not known yet, side by side. */
    private void work(int[] points, int count) {
        List<Integer> missing = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            if (!columns.containsKey(points[k])) {
                missing.add(points[k]);
            }
        }
        if (!missing.isEmpty()) {
            List<double[]> found = flexibility.deflections(missing);
            for (int k = 0; k < missing.size(); k++) {
                columns.put(missing.get(k), found.get(k));
            }
        }
    }
}
