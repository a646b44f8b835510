package org.coachskin.reference;

import org.coachskin.harmonic.WaveSystem;

class ReissnerCapTest extends PlateTable {

    ReissnerCapTest() {
        super("reissner-1946-cap");
        WaveSystem cap = shell(isotropic(70e9, 1e-3), 100 * RIGID, 1 / 0.3);
        double side = 0.05e-3;
        put("w0", 1e3 * pressed(cap, 0.6, 0.6, side, side, 0.3, 0.3)[6] / (side * side));
    }

    @Override
    String title() {
        return "Spherical cap under a force at a point, shallow shell without shear";
    }
}
