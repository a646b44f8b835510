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

    /** Returns the thickness of a layer, with its unit. */
    String fineSize(double metres);

    /** Returns how far something moves, with its unit. */
    String movement(double metres);

    /** Returns what a small thing weighs, with its unit. */
    String grams(double kilograms);

    /** Returns a weight that is hung up or set down, with its unit. */
    String hung(double kilograms);

    /** Returns a size without its unit. */
    default String bare(double metres) {
        String words = size(metres);
        return words.substring(0, words.indexOf(' '));
    }
}
