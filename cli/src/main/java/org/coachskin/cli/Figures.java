package org.coachskin.cli;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import org.coachskin.cli.report.Units;

/** SI to figures as a person reads them, rounded to what they are worth, in one of two systems. */
enum Figures implements Units {
    /** Millimetres, newtons, kilograms. */
    METRIC,
    /** Inches, pounds of force, pounds. */
    US;

    private static final double INCH = 0.0254;

    /** From here on a tape is read to whole millimetres [m]. */
    private static final double TAPE = 0.1;

    private static final double POUND = 0.45359237;
    private static final double POUND_FORCE = 4.4482216152605;
    private static final double FOOT = 12 * INCH;
    private static final double MILE = 1609.344;
    private static final double OUNCE = POUND / 16;
    private static final double YARD = 36 * INCH;

    /** Returns a speed of the wind to write in a file, in round figures. */
    String windToWrite() {
        return metric() ? "110 km/h" : "70 mph";
    }

    private boolean metric() {
        return this == METRIC;
    }

    @Override
    public double length() {
        return metric() ? 0.001 : INCH;
    }

    @Override
    public String lengthName() {
        return metric() ? "mm" : "in";
    }

    @Override
    public double stress() {
        return metric() ? 1e6 : POUND_FORCE / (INCH * INCH);
    }

    @Override
    public String stressName() {
        return metric() ? "MPa" : "psi";
    }

    /** What a small thing weighs. */
    String grams(double kilograms) {
        return !metric()
                ? significant(kilograms / OUNCE, 2, 1) + " oz"
                : kilograms < 1 ? significant(1000 * kilograms, 2, 0) + " g" : mass(kilograms);
    }

    /** What is weighed out at the bench, as a kitchen scale shows it. */
    String weighed(double kilograms) {
        double grams = 1000 * kilograms;
        return metric()
                ? decimals(grams < 100 ? grams : 5 * Math.rint(grams / 5), 0) + " g"
                : decimals(kilograms / OUNCE, 1) + " oz";
    }

    /** By how much a weight grows or shrinks, with its sign; nothing where it stays. */
    String addedGrams(double kilograms) {
        return Math.abs(kilograms) < 0.0005
                ? ""
                : (kilograms > 0 ? "+" : "-") + grams(Math.abs(kilograms));
    }

    /** A size, as a tape gives it. */
    @Override
    public String size(double metres) {
        return metric()
                ? decimals(1000 * metres, metres < TAPE ? 1 : 0) + " mm"
                : decimals(metres / INCH, 2) + " in";
    }

    /** A place, told by the centimetre or the half inch. */
    @Override
    public String place(double metres) {
        double grain = metric() ? 0.01 : INCH / 2;
        return size(grain * Math.rint(metres / grain));
    }

    /** The thickness of a layer. */
    String fineSize(double metres) {
        return metric() ? decimals(1000 * metres, 2) + " mm" : decimals(metres / INCH, 4) + " in";
    }

    /** Two sizes with one unit. */
    String sizes(double first, double second) {
        return metric()
                ? decimals(1000 * first, 0) + " x " + decimals(1000 * second, 0) + " mm"
                : decimals(first / INCH, 1) + " x " + decimals(second / INCH, 1) + " in";
    }

    /** The area of a patch. */
    String area(double squareMetres) {
        return metric()
                ? significant(1e6 * squareMetres, 4, 0) + " mm^2"
                : significant(squareMetres / (INCH * INCH), 4, 3) + " in^2";
    }

    /** How far something moves. */
    @Override
    public String movement(double metres) {
        return movementNumber(metres) + " " + lengthName();
    }

    /** A part of a movement with as many decimals as the whole, without the unit. */
    String partOfMovement(double part, double whole) {
        String shown = movementNumber(whole);
        int places = shown.indexOf('.') < 0 ? 0 : shown.length() - 1 - shown.indexOf('.');
        // Not as fixed(): that leaves its sign to a nought.
        return BigDecimal.valueOf(part / length())
                .setScale(places, RoundingMode.HALF_UP)
                .toPlainString();
    }

    /** How far something moves either way, with one digit more. */
    String fineMovement(double metres) {
        return metric()
                ? significant(1000 * Math.abs(metres), 3, 3) + " mm"
                : significant(Math.abs(metres) / INCH, 3, 4) + " in";
    }

