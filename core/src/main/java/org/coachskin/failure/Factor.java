package org.coachskin.failure;

import org.coachskin.Source;

/**
 * One factor of safety.
 *
 * @param words what it stands on, for example {@code on the least strength of a skin}
 * @param value how many times the load must fit, {@value #LEAST} to {@value #MOST} [-]
 * @param source where it comes from
 */
public record Factor(String words, double value, Source source) {

    /** No caution at all. */
    public static final double LEAST = 1;

    /** More than this is a mistake. */
    public static final double MOST = 20;

    /** Checks the range. */
    public Factor {
        if (!(value >= LEAST && value <= MOST)) {
            throw new IllegalArgumentException(
                    "factor of safety " + words + ": between 1 and 20 is wanted, not " + value);
        }
    }
}
