package org.coachskin.harmonic;

/**
 * Sums of sines and cosines over powers of m, in closed form, and the two leading powers of a strip
 * solution.
 *
 * <p>The sums are Bernoulli polynomials (Abramowitz and Stegun, <i>Handbook of Mathematical
 * Functions</i>, 1964, 23.1.16 to 23.1.18; from memory): the sum of cos(m t)/m^2 is &pi;^2/6 -
 * &pi;t/2 + t^2/4, and the others follow by integration.
 */
final class PowerTail {

    private static final double PI = Math.PI;

    private PowerTail() {}

    /**
     * Returns the two leading coefficients of each field, read at two wave numbers far out: odd
     * powers of 1/alpha for fields along x, even ones for deflections.
     */
    static double[] fit(double[] one, double[] two, double alpha, int inPlane) {
        double[] c = new double[3 * one.length];
        double other = 2 * alpha;
        for (int i = 0; i < one.length; i++) {
            double power = i < inPlane ? 1 : 2;
            double f1 = one[i] * (i < inPlane ? alpha : alpha * alpha);
            double f2 = two[i] * (i < inPlane ? other : other * other);
            double second = (f1 - f2) / (1 / (alpha * alpha) - 1 / (other * other));
            c[3 * i] = f1 - second / (alpha * alpha);
            c[3 * i + 1] = second;
            c[3 * i + 2] = power;
        }
        return c;
    }

    /** Returns what the two powers of field {@code i} give at {@code alpha}. */
    static double model(double[] c, int i, double alpha) {
        double inverse = 1 / alpha;
        double lead = c[3 * i + 2] == 1 ? inverse : inverse * inverse;
        return lead * (c[3 * i] + c[3 * i + 1] * inverse * inverse);
    }

    /**
     * Adds the whole sum of the two powers of field {@code i}, value and x-derivative.
     *
     * @param along whether the field goes like a cosine along x
     * @param theta phase of the first wave [rad]
     * @param weight sign over side
     */
    static void add(
            double[] c, int i, boolean along, double a, double theta, double weight, double[] sum) {
        double t = theta - 2 * PI * Math.floor(theta / (2 * PI));
        double unit = a / PI;
        double u2 = unit * unit;
        double lead = c[3 * i];
        double next = c[3 * i + 1] * u2;
        if (along) {
            sum[3 * i] += weight * u2 * (lead * cosines2(t) + next * cosines4(t));
            sum[3 * i + 1] -= weight * unit * (lead * sines1(t) + next * sines3(t));
        } else {
            sum[3 * i] += weight * unit * u2 * (lead * sines3(t) + next * sines5(t));
            sum[3 * i + 1] += weight * u2 * (lead * cosines2(t) + next * cosines4(t));
        }
    }

    static double sines1(double t) {
        return t == 0 ? 0 : (PI - t) / 2;
    }

    static double cosines2(double t) {
        return PI * PI / 6 - PI * t / 2 + t * t / 4;
    }

    static double sines3(double t) {
        return t * (PI * PI / 6 - t * (PI / 4 - t / 12));
    }

    static double cosines4(double t) {
        double pi2 = PI * PI;
        return pi2 * pi2 / 90 - t * t * (pi2 / 12 - t * (PI / 12 - t / 48));
    }

    static double sines5(double t) {
        double pi2 = PI * PI;
        return t * (pi2 * pi2 / 90 - t * t * (pi2 / 36 - t * (PI / 48 - t / 240)));
    }
}