    /** How far something moves, without the unit. */
    String movementNumber(double metres) {
        double value = metric() ? 1000 * metres : metres / INCH;
        double least = metric() ? 0.005 : 0.0005;
        return value != 0 && Math.abs(value) < least
                ? "<" + decimals(2 * least, 3)
                : significant(value, 2, metric() ? 2 : 3);
    }

    /** Felt stiffness with enough decimals to stand apart from {@code limit}. */
    String stiffness(double value, double limit) {
        double unit = stiffnessUnit();
        String wanted = decimals(limit / unit, 1);
        for (int places = 0; places < 3; places++) {
            String shown = decimals(value / unit, places);
            if (places == 2 || !shown.equals(wanted)) {
                return shown;
            }
        }
        return decimals(value / unit, 2);
    }

    /** Felt stiffness, without the unit. */
    String stiffness(double value) {
        double shown = value / stiffnessUnit();
        return decimals(shown, Math.abs(shown) < 10 ? 1 : 0);
    }

    private double stiffnessUnit() {
        return metric() ? 1000 : POUND_FORCE / INCH;
    }

    /** The unit of a felt stiffness. */
    String stiffnessName() {
        return metric() ? "N/mm" : "lbf/in";
    }

    /** Stiffness per mass, without the unit. */
    String stiffnessPerMass(double value) {
        return significant(value / stiffnessUnit() * (metric() ? 1 : POUND), 2, 1);
    }

    String force(double newtons) {
        return metric()
                ? significant(newtons, 3, 0) + " N"
                : significant(newtons / POUND_FORCE, 2, 0) + " lbf";
    }

    /** The force of a rubber seal. */
    String perLength(double newtonsPerMetre) {
        return metric()
                ? significant(newtonsPerMetre, 3, 0) + " N per m"
                : significant(newtonsPerMetre * FOOT / POUND_FORCE, 2, 1) + " lbf/ft";
    }

    String mass(double kilograms) {
        return massNumber(kilograms) + " " + massName();
    }

    /** Weights to set down on a panel, round in either system [kg]. */
    List<Double> weights() {
        return metric()
                ? List.of(5.0, 10.0, 15.0, 20.0, 25.0)
                : List.of(10 * POUND, 20 * POUND, 30 * POUND, 40 * POUND, 50 * POUND);
    }

    /** A weight that is hung up. */
    String hung(double kilograms) {
        return decimals(metric() ? kilograms : kilograms / POUND, 1) + " " + massName();
    }

    String massNumber(double kilograms) {
        double value = metric() ? kilograms : kilograms / POUND;
        return fixed(value, Math.abs(value) < 100 ? 2 : 0);
    }

    String massName() {
        return metric() ? "kg" : "lb";
    }

    String massPerArea(double kilogramsPerSquareMetre) {
        return metric()
                ? fixed(kilogramsPerSquareMetre, 2) + " kg/m^2"
                : fixed(kilogramsPerSquareMetre / POUND * FOOT * FOOT, 2) + " lb/ft^2";
    }

    /** Mass of cloth or seal coat over an area. */
    String cloth(double kilogramsPerSquareMetre) {
        return metric()
                ? decimals(1000 * kilogramsPerSquareMetre, 0) + " g/m^2"
                : decimals(kilogramsPerSquareMetre / OUNCE * YARD * YARD, 1) + " oz/yd^2";
    }

    /**
     * Mass of dry cloth per square yard or, as mat is sold, per square foot, whatever the system.
     */
    static String ounces(double kilogramsPerSquareMetre, boolean mat) {
        double side = mat ? FOOT : YARD;
        return decimals(kilogramsPerSquareMetre / OUNCE * side * side, mat ? 2 : 1)
                + (mat ? " oz/ft^2" : " oz/yd^2");
    }

    /** Widths of cloth with one unit, in whole inches or centimetres. */
    String widths(List<Double> metres) {
        return String.join(
                        ", ",
                        metres.stream()
                                .map(width -> decimals(width / (metric() ? 0.01 : INCH), 0))
                                .toList())
                + (metric() ? " cm" : " in");
    }

