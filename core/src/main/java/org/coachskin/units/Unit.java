package org.coachskin.units;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A unit: what its text is worth in SI.
 *
 * <p>Inch, foot, yard, pound and standard gravity are exact by definition (international yard and
 * pound, 1959; third General Conference on Weights and Measures, 1901).
 *
 * @param symbol as it is written
 * @param dimension what kind of quantity it measures
 * @param factor SI units in one of it
 * @param offset added after the factor, for temperatures
 */
public record Unit(String symbol, Dimension dimension, double factor, double offset) {

    private static final double INCH = 0.0254;
    private static final double FOOT = 12 * INCH;
    private static final double YARD = 3 * FOOT;
    private static final double CUBIC_FOOT = FOOT * FOOT * FOOT;
    private static final double POUND = 0.45359237;
    private static final double OUNCE = POUND / 16;
    private static final double GRAVITY = 9.80665;
    private static final double POUND_FORCE = POUND * GRAVITY;
    private static final double PSI = POUND_FORCE / (INCH * INCH);
    private static final double DEGREE = Math.PI / 180;
    private static final double DAY = 86400;
    private static final double MONTH = 365.25 / 12 * DAY;

    /** Of each kind, the one to suggest stands first. */
    private static final List<Unit> TABLE =
            List.of(
                    new Unit("mm", Dimension.LENGTH, 1e-3, 0),
                    new Unit("cm", Dimension.LENGTH, 1e-2, 0),
                    new Unit("m", Dimension.LENGTH, 1, 0),
                    new Unit("in", Dimension.LENGTH, INCH, 0),
                    new Unit("inch", Dimension.LENGTH, INCH, 0),
                    new Unit("inches", Dimension.LENGTH, INCH, 0),
                    new Unit("\"", Dimension.LENGTH, INCH, 0),
                    new Unit("ft", Dimension.LENGTH, FOOT, 0),
                    new Unit("feet", Dimension.LENGTH, FOOT, 0),
                    new Unit("'", Dimension.LENGTH, FOOT, 0),
                    new Unit("yd", Dimension.LENGTH, YARD, 0),
                    new Unit("kg", Dimension.MASS, 1, 0),
                    new Unit("g", Dimension.MASS, 1e-3, 0),
                    new Unit("t", Dimension.MASS, 1e3, 0),
                    new Unit("lb", Dimension.MASS, POUND, 0),
                    new Unit("lbs", Dimension.MASS, POUND, 0),
                    new Unit("oz", Dimension.MASS, OUNCE, 0),
                    new Unit("g/m^2", Dimension.AREAL_MASS, 1e-3, 0),
                    new Unit("gsm", Dimension.AREAL_MASS, 1e-3, 0),
                    new Unit("kg/m^2", Dimension.AREAL_MASS, 1, 0),
                    new Unit("oz/yd^2", Dimension.AREAL_MASS, OUNCE / (YARD * YARD), 0),
                    new Unit("oz/ft^2", Dimension.AREAL_MASS, OUNCE / (FOOT * FOOT), 0),
                    new Unit("lb/ft^2", Dimension.AREAL_MASS, POUND / (FOOT * FOOT), 0),
                    new Unit("kg/m^3", Dimension.DENSITY, 1, 0),
                    new Unit("g/cm^3", Dimension.DENSITY, 1e3, 0),
                    new Unit("g/l", Dimension.DENSITY, 1, 0),
                    new Unit("lb/ft^3", Dimension.DENSITY, POUND / CUBIC_FOOT, 0),
                    new Unit("pcf", Dimension.DENSITY, POUND / CUBIC_FOOT, 0),
                    new Unit("N", Dimension.FORCE, 1, 0),
                    new Unit("kN", Dimension.FORCE, 1e3, 0),
                    new Unit("kgf", Dimension.FORCE, GRAVITY, 0),
                    new Unit("lbf", Dimension.FORCE, POUND_FORCE, 0),
                    new Unit("MPa", Dimension.STRESS, 1e6, 0),
                    new Unit("GPa", Dimension.STRESS, 1e9, 0),
                    new Unit("kPa", Dimension.STRESS, 1e3, 0),
                    new Unit("Pa", Dimension.STRESS, 1, 0),
                    new Unit("N/mm^2", Dimension.STRESS, 1e6, 0),
                    new Unit("kN/m^2", Dimension.STRESS, 1e3, 0),
                    new Unit("N/m^2", Dimension.STRESS, 1, 0),
                    new Unit("bar", Dimension.STRESS, 1e5, 0),
                    new Unit("psi", Dimension.STRESS, PSI, 0),
                    new Unit("ksi", Dimension.STRESS, 1e3 * PSI, 0),
                    new Unit("psf", Dimension.STRESS, POUND_FORCE / (FOOT * FOOT), 0),
                    new Unit("lbf/ft^2", Dimension.STRESS, POUND_FORCE / (FOOT * FOOT), 0),
                    new Unit("kgf/m^2", Dimension.STRESS, GRAVITY, 0),
                    new Unit("N/mm", Dimension.STIFFNESS, 1e3, 0),
                    new Unit("N/m", Dimension.STIFFNESS, 1, 0),
                    new Unit("kN/m", Dimension.STIFFNESS, 1e3, 0),
                    new Unit("lbf/in", Dimension.STIFFNESS, POUND_FORCE / INCH, 0),
                    new Unit("kgf/mm", Dimension.STIFFNESS, 1e3 * GRAVITY, 0),
                    new Unit("N/m", Dimension.FORCE_PER_LENGTH, 1, 0),
                    new Unit("N per m", Dimension.FORCE_PER_LENGTH, 1, 0),
                    new Unit("N/mm", Dimension.FORCE_PER_LENGTH, 1e3, 0),
                    new Unit("lbf/in", Dimension.FORCE_PER_LENGTH, POUND_FORCE / INCH, 0),
                    new Unit("lbf/ft", Dimension.FORCE_PER_LENGTH, POUND_FORCE / FOOT, 0),
                    new Unit("lbf per in", Dimension.FORCE_PER_LENGTH, POUND_FORCE / INCH, 0),
                    new Unit("lbf per ft", Dimension.FORCE_PER_LENGTH, POUND_FORCE / FOOT, 0),
                    new Unit("K", Dimension.TEMPERATURE_DIFFERENCE, 1, 0),
                    new Unit("degC", Dimension.TEMPERATURE_DIFFERENCE, 1, 0),
                    new Unit("degF", Dimension.TEMPERATURE_DIFFERENCE, 5.0 / 9, 0),
                    new Unit("ppm/K", Dimension.EXPANSION, 1e-6, 0),
                    new Unit("1/K", Dimension.EXPANSION, 1, 0),
                    new Unit("1e-6/K", Dimension.EXPANSION, 1e-6, 0),
                    new Unit("ppm/degC", Dimension.EXPANSION, 1e-6, 0),
                    new Unit("1e-6/degF", Dimension.EXPANSION, 1e-6 * 9 / 5, 0),
                    new Unit("deg", Dimension.ANGLE, DEGREE, 0),
                    new Unit("°", Dimension.ANGLE, DEGREE, 0),
                    new Unit("rad", Dimension.ANGLE, 1, 0),
                    new Unit("km/h", Dimension.SPEED, 1 / 3.6, 0),
                    new Unit("kph", Dimension.SPEED, 1 / 3.6, 0),
                    new Unit("m/s", Dimension.SPEED, 1, 0),
                    new Unit("mph", Dimension.SPEED, 1609.344 / 3600, 0),
                    new Unit("min", Dimension.TIME, 60, 0),
                    new Unit("s", Dimension.TIME, 1, 0),
                    new Unit("h", Dimension.TIME, 3600, 0),
                    new Unit("hours", Dimension.TIME, 3600, 0),
                    new Unit("day", Dimension.TIME, DAY, 0),
                    new Unit("days", Dimension.TIME, DAY, 0),
                    new Unit("week", Dimension.TIME, 7 * DAY, 0),
                    new Unit("weeks", Dimension.TIME, 7 * DAY, 0),
                    new Unit("month", Dimension.TIME, MONTH, 0),
                    new Unit("months", Dimension.TIME, MONTH, 0),
                    new Unit("year", Dimension.TIME, 12 * MONTH, 0),
                    new Unit("years", Dimension.TIME, 12 * MONTH, 0),
                    new Unit("%", Dimension.SHARE, 0.01, 0),
                    new Unit("degC", Dimension.TEMPERATURE, 1, 273.15),
                    new Unit("K", Dimension.TEMPERATURE, 1, 0),
                    new Unit("degF", Dimension.TEMPERATURE, 5.0 / 9, 459.67 * 5 / 9),
                    new Unit("", Dimension.RATIO, 1, 0));

