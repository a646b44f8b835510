package org.coachskin.reference;

import org.coachskin.laminate.Laminate;

class NoorFrequenciesTest extends PlateTable {

    NoorFrequenciesTest() {
        super("noor-1973-frequencies");
        for (int ratio : new int[] {10, 20, 30, 40}) {
            double t = 0.2 / 4;
            Laminate laminate =
                    StackTable.stack(
                            StackTable.ply(ratio, 1, 0.25, 0.6, 0.6, 0.5, t, 0, 0), 0, 90, 90, 0);
            double omega = omega(plate(laminate, 5.0 / 6), Math.PI, Math.PI);
            put("E1/E2=" + ratio, omega / 0.2);
        }
    }

    @Override
    String title() {
        return "Natural frequency of a thick cross-ply plate, first-order theory with rotary inertia";
    }

    @Override
    String remark() {
        return "The shear factor is set to the 5/6 of the print.";
    }
}
