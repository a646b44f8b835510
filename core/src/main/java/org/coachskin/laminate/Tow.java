package org.coachskin.laminate;

import org.coachskin.material.Fibre;
import org.coachskin.material.Resin;

/**
 * A straight tow soaked with resin, transversely isotropic about 1.
 *
 * @param e1 along [Pa]
 * @param e2 across [Pa]
 * @param nu12 contraction across per stretch along [-]
 * @param g12 shear along [Pa]
 * @param g23 shear across [Pa]
 * @param alpha1 expansion along [1/K]
 * @param alpha2 expansion across [1/K]
 */
record Tow(
        double e1, double e2, double nu12, double g12, double g23, double alpha1, double alpha2) {

    /**
     * Returns the tow (Chamis, NASA TM-83320, 1983; expansion by {@link TowExpansion}).
     *
     * @param vf share of the fibre by volume [-]
     * @param voids by volume [-]; they soften the resin in proportion to what they take of it
     */
    static Tow of(Fibre fibre, Resin resin, double vf, double voids) {
        double kept = 1 - voids / (1 - vf);
        double em = resin.e() * kept;
        double gm = resin.g() * kept;
        double root = Math.sqrt(vf);
        double e1 = vf * fibre.e1() + (1 - vf) * em;
        double nu12 = vf * fibre.nu12() + (1 - vf) * resin.nu();
        TowExpansion expansion = TowExpansion.of(fibre, resin, vf, em);
        double fibreG23 = fibre.e2() / (2 * (1 + fibre.nu23()));
        return new Tow(
                e1,
                em / (1 - root * (1 - em / fibre.e2())),
                nu12,
                gm / (1 - root * (1 - gm / fibre.g12())),
                gm / (1 - vf * (1 - gm / fibreG23)),
                expansion.along(),
                expansion.across());
    }
}
