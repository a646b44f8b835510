package org.coachskin.reference;

import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Stiffness;
import org.coachskin.laminate.Sym2;

class CrossPlyPanelBucklingTest extends BucklingTable {

    private static final int FINE = 4;

    CrossPlyPanelBucklingTest() {
        super("cross-ply-buckling");
    }

    @Override
    void solve() {
        for (int ratio : new int[] {3, 10, 20, 30, 40}) {
            put("FSDT E1/E2=" + ratio, force(ratio, 0.1 * SIDE, 1));
            put("CLPT E1/E2=" + ratio, force(ratio, THIN, RIGID));
        }
    }

    private static double force(int ratio, double h, double factor) {
        double unit = h * h * h / (SIDE * SIDE);
        Laminate laminate = sheared(ratio, h, factor * 5 / 6 * h * 0.55);
        return factor(loose("SSSS", SIDE, SIDE, laminate), FINE, -unit, 0, 0);
    }

    /**
     * Returns the stack with shear stiffness {@code wanted} both ways: ours follows from
     * equilibrium, the table's from a factor, so shear moduli are taken that give the table's. Each
     * ply adds to the shear compliance by itself.
     */
    private static Laminate sheared(int ratio, double h, double wanted) {
        double none = 1e9;
        Sym2 first = Stiffness.of(stack(ratio, h, 1, none), 0).h();
        Sym2 second = Stiffness.of(stack(ratio, h, none, 1), 0).h();
        double det = 1 / (first.m11() * second.m22()) - 1 / (first.m22() * second.m11());
        double g13 = wanted * det / (1 / second.m22() - 1 / second.m11());
        double g23 = wanted * det / (1 / first.m11() - 1 / first.m22());
        return stack(ratio, h, g13, g23);
    }

    private static Laminate stack(int ratio, double h, double g13, double g23) {
        return StackTable.stack(
                StackTable.ply(ratio, 1, 0.25, 0.6, g13, g23, h / 4, 0, 0), 0, 90, 90, 0);
    }

    @Override
    String title() {
        return "Square cross-ply plate compressed along x, all edges supported";
    }

    @Override
    String remark() {
        return "Shear moduli are chosen so that the plate's shear stiffness is the table's, by the factor 5/6.";
    }
}
