/*
 * The algorithm of StiffnessKernel in C, timed on the same stacks.
 * Usage: stiffness_kernel SECONDS; prints nanoseconds per stack and a checksum.
 */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

enum { LAYERS = 7, STACKS = 64, A = 0, B = 6, D = 12, H = 18, STRAIN_X = 21, STRAIN_Y = 25,
       COMPLIANCE = 29, SHARE = 32, LENGTH = 36 };

static double bottom_of(int count, const double *thickness) {
    double height = 0;
    for (int i = 0; i < count; i++) height += thickness[i];
    return -height / 2;
}

static void cylinder(int n, int m, double *restrict out, int start) {
    double ann = out[A + n], anm = out[A + m], amm = out[A + 5];
    double bnn = out[B + n], bnm = out[B + m], bmm = out[B + 5];
    double scale = 1 / (ann * amm - anm * anm);
    double enn = (amm * bnn - anm * bnm) * scale;
    double enm = (amm * bnm - anm * bmm) * scale;
    double emn = (ann * bnm - anm * bnn) * scale;
    double emm = (ann * bmm - anm * bnm) * scale;
    double dnn = out[D + n] - (bnn * enn + bnm * emn);
    double dnm = out[D + m] - (bnn * enm + bnm * emm);
    double dmm = out[D + 5] - (bnm * enm + bmm * emm);
    double unit = 1 / (dnn * dmm - dnm * dnm);
    double curvature = dmm * unit, twist = -dnm * unit;
    out[start] = -(enn * curvature + enm * twist);
    out[start + 1] = -(emn * curvature + emm * twist);
    out[start + 2] = curvature;
    out[start + 3] = twist;
}

__attribute__((noinline)) void stiffness(int count, const double *restrict thickness,
        const double *restrict plane, const double *restrict shear, double *restrict out) {
    for (int j = 0; j < H; j++) out[j] = 0;
    double bottom = bottom_of(count, thickness);
    for (int i = 0; i < count; i++) {
        double t = thickness[i], middle = bottom + t / 2;
        double first = t * middle, second = t * (middle * middle + t * t / 12);
        for (int j = 0; j < 6; j++) {
            double q = plane[6 * i + j];
            out[A + j] += t * q;
            out[B + j] += first * q;
            out[D + j] += second * q;
        }
        bottom += t;
    }
    cylinder(0, 3, out, STRAIN_X);
    cylinder(2, 4, out, STRAIN_Y);
    double ex = out[STRAIN_X], gx = out[STRAIN_X + 1], kx = out[STRAIN_X + 2], tx = out[STRAIN_X + 3];
    double ey = out[STRAIN_Y], gy = out[STRAIN_Y + 1], ky = out[STRAIN_Y + 2], ty = out[STRAIN_Y + 3];
    double share11 = 0, share21 = 0, share12 = 0, share22 = 0;
    double f11 = 0, f21 = 0, f12 = 0, f22 = 0, s11 = 0, s12 = 0, s22 = 0;
    const double off = sqrt(0.15);
    bottom = bottom_of(count, thickness);
    for (int i = 0; i < count; i++) {
        double t = thickness[i];
        double q11 = plane[6 * i], q22 = plane[6 * i + 2], q16 = plane[6 * i + 3];
        double q26 = plane[6 * i + 4], q66 = plane[6 * i + 5];
        double half = -t * t / 2;
        double k11 = half * (q11 * kx + q16 * tx), k21 = half * (q16 * kx + q66 * tx);
        double k12 = half * (q26 * ky + q66 * ty), k22 = half * (q22 * ky + q26 * ty);
        double ux = ex + bottom * kx, vx = gx + bottom * tx;
        double uy = ey + bottom * ky, vy = gy + bottom * ty;
        double m11 = -t * (q11 * ux + q16 * vx), m21 = -t * (q16 * ux + q66 * vx);
        double m12 = -t * (q26 * uy + q66 * vy), m22 = -t * (q22 * uy + q26 * vy);
        double g = shear[3 * i] * shear[3 * i + 2] - shear[3 * i + 1] * shear[3 * i + 1];
        double g11 = shear[3 * i + 2] / g, g12 = -shear[3 * i + 1] / g, g22 = shear[3 * i] / g;
        for (int point = -1; point <= 1; point++) {
            double s = 0.5 + off * point;
            double weight = t * (point == 0 ? 4.0 / 9 : 5.0 / 18);
            double w11 = f11 + s * (m11 + s * k11), w21 = f21 + s * (m21 + s * k21);
            double w12 = f12 + s * (m12 + s * k12), w22 = f22 + s * (m22 + s * k22);
            double h11 = g11 * w11 + g12 * w21, h21 = g12 * w11 + g22 * w21;
            s11 += weight * (w11 * h11 + w21 * h21);
            s12 += weight * (w12 * h11 + w22 * h21);
            s22 += weight * (w12 * (g11 * w12 + g12 * w22) + w22 * (g12 * w12 + g22 * w22));
        }
        share11 += t * (f11 + m11 / 2 + k11 / 3);
        share21 += t * (f21 + m21 / 2 + k21 / 3);
        share12 += t * (f12 + m12 / 2 + k12 / 3);
        share22 += t * (f22 + m22 / 2 + k22 / 3);
        f11 += m11 + k11;
        f21 += m21 + k21;
        f12 += m12 + k12;
        f22 += m22 + k22;
        bottom += t;
    }
    out[COMPLIANCE] = s11;
    out[COMPLIANCE + 1] = s12;
    out[COMPLIANCE + 2] = s22;
    out[SHARE] = share11;
    out[SHARE + 1] = share21;
    out[SHARE + 2] = share12;
    out[SHARE + 3] = share22;
    double det = s11 * s22 - s12 * s12;
    out[H] = s22 / det;
    out[H + 1] = -s12 / det;
    out[H + 2] = s11 / det;
}

