package org.coachskin.cli;

/**
 * What a run of the command leaves behind.
 *
 * @param status exit status
 * @param out the answer, for standard output
 * @param err what has to be put right, for standard error
 */
record Outcome(int status, String out, String err) {

    /** Every limit holds, or the answer is given. */
    static final int HOLDS = 0;

    /** A limit does not hold. */
    static final int DOES_NOT_HOLD = 1;

    /** The input needs a change. */
    static final int INPUT = 2;

    /** There is no answer. */
    static final int NO_ANSWER = 3;

    static Outcome answer(int status, String out) {
        return new Outcome(status, out, "");
    }

    static Outcome problem(int status, String err) {
        return new Outcome(status, "", err);
    }
}
