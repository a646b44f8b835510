package org.coachskin.harmonic;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What a load that does not vary along y does: a strip, wave by wave along x.
 *
 * <p>The sum over all waves is that of {@link StripTail} plus, over as many waves as it takes, what
 * that leaves out.
 */
final class Strip {

    /** A displacement below this share of the deflection is nought, as in a rotation per metre. */
    private static final double FAINT = 1e-6;

    /** The least that the tail of a strip leaves out, as a share of its largest wave. */
    private static final double EXACT = 1e-9;

    /** Longest run of strip solutions whose tail has not settled. */
    private static final int LONGEST = 160_000;

    private static final int SHORTEST = 8;

    /** The tail is tried this many times between two of the wave numbers it is fitted at. */
    private static final int BETWEEN = 2;

    private final WaveSystem system;
    private final boolean bow;
    private final double a;
    private final double small;
    private final int k;
    private final StripTail tail;
    private final double[][] rest;

    /** Scratch. */
    private final double[] matrix;

    private final double[] rhs;

    /**
     * Solves as many waves as the tail needs.
     *
     * @param a side [m]
     * @param bow whether the load is the stack's free bow; else a pressure outward
     * @param small what may be left out, as a share of the largest wave
     */
    Strip(WaveSystem system, double a, boolean bow, double small) {
        this.system = system;
        this.bow = bow;
        this.a = a;
        this.small = Math.max(small, EXACT);
        k = system.first;
        matrix = new double[k * k];
        rhs = new double[system.size];
        double longest = Math.PI / a;
        StripPoles poles = StripPoles.of(system, longest);
        double[] alphas = places(poles, longest);
        double[][] solutions = new double[alphas.length][];
        for (int i = 0; i < alphas.length; i++) {
            solutions[i] = at(alphas[i]);
        }
        tail = new StripTail(poles, alphas, solutions, k, system.second);
        rest = rest(alphas);
    }

    /** Returns how many waves are added one by one. */
    int waves() {
        return rest.length;
    }

    /** Wave numbers to fit at: the longest wave, one near each root, two beyond. */
    private static double[] places(StripPoles poles, double longest) {
        double[] places = new double[StripTail.terms(poles)];
        places[0] = longest;
        for (int p = 0; p < poles.count(); p++) {
            places[p + 1] = Math.max(Math.sqrt(poles.size(p)), 1.5 * places[p]);
        }
        for (int i = poles.count() + 1; i < places.length; i++) {
            places[i] = 4 * places[i - 1];
        }
        return places;
    }

    /** What the tail leaves out of each wave until that is small enough. */
    private double[][] rest(double[] alphas) {
        double[] largest = new double[2 * k];
        List<double[]> found = new ArrayList<>();
        int least = SHORTEST;
        int settled = 0;
        for (int m = 1; m <= LONGEST && settled < 3; m++) {
            double[] left = new double[2 * k];
            boolean close = isClose(m * Math.PI / a, largest, left);
            found.add(left);
            if (m == 1) {
                least = Math.max(least, leastWaves(alphas, largest));
            }
            settled = close && m >= least ? settled + 1 : 0;
        }
        return found.toArray(new double[0][]);
    }

    /** Returns up to which wave the tail does not yet fit. */
    private int leastWaves(double[] alphas, double[] largest) {
        double from = 0;
        for (int i = 1; i < alphas.length; i++) {
            for (int j = 1; j <= BETWEEN; j++) {
                double share = j / (BETWEEN + 1.0);
                double alpha = alphas[i - 1] + share * (alphas[i] - alphas[i - 1]);
                if (!isClose(alpha, largest, new double[2 * k])) {
                    from = alpha;
                }
            }
        }
        return (int) (from * a / Math.PI) + 1;
    }

    /** Writes what the tail leaves out of one wave; returns whether that is little. */
    private boolean isClose(double alpha, double[] largest, double[] left) {
        double[] s = at(alpha);
        tail.at(alpha, left);
        boolean close = true;
        double m = alpha * a / Math.PI;
        for (int i = 0; i < 2 * k; i++) {
            left[i] = s[i] - left[i];
            largest[i] = Math.max(largest[i], Math.abs(s[i]));
            // The slopes of fields, which come second, fall off more slowly by one power. A field
            // that an even stack does not have is set against the deflection.
            double size = Math.max(largest[i], FAINT * largest[system.second]);
            close = close && Math.abs(left[i]) * (i < k ? 1 : m) <= small * size;
        }
        return close;
    }

    /** Returns the unknowns Z of the first block, then its fields. */
    private double[] at(double alpha) {
        system.strip(alpha, matrix);
        if (bow) {
            system.bow(alpha, rhs);
        } else {
            system.pressure(rhs);
        }
        double[] z = Arrays.copyOf(rhs, k);
        Elimination.solve(matrix, k, z, 1);
        double[] both = Arrays.copyOf(z, 2 * k);
        system.toFields(alpha, z, k);
        System.arraycopy(z, 0, both, k, k);
        return both;
    }

    /**
     * Adds the fields of the first block and their x-derivatives.
     *
     * @param x1 x2 the load [m]
     * @param sum added to; value, x-derivative and y-derivative of each field
     */
    void add(double x1, double x2, double x, double[] sum) {
        double[] phase = {x + x1, x - x1, x + x2, x - x2};
        double[] sin = new double[4];
        double[] cos = {1, 1, 1, 1};
        double[] stepSin = new double[4];
        double[] stepCos = new double[4];
        for (int f = 0; f < 4; f++) {
            stepSin[f] = StrictMath.sin(Math.PI * phase[f] / a);
            stepCos[f] = StrictMath.cos(Math.PI * phase[f] / a);
        }
        for (int m = 1; m <= rest.length; m++) {
            double sines = 0;
            double cosines = 0;
            for (int f = 0; f < 4; f++) {
                double next = sin[f] * stepCos[f] + cos[f] * stepSin[f];
                cos[f] = cos[f] * stepCos[f] - sin[f] * stepSin[f];
                sin[f] = next;
                double sign = f < 2 ? 1 : -1;
                sines += sign * next;
                cosines += sign * cos[f];
            }
            double alpha = m * Math.PI / a;
            double q = 1 / (a * alpha);
            for (int i = 0; i < k; i++) {
                double own = rest[m - 1][i];
                double turn = rest[m - 1][k + i];
                if (i < system.second) {
                    sum[3 * i] += q * own * cosines;
                    sum[3 * i + 1] -= q * turn * alpha * sines;
                } else {
                    sum[3 * i] += q * own * sines;
                    sum[3 * i + 1] += q * turn * alpha * cosines;
                }
            }
        }
        for (int f = 0; f < 4; f++) {
            tail.add(a, Math.PI * phase[f] / a, f < 2 ? 1 : -1, sum);
        }
    }
}
