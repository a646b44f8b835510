package org.coachskin.examples;

import org.coachskin.laminate.EngineeringConstants;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Stiffness;

/** A, B, D, H and the engineering constants of the luggage lid's stack. */
public final class StackFigures {

    private StackFigures() {}

    /** Prints the first entry of each matrix and the moduli in plane and in bending. */
    public static void main(String[] args) {
        Laminate laminate = Workshop.luggageLid().laminate();
        Stiffness s = Stiffness.of(laminate);
        System.out.printf("A11 %.3g N/m   B11 %.3g N%n", s.a().m11(), s.b().m11());
        System.out.printf("D11 %.4g N m   H11 %.3g N/m%n", s.d().m11(), s.h().m11());
        EngineeringConstants stretched = EngineeringConstants.inPlane(laminate);
        EngineeringConstants bent = EngineeringConstants.inBending(laminate);
        System.out.printf(
                "a plain sheet of %.1f mm would need E = %.2f GPa stretched, %.2f GPa bent%n",
                1000 * laminate.thickness(), stretched.ex() / 1e9, bent.ex() / 1e9);
    }
}
