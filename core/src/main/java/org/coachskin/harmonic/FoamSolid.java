package org.coachskin.harmonic;

import org.coachskin.material.Foam;

/**
 * A foam as a solid, equal in every direction of its plane; stiffnesses in Pa.
 *
 * <p>Made of the four independent constants: E in plane and through the thickness, G, and one
 * Poisson's ratio &nu;, with the compliance between plane and thickness -&nu;/sqrt(E<sub>in</sub>
 * E<sub>through</sub>), which keeps the matrix positive definite for &nu; below 0.5 and is exactly
 * isotropic where E<sub>in</sub> = E<sub>through</sub> and G = E/(2(1+&nu;)). The shear modulus in
 * the plane is E<sub>in</sub>/(2(1+&nu;)).
 *
 * @param c11 xx to xx and yy to yy
 * @param c12 xx to yy
 * @param c13 xx to zz
 * @param c33 zz to zz
 * @param c44 xz to xz and yz to yz
 * @param c66 xy to xy
 */
public record FoamSolid(double c11, double c12, double c13, double c33, double c44, double c66) {

    /** Returns the solid of {@code foam}. */
    public static FoamSolid of(Foam foam) {
        double e = foam.eInPlane();
        double nu = foam.nu();
        double s11 = 1 / e;
        double s12 = -nu / e;
        double s13 = -nu / Math.sqrt(e * foam.eThrough());
        double s33 = 1 / foam.eThrough();
        double sum = s11 + s12;
        double det = s33 * sum - 2 * s13 * s13;
        double inPlane = s33 / det; // c11 + c12
        double difference = 1 / (s11 - s12); // c11 - c12
        return new FoamSolid(
                (inPlane + difference) / 2,
                (inPlane - difference) / 2,
                -s13 / det,
                sum / det,
                foam.g(),
                e / (2 * (1 + nu)));
    }
}
