package org.coachskin.material;

import java.util.OptionalDouble;
import org.coachskin.Require;
import org.coachskin.Source;

/**
 * A rigid foam. In-plane modulus, through-thickness modulus, shear modulus and Poisson's ratio are
 * independent inputs: real foam is not isotropic and G is not E/(2(1+nu)).
 *
 * @param name how it is called
 * @param kind what it is made of
 * @param density [kg/m^3]
 * @param eInPlane Young's modulus along the board [Pa]
 * @param eThrough Young's modulus through the thickness, in compression [Pa]
 * @param g shear modulus between a face and the thickness direction [Pa]
 * @param nu Poisson's ratio [-]
 * @param shear shear strength
 * @param crush compressive strength through the thickness
 * @param tension tensile strength, through the thickness and in plane
 * @param expansion thermal expansion [1/K]
 * @param densitySpread coefficient of variation of the density [-]
 * @param modulusSpread coefficient of variation of E and G beside what the density explains [-]
 * @param source where the figures come from
 */
public record Foam(
        String name,
        Kind kind,
        double density,
        double eInPlane,
        double eThrough,
        double g,
        double nu,
        Strength shear,
        Strength crush,
        Strength tension,
        double expansion,
        double densitySpread,
        double modulusSpread,
        Source source) {

    /** Checks signs and ranges. */
    public Foam {
        Require.positive("density of " + name, density, "kg/m^3");
        Require.positive("E in plane of " + name, eInPlane, "Pa");
        Require.positive("E through the thickness of " + name, eThrough, "Pa");
        Require.positive("G of " + name, g, "Pa");
        Require.within("nu of " + name, nu, 0, 0.49, "");
    }

    /** Returns this foam by another name. */
    public Foam withName(String other) {
        return with(other, eInPlane, eThrough, g, 1);
    }

    /** Returns this foam with all moduli times {@code factor}. */
    public Foam withModuliTimes(double factor) {
        return with(name, eInPlane * factor, eThrough * factor, g * factor, 1);
    }

    /** Returns this foam with another shear modulus [Pa]. */
    public Foam withShearModulus(double other) {
        return with(name, eInPlane, eThrough, other, 1);
    }

    /** Returns this foam with all strengths times {@code factor}. */
    public Foam withStrengthsTimes(double factor) {
        return with(name, eInPlane, eThrough, g, factor);
    }

    private Foam with(
            String called, double inPlane, double through, double shearing, double strong) {
        return new Foam(
                called,
                kind,
                density,
                inPlane,
                through,
                shearing,
                nu,
                shear.times(strong),
                crush.times(strong),
                tension.times(strong),
                expansion,
                densitySpread,
                modulusSpread,
                source);
    }

    /** What a foam is made of. */
    public enum Kind {
        /** Rigid polyurethane. */
        POLYURETHANE(Double.NaN),
        /** Polyisocyanurate; friable. */
        POLYISOCYANURATE(Double.NaN),
        /** Cross-linked PVC. */
        PVC(70),
        /** Extruded polystyrene. */
        XPS(75),
        /** Expanded polystyrene. */
        EPS(75),
        /** Something else, given by the user. */
        OTHER(Double.NaN);

        private static final double ZERO = 273.15;

        private final double celsius;

        Kind(double celsius) {
            this.celsius = celsius;
        }

        /**
         * Returns the temperature up to which the foam keeps its shape [K]; empty where skin in the
         * sun does not reach it or nothing is known. Polystyrene loses its shape above 75 degC
         * (home builders' experience), cross-linked PVC serves up to 70 degC (makers' sheets); both
         * from memory.
         */
        public OptionalDouble serviceLimit() {
            return Double.isNaN(celsius)
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(celsius + ZERO);
        }
    }
}
