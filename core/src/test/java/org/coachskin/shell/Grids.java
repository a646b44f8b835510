package org.coachskin.shell;

import java.util.Map;
import org.coachskin.mesh.Drawing;
import org.coachskin.mesh.Loop;
import org.coachskin.mesh.Mesher;
import org.coachskin.mesh.Wishes;

/** Plain grids for tests. */
final class Grids {

    private Grids() {}

    /**
     * Cuts a rectangle along the lines of {@code xs} and {@code ys}, each cell into two triangles.
     */
    static Grid lattice(double[] xs, double[] ys) {
        int nx = xs.length;
        int ny = ys.length;
        double[] x = new double[nx * ny];
        double[] y = new double[nx * ny];
        for (int i = 0; i < nx; i++) {
            for (int j = 0; j < ny; j++) {
                x[i * ny + j] = xs[i];
                y[i * ny + j] = ys[j];
            }
        }
        int[] t = new int[6 * (nx - 1) * (ny - 1)];
        int at = 0;
        for (int i = 0; i + 1 < nx; i++) {
            for (int j = 0; j + 1 < ny; j++) {
                int a = i * ny + j;
                int b = a + ny;
                int[] cell =
                        (i + j) % 2 == 0
                                ? new int[] {a, b, b + 1, a, b + 1, a + 1}
                                : new int[] {a, b, a + 1, b, b + 1, a + 1};
                System.arraycopy(cell, 0, t, at, 6);
                at += 6;
            }
        }
        return new Grid(x, y, t, Map.of(), ShellAnalysis.ORDER);
    }

    /** Returns a square of slanted, unlike triangles. */
    static Grid slanted(double side) {
        double[] x = {0, 0.4, 1, 0, 0.27, 1, 0, 0.66, 1, 0.5};
        double[] y = {0, 0, 0, 0.55, 0.3, 0.35, 1, 1, 1, 0.62};
        int[] t = {
            0, 1, 4, 0, 4, 3, 1, 2, 5, 1, 5, 4, 4, 5, 9, 3, 4, 9, 3, 9, 7, 3, 7, 6, 9, 5, 8, 9, 8, 7
        };
        for (int i = 0; i < x.length; i++) {
            x[i] *= side;
            y[i] *= side;
        }
        return new Grid(x, y, t, Map.of(), ShellAnalysis.ORDER);
    }

    /** Returns a disc as the mesher cuts it. */
    static Grid disc(double x, double y, double radius, int order) {
        return Drawn.grid(
                Mesher.mesh(
                        Drawing.outline(Loop.circle(x, y, radius))
                                .wishes(Wishes.edgesUpTo(radius))
                                .build()),
                order);
    }

    static double[] even(double length, int cells) {
        double[] out = new double[cells + 1];
        for (int i = 0; i <= cells; i++) {
            out[i] = length * i / cells;
        }
        return out;
    }
}
