package org.coachskin.shell;

import java.util.Map;

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
        return new Grid(x, y, t, Map.of());
    }

    static double[] even(double length, int cells) {
        double[] out = new double[cells + 1];
        for (int i = 0; i <= cells; i++) {
            out[i] = length * i / cells;
        }
        return out;
    }
}
