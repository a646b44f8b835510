package org.coachskin.check;

/** The answer to one of the three questions. */
public enum Answer {
    /** It holds, scatter of hand work included. */
    YES,
    /** It holds as drawn, but scatter or the error of the method may take it over the limit. */
    BARELY,
    /** It does not hold as drawn. */
    NO
}
