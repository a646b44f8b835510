package org.coachskin.laminate;

/**
 * What a free stack does when it is warmed: strain of mid-height and bow, with no force and no
 * moment.
 *
 * @param membrane free strain of mid-height [-]
 * @param curvature free bow [1/m]; positive stretches the outside
 * @param inside rise of the inside surface [K]
 * @param outside rise of the outside surface [K]
 * @param thickness of the stack [m]
 */
public record ThermalState(
        Triple membrane, Triple curvature, double inside, double outside, double thickness) {

    /**
     * Returns the free state of {@code laminate} under a temperature linear through the thickness
     * (classical laminate theory; Jones, <i>Mechanics of Composite Materials</i>, 2nd ed. 1999,
     * section 4.5.3; from memory).
     *
     * @param inside rise of the inside surface above the temperature of lay-up [K]
     * @param outside rise of the outside surface [K]
     */
    public static ThermalState of(Laminate laminate, double inside, double outside) {
        ThermalResultants load = ThermalResultants.of(laminate, inside, outside);
        Compliance free = Compliance.of(Stiffness.of(laminate));
        return new ThermalState(
                free.membrane(load.n(), load.m()),
                free.curvature(load.n(), load.m()),
                inside,
                outside,
                laminate.thickness());
    }

    /** Returns the rise of temperature at height {@code z} from mid-height [K]. */
    public double rise(double z) {
        return (inside + outside) / 2 + (outside - inside) * z / thickness;
    }
}
