package org.coachskin.shell;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Shape of one triangle: straight sides, or one or more sides along an arc of a circle. A curved
 * side is blended into the triangle (Szabo and Babuska 1991, section 6.3; from memory).
 *
 * <p>The arc is followed by a polynomial of the order of the basis, which meets it at its ends and
 * at order - 1 places between. So x and y are in the space of the basis, a panel that turns as a
 * rigid body has no strain, and moments balance; with the arc itself a free disc of order 4 resists
 * three of its six free movements (measured). The area of a disc in eight arcs is met to 5e-7 at
 * order 4.
 */
final class Element {

    /**
     * The last step of Newton's method, in sides of the element: its square is left. In a triangle
     * of some hundredths of a millimetre rounding of the place is a good part of it.
     */
    private static final double MET = 1e-9;

    private final double[] x;
    private final double[] y;

    /** How far edges 0-1, 1-2, 0-2 bulge; null where straight. */
    private final @Nullable Bulge[] bulges;

    private final boolean straight;

    Element(double[] x, double[] y, @Nullable Bulge[] bulges) {
        this.x = x;
        this.y = y;
        this.bulges = bulges;
        straight = bulges[0] == null && bulges[1] == null && bulges[2] == null;
    }

    /**
     * A side along a circle, from the first to the second corner of its edge.
     *
     * @param centreX of the circle [m]
     * @param centreY of the circle [m]
     * @param radius [m]
     * @param start angle of the first corner [rad]
     * @param end angle of the second corner [rad]
     */
    record Arc(double centreX, double centreY, double radius, double start, double end) {

        Arc reversed() {
            return part(end, start);
        }

        /** Returns the same circle between other angles. */
        Arc part(double from, double to) {
            return new Arc(centreX, centreY, radius, from, to);
        }

        /** Returns the place at an angle: x, y. */
        double[] at(double angle) {
            return new double[] {
                centreX + radius * StrictMath.cos(angle), centreY + radius * StrictMath.sin(angle)
            };
        }

        /** Returns how far the arc bulges from its chord [m]. */
        double rise() {
            return radius * (1 - StrictMath.cos((end - start) / 2));
        }
    }

    boolean isStraight() {
        return straight;
    }

    /** Returns position and its derivatives: x, y, x_xi, y_xi, x_eta, y_eta. */
    double[] map(double xi, double eta) {
        double[] at = new double[6];
        double l0 = 1 - xi - eta;
        at[0] = l0 * x[0] + xi * x[1] + eta * x[2];
        at[1] = l0 * y[0] + xi * y[1] + eta * y[2];
        at[2] = x[1] - x[0];
        at[3] = y[1] - y[0];
        at[4] = x[2] - x[0];
        at[5] = y[2] - y[0];
        for (int edge = 0; !straight && edge < 3; edge++) {
            Bulge bulge = bulges[edge];
            if (bulge != null) {
                bend(bulge, edge, l0, xi, eta, at);
            }
        }
        return at;
    }

    private static void bend(Bulge bulge, int edge, double l0, double xi, double eta, double[] at) {
        double[] l = {l0, xi, eta};
        double[] lx = {-1, 1, 0};
        double[] ly = {-1, 0, 1};
        int a = edge == 1 ? 1 : 0;
        int b = edge == 0 ? 1 : 2;
        double product = l[a] * l[b];
        for (int axis = 0; axis < 2; axis++) {
            double[] k = bulge.at(axis, l[b] - l[a]);
            double turn = product * k[1];
            at[axis] += product * k[0];
            at[2 + axis] += (lx[a] * l[b] + l[a] * lx[b]) * k[0] + turn * (lx[b] - lx[a]);
            at[4 + axis] += (ly[a] * l[b] + l[a] * ly[b]) * k[0] + turn * (ly[b] - ly[a]);
        }
    }

    /**
     * Writes the integrals over the element of products of basis functions and their x- and
     * y-derivatives.
     *
     * @param products [a][b] with a and b from value, x, y; each size x size, overwritten
     */
    void products(ReferenceTriangle reference, double[][][] products) {
        if (straight) {
            affine(reference, products);
        } else {
            curved(reference, products);
        }
    }

