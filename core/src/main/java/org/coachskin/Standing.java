package org.coachskin;

/** How far a number may be trusted. */
public enum Standing {
    /** Measured by the user on the user's own material. */
    MEASURED("measured by you"),
    /** Given outright in the user's file. */
    GIVEN("given by you"),
    /** Read in a published work. */
    PUBLISHED("published"),
    /** A rule of the trade. */
    COMMON_PRACTICE("common practice, no source"),
    /** Believed right but not yet read again in the work. */
    FROM_MEMORY("from memory"),
    /** Calculated from other numbers by this library. */
    CALCULATED("calculated");

    private final String words;

    Standing(String words) {
        this.words = words;
    }

    /** Returns the standing in plain words. */
    public String words() {
        return words;
    }
}
