package org.coachskin.laminate;

/**
 * The stiffness of a stack from plain arrays into the caller's array, for sweeps; it allocates
 * nothing and may be called from several threads at once on different arrays.
 *
 * <p>Membrane, coupling and bending stiffness are the sums of classical laminate theory about
 * mid-height,
 *
 * <pre>
 *   A = &sum; Q t,   B = &sum; Q t m,   D = &sum; Q t (m^2 + t^2/12),   m = z of the layer's middle.
 * </pre>
 *
 * <p>The transverse shear stiffness follows from equilibrium with equal energy, each shear force
 * taken as bending into a cylinder: Qx as M<sub>x,x</sub> with nothing varying along y, Qy as
 * M<sub>y,y</sub> with nothing varying along x. Along the axis of the cylinder strain and curvature
 * stay zero, the in-plane forces N<sub>x</sub>, N<sub>xy</sub> and the twisting moment stay
 * constant. That fixes the gradient of strain e'(z) + z k', and d&tau;/dz = -div &sigma; gives
 *
 * <pre>
 *   [&tau;xz]   [F11 F12] [Qx]                  z
 *   [&tau;yz] = [F21 F22] [Qy],   column x of F = - &int; (Q11, Q16; Q16, Q66) (e' + z k') dz,
 *                                           bottom
 *   H^-1 = &int; F^T G^-1 F dz.
 * </pre>
 *
 * <p>This is what Whitney does for cross-ply laminates (Shear correction factors for orthotropic
 * laminates under static load, J. Appl. Mech. 40, 1973, pp. 302-304; from memory). One material
 * gives 5/6 G t, thin skins on soft foam G d^2/c, with no factor put in. H does not depend on the
 * reference surface.
 *
 * <p>Limit: H turns with the axes as a tensor exactly by quarter turns, and by any angle for layers
 * that are isotropic in the plane or all alike. For other stacks it belongs to bending along x and
 * along y: turned by up to 90 degrees it departs from the tensor rule by less than 0.1 % for foam
 * between two skins of plies along the axes, 3 % for foam under one such skin and 5 % for a
 * cross-ply laminate with E1/E2 = 25.
 */
public final class StiffnessKernel {

    /** Where A begins in the answer: A11, A12, A22, A16, A26, A66 [N/m]. */
    public static final int A = 0;

    /** Where B begins in the answer, in the order of A [N]. */
    public static final int B = 6;

    /** Where D begins in the answer, in the order of A [N m]. */
    public static final int D = 12;

    /** Where H begins in the answer: H11, H12, H22 [N/m]. */
    public static final int H = 18;

    /**
     * Where the strain begins that grows along x by a unit of Qx: strain and shear strain at
     * mid-height [1/N], then curvature and twist [1/(N m)].
     */
    static final int STRAIN_X = 21;

    /** Where the strain begins that grows along y by a unit of Qy, in the same order. */
    static final int STRAIN_Y = 25;

    /** Where the shear compliance of the asked layers begins: 11, 12, 22 [m/N]. */
    static final int COMPLIANCE = 29;

    /** Where the share of the asked layers in Q begins: xz by Qx, yz by Qx, xz by Qy, yz by Qy. */
    static final int SHARE = 32;

    /** Length of the answer, with room to work in. */
    public static final int LENGTH = 36;

    // Three Gauss points on 0..1: exact for the square of a parabola.
    private static final double OFF = Math.sqrt(0.15);
    private static final double EDGE_WEIGHT = 5.0 / 18;
    private static final double MIDDLE_WEIGHT = 4.0 / 9;

    private StiffnessKernel() {}

    /**
     * Writes A, B, D about mid-height and H.
     *
     * @param count number of layers, inside to outside
     * @param thickness of each layer [m]
     * @param plane plane-stress stiffness of each layer in panel axes, six a layer: 11, 12, 22, 16,
     *     26, 66 [Pa]
     * @param shear transverse shear stiffness of each layer in panel axes, three a layer: 11, 12,
     *     22 [Pa]
     * @param out receives {@link #LENGTH} values
     */
    public static void stiffness(
            int count, double[] thickness, double[] plane, double[] shear, double[] out) {
        membraneAndBending(count, thickness, plane, out);
        cylinder(0, 3, out, STRAIN_X);
        cylinder(2, 4, out, STRAIN_Y);
        shearCompliance(count, 0, count, thickness, plane, shear, out);
        double s11 = out[COMPLIANCE];
        double s12 = out[COMPLIANCE + 1];
        double s22 = out[COMPLIANCE + 2];
        double det = s11 * s22 - s12 * s12;
        out[H] = s22 / det;
        out[H + 1] = -s12 / det;
        out[H + 2] = s11 / det;
    }

    private static void membraneAndBending(
            int count, double[] thickness, double[] plane, double[] out) {
        for (int j = 0; j < H; j++) {
            out[j] = 0;
        }
        double bottom = bottom(count, thickness);
        for (int i = 0; i < count; i++) {
            double t = thickness[i];
            double middle = bottom + t / 2;
            double first = t * middle;
            double second = t * (middle * middle + t * t / 12);
            for (int j = 0; j < 6; j++) {
                double q = plane[6 * i + j];
                out[A + j] += t * q;
                out[B + j] += first * q;
                out[D + j] += second * q;
            }
            bottom += t;
        }
    }

