package org.coachskin.panel;

import org.coachskin.Require;
import org.coachskin.laminate.Laminate;

/**
 * A rectangular panel of one stack.
 *
 * @param name how it is called
 * @param width left to right, along x [m]
 * @param length front to rear, along y [m]
 * @param crown how it is curved
 * @param laminate the stack, inside to outside
 * @param support what holds it
 */
public record Panel(
        String name, double width, double length, Crown crown, Laminate laminate, Support support) {

    /** Checks that both sides are above zero. */
    public Panel {
        Require.positive("width of " + name, width, "m");
        Require.positive("length of " + name, length, "m");
    }

    /** Returns a flat panel carried along its whole rim. */
    public static Panel flat(String name, double width, double length, Laminate laminate) {
        return new Panel(name, width, length, Crown.FLAT, laminate, new Support.WholeRim());
    }

    /** Returns this panel with another stack. */
    public Panel withLaminate(Laminate other) {
        return new Panel(name, width, length, crown, other, support);
    }

    /** Returns this panel with another crown. */
    public Panel withCrown(Crown other) {
        return new Panel(name, width, length, other, laminate, support);
    }

    /** Returns the area [m^2]; a shallow crown adds nothing to it. */
    public double area() {
        return width * length;
    }
}
