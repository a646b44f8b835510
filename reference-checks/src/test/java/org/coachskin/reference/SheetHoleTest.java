package org.coachskin.reference;

import org.coachskin.failure.EllipticHole;
import org.coachskin.laminate.Sym3;
import org.coachskin.laminate.Triple;

class SheetHoleTest extends FailureTable {

    private static final Triple PULL = new Triple(1, 0, 0);

    SheetHoleTest() {
        super("hole-in-a-sheet");
        EllipticHole circle = new EllipticHole(sheet(1, 1, 0.3, 1 / 2.6), 1, 1);
        put("circle pulled: beside it", beside(circle));
        put("circle pulled: before it", circle.hoop(0, PULL));
        put("circle pulled alike both ways", circle.largestHoop(new Triple(1, 1, 0)));
        put("circle sheared", Math.abs(circle.largestHoop(new Triple(0, 0, 1))));
        put(
                "ellipse 2 to 1 across the pull",
                beside(new EllipticHole(sheet(1, 1, 0.3, 1 / 2.6), 1, 2)));
        put(
                "ellipse 2 to 1 along the pull",
                beside(new EllipticHole(sheet(1, 1, 0.3, 1 / 2.6), 2, 1)));
        EllipticHole along = new EllipticHole(sheet(120_000, 60_000, 0.071, 7000), 1, 1);
        put("plywood pulled along: beside it", beside(along));
        put("plywood pulled along: before it", along.hoop(0, PULL));
        EllipticHole across = new EllipticHole(sheet(60_000, 120_000, 0.0355, 7000), 1, 1);
        put("plywood pulled across: beside it", beside(across));
        put("plywood pulled across: before it", across.hoop(0, PULL));
        EllipticHole woven = new EllipticHole(sheet(24, 24, 0.12, 4), 1, 1);
        put("woven 0/90", beside(woven));
        // Pulled at 45 degrees in the cloth's own axes.
        put("woven +-45", woven.hoop(-Math.PI / 4, new Triple(0.5, 0.5, 0.5)));
    }

    private static double beside(EllipticHole hole) {
        return hole.hoop(Math.PI / 2, PULL);
    }

    private static Sym3 sheet(double e1, double e2, double nu, double g) {
        return new Sym3(1 / e1, -nu / e1, 1 / e2, 0, 0, 1 / g).inverse();
    }

    @Override
    String title() {
        return "A hole in a wide sheet: stress along its rim, closed form";
    }
}
