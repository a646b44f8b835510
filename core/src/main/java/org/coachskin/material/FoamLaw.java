package org.coachskin.material;

/**
 * How a foam follows its density: every constant goes with a power of it.
 *
 * <p>Powers of urethane fitted to its table from 32 to 320 kg/m^3, which they meet within 10 %;
 * those of cross-linked PVC to its maker's sheet from 48 to 250 kg/m^3, within 12 % (EVIDENCE.md).
 * Every other foam follows urethane. Used beyond the ends of a table and for the scatter of
 * density; between two rows the table itself is followed. Cellular-solid theory gives 2 for open
 * and between 1 and 2 for closed cells (Gibson and Ashby, <i>Cellular Solids</i>, 2nd ed. 1997,
 * chapter 5; from memory).
 */
public final class FoamLaw {

    private static final Powers URETHANE = new Powers(1.6, 1.35, 1.55, 1.35);

    private static final Powers PVC = new Powers(1.2, 1.25, 1.5, 1.15);

    private FoamLaw() {}

    /**
     * Powers of the density [-].
     *
     * @param moduli of E and G
     * @param shear of the shear strength
     * @param crush of the crushing strength
     * @param tension of the tensile strength
     */
    public record Powers(double moduli, double shear, double crush, double tension) {}

    /** Returns the powers that a kind of foam follows. */
    public static Powers powers(Foam.Kind kind) {
        return kind == Foam.Kind.PVC ? PVC : URETHANE;
    }

    /** Returns {@code foam} at another density [kg/m^3], with all that follows from it. */
    public static Foam atDensity(Foam foam, double density) {
        double ratio = density / foam.density();
        Powers powers = powers(foam.kind());
        double modulus = StrictMath.pow(ratio, powers.moduli());
        return new Foam(
                foam.name(),
                foam.kind(),
                density,
                foam.eInPlane() * modulus,
                foam.eThrough() * modulus,
                foam.g() * modulus,
                foam.nu(),
                foam.shear().times(StrictMath.pow(ratio, powers.shear())),
                foam.crush().times(StrictMath.pow(ratio, powers.crush())),
                foam.tension().times(StrictMath.pow(ratio, powers.tension())),
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
