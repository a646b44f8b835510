package org.coachskin.reference;

import org.coachskin.harmonic.WaveSystem;
import org.coachskin.laminate.Laminate;

class CrossPlyBucklingTest extends PlateTable {

    CrossPlyBucklingTest() {
        super("noor-1975-buckling");
        for (int ratio : new int[] {3, 10, 20, 30, 40}) {
            put("FSDT E1/E2=" + ratio, force(plate(laminate(ratio, 0.1), 5.0 / 6), 0.1));
            put("CLPT E1/E2=" + ratio, force(plate(laminate(ratio, 1e-3), RIGID), 1e-3));
        }
    }

    private static Laminate laminate(int ratio, double h) {
        return StackTable.stack(
                StackTable.ply(ratio, 1, 0.25, 0.6, 0.6, 0.5, h / 4, 0, 0), 0, 90, 90, 0);
    }

    private static double force(WaveSystem system, double h) {
        return buckling(system, Math.PI, Math.PI) / (h * h * h);
    }

    @Override
    String title() {
        return "Square cross-ply plate compressed along x, all edges supported: the stiffness of one wave";
    }
}
