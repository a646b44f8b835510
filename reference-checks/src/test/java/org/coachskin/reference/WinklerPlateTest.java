package org.coachskin.reference;

import org.coachskin.failure.FirstCrush;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Patch;

class WinklerPlateTest extends FailureTable {

    private static final double E_FOAM = 12e6;
    private static final double FOAM = 12e-3;

    WinklerPlateTest() {
        super("winkler-plate");
        put("w0 sqrt(k D)/P under a point load", deflection(0.01));
        put("w0 sqrt(k D)/P under a disc of radius 0.2 l", deflection(0.2));
    }

    /**
     * Deflection under the middle of a disc of {@code radius} times l: the pressure on the springs
     * over their stiffness.
     */
    private static double deflection(double radius) {
        double e = 14.5e9;
        double t = 0.414e-3;
        Layer face = new Layer.Laid(StackTable.ply(e, e, 0, e / 2, t), 0);
        // Foam that does not shear along stands as springs.
        Laminate springs = Laminate.of(face, StackTable.foam(E_FOAM, 1e-9, FOAM), face);
        double length = StrictMath.pow(e * t * t * t / 12 / (E_FOAM / FOAM), 0.25);
        Patch disc = new Patch.Disc(2 * radius * length);
        return FirstCrush.of(springs, disc).orElseThrow().pressure(1) * length * length;
    }

    @Override
    String title() {
        return "A plate on springs under a disc: first crush of foam that does not shear";
    }
}
