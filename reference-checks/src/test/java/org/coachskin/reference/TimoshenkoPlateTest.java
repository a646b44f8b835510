package org.coachskin.reference;

import org.coachskin.harmonic.WaveSystem;

class TimoshenkoPlateTest extends PlateTable {

    TimoshenkoPlateTest() {
        super("timoshenko-1959");
        double d = bending(1, 1e-3);
        WaveSystem thin = plate(isotropic(1, 1e-3), RIGID);
        for (String r : new String[] {"1", "1.2", "1.4", "1.6", "1.8", "2", "3", "4", "5"}) {
            double b = Double.parseDouble(r);
            double[] even = pressed(thin, 1, b, 1, b, 0.5, b / 2);
            put("alpha r=" + r, even[6] * d);
            put("beta_x r=" + r, d * (even[4] + 0.3 * even[14]));
            double point = pressed(thin, 1, b, 1e-3, 1e-3, 0.5, b / 2)[6];
            put("point r=" + r, point / 1e-6 * d);
        }
        for (String r : new String[] {"1.2", "1.4"}) {
            differs(
                    "alpha r=" + r,
                    ByHand.evenDeflection(Double.parseDouble(r)),
                    "the double sine series gives ours; the print is low.");
        }
        for (String r : new String[] {"1.2", "1.4", "1.8", "2"}) {
            differs(
                    "point r=" + r,
                    ByHand.pointDeflection(Double.parseDouble(r)),
                    "all terms of the double sine series are positive, so a sum broken off is low, as the print is.");
        }
    }

    @Override
    String title() {
        return "Simply supported thin plate: central deflection and moment, by one sine series without shear";
    }

    @Override
    String remark() {
        return "Ours is one sine series along a side, exact along the other; by hand is the double sine series.";
    }
}
