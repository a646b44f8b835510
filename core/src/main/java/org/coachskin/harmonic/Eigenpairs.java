package org.coachskin.harmonic;

/**
 * Eigenvalues and eigenvectors of a small real matrix, by back substitution from its {@link
 * SchurForm} (hqr2 of Wilkinson and Reinsch, <i>Handbook for Automatic Computation, Linear
 * Algebra</i>, 1971, II/15; from memory, in the layout of the public-domain JAMA package).
 *
 * <p>Two equal roots are told apart as rounding splits them, real or complex: a sheet that is alike
 * in every direction has such pairs, and their sum stays right though each alone is not.
 */
final class Eigenpairs {

    private static final double EPSILON = 0x1p-52;

    private final int n;
    private final double[] h;
    private final double[] v;

    /** Real parts of the eigenvalues. */
    final double[] re;

    /** Imaginary parts; of a pair the one above zero stands first. */
    final double[] im;

    private double complexRe;
    private double complexIm;

    private Eigenpairs(SchurForm schur) {
        n = schur.n;
        h = schur.h;
        v = schur.v;
        re = schur.re;
        im = schur.im;
    }

    /**
     * Solves.
     *
     * @param matrix n by n by rows; overwritten
     * @throws ArithmeticException when the QR steps do not settle
     */
    static Eigenpairs of(double[] matrix, int n) {
        SchurForm schur = SchurForm.of(matrix, n);
        Eigenpairs pairs = new Eigenpairs(schur);
        if (schur.norm > 0) {
            pairs.substitute(schur.norm);
            pairs.turnBack();
        }
        return pairs;
    }

    /**
     * Returns the vectors by rows: column j for a real eigenvalue; real part in column j and
     * imaginary part in column j + 1 for a pair.
     */
    double[] vectors() {
        return v;
    }

    /** Solves for the vectors of the Schur form, in place of it. */
    private void substitute(double norm) {
        for (int k = n - 1; k >= 0; k--) {
            if (im[k] == 0) {
                substituteReal(k, norm);
            } else if (im[k] < 0) {
                substitutePair(k, norm);
            }
        }
    }

    private void substituteReal(int k, double norm) {
        int l = k;
        double z = 0;
        double s = 0;
        h[k * n + k] = 1;
        for (int i = k - 1; i >= 0; i--) {
            double w = h[i * n + i] - re[k];
            double r = 0;
            for (int j = l; j <= k; j++) {
                r += h[i * n + j] * h[j * n + k];
            }
            if (im[i] < 0) {
                z = w;
                s = r;
                continue;
            }
            l = i;
            if (im[i] == 0) {
                h[i * n + k] = -r / (w == 0 ? EPSILON * norm : w);
            } else {
                double x = h[i * n + i + 1];
                double y = h[(i + 1) * n + i];
                double q = (re[i] - re[k]) * (re[i] - re[k]) + im[i] * im[i];
                double t = (x * s - z * r) / q;
                h[i * n + k] = t;
                h[(i + 1) * n + k] =
                        Math.abs(x) > Math.abs(z) ? (-r - w * t) / x : (-s - y * t) / z;
            }
            rescale(i, k, k, Math.abs(h[i * n + k]));
        }
    }

    private void substitutePair(int k, double norm) {
        double p = re[k];
        double q = im[k];
        int l = k - 1;
        if (Math.abs(h[k * n + k - 1]) > Math.abs(h[(k - 1) * n + k])) {
            h[(k - 1) * n + k - 1] = q / h[k * n + k - 1];
            h[(k - 1) * n + k] = -(h[k * n + k] - p) / h[k * n + k - 1];
        } else {
            divide(0, -h[(k - 1) * n + k], h[(k - 1) * n + k - 1] - p, q);
            h[(k - 1) * n + k - 1] = complexRe;
            h[(k - 1) * n + k] = complexIm;
        }
        h[k * n + k - 1] = 0;
        h[k * n + k] = 1;
        double z = 0;
        double r = 0;
        double s = 0;
        for (int i = k - 2; i >= 0; i--) {
            double ra = 0;
            double sa = 0;
            for (int j = l; j <= k; j++) {
                ra += h[i * n + j] * h[j * n + k - 1];
                sa += h[i * n + j] * h[j * n + k];
            }
            double w = h[i * n + i] - p;
            if (im[i] < 0) {
                z = w;
                r = ra;
                s = sa;
                continue;
            }
            l = i;
            if (im[i] == 0) {
                divide(-ra, -sa, w, q);
                h[i * n + k - 1] = complexRe;
                h[i * n + k] = complexIm;
            } else {
                double x = h[i * n + i + 1];
                double y = h[(i + 1) * n + i];
                double vr = (re[i] - p) * (re[i] - p) + im[i] * im[i] - q * q;
                double vi = 2 * q * (re[i] - p);
                if (vr == 0 && vi == 0) {
                    vr =
                            EPSILON
                                    * norm
                                    * (Math.abs(w)
                                            + Math.abs(q)
                                            + Math.abs(x)
                                            + Math.abs(y)
                                            + Math.abs(z));
                }
                divide(x * r - z * ra + q * sa, x * s - z * sa - q * ra, vr, vi);
                h[i * n + k - 1] = complexRe;
                h[i * n + k] = complexIm;
                if (Math.abs(x) > Math.abs(z) + Math.abs(q)) {
                    h[(i + 1) * n + k - 1] = (-ra - w * h[i * n + k - 1] + q * h[i * n + k]) / x;
                    h[(i + 1) * n + k] = (-sa - w * h[i * n + k] - q * h[i * n + k - 1]) / x;
                } else {
                    divide(-r - y * h[i * n + k - 1], -s - y * h[i * n + k], z, q);
                    h[(i + 1) * n + k - 1] = complexRe;
                    h[(i + 1) * n + k] = complexIm;
                }
            }
            rescale(i, k - 1, k, Math.max(Math.abs(h[i * n + k - 1]), Math.abs(h[i * n + k])));
        }
    }

    /** Divides columns {@code from} to {@code to} by a component that would overflow. */
    private void rescale(int i, int from, int to, double t) {
        if (EPSILON * t * t <= 1) {
            return;
        }
        for (int j = i; j <= to; j++) {
            for (int c = from; c <= to; c++) {
                h[j * n + c] /= t;
            }
        }
    }

    private void divide(double ar, double ai, double br, double bi) {
        double size = br * br + bi * bi;
        complexRe = (ar * br + ai * bi) / size;
        complexIm = (ai * br - ar * bi) / size;
    }

    private void turnBack() {
        double[] row = new double[n];
        for (int i = 0; i < n; i++) {
            System.arraycopy(v, i * n, row, 0, n);
            for (int j = n - 1; j >= 0; j--) {
                double z = 0;
                for (int k = 0; k <= j; k++) {
                    z += row[k] * h[k * n + j];
                }
                v[i * n + j] = z;
            }
        }
    }
}
