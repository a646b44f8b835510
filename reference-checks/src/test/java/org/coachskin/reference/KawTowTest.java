package org.coachskin.reference;

import org.coachskin.laminate.Ply;
import org.coachskin.material.Fibre;
import org.coachskin.material.Resin;

class KawTowTest extends MaterialTable {

    KawTowTest() {
        super("kaw-2006");
        Fibre glass = fibre(85e9, 85e9, 85e9 / 2.4, 0.2, 0.2, 2500, 5e-6);
        Resin epoxy = resin(3.4e9, 0.3, 1200, 63e-6);
        Ply ply = unidirectional(glass, epoxy, share(0.7, glass, epoxy), 0);
        put("density", ply.density());
        put(
                "volume share at 0.8294 by weight",
                volumeShare(unidirectional(glass, epoxy, 0.8294, 0), glass));
        put("E1", ply.e1() / 1e9);
        put("nu12", ply.nu12());
        put("Gm", epoxy.g() / 1e9);
        put("alpha1", ply.alpha1() / 1e-6);
        put("alpha2", ply.alpha2() / 1e-6);
    }

    @Override
    String title() {
        return "A straight tow of glass and epoxy, volume share 0.70: mixtures and expansion";
    }

    @Override
    String remark() {
        return "Disputed: the book's expansions are Schapery's formulas of 1968, along the tow with equal contraction of both phases and across "
                + "it a bound from above. Ours is exact for composite cylinders (Levin's relation): along 2 % more, across 17 % less.";
    }
}
