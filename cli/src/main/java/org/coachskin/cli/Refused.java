package org.coachskin.cli;

import java.util.List;
import org.coachskin.Problem;

/** What ends a run before there is an answer, with the file it is about. */
final class Refused extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final int status;
    private final transient String file;
    private final transient List<Problem> problems;

    /**
     * Creates the refusal.
     *
     * @param file name of the file the problems stand in; empty where they stand in none
     */
    Refused(int status, String file, List<Problem> problems) {
        super("refused");
        this.status = status;
        this.file = file;
        this.problems = List.copyOf(problems);
    }

    int status() {
        return status;
    }

    String file() {
        return file;
    }

    List<Problem> problems() {
        return problems;
    }
}