static double thickness[STACKS][LAYERS], plane[STACKS][6 * LAYERS], shear[STACKS][3 * LAYERS];
static double out[LENGTH];

static void fill(void) {
    for (int k = 0; k < STACKS; k++)
        for (int i = 0; i < LAYERS; i++) {
            int foam = i == 3;
            double scale = foam ? 12e6 : 14e9 * (1 + 0.01 * ((7 * k + 3 * i) % 11));
            thickness[k][i] = foam ? 0.010 + 0.0005 * k : 0.0004 + 0.00001 * ((k + i) % 5);
            double *q = plane[k] + 6 * i, *g = shear[k] + 3 * i;
            q[0] = scale;
            q[1] = 0.2 * scale;
            q[2] = 0.9 * scale;
            q[3] = foam ? 0 : 0.05 * scale;
            q[4] = foam ? 0 : 0.03 * scale;
            q[5] = 0.3 * scale;
            g[0] = 0.25 * scale;
            g[1] = foam ? 0 : 0.01 * scale;
            g[2] = 0.2 * scale;
        }
}

static double now(void) {
    struct timespec t;
    clock_gettime(CLOCK_MONOTONIC, &t);
    return t.tv_sec * 1e9 + t.tv_nsec;
}

static double sweep(void) {
    double sum = 0;
    for (int k = 0; k < STACKS; k++) {
        stiffness(LAYERS, thickness[k], plane[k], shear[k], out);
        sum += out[D] + out[H];
    }
    return sum;
}

int main(int argc, char **argv) {
    double nanoseconds = (argc > 1 ? atof(argv[1]) : 1) * 1e9;
    fill();
    double sum = sweep();
    volatile double sink = 0;
    long sweeps = 0;
    double start = now(), end;
    do {
        for (int r = 0; r < 100; r++) sink += sweep();
        sweeps += 100;
        end = now();
    } while (end - start < nanoseconds);
    printf("%.6f %.17g\n", (end - start) / (sweeps * (double) STACKS), sum);
    return 0;
}
