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

    /** How many columns are solved side by side. */
    private static final int AT_ONCE = 16;

    private final SealLine seal;
    private final int unknowns;
    private final Solve solve;

    /** Deflection of every point under a unit force per length at one point. */
    private final Map<Integer, double[]> columns = new ConcurrentHashMap<>();

    /** Solves with the panel on even springs: several loads, one solution each. */
    interface Solve {
        List<double[]> of(List<double[]> loads);
    }

    Contact(SealLine seal, int unknowns, Solve solve) {
        this.seal = seal;
        this.unknowns = unknowns;
        this.solve = solve;
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

    /** Returns the extra forces that fit the state of every point at {@code w}. */
    private double[] newton(double[] w, double[] w0) {
        int n = w.length;
        int[] active = new int[n];
        int count = 0;
        for (int i = 0; i < n; i++) {
            if (seal.points.get(i).slope(w[i]) != 0) {
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
        for (int i = 0; i < count; i++) {
            SealLine.Point p = seal.points.get(active[i]);
            double d = p.slope(w[active[i]]);
            double r0 = p.beyond(w[active[i]]) - d * w[active[i]];
            for (int j = 0; j < count; j++) {
                double g = column(active[j])[active[i]];
                matrix.set(i, j, (i == j ? 1 : 0) - d * g);
            }
            right.set(i, 0, r0 + d * w0[active[i]]);
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
        double[] load = new double[unknowns];
        boolean any = false;
        for (int j = 0; j < force.length; j++) {
            if (force[j] != 0) {
                seal.addForce(j, force[j], load);
                any = true;
            }
        }
        if (!any) {
            return even.clone();
        }
        double[] x = solve.of(List.of(load)).get(0);
        for (int i = 0; i < x.length; i++) {
            x[i] += even[i];
        }
        return x;
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
        for (int from = 0; from < missing.size(); from += AT_ONCE) {
            List<Integer> some = missing.subList(from, Math.min(from + AT_ONCE, missing.size()));
            List<double[]> loads = new ArrayList<>();
            for (int point : some) {
                double[] load = new double[unknowns];
                seal.addForce(point, 1, load);
                loads.add(load);
            }
            List<double[]> solutions = solve.of(loads);
            for (int k = 0; k < solutions.size(); k++) {
                double[] w = new double[seal.points.size()];
                for (int i = 0; i < w.length; i++) {
                    w[i] = seal.deflection(i, solutions.get(k));
                }
                columns.put(some.get(k), w);
            }
        }
    }
}
