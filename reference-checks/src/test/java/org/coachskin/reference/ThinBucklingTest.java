package org.coachskin.reference;

import org.coachskin.harmonic.WaveSystem;
import org.coachskin.laminate.Sym2;

class ThinBucklingTest extends PlateTable {

    private static final double T = 1e-3;

    ThinBucklingTest() {
        super("thin-buckling");
        double euler = Math.PI * Math.PI * bending(1, T);
        double one = buckling(plate(isotropic(1, T), RIGID), Math.PI, Math.PI);
        put("square plate along x", one / euler);
        put("square plate along x and y alike", one / 2 / euler);
        // E = 1, radius 1.
        Sym2 rigid = new Sym2(RIGID, 0, RIGID);
        WaveSystem cylinder = WaveSystem.firstOrder(isotropic(1, T), rigid, 0, 1);
        put("cylinder sigma R/(E t)", least(cylinder, false) / T / T);
        WaveSystem sphere = WaveSystem.firstOrder(isotropic(1, T), rigid, 1, 1);
        put("sphere p R^2/(E t^2)", 2 * least(sphere, true) / (T * T));
    }

    /** Least force per width over the waves: along x alone, or the same along x and y. */
    private static double least(WaveSystem system, boolean bothWays) {
        double least = Double.POSITIVE_INFINITY;
        for (double alpha = 2; alpha < 200; alpha += 0.5) {
            for (double beta = 0.5; beta < 200; beta += 2) {
                double share = bothWays ? alpha * alpha / (alpha * alpha + beta * beta) : 1;
                least = Math.min(least, buckling(system, alpha, beta) * share);
            }
        }
        return least;
    }

    @Override
    String title() {
        return "Thin plates, cylinders and spheres under compression: the stiffness of one wave, least over the waves";
    }

    @Override
    String remark() {
        return "Upper limits: real shells buckle far below them.";
    }
}
