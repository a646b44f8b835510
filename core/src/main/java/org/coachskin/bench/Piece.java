package org.coachskin.bench;

/**
 * What is cut: a rectangle or a disc.
 *
 * @param count how many of it
 * @param one side, or diameter [m]
 * @param other side, or diameter [m]
 * @param round whether it is a disc
 */
public record Piece(int count, double one, double other, boolean round) {

    /** A rectangle. */
    public Piece(int count, double one, double other) {
        this(count, one, other, false);
    }

    static Piece disc(double diameter) {
        return new Piece(1, diameter, diameter, true);
    }
}
