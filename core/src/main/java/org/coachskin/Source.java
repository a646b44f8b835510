package org.coachskin;

/**
 * Where a number comes from, and how far it may be trusted.
 *
 * @param work author, title and year of the work, or who gave the number
 * @param place page, table or equation in the work; empty where there is none
 * @param standing how far the number may be trusted
 */
public record Source(String work, String place, Standing standing) {

    /** A number that stands in the user's own file. */
    public static final Source YOURS = new Source("your file", "", Standing.GIVEN);

    /** Returns work and place on one line, without the standing. */
    public String citation() {
        return place.isEmpty() ? work : work + ", " + place;
    }

    /** Returns the citation with its standing, as a person reads it. */
    @Override
    public String toString() {
        return citation() + " [" + standing.words() + "]";
    }
}
