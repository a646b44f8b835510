package org.coachskin.reference;

import org.coachskin.harmonic.WaveSystem;
import org.coachskin.laminate.Laminate;

class ReddyPlateTest extends PlateTable {

    ReddyPlateTest() {
        super("reddy-2004-cross-ply");
        for (String stack : new String[] {"[0]", "[0/90]", "[0/90/0]", "[0/90/90/0]"}) {
            for (int slender : new int[] {4, 10, 20, 100}) {
                WaveSystem system = plate(laminate(stack, slender), 5.0 / 6);
                put("FSDT sin " + stack + " a/h=" + slender, sine(system, slender));
                put("FSDT udl " + stack + " a/h=" + slender, even(system, slender));
            }
            if (stack.equals("[0/90/90/0]")) {
                stresses(laminate(stack, 10));
            }
            WaveSystem thin = plate(laminate(stack, 1000), RIGID);
            put("CLPT sin " + stack, sine(thin, 1000));
            put("CLPT udl " + stack, even(thin, 1000));
        }
    }

    /** Stress under a sine pressure at a/h = 10: top, upper face of the inner plies, corner. */
    private void stresses(Laminate laminate) {
        WaveSystem system = plate(laminate, 5.0 / 6);
        String name = "FSDT sin [0/90/90/0] a/h=10 ";
        double square = 100;
        double h = laminate.thickness();
        put(name + "sx", waveStress(system, laminate.layers().get(0), h / 2)[0] / square);
        put(name + "sy", waveStress(system, laminate.layers().get(1), h / 4)[1] / square);
        put(name + "sxy", waveStress(system, laminate.layers().get(0), h / 2)[2] / square);
    }

    /** Side 1, E2 = 1, equal plies. */
    static Laminate laminate(String stack, double slender) {
        String[] angles = stack.substring(1, stack.length() - 1).split("/", -1);
        double[] degrees = new double[angles.length];
        for (int i = 0; i < angles.length; i++) {
            degrees[i] = Double.parseDouble(angles[i]);
        }
        double t = 1 / slender / angles.length;
        return StackTable.stack(StackTable.ply(25, 1, 0.25, 0.5, 0.5, 0.2, t, 0, 0), degrees);
    }

    static double sine(WaveSystem system, double slender) {
        double w = wave(system, Math.PI, Math.PI)[system.second];
        return 100 * w / (slender * slender * slender);
    }

    private static double even(WaveSystem system, double slender) {
        double w = pressed(system, 1, 1, 1, 1, 0.5, 0.5)[3 * system.second];
        return 100 * w / (slender * slender * slender);
    }

    @Override
    String title() {
        return "Cross-ply plates under a sine and an even pressure, first-order theory with the shear factor of the book";
    }

    @Override
    String remark() {
        return "Our own first-order theory takes the shear stiffness from equilibrium; here it is set to 5/6 of G t as in the book.";
    }
}
