package org.coachskin.prove;

import org.coachskin.laminate.Compliance;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.PrimaryInput;
import org.coachskin.laminate.Schedule;
import org.coachskin.laminate.Stiffness;

/**
 * A strip laid like the panel, on two rests, a weight hung from its middle: what a gauge under it
 * should read.
 *
 * <p>&delta; = P L^3/(48 D b) + P L/(4 S b), D with the strip free to narrow (1/d11), S the shear
 * stiffness from equilibrium (three-point bending of a sandwich beam; Allen, <i>Analysis and Design
 * of Structural Sandwich Panels</i>, 1969, chapter 2; from memory). Holds for a span of 20
 * thicknesses and more and a wide soft pad under the load.
 *
 * @param width of the strip [m]
 * @param span between the rests [m]
 * @param mass hung from the middle [kg]
 * @param reading expected [m]
 * @param low nine of ten strips read more [m]
 * @param high nine of ten strips read less [m]
 */
public record StripTest(
        double width, double span, double mass, double reading, double low, double high) {

    private static final double WIDTH = 0.075;

    private static final double TENTH = 1.2815515655446004;

    private static final double GRAVITY = 9.80665;

    /**
     * Returns the test of a strip laid by {@code schedule}: 75 mm wide, with a span and a weight
     * that suit it.
     */
    public static StripTest of(Schedule schedule) {
        Laminate laminate = schedule.laminate();
        double span = Math.max(0.3, Math.ceil(25 * laminate.thickness() * 10) / 10);
        double perKilo = reading(laminate, span, 1);
        // About 4 mm, which a gauge reads well and no strip breaks at.
        double mass = Math.max(0.5, Math.min(10, Math.rint(2 * 0.004 / perKilo) / 2));
        double nominal = perKilo * mass;
        double variance = 0;
        for (PrimaryInput input : PrimaryInput.values()) {
            double change = reading(schedule.moved(input, 1).laminate(), span, mass) - nominal;
            variance += change * change;
        }
        double half = TENTH * Math.sqrt(variance);
        return new StripTest(WIDTH, span, mass, nominal, nominal - half, nominal + half);
    }

    private static double reading(Laminate laminate, double span, double mass) {
        Stiffness s = Stiffness.of(laminate);
        double force = mass * GRAVITY;
        double bending = 1 / Compliance.of(s).d().m11();
        return force * span * span * span / (48 * bending * WIDTH)
                + force * span / (4 * s.h().m11() * WIDTH);
    }
}
