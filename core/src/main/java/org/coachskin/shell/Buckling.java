package org.coachskin.shell;

/**
 * One way in which a loaded panel buckles.
 *
 * @param factor how many times its load it takes [-]; above zero
 * @param shape how it gives way; its sign says nothing
 */
public record Buckling(double factor, ModeShape shape) {}
