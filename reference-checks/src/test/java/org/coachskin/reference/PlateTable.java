package org.coachskin.reference;

import org.coachskin.harmonic.Cholesky;
import org.coachskin.harmonic.SingleSeries;
import org.coachskin.harmonic.WaveSystem;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Ply;
import org.coachskin.laminate.Sym2;
import org.coachskin.laminate.Sym3;

/**
 * A published table about plates and shallow shells carried along the whole rim; our values are
 * worked out when it is made. Loads are outward and deflections are printed along the load.
 */
abstract class PlateTable extends WorkedOutTable {

    /** Stands for a plate that does not shear. */
    static final double RIGID = 100;

    PlateTable(String work) {
        super("Plates and shallow shells", "plate/" + work + ".csv");
    }

    /**
     * Returns an isotropic plate of thickness {@code t}, modulus {@code e}, Poisson's ratio 0.3.
     */
    static Laminate isotropic(double e, double t) {
        double g = e / 2.6;
        Ply ply = StackTable.ply(e, e, 0.3, g, g, g, t, 0, 0);
        return new Laminate(java.util.List.of(new Layer.Laid(ply, 0)));
    }

    /** Returns its bending stiffness. */
    static double bending(double e, double t) {
        return e * t * t * t / (12 * (1 - 0.3 * 0.3));
    }

    /** Returns a flat plate with shear stiffness {@code factor} G t, layer by layer. */
    static WaveSystem plate(Laminate laminate, double factor) {
        return shell(laminate, factor, 0);
    }

    /** Returns a spherical shell with shear stiffness {@code factor} G t, layer by layer. */
    static WaveSystem shell(Laminate laminate, double factor, double curvature) {
        Sym2 h = Sym2.ZERO;
        for (Layer layer : laminate.layers()) {
            h = h.plus(layer.shearStiffness(), factor * layer.thickness());
        }
        return WaveSystem.firstOrder(laminate, h, curvature, curvature);
    }

    /**
     * Returns the fields of first-order theory under a pressure of 1 on a rectangle u by v in the
     * middle of a panel a by b: value, x- and y-derivative of u, phix, w, v, phiy; the value of a
     * rotation is its shear strain.
     */
    static double[] pressed(
            WaveSystem system, double a, double b, double u, double v, double x, double y) {
        double[] fields = new double[3 * system.size];
        new SingleSeries(system, a, b, false, SingleSeries.EXACT)
                .add(1, (a - u) / 2, (a + u) / 2, (b - v) / 2, (b + v) / 2, x, y, fields);
        return fields;
    }

    /** Returns the fields of one wave of pressure 1, amplitudes in the order of the system. */
    static double[] wave(WaveSystem system, double alpha, double beta) {
        double[] k = new double[system.size * system.size];
        double[] x = new double[system.size];
        system.stiffness(alpha, beta, k);
        system.pressure(x);
        Cholesky.solve(k, system.size, x);
        return x;
    }

    /**
     * Returns the sizes of sx, sy (middle) and txy (corner) at {@code z} in {@code layer} of a
     * balanced symmetric plate 1 by 1 under a sine pressure of 1, first-order theory.
     */
    static double[] waveStress(WaveSystem system, Layer layer, double z) {
        double[] x = wave(system, Math.PI, Math.PI);
        double turnX = x[1] * Math.PI * z;
        double turnY = x[system.first + 1] * Math.PI * z;
        Sym3 q = layer.stiffness();
        return new double[] {
            Math.abs(q.m11() * turnX + q.m12() * turnY),
            Math.abs(q.m12() * turnX + q.m22() * turnY),
            Math.abs(q.m66() * (turnX + turnY))
        };
    }

    /** Returns the force per width in compression along x at which this wave stands by itself. */
    static double buckling(WaveSystem system, double alpha, double beta) {
        return 1 / (wave(system, alpha, beta)[system.second] * alpha * alpha);
    }

    /** Returns the lowest circular frequency of one wave, by inverse iteration. */
    static double omega(WaveSystem system, double alpha, double beta) {
        int n = system.size;
        double[] k = new double[n * n];
        double[] mass = new double[n * n];
        system.stiffness(alpha, beta, k);
        system.mass(mass);
        Cholesky.factor(k, n);
        double[] x = wave(system, alpha, beta);
        double square = 0;
        for (int step = 0; step < 60; step++) {
            double[] inertia = times(mass, x);
            double[] next = inertia.clone();
            Cholesky.substitute(k, n, next);
            square = dot(next, inertia) / dot(next, times(mass, next));
            double size = Math.sqrt(dot(next, next));
            for (int i = 0; i < n; i++) {
                x[i] = next[i] / size;
            }
        }
        return Math.sqrt(square);
    }

    private static double[] times(double[] matrix, double[] x) {
        double[] y = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            for (int j = 0; j < x.length; j++) {
                y[i] += matrix[i * x.length + j] * x[j];
            }
        }
        return y;
    }

    private static double dot(double[] x, double[] y) {
        double sum = 0;
        for (int i = 0; i < x.length; i++) {
            sum += x[i] * y[i];
        }
        return sum;
    }
}
