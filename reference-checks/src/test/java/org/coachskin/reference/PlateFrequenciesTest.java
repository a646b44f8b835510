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
        put("B SSSS 4", omega(thin, pi, 3 * pi) * unit / Math.sqrt(12));
        double first = pi * pi / Math.sqrt(12);
        String multiple =
                "pi^2 (m^2 + n^2)/sqrt(12) exactly; the print is its own 5.705 times (m^2 + n^2)/2.";
        differs("B SSSS 2", 5 * first, multiple);
        differs("B SSSS 3", 8 * first, multiple);
        differs(
                "B SSSS 4",
                10 * first,
                "pi^2 (m^2 + n^2)/sqrt(12) exactly; 5 times the print's own 5.705 is 28.52, so 28.82 is misprinted.");
    }

    @Override
    String title() {
        return "Natural frequencies of a simply supported thin square plate";
    }
}