    /** Returns the units of one kind, the usual one first. */
    public static List<Unit> of(Dimension dimension) {
        return TABLE.stream().filter(unit -> unit.dimension == dimension).toList();
    }

    /** Returns the unit of that kind and symbol, whatever the case of its letters. */
    public static Optional<Unit> of(Dimension dimension, String symbol) {
        String plain = plain(symbol);
        return of(dimension).stream().filter(unit -> plain(unit.symbol).equals(plain)).findFirst();
    }

    /** Returns the kind of quantity that a symbol measures, if it is known at all. */
    public static Optional<Dimension> dimensionOf(String symbol) {
        return Arrays.stream(Dimension.values())
                .filter(dimension -> of(dimension, symbol).isPresent())
                .findFirst();
    }

    /** A symbol with every way of writing a power or a degree made one, and no spaces. */
    private static String plain(String symbol) {
        return symbol.replace("²", "2")
                .replace("³", "3")
                .replace("°C", "degC")
                .replace("°F", "degF")
                .replaceAll("[\\s^]|\\.$", "")
                .toLowerCase(Locale.ROOT);
    }

    /** Returns what {@code value} of this unit is in SI. */
    public double toSi(double value) {
        return value * factor + offset;
    }

    /** Returns what {@code si} is in this unit. */
    public double fromSi(double si) {
        return (si - offset) / factor;
    }
}
