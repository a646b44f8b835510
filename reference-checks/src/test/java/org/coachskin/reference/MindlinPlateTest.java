package org.coachskin.reference;

import org.coachskin.harmonic.WaveSystem;

class MindlinPlateTest extends PlateTable {

    MindlinPlateTest() {
        super("mindlin-square");
        for (double h : new double[] {0.01, 0.1}) {
            WaveSystem system = plate(isotropic(1, h), 5.0 / 6);
            double w = pressed(system, 1, 1, 1, 1, 0.5, 0.5)[6];
            put("SSSS h/L=" + h, w * bending(1, h));
        }
    }

    @Override
    String title() {
        return "Thick square plate under even pressure, first-order theory";
    }
}
