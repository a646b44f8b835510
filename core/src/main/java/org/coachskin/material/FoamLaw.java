package org.coachskin.material;

/**
 * How a foam follows its density: moduli go with density to the power 1.6, crushing strength 1.55,
 * shear and tensile strength 1.35; moduli of cross-linked PVC to the power 1.2 only.
 *
 * <p>Fitted to the table of rigid urethane from 32 to 320 kg/m^3, which it meets within 12 %; the
 * power of PVC to its maker's rows from 48 to 130 kg/m^3, within 8 %, whose strengths follow the
 * powers of urethane. Used for every foam beyond the ends of its table and for the scatter of
 * density. Cellular-solid theory gives 2 for open and between 1 and 2 for closed cells (Gibson and
 * Ashby, <i>Cellular Solids</i>, 2nd ed. 1997, chapter 5; from memory).
 */
public final class FoamLaw {

    /** Power of the moduli [-]. */
    public static final double MODULUS = 1.6;

    /** Power of the moduli of cross-linked PVC [-]. */
    public static final double PVC_MODULUS = 1.2;

    /** Power of the crushing strength [-]. */
    public static final double CRUSH = 1.55;

    /** Power of shear and tensile strength [-]. */
    public static final double SHEAR = 1.35;

    private FoamLaw() {}

    /** Returns {@code foam} at another density [kg/m^3], with all that follows from it. */
    public static Foam atDensity(Foam foam, double density) {
        double ratio = density / foam.density();
        double modulus =
                StrictMath.pow(ratio, foam.kind() == Foam.Kind.PVC ? PVC_MODULUS : MODULUS);
        double shear = StrictMath.pow(ratio, SHEAR);
        return new Foam(
                foam.name(),
                foam.kind(),
                density,
                foam.eInPlane() * modulus,
                foam.eThrough() * modulus,
                foam.g() * modulus,
                foam.nu(),
                foam.shear().times(shear),
                foam.crush().times(StrictMath.pow(ratio, CRUSH)),
                foam.tension().times(shear),
                foam.expansion(),
                foam.densitySpread(),
                foam.modulusSpread(),
                foam.source());
    }

    /**
     * Returns the foam of a density between two foams of a kind: every constant along a straight
     * line in the logarithms.
     */
    static Foam between(Foam light, Foam heavy, double density) {
        if (density == heavy.density()) {
            return heavy;
        }
        double share =
                StrictMath.log(density / light.density())
                        / StrictMath.log(heavy.density() / light.density());
        return new Foam(
                light.name(),
                light.kind(),
                density,
                along(light.eInPlane(), heavy.eInPlane(), share),
                along(light.eThrough(), heavy.eThrough(), share),
                along(light.g(), heavy.g(), share),
                light.nu() + share * (heavy.nu() - light.nu()),
                light.shear().times(along(1, heavy.shear().value() / light.shear().value(), share)),
                light.crush().times(along(1, heavy.crush().value() / light.crush().value(), share)),
                light.tension()
                        .times(along(1, heavy.tension().value() / light.tension().value(), share)),
                light.expansion(),
                light.densitySpread(),
                light.modulusSpread(),
                light.source());
    }

    private static double along(double light, double heavy, double share) {
        return light * StrictMath.pow(heavy / light, share);
    }
}
