package org.coachskin.sparse;

/**
 * What solves A x = b. It may hold some combinations of unknowns at zero by forces of its own, as
 * long as these do no work.
 */
@FunctionalInterface
public interface Inverse {

    /**
     * Writes the solutions of several right-hand sides into {@code x}.
     *
     * @param b n by count, column after column
     * @param x n by count, overwritten; may be {@code b}
     */
    void solve(double[] b, double[] x, int count);
}
