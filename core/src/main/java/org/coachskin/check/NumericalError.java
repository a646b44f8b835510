package org.coachskin.check;

/**
 * How far the elements are off in one figure that is not a mode's.
 *
 * @param figure which: {@code frequency}, {@code latch Z under palm}, {@code rubber seal under
 *     palm}, {@code movement under palm}
 * @param error estimate, relative to the figure; for forces to the largest of the load case [-]
 */
public record NumericalError(String figure, double error) {}
