package org.coachskin.laminate;

import org.coachskin.Require;
import org.coachskin.Source;

/**
 * One cured ply in its own axes: 1 along the warp, 2 along the weft, 3 outward.
 *
 * @param name how the shop calls it
 * @param e1 Young's modulus along 1 [Pa]
 * @param e2 Young's modulus along 2 [Pa]
 * @param nu12 contraction along 2 per stretch along 1 [-], below sqrt(E1/E2) (Lempriere, AIAA
 *     Journal 6, 1968, p. 2226; from memory)
 * @param g12 shear modulus in the plane [Pa]
 * @param g13 transverse shear modulus along 1 [Pa]
 * @param g23 transverse shear modulus along 2 [Pa]
 * @param thickness cured thickness [m]
 * @param density cured, voids included [kg/m^3]
 * @param alpha1 thermal expansion along 1 [1/K]
 * @param alpha2 thermal expansion along 2 [1/K]
 * @param strength its strengths
 * @param source where the constants come from
 */
public record Ply(
        String name,
        double e1,
        double e2,
        double nu12,
        double g12,
        double g13,
        double g23,
        double thickness,
        double density,
        double alpha1,
        double alpha2,
        PlyStrength strength,
        Source source) {

    /** Checks signs and the thermodynamic bound on {@code nu12}. */
    public Ply {
        Require.positive("E1 of " + name, e1, "Pa");
        Require.positive("E2 of " + name, e2, "Pa");
        Require.positive("G12 of " + name, g12, "Pa");
        Require.positive("G13 of " + name, g13, "Pa");
        Require.positive("G23 of " + name, g23, "Pa");
        Require.positive("thickness of " + name, thickness, "m");
        Require.positive("density of " + name, density, "kg/m^3");
        Require.finite("alpha1 of " + name, alpha1, "1/K");
        Require.finite("alpha2 of " + name, alpha2, "1/K");
        Require.finite("nu12 of " + name, nu12, "");
        if (nu12 * nu12 >= e1 / e2) {
            throw new IllegalArgumentException(
                    "nu12 of "
                            + name
                            + " is "
                            + nu12
                            + ", at or above sqrt(E1/E2) = "
                            + Math.sqrt(e1 / e2)
                            + "; check that E1 and E2 are not exchanged");
        }
    }

    /**
     * Returns the plane-stress stiffness of this ply turned by {@code angle} from x toward y [rad];
     * entries in Pa.
     */
    public Sym3 stiffness(double angle) {
        double reciprocal = 1 / (1 - nu12 * nu12 * e2 / e1);
        double q11 = e1 * reciprocal;
        double q22 = e2 * reciprocal;
        double q12 = nu12 * q22;
        double q66 = g12;
        double c = StrictMath.cos(angle);
        double s = StrictMath.sin(angle);
        double cc = c * c;
        double ss = s * s;
        double cs = c * s;
        double mixed = q12 + 2 * q66;
        return new Sym3(
                q11 * cc * cc + 2 * mixed * cs * cs + q22 * ss * ss,
                (q11 + q22 - 4 * q66) * cs * cs + q12 * (cc * cc + ss * ss),
                q11 * ss * ss + 2 * mixed * cs * cs + q22 * cc * cc,
                cs * (q11 * cc - q22 * ss - mixed * (cc - ss)),
                cs * (q11 * ss - q22 * cc + mixed * (cc - ss)),
                (q11 + q22 - 2 * q12) * cs * cs + q66 * (cc - ss) * (cc - ss));
    }

    /**
     * Returns the transverse shear stiffness of this ply turned by {@code angle} [rad]; entries in
     * Pa.
     */
    public Sym2 shearStiffness(double angle) {
        double c = StrictMath.cos(angle);
        double s = StrictMath.sin(angle);
        return new Sym2(g13 * c * c + g23 * s * s, (g13 - g23) * c * s, g13 * s * s + g23 * c * c);
    }

    /** Returns this ply cured to another thickness [m]. */
    public Ply withThickness(double newThickness) {
        return new Ply(
                name,
                e1,
                e2,
                nu12,
                g12,
                g13,
                g23,
                newThickness,
                density,
                alpha1,
                alpha2,
                strength,
                source);
    }

    /** Returns this ply with other strengths. */
    public Ply withStrength(PlyStrength newStrength) {
        return new Ply(
                name,
                e1,
                e2,
                nu12,
                g12,
                g13,
                g23,
                thickness,
                density,
                alpha1,
                alpha2,
                newStrength,
                source);
    }
}
