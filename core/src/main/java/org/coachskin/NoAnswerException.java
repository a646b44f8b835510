package org.coachskin;

/** A question that is put properly but that this version, or the model, cannot answer. */
public final class NoAnswerException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient Problem problem;

    /** Creates the exception. */
    public NoAnswerException(Problem problem) {
        super(problem.toString());
        this.problem = problem;
    }

    /** Returns what has no answer, and what to ask instead. */
    public Problem problem() {
        return problem;
    }
}
