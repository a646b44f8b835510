package org.coachskin.harmonic;

/**
 * The real Schur form of a small matrix: triangular but for blocks of two, which hold the complex
 * pairs. Reduction to Hessenberg form by reflections, then double QR steps with shifts (orthes and
 * hqr2 of Wilkinson and Reinsch, <i>Handbook for Automatic Computation, Linear Algebra</i>, 1971,
 * II/13 to II/15; from memory, in the layout of the public-domain JAMA package).
 */
final class SchurForm {

    private static final double EPSILON = 0x1p-52;

    private static final int MOST_STEPS = 300;

    /** Rows. */
    final int n;

    /** The form, by rows. */
    final double[] h;

    /** The turns that lead to it, by rows. */
    final double[] v;

    /** Real parts of the eigenvalues. */
    final double[] re;

    /** Imaginary parts; of a pair the one above zero stands first. */
    final double[] im;

    /** Sum of the entries' sizes. */
    final double norm;

    private SchurForm(double[] matrix, int n) {
        this.n = n;
        h = matrix;
        v = new double[n * n];
        re = new double[n];
        im = new double[n];
        toHessenberg();
        norm = toSchur();
    }

    /**
     * Returns the form.
     *
     * @param matrix n by n by rows; overwritten
     * @throws ArithmeticException when the QR steps do not settle
     */
    static SchurForm of(double[] matrix, int n) {
        return new SchurForm(matrix, n);
    }

    private void toHessenberg() {
        double[] ort = new double[n];
        int high = n - 1;
        for (int m = 1; m < high; m++) {
            double scale = 0;
            for (int i = m; i <= high; i++) {
                scale += Math.abs(h[i * n + m - 1]);
            }
            if (scale == 0) {
                continue;
            }
            double square = 0;
            for (int i = high; i >= m; i--) {
                ort[i] = h[i * n + m - 1] / scale;
                square += ort[i] * ort[i];
            }
            double g = ort[m] > 0 ? -Math.sqrt(square) : Math.sqrt(square);
            square -= ort[m] * g;
            ort[m] -= g;
            for (int j = m; j < n; j++) {
                double f = 0;
                for (int i = high; i >= m; i--) {
                    f += ort[i] * h[i * n + j];
                }
                f /= square;
                for (int i = m; i <= high; i++) {
                    h[i * n + j] -= f * ort[i];
                }
            }
            for (int i = 0; i <= high; i++) {
                double f = 0;
                for (int j = high; j >= m; j--) {
                    f += ort[j] * h[i * n + j];
                }
                f /= square;
                for (int j = m; j <= high; j++) {
                    h[i * n + j] -= f * ort[j];
                }
            }
            ort[m] *= scale;
            h[m * n + m - 1] = scale * g;
        }
        for (int i = 0; i < n; i++) {
            v[i * n + i] = 1;
        }
        for (int m = high - 1; m >= 1; m--) {
            if (h[m * n + m - 1] == 0) {
                continue;
            }
            for (int i = m + 1; i <= high; i++) {
                ort[i] = h[i * n + m - 1];
            }
            for (int j = m; j <= high; j++) {
                double g = 0;
                for (int i = m; i <= high; i++) {
                    g += ort[i] * v[i * n + j];
                }
                g = (g / ort[m]) / h[m * n + m - 1];
                for (int i = m; i <= high; i++) {
                    v[i * n + j] += g * ort[i];
                }
            }
        }
    }

    /** Returns the norm of the Hessenberg matrix. */
    private double toSchur() {
        double sum = 0;
        for (int i = 0; i < n; i++) {
            for (int j = Math.max(i - 1, 0); j < n; j++) {
                sum += Math.abs(h[i * n + j]);
            }
        }
        int last = n - 1;
        double shifted = 0;
        int steps = 0;
        while (last >= 0) {
            int l = last;
            while (l > 0) {
                double s = Math.abs(h[(l - 1) * n + l - 1]) + Math.abs(h[l * n + l]);
                if (Math.abs(h[l * n + l - 1]) < EPSILON * (s == 0 ? sum : s)) {
                    break;
                }
                l--;
            }
            if (l == last) {
                h[last * n + last] += shifted;
                re[last] = h[last * n + last];
                im[last] = 0;
                last--;
                steps = 0;
            } else if (l == last - 1) {
                h[last * n + last] += shifted;
                h[(last - 1) * n + last - 1] += shifted;
                splitPair(last);
                last -= 2;
                steps = 0;
            } else {
                shifted = step(l, last, shifted, steps);
                if (++steps > MOST_STEPS) {
                    throw new ArithmeticException("the eigenvalues do not settle");
                }
            }
        }
        return sum;
    }

