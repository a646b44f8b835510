package org.coachskin.reference;

import org.coachskin.harmonic.WaveSystem;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;

class PaganoClassicalTest extends PlateTable {

    PaganoClassicalTest() {
        super("pagano-1970-classical");
        double h = 1e-3;
        Layer face = new Layer.Laid(StackTable.ply(25, 1, 0.25, 0.5, 0.5, 0.2, 0.1 * h, 0, 0), 0);
        Layer core =
                new Layer.Laid(
                        StackTable.ply(0.04, 0.04, 0.25, 0.016, 0.06, 0.06, 0.8 * h, 0, 0), 0);
        WaveSystem system = plate(Laminate.of(face, core, face), RIGID * 100);
        double[] stress = waveStress(system, face, h / 2);
        put("sx_top", stress[0] * h * h);
        put("sy_top", stress[1] * h * h);
        put("txy_top", -stress[2] * h * h);
    }

    @Override
    String title() {
        return "Square sandwich plate under a sine pressure, plate theory without shear";
    }
}
