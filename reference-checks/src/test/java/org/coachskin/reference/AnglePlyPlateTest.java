package org.coachskin.reference;

import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Stiffness;
import org.coachskin.laminate.Sym3;

class AnglePlyPlateTest extends PlateTable {

    AnglePlyPlateTest() {
        super("reddy-2004-angle-ply");
        put("CLPT", deflection(1e4));
        put("FSDT a/h=10", deflection(10));
    }

    /**
     * The book's closed form for edges that slide along themselves, u and v with sine and cosine
     * exchanged, on our stiffnesses: 100 E2 h^3 w/(q a^4), side 1.
     */
    private static double deflection(double slender) {
        double h = 1 / slender;
        Laminate laminate =
                StackTable.stack(StackTable.ply(40, 1, 0.25, 0.6, 0.6, 0.5, h / 2, 0, 0), -45, 45);
        Stiffness s = Stiffness.of(laminate);
        double shear = 5.0 / 6 * h * laminate.layers().get(0).shearStiffness().m11();
        double k = Math.PI;
        // ex, ey and kxy go with cos cos, gxy, kx and ky with sin sin.
        double[][] strain = {
            {k, 0, 0, 0, 0},
            {0, k, 0, 0, 0},
            {-k, -k, 0, 0, 0},
            {0, 0, 0, -k, 0},
            {0, 0, 0, 0, -k},
            {0, 0, 0, k, k},
            {0, 0, k, 1, 0},
            {0, 0, k, 0, 1}
        };
        double[][] c = new double[8][8];
        put(c, 0, s.a());
        put(c, 3, s.d());
        c[0][5] = c[5][0] = s.b().m16();
        c[1][5] = c[5][1] = s.b().m26();
        c[2][3] = c[3][2] = s.b().m16();
        c[2][4] = c[4][2] = s.b().m26();
        c[6][6] = c[7][7] = shear;
        double w = ByHand.solve(ByHand.energy(strain, c), new double[] {0, 0, 1, 0, 0})[2];
        return 100 * w * h * h * h;
    }

    private static void put(double[][] c, int at, Sym3 m) {
        c[at][at] = m.m11();
        c[at][at + 1] = c[at + 1][at] = m.m12();
        c[at + 1][at + 1] = m.m22();
        c[at + 2][at + 2] = m.m66();
    }

    @Override
    String title() {
        return "Square plate of two angle plies under a sine pressure: our stiffnesses in the closed form of the book";
    }

    @Override
    String remark() {
        return "Its edges slide along themselves and are held across; our panels' edges are held along and free across, so this checks A, B, D and the shear modulus of turned plies, not the plate solution.";
    }
}
