package org.coachskin.cli.file;

import java.util.Locale;
import org.coachskin.units.Dimension;
import org.coachskin.units.Unit;

/** Quantities to a person, no more digits than hand work deserves. */
public final class Format {

    private Format() {}

    /** Returns {@code si} in the usual unit of its kind. */
    public static String plain(double si, Dimension dimension) {
        Unit unit = Unit.of(dimension).get(0);
        return (number(unit.fromSi(si)) + " " + unit.symbol()).strip();
    }

    /** Returns a number with about three digits, without an exponent. */
    public static String number(double value) {
        double size = Math.abs(value);
        int decimals =
                size >= 100 || value == Math.rint(value) ? 0 : size >= 10 ? 1 : size >= 1 ? 2 : 3;
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
