package org.coachskin.harmonic;

import java.util.Arrays;

/**
 * Blocks of P + &beta;^2 R as polynomials in &alpha;: the first block f holds fields along x and
 * deflections, the second block s fields along y.
 */
final class Pencil {

    private final int first;
    private final int second;

    /** Of P, first by first, powers 0 to 2. */
    final double[][] ff;

    /** Of R, first by first. */
    final double[] ffR;

    /** Of R, first by second, powers 0 and 1. */
    final double[][] fs;

    /** Of P, second by first, powers 0 and 1. */
    final double[][] sf;

    /** Of P, second by second, powers 0 and 2. */
    final double[][] ss;

    /** Of R, second by second. */
    final double[] ssR;

    Pencil(int first, int second) {
        this.first = first;
        this.second = second;
        ff = new double[3][first * first];
        ffR = new double[first * first];
        fs = new double[2][first * second];
        sf = new double[2][second * first];
        ss = new double[2][second * second];
        ssR = new double[second * second];
    }

    boolean isAlike(Pencil other) {
        return Arrays.deepEquals(ff, other.ff)
                && Arrays.equals(ffR, other.ffR)
                && Arrays.deepEquals(fs, other.fs)
                && Arrays.deepEquals(sf, other.sf)
                && Arrays.deepEquals(ss, other.ss)
                && Arrays.equals(ssR, other.ssR);
    }

    /** Adds P and R at {@code alpha}. */
    void addTo(double alpha, double[] p, double[] r) {
        int size = first + second;
        for (int i = 0; i < first; i++) {
            for (int j = 0; j < first; j++) {
                p[i * size + j] += strip(alpha, i * first + j);
                r[i * size + j] += ffR[i * first + j];
            }
            for (int j = 0; j < second; j++) {
                int at = i * second + j;
                r[i * size + first + j] += fs[0][at] + alpha * fs[1][at];
                int turned = j * first + i;
                p[(first + j) * size + i] += sf[0][turned] + alpha * sf[1][turned];
            }
        }
        for (int i = 0; i < second; i++) {
            for (int j = 0; j < second; j++) {
                int at = i * second + j;
                p[(first + i) * size + first + j] += ss[0][at] + alpha * alpha * ss[1][at];
                r[(first + i) * size + first + j] += ssR[at];
            }
        }
    }

    /** Adds the symmetric stiffness at {@code alpha} and {@code beta}. */
    void addTo(double alpha, double beta, double[] k) {
        int size = first + second;
        double mu = beta * beta;
        for (int i = 0; i < first; i++) {
            for (int j = 0; j < first; j++) {
                k[i * size + j] += strip(alpha, i * first + j) + mu * ffR[i * first + j];
            }
            for (int j = 0; j < second; j++) {
                int at = i * second + j;
                double value = beta * (fs[0][at] + alpha * fs[1][at]);
                k[i * size + first + j] += value;
                k[(first + j) * size + i] += value;
            }
        }
        for (int i = 0; i < second; i++) {
            for (int j = 0; j < second; j++) {
                int at = i * second + j;
                k[(first + i) * size + first + j] +=
                        ss[0][at] + alpha * alpha * ss[1][at] + mu * ssR[at];
            }
        }
    }

    /** Returns entry {@code at} of the first block of P. */
    double strip(double alpha, int at) {
        return ff[0][at] + alpha * (ff[1][at] + alpha * ff[2][at]);
    }
}
