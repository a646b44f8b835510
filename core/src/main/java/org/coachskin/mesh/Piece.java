package org.coachskin.mesh;

import java.util.List;

/**
 * A curve, or a part of one, between two vertices with nothing in between.
 *
 * @param a vertex at its start
 * @param b vertex at its end; the same as {@code a} for a whole circle
 * @param curve its shape from a to b
 * @param curves numbers of the drawing's curves that it stands for, rising
 * @param rim whether it lies between panel and nothing
 */
record Piece(int a, int b, Curve curve, List<Integer> curves, boolean rim) {

    Piece {
        curves = List.copyOf(curves);
    }

    /** Whether the other piece runs between the same vertices, nowhere farther off than given. */
    boolean alongside(Piece other, double distance) {
        boolean sameEnds = (a == other.a && b == other.b) || (a == other.b && b == other.a);
        boolean sameMiddle = curve.at(0.5).distance(other.curve.at(0.5)) <= distance;
        return sameEnds && (sameMiddle || (a == b && near(other, distance)));
    }

    private boolean near(Piece other, double distance) {
        Point mid = other.curve.at(0.5);
        return curve.distance(mid.x(), mid.y()) <= distance;
    }
}
