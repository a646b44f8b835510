package org.coachskin.laminate;

/**
 * The constants of a single layer of the same thickness that stretches, or bends, like the stack.
 *
 * <p>In plane the moments are zero and the stack may bend while it is pulled; in bending the
 * in-plane forces are zero. With the entries a and d of {@link Compliance} and the thickness h,
 *
 * <pre>
 *   in plane     Ex = 1/(h a11),       nuxy = -a12/a11,  Gxy = 1/(h a66)
 *   in bending   Ex = 12/(h^3 d11),    nuxy = -d12/d11,  Gxy = 12/(h^3 d66)
 * </pre>
 *
 * <p>(Kaw, <i>Mechanics of Composite Materials</i>, 2nd ed. 2006, section 4.4; from memory.) In
 * bending a sandwich is far stiffer than in plane, so the two sets differ widely.
 *
 * @param ex Young's modulus along x [Pa]
 * @param ey Young's modulus along y [Pa]
 * @param gxy shear modulus, or the modulus of twist [Pa]
 * @param nuxy contraction along y per stretch along x [-]
 */
public record EngineeringConstants(double ex, double ey, double gxy, double nuxy) {

    /** Returns the constants in plane. */
    public static EngineeringConstants inPlane(Laminate laminate) {
        return of(Compliance.of(Stiffness.of(laminate)).a(), laminate.thickness());
    }

    /** Returns the constants in bending. */
    public static EngineeringConstants inBending(Laminate laminate) {
        double h = laminate.thickness();
        return of(Compliance.of(Stiffness.of(laminate)).d(), h * h * h / 12);
    }

    private static EngineeringConstants of(Sym3 compliance, double size) {
        return new EngineeringConstants(
                1 / (size * compliance.m11()),
                1 / (size * compliance.m22()),
                1 / (size * compliance.m66()),
                -compliance.m12() / compliance.m11());
    }
}