    String density(double kilogramsPerCubicMetre) {
        return metric()
                ? decimals(kilogramsPerCubicMetre, 0) + " kg/m^3"
                : significant(kilogramsPerCubicMetre / POUND * FOOT * FOOT * FOOT, 3, 1)
                        + " lb/ft^3";
    }

    /** A stress or a modulus. */
    String stress(double pascals) {
        double value = metric() ? pascals / 1e6 : pascals / (POUND_FORCE / (INCH * INCH));
        return metric() && Math.abs(value) >= 1000
                ? significant(value / 1000, 3, 2) + " GPa"
                : significant(value, 3, 3) + (metric() ? " MPa" : " psi");
    }

    /** A stress that is set against another, with three digits however small it is. */
    String fineStress(double pascals) {
        return metric() && Math.abs(pascals) < 1e5
                ? significant(pascals / 1e6, 3, 4) + " MPa"
                : stress(pascals);
    }

    /** A stress or a modulus without zeros at its end, as a table of materials gives it. */
    String rounded(double pascals) {
        String[] words = stress(pascals).split(" ", -1);
        return new BigDecimal(words[0]).stripTrailingZeros().toPlainString() + " " + words[1];
    }

    /** A modulus or strength of resin, short enough for a table with many columns. */
    String resin(double pascals) {
        double ksi = pascals / (POUND_FORCE / (INCH * INCH)) / 1000;
        return metric() ? rounded(pascals) : decimals(ksi, ksi < 100 ? 1 : 0) + " ksi";
    }

    /** A force per width. */
    String forcePerWidth(double newtonsPerMetre) {
        return metric()
                ? significant(newtonsPerMetre / 1000, 3, 2) + " N/mm"
                : significant(newtonsPerMetre * INCH / POUND_FORCE, 3, 1) + " lbf/in";
    }

    String speed(double metresPerSecond) {
        return metric()
                ? decimals(3.6 * metresPerSecond, 0) + " km/h"
                : decimals(3600 * metresPerSecond / MILE, 0) + " mph";
    }

    /** A temperature of the absolute scale. */
    String temperature(double kelvin) {
        return metric()
                ? decimals(kelvin - 273.15, 0) + " degC"
                : decimals((kelvin - 273.15) * 1.8 + 32, 0) + " degF";
    }

    /** Sizes, cloths, temperatures and densities inside a sentence of the library. */
    String words(String sentence) {
        return metric() ? sentence : AmericanWords.of(sentence);
    }

    /** How many times a load fits. */
    static String times(double multiplier) {
        return multiplier > 99.5 ? "over 100" : fixed(multiplier, multiplier < 9.95 ? 1 : 0);
    }

    /** Allowable over applied. */
    static String reserve(double reserve) {
        if (reserve > 99) {
            return "over 99";
        }
        // Rounding must not turn a limit that fails into one that holds.
        return reserve < 1 && reserve > 0.995 ? "0.99" : fixed(reserve, reserve < 10 ? 2 : 0);
    }

    static String percent(double share) {
        double percent = 100 * share;
        return percent > 0 && percent < 0.95 ? "<1 %" : decimals(percent, 0) + " %";
    }

    /** A share by which something grows or shrinks, with its sign. */
    static String change(double share) {
        String percent = decimals(100 * share, 0);
        return (percent.startsWith("-") || percent.equals("0") ? "" : "+") + percent + " %";
    }

    /** At most so many decimals, without zeros at the end. */
    static String decimals(double value, int places) {
        BigDecimal rounded = new BigDecimal(value).setScale(places, RoundingMode.HALF_UP);
        BigDecimal bare = rounded.stripTrailingZeros();
        return (bare.scale() < 0 ? bare.setScale(0) : bare).toPlainString();
    }

    static String fixed(double value, int places) {
        return String.format(Locale.ROOT, "%." + places + "f", value);
    }

    /** So many significant digits, but no more than so many decimals. */
    static String significant(double value, int digits, int most) {
        if (value == 0 || !Double.isFinite(value)) {
            return value == 0 ? "0" : "-";
        }
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(digits));
        int places = digits - (rounded.precision() - rounded.scale());
        return rounded.setScale(Math.max(0, Math.min(most, places)), RoundingMode.HALF_UP)
                .toPlainString();
    }
}