    private static double bottom(int count, double[] thickness) {
        double height = 0;
        for (int i = 0; i < count; i++) {
            height += thickness[i];
        }
        return -height / 2;
    }

    /**
     * Writes the strain by a unit of shear force in bending into a cylinder.
     *
     * @param n place of the entry 11 (along x) or 22 (along y) within A, B and D
     * @param m place of the entry 16 or 26
     */
    private static void cylinder(int n, int m, double[] out, int start) {
        double ann = out[A + n];
        double anm = out[A + m];
        double amm = out[A + 5];
        double bnn = out[B + n];
        double bnm = out[B + m];
        double bmm = out[B + 5];
        double scale = 1 / (ann * amm - anm * anm);
        // E = A^-1 B
        double enn = (amm * bnn - anm * bnm) * scale;
        double enm = (amm * bnm - anm * bmm) * scale;
        double emn = (ann * bnm - anm * bnn) * scale;
        double emm = (ann * bmm - anm * bnm) * scale;
        // D* = D - B E
        double dnn = out[D + n] - (bnn * enn + bnm * emn);
        double dnm = out[D + m] - (bnn * enm + bnm * emm);
        double dmm = out[D + 5] - (bnm * enm + bmm * emm);
        double unit = 1 / (dnn * dmm - dnm * dnm);
        double curvature = dmm * unit;
        double twist = -dnm * unit;
        out[start] = -(enn * curvature + enm * twist);
        out[start + 1] = -(emn * curvature + emm * twist);
        out[start + 2] = curvature;
        out[start + 3] = twist;
    }

    /**
     * Writes &int; F^T G^-1 F dz and &int; F dz over the layers {@code from} to {@code to - 1}; the
     * strain by shear must stand in {@code out} already.
     */
    static void shearCompliance(
            int count,
            int from,
            int to,
            double[] thickness,
            double[] plane,
            double[] shear,
            double[] out) {
        double ex = out[STRAIN_X];
        double gx = out[STRAIN_X + 1];
        double kx = out[STRAIN_X + 2];
        double tx = out[STRAIN_X + 3];
        double ey = out[STRAIN_Y];
        double gy = out[STRAIN_Y + 1];
        double ky = out[STRAIN_Y + 2];
        double ty = out[STRAIN_Y + 3];
        double share11 = 0;
        double share21 = 0;
        double share12 = 0;
        double share22 = 0;
        double f11 = 0;
        double f21 = 0;
        double f12 = 0;
        double f22 = 0;
        double s11 = 0;
        double s12 = 0;
        double s22 = 0;
        double bottom = bottom(count, thickness);
        for (int i = 0; i < to; i++) {
            double t = thickness[i];
            double q11 = plane[6 * i];
            double q22 = plane[6 * i + 2];
            double q16 = plane[6 * i + 3];
            double q26 = plane[6 * i + 4];
            double q66 = plane[6 * i + 5];
            // F = f + s (m + s k) with s from 0 to 1 through the layer.
            double half = -t * t / 2;
            double k11 = half * (q11 * kx + q16 * tx);
            double k21 = half * (q16 * kx + q66 * tx);
            double k12 = half * (q26 * ky + q66 * ty);
            double k22 = half * (q22 * ky + q26 * ty);
            double ux = ex + bottom * kx;
            double vx = gx + bottom * tx;
            double uy = ey + bottom * ky;
            double vy = gy + bottom * ty;
            double m11 = -t * (q11 * ux + q16 * vx);
            double m21 = -t * (q16 * ux + q66 * vx);
            double m12 = -t * (q26 * uy + q66 * vy);
            double m22 = -t * (q22 * uy + q26 * vy);
            if (i >= from) {
                double g = shear[3 * i] * shear[3 * i + 2] - shear[3 * i + 1] * shear[3 * i + 1];
                double g11 = shear[3 * i + 2] / g;
                double g12 = -shear[3 * i + 1] / g;
                double g22 = shear[3 * i] / g;
                for (int point = -1; point <= 1; point++) {
                    double s = 0.5 + OFF * point;
                    double weight = t * (point == 0 ? MIDDLE_WEIGHT : EDGE_WEIGHT);
                    double w11 = f11 + s * (m11 + s * k11);
                    double w21 = f21 + s * (m21 + s * k21);
                    double w12 = f12 + s * (m12 + s * k12);
                    double w22 = f22 + s * (m22 + s * k22);
                    double h11 = g11 * w11 + g12 * w21;
                    double h21 = g12 * w11 + g22 * w21;
                    s11 += weight * (w11 * h11 + w21 * h21);
                    s12 += weight * (w12 * h11 + w22 * h21);
                    s22 += weight * (w12 * (g11 * w12 + g12 * w22) + w22 * (g12 * w12 + g22 * w22));
                }
                share11 += t * (f11 + m11 / 2 + k11 / 3);
                share21 += t * (f21 + m21 / 2 + k21 / 3);
                share12 += t * (f12 + m12 / 2 + k12 / 3);
                share22 += t * (f22 + m22 / 2 + k22 / 3);
            }
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
    }
}
