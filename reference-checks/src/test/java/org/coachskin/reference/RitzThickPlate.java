package org.coachskin.reference;

import java.util.Arrays;

/**
 * A second method for the clamped square plate with shear, factor 5/6: Ritz with polynomials for
 * the deflection and both rotations. Side and D are 1. Shares no code with the library.
 */
final class RitzThickPlate {

    private RitzThickPlate() {}

    /** Returns the deflection in the middle under an even pressure of 1. */
    static double deflection(double h, double nu, int n) {
        RitzPlate shape = new RitzPlate("SSSS", 1, 1, nu, n, false);
        double[][][][] p = shape.alongX();
        double shear = 5 * (1 - nu) / (h * h);
        double twist = (1 - nu) / 2;
        int all = n * n;
        double[][] k = new double[3 * all][3 * all];
        for (int i = 0; i < all; i++) {
            for (int j = 0; j < all; j++) {
                int q = i / n;
                int r = j / n;
                int s = i % n;
                int t = j % n;
                double value = p[0][0][q][r] * p[0][0][s][t];
                double xx = p[1][1][q][r] * p[0][0][s][t];
                double yy = p[0][0][q][r] * p[1][1][s][t];
                k[i][j] = shear * (xx + yy);
                k[all + i][all + j] = xx + twist * yy + shear * value;
                k[2 * all + i][2 * all + j] = yy + twist * xx + shear * value;
                // The x-rotation against the y-rotation, and the deflection against each.
                double across =
                        nu * p[1][0][q][r] * p[0][1][s][t] + twist * p[0][1][q][r] * p[1][0][s][t];
                k[all + i][2 * all + j] = across;
                k[2 * all + j][all + i] = across;
                double alongX = shear * p[1][0][q][r] * p[0][0][s][t];
                double alongY = shear * p[0][0][q][r] * p[1][0][s][t];
                k[i][all + j] = alongX;
                k[all + j][i] = alongX;
                k[i][2 * all + j] = alongY;
                k[2 * all + j][i] = alongY;
            }
        }
        double[] load = Arrays.copyOf(shape.evenLoad(), 3 * all);
        double[] solution = ByHand.solve(k, load);
        return shape.at(Arrays.copyOf(solution, all), 0.5, 0.5);
    }
}