    private void affine(ReferenceTriangle reference, double[][][] products) {
        double[] m = map(1.0 / 3, 1.0 / 3);
        double det = m[2] * m[5] - m[3] * m[4];
        // Rows: how much of the xi- and eta-derivative is in value, x and y.
        double[][] turn = {{1, 0, 0}, {0, m[5] / det, -m[3] / det}, {0, -m[4] / det, m[2] / det}};
        double area = Math.abs(det);
        double[][][] r = reference.products;
        int n = r[0][0].length;
        for (int a = 0; a < 3; a++) {
            for (int b = 0; b < 3; b++) {
                double[] out = products[a][b];
                Arrays.fill(out, 0);
                for (int p = 0; p < 3; p++) {
                    for (int q = 0; q < 3; q++) {
                        double f = area * turn[a][p] * turn[b][q];
                        double[] in = r[p][q];
                        for (int i = 0; f != 0 && i < n; i++) {
                            out[i] += f * in[i];
                        }
                    }
                }
            }
        }
    }

    private void curved(ReferenceTriangle reference, double[][][] products) {
        int size = reference.basis.size;
        for (double[][] row : products) {
            for (double[] out : row) {
                Arrays.fill(out, 0);
            }
        }
        double[] g = new double[3 * size];
        for (int q = 0; q < reference.points; q++) {
            double area = gradients(reference, q, g);
            for (int a = 0; a < 3; a++) {
                for (int b = 0; b < 3; b++) {
                    double[] out = products[a][b];
                    for (int m = 0; m < size; m++) {
                        double left = area * g[a * size + m];
                        for (int n = 0; n < size; n++) {
                            out[m * size + n] += left * g[b * size + n];
                        }
                    }
                }
            }
        }
    }

    /** Returns the area [m^2]. */
    double area(ReferenceTriangle reference) {
        double sum = 0;
        for (int q = 0; q < reference.points; q++) {
            sum += area(reference, q);
        }
        return sum;
    }

    /** Returns the area that a point of the quadrature stands for [m^2]. */
    double area(ReferenceTriangle reference, int point) {
        double[] m = map(reference.xi[point], reference.eta[point]);
        return reference.weight[point] * Math.abs(m[2] * m[5] - m[3] * m[4]);
    }

    /**
     * Writes the basis and its x- and y-derivatives at a point of the quadrature.
     *
     * @param g overwritten
     * @return the area that the point stands for [m^2]
     */
    double gradients(ReferenceTriangle reference, int point, double[] g) {
        return reference.weight[point]
                * gradients(
                        reference.values[point],
                        reference.basis.size,
                        reference.xi[point],
                        reference.eta[point],
                        g);
    }

    /**
     * Turns derivatives along the reference axes into derivatives along x and y.
     *
     * @param values values, xi- and eta-derivatives
     * @param g values, x- and y-derivatives; overwritten
     * @return the area of the element over that of the reference triangle's unit square, here
     */
    double gradients(double[] values, int size, double xi, double eta, double[] g) {
        double[] m = map(xi, eta);
        double det = m[2] * m[5] - m[3] * m[4];
        for (int i = 0; i < size; i++) {
            double dXi = values[size + i];
            double dEta = values[2 * size + i];
            g[i] = values[i];
            g[size + i] = (m[5] * dXi - m[3] * dEta) / det;
            g[2 * size + i] = (m[2] * dEta - m[4] * dXi) / det;
        }
        return Math.abs(det);
    }

    /**
     * Finds the reference coordinates of a place by Newton's method.
     *
     * @param local overwritten
     * @return how far it lies outside, in sides of the element; 0 or less within
     */
    double locate(double px, double py, double[] local) {
        double xi = 1.0 / 3;
        double eta = 1.0 / 3;
        boolean met = false;
        for (int step = 0; !met && step < 20; step++) {
            double[] m = map(xi, eta);
            double rx = px - m[0];
            double ry = py - m[1];
            double det = m[2] * m[5] - m[3] * m[4];
            double dXi = (m[5] * rx - m[4] * ry) / det;
            double dEta = (m[2] * ry - m[3] * rx) / det;
            xi += dXi;
            eta += dEta;
            met = Math.abs(dXi) + Math.abs(dEta) < MET;
        }
        local[0] = xi;
        local[1] = eta;
        return met ? Math.max(Math.max(-xi, -eta), xi + eta - 1) : Double.POSITIVE_INFINITY;
    }
}
