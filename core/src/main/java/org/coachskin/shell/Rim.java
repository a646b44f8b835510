package org.coachskin.shell;

import java.util.ArrayList;
import java.util.List;
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
     * @param side the side of the panel, by where the outward normal points most
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
        return pieces;
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
        Edge side;
        if (Math.abs(nx) > Math.abs(ny)) {
            side = nx < 0 ? Edge.LEFT : Edge.RIGHT;
        } else {
            side = ny < 0 ? Edge.FRONT : Edge.REAR;
        }
        return new Piece(e, t, side, nx, ny, side.alongX() ? middle[0] : middle[1], length);
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
