package org.coachskin.reference;

class SandwichPanelBucklingTest extends BucklingTable {

    private static final int FINE = 5;

    SandwichPanelBucklingTest() {
        super("sandwich-buckling");
    }

    @Override
    void solve() {
        put("K V=0 a/b=1", coefficient(RIGID, 1));
        put("K V=0.05 a/b=1", coefficient(shear(0.05), 1));
        put("K V=0.2 a/b=1", coefficient(shear(0.2), 1));
        put("K V=0.5 a/b=1", coefficient(shear(0.5), 1));
        put("K V=0.05 a/b=0.5", coefficient(shear(0.05), 0.5));
        put("K V=0.2 a/b=2", coefficient(shear(0.2), 2));
    }

    /** Returns the shear stiffness pi^2 D/(b^2 V) over that of the plate's own. */
    private static double shear(double v) {
        return euler() / v / (5.0 / 6 * THIN / 2.6);
    }

    private static double coefficient(double shear, double length) {
        var panel = loose("SSSS", length * SIDE, SIDE, isotropic(0.3, THIN, shear));
        return factor(panel, FINE, -euler(), 0, 0);
    }

    @Override
    String title() {
        return "Sandwich panel compressed along x, all edges supported";
    }

    @Override
    String remark() {
        return "The rim is pushed, the membrane forces are those of the solution; the shear stiffness is that of the whole section.";
    }
}
