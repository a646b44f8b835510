package org.coachskin.laminate;

import org.coachskin.Source;
import org.coachskin.Standing;
import org.coachskin.material.Cloth;
import org.coachskin.material.Resin;
import org.coachskin.material.Strength;
import org.coachskin.material.Weave;

/**
 * From cloth, resin and way of working to a cured ply.
 *
 * <p><b>Thickness</b> by mass balance (ISO 12215-5:2008, annex C, eq. C.1, with the densities at
 * hand and voids added). <b>Tow</b>: Chamis, "Simplified composite micromechanics equations", NASA
 * TM-83320, 1983, for E11, E22, G12 and nu12 (square array of fibres); G23 by its G12 with the
 * whole volume share in place of its root, which is on the soft side; expansion by Levin's exact
 * relation on composite cylinders (Hashin and Rosen 1964; Rosen and Hashin 1970; from memory).
 * <b>Weave</b>: each tow runs straight over its floats and along a sine from one side of the cloth
 * to the other at each crossing; its softening is that of the off-axis compliance averaged along
 * the sine (fibre undulation model, Ishikawa and Chou, Journal of Materials Science 17, 1982,
 * 3211-3220; from memory), and its expansion is averaged likewise. Warp and weft then share the ply
 * by mass, in parallel. <b>Mat</b>: the tow's stiffness averaged over all directions (Tsai and
 * Pagano 1968; from memory).
 *
 * <p><b>Strengths</b> are the minimum values for hand-laid E-glass of ISO 12215-5:2008, table C.4
 * a: tension 800 &psi;^2 - 80 &psi; + 37, compression 150 &psi; + 72, shear 80 &psi; + 38 MPa, with
 * &psi; the glass share by weight; breaking, not first cracking. They are no floor: of measured
 * laminates two of four break below the one in shear, by up to 46 %, and three of fourteen below
 * the one in tension, by up to 8 % (EVIDENCE.md). They hold for glass; other fibres want strengths
 * of their own.
 *
 * <p><b>Set by judgement:</b> spacing of the tows over their thickness, {@value #ASPECT} for cloth
 * and {@value #ROVING_ASPECT} for woven roving.
 *
 * <p><b>Limits.</b> Volume share 0.1 to 0.65; small strains; room temperature, dry.
 */
public final class WovenPly {

    private static final double ASPECT = 10;

    private static final double ROVING_ASPECT = 15;

    private static final Source MECHANICS =
            new Source(
                    "Chamis, NASA TM-83320, 1983 (tow); Ishikawa and Chou, J. Mater. Sci. 17, 1982 (undulation)",
                    "",
                    Standing.CALCULATED);

    private static final Source RULE =
            new Source(
                    "ISO 12215-5:2008, minimum values for hand-laid E-glass",
                    "annex C, table C.4 a",
                    Standing.PUBLISHED);

    private WovenPly() {}

    /**
     * Returns the cured ply.
     *
     * @param share fibre in the ply by weight [-]
     * @param voids by volume [-]
     */
    public static Ply of(Cloth cloth, Resin resin, double share, double voids) {
        double fibreVolume = cloth.arealMass() / cloth.fibre().density();
        double resinMass = cloth.arealMass() * (1 - share) / share;
        double thickness = (fibreVolume + resinMass / resin.density()) / (1 - voids);
        double density = (cloth.arealMass() + resinMass) / thickness;
        Tow tow = Tow.of(cloth.fibre(), resin, fibreVolume / thickness, voids);
        PlyStrength strength = strength(share);
        if (cloth.weave() == Weave.MAT) {
            return mat(cloth.name(), tow, thickness, density, strength);
        }
        return woven(cloth, tow, thickness, density, strength);
    }

