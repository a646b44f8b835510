package org.coachskin.reference;

import org.coachskin.harmonic.WaveSystem;

class ThickPlateFrequenciesTest extends PlateTable {

    ThickPlateFrequenciesTest() {
        super("thick-plate-frequencies");
        double factor = Math.PI * Math.PI / 12;
        double unit = Math.sqrt(2e11 / 8000) / (2 * Math.PI);
        WaveSystem ten = plate(isotropic(1, 1), factor);
        double k = Math.PI / 10;
        put("f 1 1", unit * omega(ten, k, k));
        put("f 1 2", unit * omega(ten, k, 2 * k));
        put("f 2 2", unit * omega(ten, 2 * k, 2 * k));
        put("lambda", omega(plate(isotropic(2.6, 0.1), 5.0 / 6), Math.PI, Math.PI));
    }

    @Override
    String title() {
        return "Natural frequencies of thick square plates, first-order theory with rotary inertia";
    }

    @Override
    String remark() {
        return "The first source does not state its shear factor; pi^2/12, used here, gives its figures, 5/6 is a thousandth above.";
    }
}
