package org.coachskin.shell;

/**
 * How far an arc lies beside its chord, over (1 - s^2)/4, as polynomials in Newton's form; s runs
 * from -1 at the first corner to 1 at the second. Immutable.
 */
final class Bulge {

    /** Places where the arc is met. */
    private final double[] places;

    /** Divided differences, along x and along y. */
    private final double[][] differences;

    Bulge(Element.Arc arc, int order) {
        int n = order - 1;
        places = new double[n];
        differences = new double[2][n];
        double middle = (arc.start() + arc.end()) / 2;
        double half = (arc.end() - arc.start()) / 2;
        for (int i = 0; i < n; i++) {
            double s = StrictMath.cos(Math.PI * (i + 1) / order);
            double turn = s * half;
            double room = (1 - s * s) / 4;
            // From the chord, in the arc's own axes: outward along its middle, and along the chord.
            double out = arc.radius() * (StrictMath.cos(turn) - StrictMath.cos(half)) / room;
            double on = arc.radius() * (StrictMath.sin(turn) - s * StrictMath.sin(half)) / room;
            double cos = StrictMath.cos(middle);
            double sin = StrictMath.sin(middle);
            places[i] = s;
            differences[0][i] = out * cos - on * sin;
            differences[1][i] = out * sin + on * cos;
        }
        for (double[] d : differences) {
            for (int k = 1; k < n; k++) {
                for (int i = n - 1; i >= k; i--) {
                    d[i] = (d[i] - d[i - 1]) / (places[i] - places[i - k]);
                }
            }
        }
    }

    /** Returns value and derivative at {@code s}. */
    double[] at(int axis, double s) {
        double[] d = differences[axis];
        double value = 0;
        double slope = 0;
        for (int i = d.length - 1; i >= 0; i--) {
            slope = slope * (s - places[i]) + value;
            value = value * (s - places[i]) + d[i];
        }
        return new double[] {value, slope};
    }
}
