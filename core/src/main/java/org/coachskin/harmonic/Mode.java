package org.coachskin.harmonic;

import java.util.Arrays;

/**
 * One wave along x, ready to be summed over all waves along y: eigenvalues &nu; of R^-1 P, their
 * vectors V, and the weights V^-1 R^-1 load.
 *
 * <p>Arrays are read only. Of a complex pair the first holds real parts, the second imaginary ones.
 *
 * @param re real parts of the eigenvalues
 * @param im imaginary parts
 * @param z vectors of the unknowns Z, by rows
 * @param v vectors of the fields, by rows
 * @param weightRe real parts of the weights
 * @param weightIm imaginary parts
 */
@SuppressWarnings("ArrayRecordComponent")
record Mode(
        double[] re, double[] im, double[] z, double[] v, double[] weightRe, double[] weightIm) {

    /**
     * Solves one wave.
     *
     * @param bow whether the load is the stack's free bow; else a pressure outward
     */
    static Mode of(WaveSystem system, boolean bow, double alpha) {
        int n = system.size;
        double[] p = new double[n * n];
        double[] r = new double[n * n];
        double[] rhs = new double[n];
        system.pencil(alpha, p, r);
        if (bow) {
            system.bow(alpha, rhs);
        } else {
            system.pressure(rhs);
        }
        double[] rowScale = new double[n];
        double[] scale = new double[n];
        balance(alpha, p, r, rowScale, scale);
        // P^-1 R, with the load as one more column.
        double[] scaled = new double[n * n];
        double[] right = new double[n * (n + 1)];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double both = rowScale[i] * scale[j];
                scaled[i * n + j] = p[i * n + j] * both;
                right[i * (n + 1) + j] = r[i * n + j] * both * alpha * alpha;
            }
            right[i * (n + 1) + n] = rhs[i] * rowScale[i];
        }
        Elimination.solve(scaled, n, right, n + 1);
        double[] c = new double[n];
        for (int i = 0; i < n; i++) {
            System.arraycopy(right, i * (n + 1), scaled, i * n, n);
            c[i] = right[i * (n + 1) + n];
        }
        // Of P^-1 R rather than R^-1 P: the slowly falling modes, which matter, are then its
        // largest.
        Eigenpairs eigen = Eigenpairs.of(scaled, n);
        double[] z = eigen.vectors();
        Elimination.solve(z.clone(), n, c, 1);
        double[] re = eigen.re;
        double[] im = eigen.im;
        double[] weightRe = new double[n];
        double[] weightIm = new double[n];
        double square = alpha * alpha;
        for (int i = 0; i < n; i++) {
            double size = re[i] * re[i] + im[i] * im[i];
            re[i] *= square / size;
            im[i] *= -square / size;
            for (int j = 0; j < n; j++) {
                z[i * n + j] *= scale[i];
            }
        }
        for (int j = 0; j < n; j++) {
            double ci = im[j] != 0 && j + 1 < n ? -c[j + 1] : 0;
            weightRe[j] = c[j] * re[j] - ci * im[j];
            weightIm[j] = c[j] * im[j] + ci * re[j];
        }
        double[] v = z.clone();
        system.toFields(alpha, v, n);
        return new Mode(re, im, z, v, weightRe, weightIm);
    }

    /** Scales rows and columns so that the largest entry of each is near one. */
    private static void balance(
            double alpha, double[] p, double[] r, double[] rows, double[] columns) {
        int n = rows.length;
        Arrays.fill(rows, 1);
        Arrays.fill(columns, 1);
        double square = alpha * alpha;
        for (int round = 0; round < 3; round++) {
            for (int i = 0; i < n; i++) {
                double most = 0;
                for (int j = 0; j < n; j++) {
                    double entry =
                            Math.max(Math.abs(p[i * n + j]), Math.abs(r[i * n + j]) * square);
                    most = Math.max(most, entry * columns[j]);
                }
                rows[i] = 1 / most;
            }
            for (int j = 0; j < n; j++) {
                double most = 0;
                for (int i = 0; i < n; i++) {
                    double entry =
                            Math.max(Math.abs(p[i * n + j]), Math.abs(r[i * n + j]) * square);
                    most = Math.max(most, entry * rows[i]);
                }
                columns[j] = 1 / most;
            }
        }
    }
}
