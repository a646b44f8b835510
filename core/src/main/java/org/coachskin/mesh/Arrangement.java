package org.coachskin.mesh;

import java.util.List;

/**
 * Vertices, and pieces that meet only in them.
 *
 * @param vertices places by number
 * @param pieces in a fixed order, rims first
 * @param largestShift how far a piece lies from the curve it stands for, at most, m
 */
record Arrangement(List<Point> vertices, List<Piece> pieces, double largestShift) {

    Arrangement {
        vertices = List.copyOf(vertices);
        pieces = List.copyOf(pieces);
    }
}
