package org.coachskin.cli.report;

/** Plain text of the terminal as it is set in print. */
public final class Typing {

    private Typing() {}

    /** Returns words, set, that stay on one line. */
    public static String whole(String words) {
        return set(words).replace(' ', '\u00a0');
    }

    /** Returns words with raised figures and signs that a terminal may not have. */
    public static String set(String words) {
        return words.replace("m^2", "m\u00b2")
                .replace("m^3", "m\u00b3")
                .replace("in^2", "in\u00b2")
                .replace("yd^2", "yd\u00b2")
                .replace("ft^2", "ft\u00b2")
                .replace("ft^3", "ft\u00b3")
                .replace(" degC", " \u00b0C")
                .replace(" degF", " \u00b0F")
                .replace("+- ", "\u00b1 ")
                .replaceAll("(\\d(?: mm| in)?) x (\\d)", "$1 \u00d7 $2");
    }
}
