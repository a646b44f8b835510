package org.coachskin.reference;

import org.coachskin.harmonic.WaveSystem;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Sym2;

class SandwichPlateTest extends PlateTable {

    SandwichPlateTest() {
        super("sandwich-coefficients");
        double d = bending(1, 1e-2);
        Laminate laminate = isotropic(1, 1e-2);
        double[] bent = at(laminate, 1e4, 0.5);
        put("bending", bent[6] * d);
        put("moment", d * Math.abs(bent[4] + 0.3 * bent[14]));
        double soft = 1e-8;
        double[] sheared = at(laminate, soft, 0.5);
        put("shear", (sheared[6] - bent[6]) * soft);
        put("edge shear", Math.abs(at(laminate, soft, 0)[3]) * soft);
    }

    private static double[] at(Laminate laminate, double s, double x) {
        WaveSystem system = WaveSystem.firstOrder(laminate, new Sym2(s, 0, s), 0, 0);
        return pressed(system, 1, 1, 1, 1, x, 0.5);
    }

    @Override
    String title() {
        return "Square sandwich plate: what bending and what shear adds, first-order theory";
    }
}
