package org.coachskin.laminate;

/**
 * Stiffness of a stack in first-order theory: N = A e + B k, M = B e + D k, Q = H &gamma;.
 *
 * @param a membrane stiffness [N/m]
 * @param b coupling [N]
 * @param d bending stiffness [N m]
 * @param h transverse shear stiffness from equilibrium, in-plane forces free [N/m]
 * @param reference z of the surface that A, B and D refer to, from mid-height of the stack [m]
 */
public record Stiffness(Sym3 a, Sym3 b, Sym3 d, Sym2 h, double reference) {

    /** Returns the stiffness about mid-height. */
    public static Stiffness of(Laminate laminate) {
        return of(laminate, 0);
    }

    /** Returns the stiffness about the surface at {@code reference}, z from mid-height [m]. */
    public static Stiffness of(Laminate laminate, double reference) {
        Sym3[] abd = membraneAndBending(laminate, reference);
        return new Stiffness(
                abd[0], abd[1], abd[2], ShearByEquilibrium.of(laminate).stiffness(), reference);
    }

    /** Returns A, B and D about {@code reference}. */
    static Sym3[] membraneAndBending(Laminate laminate, double reference) {
        Sym3 a = Sym3.ZERO;
        Sym3 b = Sym3.ZERO;
        Sym3 d = Sym3.ZERO;
        double bottom = -laminate.thickness() / 2 - reference;
        for (Layer layer : laminate.layers()) {
            double t = layer.thickness();
            double middle = bottom + t / 2;
            Sym3 q = layer.stiffness();
            a = a.plus(q, t);
            b = b.plus(q, t * middle);
            d = d.plus(q, t * (middle * middle + t * t / 12));
            bottom += t;
        }
        return new Sym3[] {a, b, d};
    }
}