    /** Takes the two roots of the block that ends at {@code k}; turns it if they are real. */
    private void splitPair(int k) {
        double w = h[k * n + k - 1] * h[(k - 1) * n + k];
        double x = h[k * n + k];
        double p = (h[(k - 1) * n + k - 1] - x) / 2;
        double q = p * p + w;
        double z = Math.sqrt(Math.abs(q));
        if (q < 0) {
            re[k - 1] = x + p;
            re[k] = x + p;
            im[k - 1] = z;
            im[k] = -z;
            return;
        }
        z = p >= 0 ? p + z : p - z;
        re[k - 1] = x + z;
        re[k] = z == 0 ? x : x - w / z;
        double below = h[k * n + k - 1];
        double s = Math.abs(below) + Math.abs(z);
        double c = z / s;
        double d = below / s;
        double r = Math.sqrt(c * c + d * d);
        c /= r;
        d /= r;
        for (int j = k - 1; j < n; j++) {
            double upper = h[(k - 1) * n + j];
            h[(k - 1) * n + j] = c * upper + d * h[k * n + j];
            h[k * n + j] = c * h[k * n + j] - d * upper;
        }
        turnColumns(h, k, k + 1, c, d);
        turnColumns(v, k, n, c, d);
    }

    private void turnColumns(double[] a, int k, int rows, double c, double d) {
        for (int i = 0; i < rows; i++) {
            double left = a[i * n + k - 1];
            a[i * n + k - 1] = c * left + d * a[i * n + k];
            a[i * n + k] = c * a[i * n + k] - d * left;
        }
    }

    /** One double QR step on rows l to last; returns the shifts taken off so far. */
    private double step(int l, int last, double before, int steps) {
        double shifted = before;
        double x = h[last * n + last];
        double y = h[(last - 1) * n + last - 1];
        double w = h[last * n + last - 1] * h[(last - 1) * n + last];
        if (steps % 10 == 9) {
            // An unusual shift, where the usual one goes in circles.
            shifted += x;
            for (int i = 0; i <= last; i++) {
                h[i * n + i] -= x;
            }
            double s = Math.abs(h[last * n + last - 1]) + Math.abs(h[(last - 1) * n + last - 2]);
            x = 0.75 * s;
            y = x;
            w = -0.4375 * s * s;
        }
        double p = 0;
        double q = 0;
        double r = 0;
        int m = last - 2;
        for (; m >= l; m--) {
            double z = h[m * n + m];
            double a = x - z;
            double b = y - z;
            p = (a * b - w) / h[(m + 1) * n + m] + h[m * n + m + 1];
            q = h[(m + 1) * n + m + 1] - z - a - b;
            r = h[(m + 2) * n + m + 1];
            double s = Math.abs(p) + Math.abs(q) + Math.abs(r);
            p /= s;
            q /= s;
            r /= s;
            if (m == l
                    || Math.abs(h[m * n + m - 1]) * (Math.abs(q) + Math.abs(r))
                            < EPSILON
                                    * Math.abs(p)
                                    * (Math.abs(h[(m - 1) * n + m - 1])
                                            + Math.abs(z)
                                            + Math.abs(h[(m + 1) * n + m + 1]))) {
                break;
            }
        }
        for (int i = m + 2; i <= last; i++) {
            h[i * n + i - 2] = 0;
            if (i > m + 2) {
                h[i * n + i - 3] = 0;
            }
        }
        chase(l, m, last, p, q, r);
        return shifted;
    }

    /** Chases the bulge that starts at {@code m} down to {@code last}. */
    private void chase(int l, int m, int last, double p0, double q0, double r0) {
        double p = p0;
        double q = q0;
        double r = r0;
        for (int k = m; k <= last - 1; k++) {
            boolean three = k != last - 1;
            double x = 0;
            if (k != m) {
                p = h[k * n + k - 1];
                q = h[(k + 1) * n + k - 1];
                r = three ? h[(k + 2) * n + k - 1] : 0;
                x = Math.abs(p) + Math.abs(q) + Math.abs(r);
                if (x == 0) {
                    continue;
                }
                p /= x;
                q /= x;
                r /= x;
            }
            double s = Math.sqrt(p * p + q * q + r * r);
            s = p < 0 ? -s : s;
            if (s == 0) {
                continue;
            }
            if (k != m) {
                h[k * n + k - 1] = -s * x;
            } else if (l != m) {
                h[k * n + k - 1] = -h[k * n + k - 1];
            }
            p += s;
            x = p / s;
            double y = q / s;
            double z = r / s;
            q /= p;
            r /= p;
            for (int j = k; j < n; j++) {
                double f = h[k * n + j] + q * h[(k + 1) * n + j];
                if (three) {
                    f += r * h[(k + 2) * n + j];
                    h[(k + 2) * n + j] -= f * z;
                }
                h[k * n + j] -= f * x;
                h[(k + 1) * n + j] -= f * y;
            }
            reflectColumns(h, Math.min(last, k + 3) + 1, k, three, x, y, z, q, r);
            reflectColumns(v, n, k, three, x, y, z, q, r);
        }
    }

    private void reflectColumns(
            double[] a,
            int rows,
            int k,
            boolean three,
            double x,
            double y,
            double z,
            double q,
            double r) {
        for (int i = 0; i < rows; i++) {
            double f = x * a[i * n + k] + y * a[i * n + k + 1];
            if (three) {
                f += z * a[i * n + k + 2];
                a[i * n + k + 2] -= f * r;
            }
            a[i * n + k] -= f;
            a[i * n + k + 1] -= f * q;
        }
    }
}
