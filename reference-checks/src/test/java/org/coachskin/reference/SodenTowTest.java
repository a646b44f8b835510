package org.coachskin.reference;

import org.coachskin.laminate.Ply;
import org.coachskin.material.Fibre;
import org.coachskin.material.Resin;

class SodenTowTest extends MaterialTable {

    SodenTowTest() {
        super("soden-1998");
        Fibre glass = fibre(74e9, 74e9, 30.8e9, 0.2, 0.2, 2560, 4.9e-6);
        Resin epoxy = resin(3.35e9, 0.35, 1200, 58e-6);
        Ply ply = unidirectional(glass, epoxy, share(0.6, glass, epoxy), 0);
        put("E1", ply.e1() / 1e9);
        put("E2", ply.e2() / 1e9);
        put("nu12", ply.nu12());
        put("G12", ply.g12() / 1e9);
        differs(
                "E2",
                Double.NaN,
                "a measurement; ours, the square array, is low as all simple formulas are: inverse rule 7.8, Halpin and Tsai 14.5.");
        differs(
                "G12",
                Double.NaN,
                "a measurement; ours is low as all simple formulas are: inverse rule 2.9, Halpin and Tsai 4.3.");
    }

    @Override
    String title() {
        return "A measured straight tow of glass and epoxy, volume share 0.60";
    }
}
