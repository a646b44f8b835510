package org.coachskin.material;

import org.coachskin.Require;
import org.coachskin.Source;

/**
 * A cured resin, isotropic.
 *
 * @param name how it is called
 * @param kind its chemistry
 * @param e Young's modulus [Pa]
 * @param nu Poisson's ratio [-]
 * @param density cured [kg/m^3]
 * @param tension tensile strength
 * @param failureStrain tensile strain at break [-]
 * @param expansion thermal expansion [1/K]
 * @param softening temperature at which it softens [K]; absolute
 * @param shrinkage loss of volume in curing [-]
 * @param modulusSpread coefficient of variation of the modulus [-]
 * @param source where the figures come from
 */
public record Resin(
        String name,
        Kind kind,
        double e,
        double nu,
        double density,
        Strength tension,
        double failureStrain,
        double expansion,
        double softening,
        double shrinkage,
        double modulusSpread,
        Source source) {

    /** Checks signs and ranges. */
    public Resin {
        Require.positive("E of " + name, e, "Pa");
        Require.within("nu of " + name, nu, 0, 0.49, "");
        Require.positive("density of " + name, density, "kg/m^3");
        Require.positive("failure strain of " + name, failureStrain, "");
        Require.positive("softening temperature of " + name, softening, "K");
        Require.within("shrinkage of " + name, shrinkage, 0, 0.2, "");
    }

    /** Returns the shear modulus [Pa], E/(2(1+nu)). */
    public double g() {
        return e / (2 * (1 + nu));
    }

    /** The chemistry of a resin. */
    public enum Kind {
        /** Unsaturated polyester; holds styrene while wet. */
        POLYESTER(true),
        /** Vinyl ester; holds styrene while wet. */
        VINYL_ESTER(true),
        /** Epoxy. */
        EPOXY(false);

        private final boolean styrene;

        Kind(boolean styrene) {
            this.styrene = styrene;
        }

        /** Returns whether the wet resin holds styrene, which dissolves polystyrene foam. */
        public boolean styrene() {
            return styrene;
        }
    }
}
