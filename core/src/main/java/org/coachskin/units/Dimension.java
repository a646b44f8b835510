package org.coachskin.units;

/** What kind of quantity a number is. */
public enum Dimension {
    /** Length [m]. */
    LENGTH("length"),
    /** Mass [kg]. */
    MASS("mass"),
    /** Mass per area of cloth, mat or coat [kg/m^2]. */
    AREAL_MASS("mass per area"),
    /** Mass per volume [kg/m^3]. */
    DENSITY("density"),
    /** Force [N]. */
    FORCE("force"),
    /** Stress, pressure or modulus [Pa]. */
    STRESS("stress or pressure"),
    /** Force per deflection, the felt stiffness [N/m]. */
    STIFFNESS("force per movement"),
    /** Force per length, as of a seal [N/m]. */
    FORCE_PER_LENGTH("force per length"),
    /** Difference of temperature [K]. */
    TEMPERATURE_DIFFERENCE("difference of temperature"),
    /** Absolute temperature [K]. */
    TEMPERATURE("temperature"),
    /** Thermal expansion [1/K]. */
    EXPANSION("thermal expansion"),
    /** Angle [rad]. */
    ANGLE("angle"),
    /** Speed [m/s]. */
    SPEED("speed"),
    /** Time [s]. */
    TIME("time"),
    /** Share of a whole [-], 0 to 1; written in percent or as a plain number. */
    SHARE("share"),
    /** A plain number without a unit [-], as a factor of safety. */
    RATIO("plain number");

    private final String words;

    Dimension(String words) {
        this.words = words;
    }

    /** Returns what it is called to a person. */
    public String words() {
        return words;
    }
}
