package org.coachskin.units;

import java.text.Normalizer;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A number with its unit, as a tape or a label gives it, to SI.
 *
 * <p>Understood: {@code 12 mm}, {@code 12mm}, {@code 3/8 in}, {@code 2 3/8 in}, {@code 2½ in},
 * {@code 2 ft 3 1/2 in}, {@code 1.2e3 N}, {@code 50 %}; a share may also be a plain number. A bare
 * number is refused, and so is a comma. Nothing depends on the locale.
 */
public final class Quantity {

    private static final String NUMBER = "[+-]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][+-]?\\d+)?";

    private static final Pattern START =
            Pattern.compile(
                    "(?<whole>\\d+)[ -]+(?<top>\\d+)/(?<bottom>\\d+)|(?<n>\\d+)/(?<d>\\d+)|(?<value>"
                            + NUMBER
                            + ")");

    private static final Pattern COMMA = Pattern.compile("\\d,\\d");

    private static final Pattern THOUSANDS = Pattern.compile("\\d{1,3}(,\\d{3})+(?!\\d)");

    /** Where the next part of {@code 2 ft 3 in} begins. */
    private static final Pattern NEXT_PART = Pattern.compile("(?<=[a-zA-Z\"'.]\\s{0,9})\\d");

    private Quantity() {}

    /**
     * Returns the value in SI.
     *
     * @throws QuantityException when the text is not a quantity of that kind: what is wrong, and
     *     what to write
     */
    public static double parse(String text, Dimension dimension) {
        String plain = plain(text);
        refuseComma(plain);
        double sum = 0;
        String rest = plain;
        do {
            Matcher matcher = START.matcher(rest);
            if (!matcher.lookingAt()) {
                throw new QuantityException(
                        "is \"" + plain + "\": not a number with a unit", example(dimension));
            }
            double number = number(matcher);
            rest = rest.substring(matcher.end()).strip();
            Matcher next = NEXT_PART.matcher(rest);
            int end = dimension == Dimension.LENGTH && next.find() ? next.start() : rest.length();
            sum += toSi(number, rest.substring(0, end).strip(), dimension, plain);
            rest = rest.substring(end);
        } while (!rest.isEmpty());
        if (!Double.isFinite(sum)) {
            throw new QuantityException("is too large to be true", example(dimension));
        }
        return sum;
    }

    /** Fractions, powers, spaces and digits as a plain keyboard has them. */
    private static String plain(String text) {
        String apart = text.replaceAll("([\u00bc-\u00be\u2150-\u215e])", " $1");
        return Normalizer.normalize(apart, Normalizer.Form.NFKC).replace('\u2044', '/').strip();
    }

    private static void refuseComma(String text) {
        if (THOUSANDS.matcher(text).find()) {
            throw new QuantityException(
                    "has a comma, which may mean thousands or a decimal point",
                    text.replace(",", "") + "   or   " + text.replaceFirst(",", "."));
        }
        if (COMMA.matcher(text).find()) {
            throw new QuantityException(
                    "has a decimal comma; a point is wanted", text.replaceFirst(",", "."));
        }
    }

    private static double toSi(double number, String symbol, Dimension dimension, String text) {
        if (symbol.isEmpty() && dimension == Dimension.SHARE) {
            return number;
        }
        if (symbol.isEmpty() && dimension != Dimension.RATIO) {
            List<Unit> units = Unit.of(dimension);
            String others =
                    units.size() == 1
                            ? ""
                            : units.stream()
                                    .limit(3)
                                    .map(Unit::symbol)
                                    .collect(Collectors.joining(", or ", "     (of ", "?)"));
            throw new QuantityException("has no unit", text + " " + units.get(0).symbol() + others);
        }
        return Unit.of(dimension, symbol)
                .orElseThrow(() -> wrongUnit(symbol, dimension, text))
                .toSi(number);
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
        String what =
                Unit.dimensionOf(symbol)
                        .map(
                                other ->
                                        "is \""
                                                + text
                                                + "\", a "
                                                + other.words()
                                                + "; a "
                                                + wanted.words()
                                                + " is wanted")
                        .orElse(
                                "is \""
                                        + text
                                        + "\"; \""
                                        + symbol
                                        + "\" is no unit that is known here");
        boolean hangs = wanted == Dimension.FORCE && Unit.of(Dimension.MASS, symbol).isPresent();
        String unit =
                hangs ? symbol.startsWith("l") ? "lbf" : "kgf" : Unit.of(wanted).get(0).symbol();
        return new QuantityException(what, ("a number and " + unit).replaceAll(" and $", ""));
    }

    private static String example(Dimension dimension) {
        return ("for example 12 " + Unit.of(dimension).get(0).symbol()).strip();
    }
}
