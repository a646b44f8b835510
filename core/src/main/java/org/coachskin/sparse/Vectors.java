package org.coachskin.sparse;

import java.util.List;

/** Sums over vectors, in a fixed order. */
final class Vectors {

    private Vectors() {}

    static double dot(double[] a, double[] b) {
        double s0 = 0;
        double s1 = 0;
        double s2 = 0;
        double s3 = 0;
        int i = 0;
        for (; i + 3 < a.length; i += 4) {
            s0 += a[i] * b[i];
            s1 += a[i + 1] * b[i + 1];
            s2 += a[i + 2] * b[i + 2];
            s3 += a[i + 3] * b[i + 3];
        }
        for (; i < a.length; i++) {
            s0 += a[i] * b[i];
        }
        return s0 + s1 + (s2 + s3);
    }

    /** Adds factor times {@code x} to {@code y}. */
    static void add(double factor, double[] x, double[] y) {
        for (int i = 0; i < y.length; i++) {
            y[i] += factor * x[i];
        }
    }

    static void scale(double factor, double[] x) {
        for (int i = 0; i < x.length; i++) {
            x[i] *= factor;
        }
    }

    static double norm(double[] x) {
        return Math.sqrt(dot(x, x));
    }

    /** Largest magnitude; not a number when one is not. */
    static double largest(double[] x) {
        double largest = 0;
        for (double v : x) {
            largest = Math.max(largest, Math.abs(v));
        }
        return largest;
    }

    /** Makes {@code x} orthogonal to an orthonormal basis and of length one. */
    static void orthonormal(double[] x, List<double[]> basis) {
        scale(1 / norm(x), x);
        for (int turn = 0; turn < 2; turn++) {
            for (double[] q : basis) {
                add(-dot(q, x), q, x);
            }
        }
        scale(1 / norm(x), x);
    }
}
