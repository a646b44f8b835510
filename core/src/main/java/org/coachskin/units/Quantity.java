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

    private static final Pattern PART =
            Pattern.compile(
                    "\\s*(?:(?<whole>\\d+)[ -]+(?<top>\\d+)/(?<bottom>\\d+)|(?<n>\\d+)/(?<d>\\d+)|(?<value>"
                            + NUMBER
                            + "))\\s*(?<unit>[^\\d\\s.+-][^\\d]*?(?:\\^?\\d)?(?:/[a-zA-Z]+\\^?\\d?)?)?(?=\\s+[\\d.+-]|\\s*$)");

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
        int at = 0;
        int parts = 0;
        Matcher matcher = PART.matcher(text);
        while (at < text.length() && matcher.find(at) && matcher.start() == at) {
            double number = number(matcher);
            String symbol = matcher.group("unit");
            if (symbol == null || symbol.isBlank()) {
                if (dimension == Dimension.SHARE) {
                    sum += number;
                } else {
                    throw new QuantityException("It has no unit.", text.strip() + " " + usual);
                }
            } else {
                Unit unit =
                        Unit.of(dimension, symbol)
                                .orElseThrow(() -> wrongUnit(symbol, dimension, text));
                sum += unit.toSi(number);
            }
            at = matcher.end();
            parts++;
        }
        if (parts == 0
                || !text.substring(at).isBlank()
                || (parts > 1 && dimension != Dimension.LENGTH)) {
            throw new QuantityException(
                    "This is not a number with a unit.", "for example 12 " + usual);
        }
        if (!Double.isFinite(sum)) {
            throw new QuantityException(
                    "The number is too large to be true.", "for example 12 " + usual);
        }
        return sum;
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
