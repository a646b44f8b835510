package org.coachskin.laminate;

import org.coachskin.material.Fibre;
import org.coachskin.material.Resin;

/**
 * Thermal expansion of a straight tow, along and across.
 *
 * <p>Levin's relation (1967) gives the expansion of any composite of two phases exactly from its
 * stiffness; Hill's relations (1964) leave one free number in that stiffness, the plane-strain bulk
 * modulus, which is taken from the assemblage of composite cylinders (Hashin and Rosen 1964; Rosen
 * and Hashin, International Journal of Engineering Science 8, 1970, 157-173; all from memory). The
 * fibre may be transversely isotropic, the resin is isotropic. Cylinders are the softest packing
 * across the tow, so its expansion there is the largest that theory allows; it is 5 to 17 % below
 * Schapery's bound at volume shares of 0.2 to 0.7. Chamis' E2 and G23 of the same tow belong to a
 * square array and hold no bulk modulus that Levin's relation could take.
 *
 * @param along [1/K]
 * @param across [1/K]
 */
record TowExpansion(double along, double across) {

    /**
     * Returns the expansion of a tow.
     *
     * @param vf share of the fibre by volume [-]
     * @param em Young's modulus of the resin, softened by its voids [Pa]
     */
    static TowExpansion of(Fibre fibre, Resin resin, double vf, double em) {
        Phase f =
                Phase.of(
                        fibre.e1(),
                        fibre.e2(),
                        fibre.nu12(),
                        fibre.nu23(),
                        fibre.alpha1(),
                        fibre.alpha2());
        double nu = resin.nu();
        Phase m = Phase.of(em, em, nu, nu, resin.expansion(), resin.expansion());
        double gm = em / (2 * (1 + nu));
        double vm = 1 - vf;
        double dk = f.k - m.k;
        double dl = f.l - m.l;
        double dAcross = f.across - m.across;
        double less = vf * vm / (m.k + gm + vm * dk);
        double k = vf * f.k + vm * m.k - less * dk * dk;
        double l = vf * f.l + vm * m.l - less * dk * dl;
        double n = vf * f.n + vm * m.n - less * dl * dl;
        double across = vf * f.across + vm * m.across - less * dk * dAcross;
        double along = vf * f.along + vm * m.along - less * dl * dAcross;
        double det = k * n - l * l;
        return new TowExpansion(
                (k * along - l * across) / det, (n * across - l * along) / (2 * det));
    }

    /**
     * One phase in Hill's moduli, and the stress that holds it in place for each kelvin.
     *
     * @param k plane-strain bulk modulus: pressure across per change of area across [Pa]
     * @param l stress along per change of area across [Pa]
     * @param n stress along per stretch along, area across held [Pa]
     * @param along [Pa/K]
     * @param across [Pa/K]
     */
    private record Phase(double k, double l, double n, double along, double across) {
        static Phase of(
                double e1, double e2, double nu12, double nu23, double alpha1, double alpha2) {
            double k = 1 / (2 * (1 - nu23) / e2 - 4 * nu12 * nu12 / e1);
            double l = 2 * k * nu12;
            double n = e1 + 2 * l * nu12;
            return new Phase(k, l, n, 2 * l * alpha2 + n * alpha1, 2 * k * alpha2 + l * alpha1);
        }
    }
}
