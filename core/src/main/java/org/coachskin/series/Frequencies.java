package org.coachskin.series;

import org.coachskin.harmonic.Cholesky;
import org.coachskin.harmonic.Theory;
import org.coachskin.harmonic.WaveSystem;
import org.coachskin.panel.Panel;

/** Natural frequencies of a panel, wave by wave: K x = omega^2 M x, rotary inertia included. */
final class Frequencies {

    /**
     * How far above the lowest frequency found a flat panel's wave must lie before a crown is taken
     * not to bring it below.
     */
    private static final double CLEAR = 1.5;

    private static final int MOST_STEPS = 200;

    private final WaveSystem system;
    private final WaveSystem flat;
    private final Panel panel;
    private final double[] mass;

    Frequencies(Theory theory, Panel panel) {
        this.panel = panel;
        system =
                WaveSystem.of(
                        theory,
                        panel.laminate(),
                        panel.crown().across(),
                        panel.crown().along(),
                        false);
        flat = WaveSystem.of(theory, panel.laminate(), 0, 0, false);
        mass = new double[system.size * system.size];
        system.mass(mass);
    }

    /**
     * Returns the lowest frequency [Hz]. A flat panel has it in its first wave. A crown resists
     * long waves more than short ones, so shorter ones are tried until bending alone puts them
     * above what was found.
     */
    double lowest() {
        double lowest = of(1, 1);
        if (panel.crown().isFlat()) {
            return lowest;
        }
        for (int m = 1; frequency(flat, m, 1) < CLEAR * lowest; m++) {
            for (int n = 1; frequency(flat, m, n) < CLEAR * lowest; n++) {
                lowest = Math.min(lowest, of(m, n));
            }
        }
        return lowest;
    }

    /** Returns the lowest frequency of one wave [Hz]. */
    double of(int m, int n) {
        return frequency(system, m, n);
    }

    /** Inverse iteration, which starts from deflection alone. */
    private double frequency(WaveSystem waves, int m, int n) {
        int k = waves.size;
        double[] factor = new double[k * k];
        waves.stiffness(m * Math.PI / panel.width(), n * Math.PI / panel.length(), factor);
        Cholesky.factor(factor, k);
        double[] inertia = new double[k];
        for (int i = 0; i < k; i++) {
            for (int j = waves.second; j < waves.first; j++) {
                inertia[i] += mass[i * k + j];
            }
        }
        double[] next = new double[k];
        double before = 0;
        double square = 0;
        for (int step = 0; step < MOST_STEPS; step++) {
            System.arraycopy(inertia, 0, next, 0, k);
            Cholesky.substitute(factor, k, next);
            double energy = dot(next, inertia);
            times(mass, next, inertia);
            double size = dot(next, inertia);
            square = energy / size;
            double norm = Math.sqrt(size);
            for (int i = 0; i < k; i++) {
                inertia[i] /= norm;
            }
            if (Math.abs(square - before) < 1e-13 * square) {
                break;
            }
            before = square;
        }
        return Math.sqrt(square) / (2 * Math.PI);
    }

    private static void times(double[] matrix, double[] x, double[] product) {
        int k = x.length;
        for (int i = 0; i < k; i++) {
            double sum = 0;
            for (int j = 0; j < k; j++) {
                sum += matrix[i * k + j] * x[j];
            }
            product[i] = sum;
        }
    }

    private static double dot(double[] x, double[] y) {
        double sum = 0;
        for (int i = 0; i < x.length; i++) {
            sum += x[i] * y[i];
        }
        return sum;
    }
}
