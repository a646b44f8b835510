package org.coachskin.bench;

/**
 * A rectangle to cut.
 *
 * @param count how many of it
 * @param one side [m]
 * @param other side [m]
 */
public record Piece(int count, double one, double other) {}
