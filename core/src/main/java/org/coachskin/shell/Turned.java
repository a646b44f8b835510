package org.coachskin.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import org.coachskin.laminate.Laminate;
import org.coachskin.panel.Opening;
import org.coachskin.panel.Panel;
import org.coachskin.panel.TurnedEdge;

/** Skins turned round raw edges of the foam, edge by edge of the triangles. */
final class Turned {

    private Turned() {}

    /**
     * One edge of a triangle that a skin is turned round.
     *
     * @param edge its number
     * @param triangle the triangle inside
     * @param turned which skin, round which edge of the panel
     */
    record Piece(int edge, int triangle, TurnedEdge turned) {}

    /**
     * Returns the edges of triangles that a skin is turned round, those without foam left out.
     *
     * @param stacks of the triangles
     */
    static List<Piece> of(Panel panel, Grid grid, IntFunction<Laminate> stacks) {
        List<Piece> pieces = new ArrayList<>();
        if (panel.turned().isEmpty()) {
            return pieces;
        }
        boolean[] outer = new boolean[grid.edges()];
        for (Rim.Piece piece : Rim.of(grid)) {
            outer[piece.edge()] = true;
            for (TurnedEdge turned : panel.turned()) {
                if (turned instanceof TurnedEdge.Along along && along.edge() == piece.side()) {
                    pieces.add(new Piece(piece.edge(), piece.triangle(), along));
                }
            }
        }
        for (int e = 0; e < grid.edges(); e++) {
            if (grid.onRim(e) && !outer[e]) {
                String opening = nearest(panel, grid.onEdge(e, 0.5));
                for (TurnedEdge turned : panel.turned()) {
                    if (turned instanceof TurnedEdge.Round round
                            && round.opening().equals(opening)) {
                        pieces.add(new Piece(e, grid.neighbours[2 * e], round));
                    }
                }
            }
        }
        pieces.removeIf(piece -> stacks.apply(piece.triangle()).isBare());
        return pieces;
    }

    private static String nearest(Panel panel, double[] at) {
        String name = "";
        double nearest = Double.POSITIVE_INFINITY;
        for (Opening opening : panel.openings()) {
            double distance = Math.abs(opening.distance(at[0], at[1]));
            if (distance < nearest) {
                nearest = distance;
                name = opening.name();
            }
        }
        return name;
    }

    /** Returns the length of an edge of a triangle [m]. */
    static double length(Grid grid, int edge) {
        var gauss = ReferenceTriangle.line(8);
        double sum = 0;
        for (int q = 0; q < gauss.getNumberOfPoints(); q++) {
            double[] way = grid.onEdge(edge, gauss.getPoint(q));
            sum += gauss.getWeight(q) * Math.hypot(way[2], way[3]);
        }
        return sum;
    }
}
