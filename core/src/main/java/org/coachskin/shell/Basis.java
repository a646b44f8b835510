package org.coachskin.shell;

/**
 * Hierarchic polynomials of one order on the reference triangle (0,0), (1,0), (0,1).
 *
 * <p>Three corner functions, then order - 1 functions for each of the edges 0-1, 1-2, 0-2, then
 * (order - 1)(order - 2)/2 bubbles (Szabo and Babuska, <i>Finite Element Analysis</i>, 1991,
 * chapter 6; from memory). An edge function is a product of both corner functions and a Jacobi
 * polynomial of their difference, so the trace along the edge is an integrated Legendre polynomial;
 * the odd ones change sign with the direction of the edge, which is why the corners of an element
 * are listed by rising vertex number.
 *
 * <p>Immutable.
 */
final class Basis {

    /** Polynomial order. */
    final int order;

    /** Functions an edge. */
    final int perEdge;

    /** Functions that vanish on the whole rim. */
    final int bubbles;

    /** All functions. */
    final int size;

    Basis(int order) {
        this.order = order;
        perEdge = order - 1;
        bubbles = (order - 1) * (order - 2) / 2;
        size = 3 + 3 * perEdge + bubbles;
    }

    /**
     * Writes values and derivatives at a point.
     *
     * @param n values; length {@link #size}
     * @param dXi derivatives along the first reference axis
     * @param dEta derivatives along the second
     */
    void at(double xi, double eta, double[] n, double[] dXi, double[] dEta) {
        double[] l = {1 - xi - eta, xi, eta};
        double[] lx = {-1, 1, 0};
        double[] ly = {-1, 0, 1};
        for (int i = 0; i < 3; i++) {
            n[i] = l[i];
            dXi[i] = lx[i];
            dEta[i] = ly[i];
        }
        double[] value = new double[order];
        double[] slope = new double[order];
        int at = 3;
        for (int edge = 0; edge < 3; edge++) {
            int a = edge == 1 ? 1 : 0;
            int b = edge == 0 ? 1 : 2;
            jacobi(l[b] - l[a], value, slope);
            double sx = lx[b] - lx[a];
            double sy = ly[b] - ly[a];
            for (int k = 0; k < perEdge; k++) {
                double scale = StrictMath.sqrt((2 * k + 3) / 2.0);
                double product = l[a] * l[b];
                n[at] = scale * product * value[k];
                dXi[at] =
                        scale
                                * ((lx[a] * l[b] + l[a] * lx[b]) * value[k]
                                        + product * slope[k] * sx);
                dEta[at] =
                        scale
                                * ((ly[a] * l[b] + l[a] * ly[b]) * value[k]
                                        + product * slope[k] * sy);
                at++;
            }
        }
        double bubble = l[0] * l[1] * l[2];
        double bx = l[2] * (l[0] - l[1]);
        double by = l[1] * (l[0] - l[2]);
        double[] value2 = new double[order];
        double[] slope2 = new double[order];
        jacobi(l[1] - l[0], value, slope);
        jacobi(2 * l[2] - 1, value2, slope2);
        for (int i = 0; i <= order - 3; i++) {
            for (int j = 0; j <= order - 3 - i; j++) {
                double scale = 4 * (i + j + 1);
                n[at] = scale * bubble * value[i] * value2[j];
                dXi[at] = scale * (bx * value[i] + 2 * bubble * slope[i]) * value2[j];
                dEta[at] =
                        scale
                                * ((by * value[i] + bubble * slope[i]) * value2[j]
                                        + 2 * bubble * value[i] * slope2[j]);
                at++;
            }
        }
    }

    /**
     * Returns the values along an edge of the functions that do not vanish there: lower corner,
     * higher corner, then the edge's own.
     *
     * @param s 0 at the lower corner, 1 at the higher
     */
    double[] onEdge(double s) {
        double[] out = new double[2 + perEdge];
        double[] value = new double[order];
        jacobi(2 * s - 1, value, new double[order]);
        out[0] = 1 - s;
        out[1] = s;
        for (int k = 0; k < perEdge; k++) {
            out[2 + k] = StrictMath.sqrt((2 * k + 3) / 2.0) * s * (1 - s) * value[k];
        }
        return out;
    }

    /** Returns the derivatives by {@code s} of what {@link #onEdge} returns. */
    double[] slopeOnEdge(double s) {
        double[] out = new double[2 + perEdge];
        double[] value = new double[order];
        double[] slope = new double[order];
        jacobi(2 * s - 1, value, slope);
        out[0] = -1;
        out[1] = 1;
        for (int k = 0; k < perEdge; k++) {
            out[2 + k] =
                    StrictMath.sqrt((2 * k + 3) / 2.0)
                            * ((1 - 2 * s) * value[k] + 2 * s * (1 - s) * slope[k]);
        }
        return out;
    }

    /**
     * Writes the Jacobi polynomials P_k^(1,1) and their derivatives (NIST DLMF 18.9.1, table
     * 18.9.1).
     */
    private static void jacobi(double s, double[] value, double[] slope) {
        value[0] = 1;
        slope[0] = 0;
        if (value.length > 1) {
            value[1] = 2 * s;
            slope[1] = 2;
        }
        for (int k = 1; k + 1 < value.length; k++) {
            double a = (2 * k + 3.0) * (k + 2) / ((k + 1.0) * (k + 3));
            double c = (k + 2.0) / (k + 3);
            value[k + 1] = a * s * value[k] - c * value[k - 1];
            slope[k + 1] = a * (value[k] + s * slope[k]) - c * slope[k - 1];
        }
    }
}
