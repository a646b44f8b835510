package org.coachskin.cli.report;

/** How figures are written on a sheet. */
public interface Units {

    /** Returns one unit of length, as drawings are dimensioned in [m]. */
    double length();

    /** Returns its name: {@code mm}. */
    String lengthName();

    /** Returns one unit of stress [Pa]. */
    double stress();

    /** Returns its name: {@code MPa}. */
    String stressName();

    /** Returns a size as a tape gives it, with its unit. */
    String size(double metres);

    /** Returns a place, told no finer than it is worth, with its unit. */
    String place(double metres);

    /** Returns how far something moves, with its unit. */
    String movement(double metres);

    /** Returns a size without its unit. */
    default String bare(double metres) {
        String words = size(metres);
        return words.substring(0, words.indexOf(' '));
    }
}
