package org.coachskin.reference;

import java.util.List;
import org.coachskin.harmonic.WaveSystem;

class ReddyShellTest extends PlateTable {

    ReddyShellTest() {
        super("reddy-1984-spherical");
        for (String stack : new String[] {"[0/90]", "[0/90/0]"}) {
            for (int slender : new int[] {10, 100}) {
                for (String radius : new String[] {"5", "10", "20", "50", "100", "plate"}) {
                    double curvature = radius.equals("plate") ? 0 : 1 / Double.parseDouble(radius);
                    WaveSystem system =
                            shell(ReddyPlateTest.laminate(stack, slender), 5.0 / 6, curvature);
                    String quantity = stack + " a/h=" + slender + " R/a=" + radius;
                    put(quantity, 10 * ReddyPlateTest.sine(system, slender));
                    explain(quantity, stack, slender, curvature);
                }
            }
        }
    }

    private void explain(String quantity, String stack, int slender, double curvature) {
        if (rows().stream().anyMatch(row -> row.quantity().equals(quantity) && row.isTarget())) {
            return;
        }
        List<Boolean> turned =
                stack.equals("[0/90]") ? List.of(false, true) : List.of(false, true, false);
        double w = ByHand.shell(turned, 1.0 / slender, curvature, true);
        String why =
                curvature == 0
                        ? "a flat plate has no u/R; 0.6693 of the same author's plates above is a tenth of ours."
                        : "with u/R in the transverse shear strain, which a shallow shell leaves out.";
        differs(quantity, 1000 * w / (slender * slender * slender), why);
    }

    @Override
    String title() {
        return "Spherical cross-ply panels under a sine pressure, shallow shell";
    }

    @Override
    String remark() {
        return "The book counts the displacement along the surface over the radius, u/R, in the transverse shear strain; shallow"
                + " shell theory, which ours is, leaves it out and reads the deflection low: by 0.1 per cent at a/h = 100 and"
                + " 0.75 per cent at a/h = 10, for R/a = 5. By hand is first-order theory with u/R. The print of [0/90/0] at"
                + " a/h = 10 lies 8e-4 to 9e-4 above even that for R/a = 5, 10 and the plate: most likely remembered wrongly.";
    }
}
