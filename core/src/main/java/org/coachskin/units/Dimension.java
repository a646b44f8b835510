package org.coachskin.units;

/** What kind of quantity a number is. */
public enum Dimension {
    /** Length [m]. */
    LENGTH,
    /** Mass [kg]. */
    MASS,
    /** Mass per area of cloth, mat or coat [kg/m^2]. */
    AREAL_MASS,
    /** Mass per volume [kg/m^3]. */
    DENSITY,
    /** Force [N]. */
    FORCE,
    /** Stress, pressure or modulus [Pa]. */
    STRESS,
    /** Force per length, as of a seal [N/m]. */
    FORCE_PER_LENGTH,
    /** Force per deflection, the felt stiffness [N/m]. */
    STIFFNESS,
    /** Absolute temperature [K]. */
    TEMPERATURE,
    /** Difference of temperature [K]. */
    TEMPERATURE_DIFFERENCE,
    /** Thermal expansion [1/K]. */
    EXPANSION,
    /** Angle [rad]. */
    ANGLE,
    /** Speed [m/s]. */
    SPEED,
    /** Share of a whole [-], 0 to 1; written in percent or as a plain number. */
    SHARE,
    /** Time [s]. */
    TIME
}
