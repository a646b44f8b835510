package org.coachskin.reference;

import org.coachskin.harmonic.WaveSystem;

class PlateFrequenciesTest extends PlateTable {

    PlateFrequenciesTest() {
        super("plate-frequencies");
        double t = 1e-3;
        WaveSystem thin = plate(isotropic(1, t), RIGID);
        double unit = Math.sqrt(t / bending(1, t));
        double pi = Math.PI;
        put("SSSS 1", omega(thin, pi, pi) * unit);
        put("SSSS 2", omega(thin, 2 * pi, pi) * unit);
        put("B SSSS 1", omega(thin, pi, pi) * unit / Math.sqrt(12));
        put("B SSSS 2", omega(thin, pi, 2 * pi) * unit / Math.sqrt(12));
        put("B SSSS 3", omega(thin, 2 * pi, 2 * pi) * unit / Math.sqrt(12));
    }

    @Override
    String title() {
        return "Natural frequencies of a simply supported thin square plate";
    }

    @Override
    String remark() {
        return "The exact B is pi^2 (m^2 + n^2)/sqrt(12); the disputed rows of the handbook are 0.1 per cent above it.";
    }
}
