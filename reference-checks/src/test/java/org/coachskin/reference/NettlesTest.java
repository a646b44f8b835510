package org.coachskin.reference;

import org.coachskin.laminate.Ply;
import org.coachskin.laminate.Stiffness;

class NettlesTest extends StackTable {

    NettlesTest() {
        super("nettles-1994");
        double e1 = 20.01e6;
        double e2 = 1.301e6;
        double g12 = 1.001e6;
        double t = 0.005;
        Ply exact = ply(e1, e2, 0.3, g12, t);
        put("Q", exact.stiffness(0), 1);
        differs(
                "Q11 as printed in Example 2",
                e1 / (1 - 0.3 * 0.02),
                "E1/(1 - nu12 nu21) with the report's 0.02; Example 9 prints 20130785 for the same ply, so one digit is misprinted.");
        // The report goes on with nu21 rounded to 0.02: moduli that have just its Q.
        double rounded = (1 - 0.3 * 0.3 * e2 / e1) / (1 - 0.3 * 0.02);
        Ply printed = ply(e1 * rounded, e2 * rounded, 0.3, g12, t);
        put("Q11 as printed in Example 2", printed.stiffness(0).m11());
        put("45 deg Q", printed.stiffness(Math.PI / 4), 1);
        // The report lists the top ply first.
        put("[0/45] B", Stiffness.of(stack(printed, 45, 0)).b(), 1);
        Stiffness three = Stiffness.of(stack(printed, 90, 0, 45));
        put("[45/0/90] A", three.a(), 1);
        put("[45/0/90] B", three.b(), 1);
    }

    @Override
    String title() {
        return "Stiffness of graphite/epoxy plies and of two unsymmetric laminates: classical laminate theory";
    }
}
