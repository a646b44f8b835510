package org.coachskin;

/** Guards for constructors; every message names the quantity, the value and the unit. */
public final class Require {

    private Require() {}

    /**
     * Returns {@code value} if it is finite and above zero.
     *
     * @throws IllegalArgumentException otherwise
     */
    public static double positive(String quantity, double value, String unit) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    quantity + " is " + written(value, unit) + "; it must be above zero");
        }
        return value;
    }

    /**
     * Returns {@code value} if it is finite and not below zero.
     *
     * @throws IllegalArgumentException otherwise
     */
    public static double notNegative(String quantity, double value, String unit) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    quantity + " is " + written(value, unit) + "; it must not be below zero");
        }
        return value;
    }

    /**
     * Returns {@code value} if it is finite.
     *
     * @throws IllegalArgumentException otherwise
     */
    public static double finite(String quantity, double value, String unit) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(
                    quantity + " is " + written(value, unit) + "; it must be a number");
        }
        return value;
    }

    /**
     * Returns {@code value} if it lies between the bounds, both included.
     *
     * @throws IllegalArgumentException otherwise
     */
    public static double within(
            String quantity, double value, double low, double high, String unit) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(
                    quantity
                            + " is "
                            + written(value, unit)
                            + "; it must lie between "
                            + low
                            + " and "
                            + written(high, unit));
        }
        return value;
    }

    private static String written(double value, String unit) {
        return unit.isEmpty() ? Double.toString(value) : value + " " + unit;
    }
}
