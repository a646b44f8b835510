package org.coachskin.units;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A unit: what its text is worth in SI.
 *
 * @param symbol as it is written
 * @param dimension what kind of quantity it measures
 * @param factor SI units in one of it; exact by definition where the unit has one
 * @param offset added after the factor, for temperatures
 */
public record Unit(String symbol, Dimension dimension, double factor, double offset) {

    private static final double INCH = 0.0254;
    private static final double FOOT = 12 * INCH;
    private static final double POUND = 0.45359237;
    private static final double OUNCE = POUND / 16;
    private static final double GRAVITY = 9.80665;
    private static final double POUND_FORCE = POUND * GRAVITY;
    private static final double YARD = 3 * FOOT;
    private static final double DEGREE = Math.PI / 180;

    /** The units of one kind, the one to suggest first. */
    private static final Map<Dimension, List<Unit>> TABLE = table();

    private static Map<Dimension, List<Unit>> table() {
        Map<Dimension, List<Unit>> table = new LinkedHashMap<>();
        put(
                table,
                Dimension.LENGTH,
                "mm",
                1e-3,
                "cm",
                1e-2,
                "m",
                1.0,
                "in",
                INCH,
                "inch",
                INCH,
                "ft",
                FOOT,
                "\"",
                INCH,
                "'",
                FOOT);
        put(table, Dimension.MASS, "kg", 1.0, "g", 1e-3, "lb", POUND, "oz", OUNCE, "t", 1e3);
        put(
                table,
                Dimension.AREAL_MASS,
                "g/m^2",
                1e-3,
                "gsm",
                1e-3,
                "kg/m^2",
                1.0,
                "oz/yd^2",
                OUNCE / (YARD * YARD),
                "oz/ft^2",
                OUNCE / (FOOT * FOOT));
        put(
                table,
                Dimension.DENSITY,
                "kg/m^3",
                1.0,
                "g/cm^3",
                1e3,
                "g/l",
                1.0,
                "lb/ft^3",
                POUND / (FOOT * FOOT * FOOT),
                "pcf",
                POUND / (FOOT * FOOT * FOOT));
        put(table, Dimension.FORCE, "N", 1.0, "kN", 1e3, "kgf", GRAVITY, "lbf", POUND_FORCE);
        put(
                table,
                Dimension.STRESS,
                "MPa",
                1e6,
                "GPa",
                1e9,
                "kPa",
                1e3,
                "Pa",
                1.0,
                "N/mm^2",
                1e6,
                "kN/m^2",
                1e3,
                "N/m^2",
                1.0,
                "bar",
                1e5,
                "psi",
                POUND_FORCE / (INCH * INCH),
                "ksi",
                1e3 * POUND_FORCE / (INCH * INCH),
                "lbf/ft^2",
                POUND_FORCE / (FOOT * FOOT),
                "kgf/m^2",
                GRAVITY);
        put(
                table,
                Dimension.STIFFNESS,
                "N/mm",
                1e3,
                "N/m",
                1.0,
                "kN/m",
                1e3,
                "lbf/in",
                POUND_FORCE / INCH,
                "kgf/mm",
                GRAVITY * 1e3);
        put(
                table,
                Dimension.FORCE_PER_LENGTH,
                "N/m",
                1.0,
                "N per m",
                1.0,
                "N/mm",
                1e3,
                "lbf/ft",
                POUND_FORCE / FOOT);
        put(table, Dimension.TEMPERATURE_DIFFERENCE, "K", 1.0, "degC", 1.0, "degF", 5.0 / 9);
        put(
                table,
                Dimension.EXPANSION,
                "1/K",
                1.0,
                "1e-6/K",
                1e-6,
                "ppm/K",
                1e-6,
                "ppm/degC",
                1e-6);
        put(table, Dimension.ANGLE, "deg", DEGREE, "rad", 1.0, "°", DEGREE);
        put(
                table,
                Dimension.SPEED,
                "km/h",
                1 / 3.6,
                "m/s",
                1.0,
                "mph",
                1609.344 / 3600,
                "kph",
                1 / 3.6);
        put(
                table,
                Dimension.TIME,
                "min",
                60.0,
                "s",
                1.0,
                "h",
                3600.0,
                "days",
                86400.0,
                "weeks",
                604800.0,
                "months",
                2629800.0);
        put(table, Dimension.SHARE, "%", 0.01);
        table.put(
                Dimension.TEMPERATURE,
                List.of(
                        new Unit("degC", Dimension.TEMPERATURE, 1, 273.15),
                        new Unit("K", Dimension.TEMPERATURE, 1, 0),
                        new Unit("degF", Dimension.TEMPERATURE, 5.0 / 9, 459.67 * 5 / 9)));
        return table;
    }

    private static void put(
            Map<Dimension, List<Unit>> table, Dimension dimension, Object... pairs) {
        List<Unit> units = new java.util.ArrayList<>();
        for (int i = 0; i < pairs.length; i += 2) {
            units.add(new Unit((String) pairs[i], dimension, (Double) pairs[i + 1], 0));
        }
        table.put(dimension, List.copyOf(units));
    }

    /** Returns the units of one kind, the usual one first. */
    public static List<Unit> of(Dimension dimension) {
        return TABLE.getOrDefault(dimension, List.of());
    }

    /**
     * Returns the unit of that kind and symbol; letters' case matters only where it must (m, M).
     */
    public static Optional<Unit> of(Dimension dimension, String symbol) {
        String plain = plain(symbol);
        Optional<Unit> exact =
                of(dimension).stream().filter(unit -> unit.symbol.equals(plain)).findFirst();
        return exact.isPresent()
                ? exact
                : of(dimension).stream()
                        .filter(
                                unit ->
                                        unit.symbol
                                                .toLowerCase(Locale.ROOT)
                                                .equals(plain.toLowerCase(Locale.ROOT)))
                        .findFirst();
    }

    /** Returns the kind of quantity that a symbol measures, if it is known at all. */
    public static Optional<Dimension> dimensionOf(String symbol) {
        return TABLE.keySet().stream()
                .filter(dimension -> of(dimension, symbol).isPresent())
                .findFirst();
    }

    /** Superscripts, dots and spaces as a keyboard has them. */
    private static String plain(String symbol) {
        String text =
                symbol.strip()
                        .replace("²", "^2")
                        .replace("³", "^3")
                        .replace("m2", "m^2")
                        .replace("m3", "m^3")
                        .replace("°C", "degC")
                        .replace("°F", "degF");
        return text.replace("yd2", "yd^2").replace("ft2", "ft^2").replace("ft3", "ft^3");
    }

    /** Returns what {@code value} of this unit is in SI. */
    public double toSi(double value) {
        return value * factor + offset;
    }
}
