package org.coachskin.harmonic;

/**
 * The two leading parts of a strip solution far out, and their sums over all waves in closed form.
 *
 * <p>A field goes like (c + d/(&alpha;^2 + k^2)) over &alpha; or &alpha;^2, with k the wave number
 * of the thickness: a plain power d/&alpha;^2 would fit as well far out, but its first waves would
 * be a million times those of the field, and the sum a small difference of large ones. The sums are
 * Bernoulli polynomials and the cosh and sinh of a string on an elastic bed (Abramowitz and Stegun,
 * <i>Handbook of Mathematical Functions</i>, 1964, 23.1.16 to 23.1.18; Gradshteyn and Ryzhik,
 * <i>Table of Integrals, Series, and Products</i>, 1.445; both from memory).
 */
final class PowerTail {

    private static final double PI = Math.PI;

    private final double[] lead;
    private final double[] next;
    private final boolean[] along;
    private final double square;

    /**
     * Reads the coefficients at two wave numbers far out.
     *
     * @param one fields at {@code alpha}
     * @param two fields at twice that
     * @param k wave number of the thickness [1/m]
     * @param block length of a run of fields, of which the first {@code inPlane} go along x
     */
    PowerTail(double[] one, double[] two, double alpha, double k, int block, int inPlane) {
        lead = new double[one.length];
        next = new double[one.length];
        along = new boolean[one.length];
        square = k * k;
        double other = 2 * alpha;
        for (int i = 0; i < one.length; i++) {
            along[i] = i % block < inPlane;
            double f1 = one[i] * (along[i] ? alpha : alpha * alpha);
            double f2 = two[i] * (along[i] ? other : other * other);
            double step = 1 / (alpha * alpha + square) - 1 / (other * other + square);
            next[i] = (f1 - f2) / step;
            lead[i] = f1 - next[i] / (alpha * alpha + square);
        }
    }

    /** Returns what both parts of field {@code i} give at {@code alpha}. */
    double at(int i, double alpha) {
        double inverse = 1 / alpha;
        return (along[i] ? inverse : inverse * inverse)
                * (lead[i] + next[i] / (alpha * alpha + square));
    }

    /**
     * Adds the whole sum: the value by the coefficients of {@code i}, the x-derivative by those of
     * {@code slope}.
     *
     * @param a side [m]
     * @param theta phase of the first wave [rad]
     * @param weight sign over side
     */
    void add(int i, int slope, double a, double theta, double weight, double[] sum) {
        double t = theta - 2 * PI * Math.floor(theta / (2 * PI));
        double unit = a / PI;
        double u2 = unit * unit;
        double kappa = Math.sqrt(square) * unit;
        double cosines = (cosines2(t) - bedCosines(kappa, t)) / square;
        if (along[i]) {
            double sines = (sines1(t) - bedSines(kappa, t)) / square;
            sum[3 * i] += weight * (lead[i] * u2 * cosines2(t) + next[i] * u2 * cosines);
            sum[3 * i + 1] -= weight * unit * (lead[slope] * sines1(t) + next[slope] * sines);
        } else {
            double bed = (sines1(t) - bedSines(kappa, t)) / (kappa * kappa);
            double sines = (sines3(t) - bed) / square;
            sum[3 * i] += weight * unit * u2 * (lead[i] * sines3(t) + next[i] * sines);
            sum[3 * i + 1] += weight * u2 * (lead[slope] * cosines2(t) + next[slope] * cosines);
        }
    }

    /** Sum of sin(m t)/m. */
    static double sines1(double t) {
        return t == 0 ? 0 : (PI - t) / 2;
    }

    /** Sum of cos(m t)/m^2. */
    static double cosines2(double t) {
        return PI * PI / 6 - PI * t / 2 + t * t / 4;
    }

    /** Sum of sin(m t)/m^3. */
    static double sines3(double t) {
        return t * (PI * PI / 6 - t * (PI / 4 - t / 12));
    }

    /** Sum of cos(m t)/(m^2 + kappa^2). */
    static double bedCosines(double kappa, double t) {
        double sum = StrictMath.exp(-kappa * t) + StrictMath.exp(-kappa * (2 * PI - t));
        double whole = 1 - StrictMath.exp(-2 * PI * kappa);
        return PI / (2 * kappa) * sum / whole - 1 / (2 * kappa * kappa);
    }

    /** Sum of m sin(m t)/(m^2 + kappa^2). */
    static double bedSines(double kappa, double t) {
        if (t == 0) {
            return 0;
        }
        double difference = StrictMath.exp(-kappa * t) - StrictMath.exp(-kappa * (2 * PI - t));
        return PI / 2 * difference / (1 - StrictMath.exp(-2 * PI * kappa));
    }
}
