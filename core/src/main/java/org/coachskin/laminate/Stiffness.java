package org.coachskin.laminate;

/**
 * Stiffness of a stack in first-order theory: N = A e + B k, M = B e + D k, Q = H &gamma;. How it
 * is found stands at {@link StiffnessKernel}.
 *
 * @param a membrane stiffness [N/m]
 * @param b coupling [N]
 * @param d bending stiffness [N m]
 * @param h transverse shear stiffness from equilibrium, in-plane forces free [N/m]; it does not
 *     depend on the reference surface
 * @param reference z of the surface that A, B and D refer to, from mid-height of the stack [m]
 */
public record Stiffness(Sym3 a, Sym3 b, Sym3 d, Sym2 h, double reference) {

    /** Returns the stiffness about mid-height. */
    public static Stiffness of(Laminate laminate) {
        return new KernelRun(laminate).stiffness();
    }

    /** Returns the stiffness about the surface at {@code reference}, z from mid-height [m]. */
    public static Stiffness of(Laminate laminate, double reference) {
        return of(laminate).about(reference);
    }

    /**
     * Returns the same stiffness about another surface: with r the way there, B' = B - r A and D' =
     * D - 2 r B + r^2 A.
     *
     * @param newReference z from mid-height of the stack [m]
     */
    public Stiffness about(double newReference) {
        double r = newReference - reference;
        return r == 0
                ? this
                : new Stiffness(
                        a, b.plus(a, -r), d.plus(b, -2 * r).plus(a, r * r), h, newReference);
    }
}
