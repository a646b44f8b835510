package org.coachskin.reference;

import org.coachskin.harmonic.WaveSystem;
import org.coachskin.laminate.Sym2;

class SandwichBucklingTest extends PlateTable {

    SandwichBucklingTest() {
        super("sandwich-buckling");
        for (double v : new double[] {0, 0.05, 0.2, 0.5}) {
            for (double length : new double[] {0.5, 1, 2}) {
                String name = v == 0 ? "0" : Double.toString(v);
                String side = length == 0.5 ? "0.5" : Integer.toString((int) length);
                put("K V=" + name + " a/b=" + side, coefficient(v, length));
            }
        }
    }

    /** Least over the half waves along the load of N b^2/(pi^2 D), b = 1. */
    private static double coefficient(double v, double length) {
        double t = 1e-3;
        double euler = Math.PI * Math.PI * bending(1, t);
        // 1 N/m is a billion times what bending carries, and rounding takes no figure yet.
        double s = v == 0 ? 1 : euler / v;
        WaveSystem system = WaveSystem.firstOrder(isotropic(1, t), new Sym2(s, 0, s), 0, 0);
        double least = Double.POSITIVE_INFINITY;
        for (int n = 1; n <= 20; n++) {
            least = Math.min(least, buckling(system, n * Math.PI / length, Math.PI));
        }
        return least / euler;
    }

    @Override
    String title() {
        return "Sandwich panel compressed along x, all edges supported: the stiffness of one wave, least over the waves";
    }
}
