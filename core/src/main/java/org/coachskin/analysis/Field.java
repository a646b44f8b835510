package org.coachskin.analysis;

import java.util.List;

/**
 * One figure all over a panel, on triangles that follow its rim, its openings and its zones. A rim
 * is an edge of one triangle only; where two triangles of unlike zones meet a zone ends.
 *
 * @param nodes places with the figure at each
 * @param triangles their corners, anticlockwise with x to the right and y up
 */
public record Field(List<Node> nodes, List<Triangle> triangles) {

    /** Copies the lists. */
    public Field {
        nodes = List.copyOf(nodes);
        triangles = List.copyOf(triangles);
    }

    /**
     * One place.
     *
     * @param x from the left edge [m]
     * @param y from the front edge [m]
     * @param value of the figure there, in its own unit
     */
    public record Node(double x, double y, double value) {}

    /**
     * One triangle, by the numbers of its corners.
     *
     * @param a first corner
     * @param b second corner
     * @param c third corner
     * @param zone which of the panel's zones holds it, from 0; {@value #NONE} for none
     */
    public record Triangle(int a, int b, int c, int zone) {
        /** Outside every zone. */
        public static final int NONE = -1;
    }
}
