package org.coachskin.reference;

class ClampedThickPlateTest extends ShellTable {

    ClampedThickPlateTest() {
        super("mindlin-clamped");
        differs(
                "w h/L=0.01",
                RitzThickPlate.deflection(0.01, 0.3, 12),
                "Ritz with 12 x 12 polynomials for the deflection and each rotation gives ours; the print is cut off rather than rounded.");
    }

    @Override
    void solve() {
        for (double h : new double[] {0.01, 0.1}) {
            double t = h * SIDE;
            double w =
                    solve(plate("CCCC", SIDE, SIDE, isotropic(0.3, t)), ORDER, even())
                            .get(0)
                            .deflection(SIDE / 2, SIDE / 2);
            put("w h/L=" + h, w * bending(0.3, t) / Math.pow(SIDE, 4));
        }
        double factor = 0.8601 / (5.0 / 6);
        double omega =
                omegas(plate("CCCC", SIDE, SIDE, isotropic(0.3, 0.1 * SIDE, factor)), ORDER, 1)
                        .get(0);
        put("omega L sqrt(rho/G) h/L=0.1", omega * SIDE * Math.sqrt(2.6));
    }

    @Override
    String title() {
        return "Thick clamped square plate: deflection and frequency with shear";
    }
}
