package org.coachskin.shell;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Stretch;

/** The outer rim of a panel, edge by edge of its triangles, and which side each belongs to. */
final class Rim {

    private Rim() {}

    /**
     * One edge of a triangle on the outer rim.
     *
     * @param edge its number
     * @param triangle the triangle inside
     * @param side the side of the panel, by where the outward normal points most; at 45 degrees the
     *     front or rear, or the side that would have no piece otherwise
     * @param normalX outward normal at its middle
     * @param normalY outward normal at its middle
     * @param along place of its middle along the side [m]
     * @param length [m]
     */
    record Piece(
            int edge,
            int triangle,
            Edge side,
            double normalX,
            double normalY,
            double along,
            double length) {
        boolean isOn(Stretch stretch) {
            return stretch.edge() == side && stretch.holds(along);
        }

        private Piece on(Edge other, Grid grid) {
            double at = Rim.along(other, grid.onEdge(edge, 0.5));
            return new Piece(edge, triangle, other, normalX, normalY, at, length);
        }
    }

    /** Returns the pieces of the outer rim; rims of openings are left out. */
    static List<Piece> of(Grid grid) {
        List<Piece> pieces = new ArrayList<>();
        boolean[] outer = outerLoop(grid);
        for (int e = 0; e < grid.edges(); e++) {
            if (outer[e]) {
                pieces.add(piece(grid, e));
            }
        }
        settle(grid, pieces);
        return pieces;
    }

    /**
     * Gives pieces at 45 degrees to the left or right side where that has no others and the front
     * or rear side has: the slanted sides of a leaning outline.
     */
    private static void settle(Grid grid, List<Piece> pieces) {
        Set<Edge> clear = EnumSet.noneOf(Edge.class);
        for (Piece piece : pieces) {
            if (!Edge.isBetween(piece.normalX, piece.normalY)) {
                clear.add(piece.side);
            }
        }
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            Edge other = piece.normalX < 0 ? Edge.LEFT : Edge.RIGHT;
            if (Edge.isBetween(piece.normalX, piece.normalY)
                    && clear.contains(piece.side)
                    && !clear.contains(other)) {
                pieces.set(i, piece.on(other, grid));
            }
        }
    }

    private static Piece piece(Grid grid, int e) {
        double[] middle = grid.onEdge(e, 0.5);
        int t = grid.neighbours[2 * e];
        double length = Math.hypot(middle[2], middle[3]);
        double nx = middle[3] / length;
        double ny = -middle[2] / length;
        double[] inside = grid.centre(t);
        if (nx * (middle[0] - inside[0]) + ny * (middle[1] - inside[1]) < 0) {
            nx = -nx;
            ny = -ny;
        }
        Edge side = Edge.facing(nx, ny);
        return new Piece(e, t, side, nx, ny, along(side, middle), length);
    }

    private static double along(Edge side, double[] middle) {
        return side.alongX() ? middle[0] : middle[1];
    }

    /** Marks the rim edges that hang together with the leftmost vertex. */
    private static boolean[] outerLoop(Grid grid) {
        int leftmost = 0;
        int[] group = new int[grid.vertices];
        for (int v = 0; v < grid.vertices; v++) {
            group[v] = v;
            if (grid.x[v] < grid.x[leftmost]) {
                leftmost = v;
            }
        }
        for (int e = 0; e < grid.edges(); e++) {
            if (grid.onRim(e)) {
                group[root(group, grid.ends[2 * e])] = root(group, grid.ends[2 * e + 1]);
            }
        }
        boolean[] outer = new boolean[grid.edges()];
        int wanted = root(group, leftmost);
        for (int e = 0; e < grid.edges(); e++) {
            outer[e] = grid.onRim(e) && root(group, grid.ends[2 * e]) == wanted;
        }
        return outer;
    }

    private static int root(int[] group, int v) {
        int r = v;
        while (group[r] != r) {
            group[r] = group[group[r]];
            r = group[r];
        }
        return r;
    }
}
