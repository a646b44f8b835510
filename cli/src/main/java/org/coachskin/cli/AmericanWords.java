package org.coachskin.cli;

import static org.coachskin.cli.Figures.US;

import java.util.function.DoubleFunction;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Turns figures inside a sentence of the library from metric ones to American ones. */
final class AmericanWords {

    private static final Pattern MILLIMETRES = Pattern.compile("(\\d+(?:\\.\\d+)?) mm\\b");
    private static final Pattern PLIES =
            Pattern.compile(
                    "(\\d+(?:\\.\\d+)?) g(?= (?:ply|plies|on|inside|outside|at \\d+ degrees)\\b)");

    /** But not what a cloth of a file is in the tables: there it is set against what is written. */
    private static final Pattern CLOTHS =
            Pattern.compile(
                    "(?<!\" is [\\w ]{0,60})(\\bmat (?:glass )?)?\\b(\\d+(?:\\.\\d+)?) g/m\\^2");

    private static final Pattern WEIGHED = Pattern.compile("(?<=\\bwithin )(\\d+) g\\b");
    private static final Pattern TEMPERATURES = Pattern.compile("(\\d+) degC");
    private static final Pattern STIFFNESSES = Pattern.compile("(\\d+(?:\\.\\d+)?) N/mm");
    private static final Pattern SEALS =
            Pattern.compile("(\\d+(?:\\.\\d+)?) N per m\\b(?: instead of (\\d+))?");
    private static final Pattern DENSITIES =
            Pattern.compile("(\\d+) kg/m\\^3(?: instead of (\\d+)(?: kg/m\\^3)?)?");

    private AmericanWords() {}

    static String of(String sentence) {
        String text = MILLIMETRES.matcher(sentence).replaceAll(m -> US.size(number(m, 1) / 1000));
        text = PLIES.matcher(text).replaceAll(m -> US.cloth(number(m, 1) / 1000));
        text = CLOTHS.matcher(text).replaceAll(AmericanWords::sold);
        text = WEIGHED.matcher(text).replaceAll(m -> US.weighed(number(m, 1) / 1000));
        text =
                STIFFNESSES
                        .matcher(text)
                        .replaceAll(
                                found ->
                                        US.stiffness(1000 * number(found, 1))
                                                + " "
                                                + US.stiffnessName());
        text = TEMPERATURES.matcher(text).replaceAll(m -> US.temperature(number(m, 1) + 273.15));
        text = SEALS.matcher(text).replaceAll(m -> pair(m, US::perLength));
        return DENSITIES.matcher(text).replaceAll(found -> pair(found, US::density));
    }

    /** A cloth by the words of its name: mat is sold by the square foot. */
    private static String sold(MatchResult found) {
        String mat = found.group(1);
        return (mat == null ? "" : mat) + Figures.ounces(number(found, 2) / 1000, mat != null);
    }

    /** A figure, and what it stands instead of. */
    private static String pair(MatchResult found, DoubleFunction<String> figure) {
        String one = figure.apply(number(found, 1));
        return found.group(2) == null ? one : one + " instead of " + figure.apply(number(found, 2));
    }

    private static double number(MatchResult found, int group) {
        return Double.parseDouble(found.group(group));
    }
}
