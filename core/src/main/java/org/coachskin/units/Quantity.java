package org.coachskin.units;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number with its unit, as a tape or a label gives it, to SI.
 *
 * <p>Understood: {@code 12 mm}, {@code 12mm}, {@code 3/8 in}, {@code 2 3/8 in}, {@code 2 ft 3 1/2
 * in}, {@code 1.2e3 N}, {@code 50 %}; a share may also be a plain number. A bare number is refused,
 * and so is a decimal comma.
 */
public final class Quantity {

    private static final String NUMBER = "[+-]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][+-]?\\d+)?";

    private static final Pattern START =
            Pattern.compile(
                    "(?<whole>\\d+)[ -]+(?<top>\\d+)/(?<bottom>\\d+)|(?<n>\\d+)/(?<d>\\d+)|(?<value>"
                            + NUMBER
                            + ")");

    private static final Pattern COMMA = Pattern.compile("^\\s*[+-]?\\d+,\\d+.*");

    private Quantity() {}

    /**
     * Returns the value in SI.
     *
     * @throws QuantityException when the text is not a quantity of that kind: what is wrong, and
     *     what to write
     */
    public static double parse(String text, Dimension dimension) {
        String usual = Unit.of(dimension).get(0).symbol();
        if (COMMA.matcher(text).matches()) {
            throw new QuantityException(
                    "A decimal comma is not understood.", text.strip().replaceFirst(",", "."));
        }
        double sum = 0;
        String rest = text.strip();
        boolean first = true;
        while (first || !rest.isEmpty()) {
            Matcher matcher = START.matcher(rest);
            if (!matcher.lookingAt()) {
                throw new QuantityException(
                        "This is not a number with a unit.", "for example 12 " + usual);
            }
            double number = number(matcher);
            rest = rest.substring(matcher.end()).strip();
            int end = dimension == Dimension.LENGTH ? firstDigit(rest) : rest.length();
            String symbol = rest.substring(0, end).strip();
            rest = rest.substring(end);
            if (!symbol.isEmpty()) {
                sum +=
                        Unit.of(dimension, symbol)
                                .orElseThrow(() -> wrongUnit(symbol, dimension, text))
                                .toSi(number);
            } else if (dimension == Dimension.SHARE) {
                sum += number;
            } else {
                throw new QuantityException("It has no unit.", text.strip() + " " + usual);
            }
            first = false;
        }
        if (!Double.isFinite(sum)) {
            throw new QuantityException(
                    "The number is too large to be true.", "for example 12 " + usual);
        }
        return sum;
    }

    private static int firstDigit(String text) {
        int i = 0;
        while (i < text.length() && !Character.isDigit(text.charAt(i))) {
            i++;
        }
        return i;
    }

    private static double number(Matcher m) {
        if (m.group("value") != null) {
            return Double.parseDouble(m.group("value"));
        }
        if (m.group("n") != null) {
            return Double.parseDouble(m.group("n")) / Double.parseDouble(m.group("d"));
        }
        return Double.parseDouble(m.group("whole"))
                + Double.parseDouble(m.group("top")) / Double.parseDouble(m.group("bottom"));
    }

    private static QuantityException wrongUnit(String symbol, Dimension wanted, String text) {
        String usual = Unit.of(wanted).get(0).symbol();
        String known =
                Unit.dimensionOf(symbol)
                        .map(
                                other ->
                                        "\""
                                                + symbol.strip()
                                                + "\" is a unit of "
                                                + words(other)
                                                + "; wanted is "
                                                + words(wanted)
                                                + ".")
                        .orElse("\"" + symbol.strip() + "\" is no unit that is known here.");
        return new QuantityException(
                known, "a number with " + usual + ", in place of " + text.strip());
    }

    private static String words(Dimension dimension) {
        return dimension.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
    }
}
