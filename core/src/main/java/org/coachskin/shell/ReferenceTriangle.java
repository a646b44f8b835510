package org.coachskin.shell;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Quadrature on the reference triangle, the basis at its points, and the integrals of products of
 * basis functions and their derivatives, which serve every element with straight sides.
 *
 * <p>The rule is Gauss-Legendre on a square collapsed onto the triangle, exact for polynomials of
 * degree twice the order plus {@code extra}.
 */
final class ReferenceTriangle {

    private static final GaussIntegratorFactory GAUSS = new GaussIntegratorFactory();

    final Basis basis;
    final int points;
    final double[] xi;
    final double[] eta;
    final double[] weight;

    /** Per point: values, then derivatives along xi, then along eta; each {@code basis.size}. */
    final double[][] values;

    /** Integrals of N_m N_n, N_m N_n,xi ... in the order [a][b], a and b from value, xi, eta. */
    final double[][][] products;

    ReferenceTriangle(Basis basis, int extra) {
        this.basis = basis;
        int rule = basis.order + 1 + (extra + 1) / 2;
        GaussIntegrator gauss = GAUSS.legendre(rule, 0, 1);
        points = rule * rule;
        xi = new double[points];
        eta = new double[points];
        weight = new double[points];
        values = new double[points][3 * basis.size];
        double[] n = new double[basis.size];
        double[] dXi = new double[basis.size];
        double[] dEta = new double[basis.size];
        for (int i = 0, at = 0; i < rule; i++) {
            for (int j = 0; j < rule; j++, at++) {
                double v = gauss.getPoint(j);
                xi[at] = gauss.getPoint(i) * (1 - v);
                eta[at] = v;
                weight[at] = gauss.getWeight(i) * gauss.getWeight(j) * (1 - v);
                basis.at(xi[at], eta[at], n, dXi, dEta);
                System.arraycopy(n, 0, values[at], 0, basis.size);
                System.arraycopy(dXi, 0, values[at], basis.size, basis.size);
                System.arraycopy(dEta, 0, values[at], 2 * basis.size, basis.size);
            }
        }
        products = new double[3][3][];
        for (int a = 0; a < 3; a++) {
            for (int b = 0; b < 3; b++) {
                products[a][b] = product(a, b);
            }
        }
    }

    private double[] product(int a, int b) {
        int size = basis.size;
        double[] sum = new double[size * size];
        for (int q = 0; q < points; q++) {
            for (int m = 0; m < size; m++) {
                double left = weight[q] * values[q][a * size + m];
                for (int n = 0; n < size; n++) {
                    sum[m * size + n] += left * values[q][b * size + n];
                }
            }
        }
        return sum;
    }

    /** Returns a Gauss rule on 0 to 1 that is exact to degree 2 * points - 1. */
    static GaussIntegrator line(int points) {
        return GAUSS.legendre(points, 0, 1);
    }
}
