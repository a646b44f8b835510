package org.coachskin.shell;

import java.util.Arrays;

/** Which triangle holds a place: triangles by the cells of a square lattice. Immutable. */
final class Lookup {

    /** Rounding, in sides of an element. */
    private static final double WITHIN = 1e-9;

    /** Polynomials follow a round rim no closer than this, in sides of an element. */
    private static final double RIM = 0.01;

    private final Grid grid;
    private final int across;
    private final int along;
    private final double left;
    private final double front;
    private final double cell;

    /** Triangles of each cell. */
    private final int[][] triangles;

    Lookup(Grid grid) {
        this.grid = grid;
        double right = Double.NEGATIVE_INFINITY;
        double rear = Double.NEGATIVE_INFINITY;
        double minX = Double.POSITIVE_INFINITY;
        double minY = Double.POSITIVE_INFINITY;
        for (int v = 0; v < grid.vertices; v++) {
            minX = Math.min(minX, grid.x[v]);
            right = Math.max(right, grid.x[v]);
            minY = Math.min(minY, grid.y[v]);
            rear = Math.max(rear, grid.y[v]);
        }
        left = minX;
        front = minY;
        cell = Math.sqrt((right - left) * (rear - front) / grid.triangles());
        across = 1 + (int) ((right - left) / cell);
        along = 1 + (int) ((rear - front) / cell);
        triangles = new int[across * along][];
        Arrays.setAll(triangles, i -> new int[0]);
        for (int t = 0; t < grid.triangles(); t++) {
            enter(t);
        }
    }

    /** Enters a triangle in every cell that its bounding box meets, bulges of arcs included. */
    private void enter(int t) {
        double x1 = Double.POSITIVE_INFINITY;
        double x2 = Double.NEGATIVE_INFINITY;
        double y1 = x1;
        double y2 = x2;
        double bulge = 0;
        for (int i = 0; i < 3; i++) {
            Element.Arc arc = grid.arcs[grid.sides[3 * t + i]];
            if (arc != null) {
                double half = (arc.end() - arc.start()) / 2;
                // A little more than the arc: a polynomial follows it.
                bulge = Math.max(bulge, 1.1 * arc.radius() * (1 - StrictMath.cos(half)));
            }
        }
        for (int i = 0; i < 3; i++) {
            int v = grid.corners[3 * t + i];
            x1 = Math.min(x1, grid.x[v] - bulge);
            x2 = Math.max(x2, grid.x[v] + bulge);
            y1 = Math.min(y1, grid.y[v] - bulge);
            y2 = Math.max(y2, grid.y[v] + bulge);
        }
        for (int i = column(x1); i <= column(x2); i++) {
            for (int j = row(y1); j <= row(y2); j++) {
                int c = i * along + j;
                int[] old = triangles[c];
                triangles[c] = Arrays.copyOf(old, old.length + 1);
                triangles[c][old.length] = t;
            }
        }
    }

    private int column(double px) {
        return Math.min(Math.max((int) ((px - left) / cell), 0), across - 1);
    }

    private int row(double py) {
        return Math.min(Math.max((int) ((py - front) / cell), 0), along - 1);
    }

    /**
     * Returns the triangle that holds a place, or reaches nearest to it by a rounded rim; or -1.
     */
    int find(double px, double py, double[] local) {
        int nearest = -1;
        double least = RIM;
        double[] at = new double[2];
        for (int t : triangles[column(px) * along + row(py)]) {
            double outside = grid.elements[t].locate(px, py, at);
            if (outside < least) {
                nearest = t;
                least = outside;
                local[0] = at[0];
                local[1] = at[1];
            }
            if (outside < WITHIN) {
                return t;
            }
        }
        return nearest;
    }
}