    private static Ply woven(
            Cloth cloth, Tow tow, double thickness, double density, PlyStrength strength) {
        double slopes = slopes(cloth);
        double e1 = tow.e1() / softening(cloth, tow);
        double alpha1 = tow.alpha1() + slopes * (tow.alpha2() - tow.alpha1());
        double nu21 = tow.nu12() * tow.e2() / e1;
        double reciprocal = 1 / (1 - tow.nu12() * nu21);
        double along = e1 * reciprocal;
        double across = tow.e2() * reciprocal;
        double mixed = tow.nu12() * across;
        double warp = cloth.warpShare();
        double weft = 1 - warp;
        double q11 = warp * along + weft * across;
        double q22 = weft * along + warp * across;
        double det = q11 * q22 - mixed * mixed;
        // Thermal stress of warp and weft, shared likewise.
        double pull = along * alpha1 + mixed * tow.alpha2();
        double squeeze = mixed * alpha1 + across * tow.alpha2();
        double n1 = warp * pull + weft * squeeze;
        double n2 = weft * pull + warp * squeeze;
        return new Ply(
                cloth.name(),
                det / q22,
                det / q11,
                mixed / q22,
                tow.g12(),
                1 / (warp / tow.g12() + weft / tow.g23()),
                1 / (weft / tow.g12() + warp / tow.g23()),
                thickness,
                density,
                (q22 * n1 - mixed * n2) / det,
                (q11 * n2 - mixed * n1) / det,
                strength,
                MECHANICS);
    }

    /** Returns how much softer a tow is along its mean line than straight: 1 or more. */
    static double softening(Cloth cloth, Tow tow) {
        double offAxis = tow.e1() / tow.g12() - 2 * tow.nu12() - 2;
        return 1 + slopes(cloth) * offAxis;
    }

    /** Returns the mean of the squared slope of a tow over a repeat [-]. */
    private static double slopes(Cloth cloth) {
        if (cloth.weave() == Weave.STITCHED) {
            return 0;
        }
        double slope = Math.PI / (2 * (cloth.weave() == Weave.ROVING ? ROVING_ASPECT : ASPECT));
        // Two crossings in a repeat of floatLength tows; the mean along a sine is one half.
        return Math.min(1, 2.0 / cloth.floatLength()) * slope * slope / 2;
    }

    private static Ply mat(
            String name, Tow tow, double thickness, double density, PlyStrength strength) {
        double e = 3.0 / 8 * tow.e1() + 5.0 / 8 * tow.e2();
        double g = tow.e1() / 8 + tow.e2() / 4;
        double nu = e / (2 * g) - 1;
        double transverse = (tow.g12() + tow.g23()) / 2;
        double pull = tow.e1() + tow.nu12() * tow.e2();
        double squeeze = (1 + tow.nu12()) * tow.e2();
        double alpha = (pull * tow.alpha1() + squeeze * tow.alpha2()) / (pull + squeeze);
        return new Ply(
                name,
                e,
                e,
                nu,
                g,
                transverse,
                transverse,
                thickness,
                density,
                alpha,
                alpha,
                strength,
                MECHANICS);
    }

    private static PlyStrength strength(double share) {
        double tension = (800 * share * share - 80 * share + 37) * 1e6;
        double compression = (150 * share + 72) * 1e6;
        double shear = (80 * share + 38) * 1e6;
        return new PlyStrength(
                minimum(tension),
                minimum(compression),
                minimum(tension),
                minimum(compression),
                minimum(shear));
    }

    private static Strength minimum(double value) {
        return new Strength(value, Strength.Level.MINIMUM, Strength.Event.BREAKING, RULE);
    }

    /** Returns the seal coat of {@code mass} [kg/m^2] as a ply of resin alone. */
    static Ply sealCoat(Resin resin, double mass) {
        PlyStrength strength =
                new PlyStrength(
                        resin.tension(),
                        resin.tension(),
                        resin.tension(),
                        resin.tension(),
                        resin.tension().times(0.5));
        return new Ply(
                "seal coat",
                resin.e(),
                resin.e(),
                resin.nu(),
                resin.g(),
                resin.g(),
                resin.g(),
                mass / resin.density(),
                resin.density(),
                resin.expansion(),
                resin.expansion(),
                strength,
                resin.source());
    }
}
