package org.coachskin;

import java.util.List;
import java.util.stream.Collectors;

/** Input that has to be changed before anything can be calculated; nothing was. */
public final class InputException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    /** Creates the exception from all that was found, in the order of the input. */
    public InputException(List<Problem> problems) {
        super(problems.stream().map(Problem::toString).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    /** Returns all that was found, in the order of the input. */
    public List<Problem> problems() {
        return problems;
    }
}
