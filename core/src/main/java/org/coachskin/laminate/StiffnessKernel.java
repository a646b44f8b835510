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
 * <p>The transverse shear stiffness follows from equilibrium with the in-plane forces free (N = 0
 * while M varies). Then k = D*^-1 M with D* = D - B A^-1 B, the stress is &sigma;(z) = Q (z - A^-1
 * B) D*^-1 M, and d&tau;/dz = -div &sigma; gives
 *
 * <pre>
 *   [&tau;xz]     [F11 F62] [Qx]               z
 *   [&tau;yz] = - [F61 F22] [Qy],   F(z) =  &int; Q (z - A^-1 B) dz D*^-1,   H^-1 = &int; F^T G^-1 F dz.
 *                                       bottom
 * </pre>
 *
 * <p>Equilibrium gives two sums of six moment gradients, Qx = Mx,x + Mxy,y and Qy = My,y + Mxy,x.
 * Here, as in Rohwer (Application of higher order theories to the bending analysis of layered
 * composite plates, Int. J. Solids Structures 29, 1992; from memory) and Rolfes and Rohwer
 * (Improved transverse shear stresses in composite finite elements based on first order shear
 * deformation theory, Int. J. Numer. Meth. Engng 40, 1997; from memory), Mx,x = Qx and My,y = Qy
 * and the other four are zero: two bendings into cylinders, along x and along y of the panel.
 *
 * <p>So H turns with the axes exactly like a tensor by quarter turns, for layers that are isotropic
 * in the plane and for a stack of one material; for other stacks H belongs to bending along x and
 * y.
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
     * Where the strain begins that a unit of Qx leaves per length of x: at mid-height x, y, xy
     * [1/N], then per z x, y, xy [1/(N m)].
     */
    public static final int STRAIN_X = 21;

    /** Where the strain begins that a unit of Qy leaves per length of y, in the same order. */
    public static final int STRAIN_Y = 27;

    /** Where the shear compliance of the asked layers begins: 11, 12, 22 [m/N]. */
    static final int COMPLIANCE = 33;

    /** Where the share of the asked layers in Q begins: xz by Qx, yz by Qx, xz by Qy, yz by Qy. */
    static final int SHARE = 36;

    /** Length of the answer, with room to work in. */
    public static final int LENGTH = 40;

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
        strainByShear(out);
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

    /** Writes the first two columns of D*^-1 and of -A^-1 B D*^-1. */
    private static void strainByShear(double[] out) {
        double a11 = out[A];
        double a12 = out[A + 1];
        double a22 = out[A + 2];
        double a16 = out[A + 3];
        double a26 = out[A + 4];
        double a66 = out[A + 5];
        double b11 = out[B];
        double b12 = out[B + 1];
        double b22 = out[B + 2];
        double b16 = out[B + 3];
        double b26 = out[B + 4];
        double b66 = out[B + 5];
        // A^-1
        double c11 = a22 * a66 - a26 * a26;
        double c12 = a16 * a26 - a12 * a66;
        double c16 = a12 * a26 - a16 * a22;
        double scale = 1 / (a11 * c11 + a12 * c12 + a16 * c16);
        c11 *= scale;
        c12 *= scale;
        c16 *= scale;
        double c22 = (a11 * a66 - a16 * a16) * scale;
        double c26 = (a12 * a16 - a11 * a26) * scale;
        double c66 = (a11 * a22 - a12 * a12) * scale;
        // E = A^-1 B, row by row
        double e11 = c11 * b11 + c12 * b12 + c16 * b16;
        double e12 = c11 * b12 + c12 * b22 + c16 * b26;
        double e16 = c11 * b16 + c12 * b26 + c16 * b66;
        double e21 = c12 * b11 + c22 * b12 + c26 * b16;
        double e22 = c12 * b12 + c22 * b22 + c26 * b26;
        double e26 = c12 * b16 + c22 * b26 + c26 * b66;
        double e61 = c16 * b11 + c26 * b12 + c66 * b16;
        double e62 = c16 * b12 + c26 * b22 + c66 * b26;
        double e66 = c16 * b16 + c26 * b26 + c66 * b66;
        // D* = D - B E
        double d11 = out[D] - (b11 * e11 + b12 * e21 + b16 * e61);
        double d12 = out[D + 1] - (b11 * e12 + b12 * e22 + b16 * e62);
        double d22 = out[D + 2] - (b12 * e12 + b22 * e22 + b26 * e62);
        double d16 = out[D + 3] - (b11 * e16 + b12 * e26 + b16 * e66);
        double d26 = out[D + 4] - (b12 * e16 + b22 * e26 + b26 * e66);
        double d66 = out[D + 5] - (b16 * e16 + b26 * e26 + b66 * e66);
        // First two columns of D*^-1: the curvature by a unit of Mx and of My
        double x1 = d22 * d66 - d26 * d26;
        double x2 = d16 * d26 - d12 * d66;
        double x6 = d12 * d26 - d16 * d22;
        double unit = 1 / (d11 * x1 + d12 * x2 + d16 * x6);
        x1 *= unit;
        x2 *= unit;
        x6 *= unit;
        double y1 = x2;
        double y2 = (d11 * d66 - d16 * d16) * unit;
        double y6 = (d12 * d16 - d11 * d26) * unit;
        out[STRAIN_X] = -(e11 * x1 + e12 * x2 + e16 * x6);
        out[STRAIN_X + 1] = -(e21 * x1 + e22 * x2 + e26 * x6);
        out[STRAIN_X + 2] = -(e61 * x1 + e62 * x2 + e66 * x6);
        out[STRAIN_X + 3] = x1;
        out[STRAIN_X + 4] = x2;
        out[STRAIN_X + 5] = x6;
        out[STRAIN_Y] = -(e11 * y1 + e12 * y2 + e16 * y6);
        out[STRAIN_Y + 1] = -(e21 * y1 + e22 * y2 + e26 * y6);
        out[STRAIN_Y + 2] = -(e61 * y1 + e62 * y2 + e66 * y6);
        out[STRAIN_Y + 3] = y1;
        out[STRAIN_Y + 4] = y2;
        out[STRAIN_Y + 5] = y6;
    }

    /**
     * Writes &int; F^T G^-1 F dz and -&int; F dz over the layers {@code from} to {@code to - 1};
     * the strain by shear must stand in {@code out} already.
     */
    static void shearCompliance(
            int count,
            int from,
            int to,
            double[] thickness,
            double[] plane,
            double[] shear,
            double[] out) {
        double p1 = out[STRAIN_X];
        double p2 = out[STRAIN_X + 1];
        double p6 = out[STRAIN_X + 2];
        double x1 = out[STRAIN_X + 3];
        double x2 = out[STRAIN_X + 4];
        double x6 = out[STRAIN_X + 5];
        double r1 = out[STRAIN_Y];
        double r2 = out[STRAIN_Y + 1];
        double r6 = out[STRAIN_Y + 2];
        double y1 = out[STRAIN_Y + 3];
        double y2 = out[STRAIN_Y + 4];
        double y6 = out[STRAIN_Y + 5];
        double share11 = 0;
        double share61 = 0;
        double share62 = 0;
        double share22 = 0;
        double f11 = 0;
        double f61 = 0;
        double f62 = 0;
        double f22 = 0;
        double s11 = 0;
        double s12 = 0;
        double s22 = 0;
        double bottom = bottom(count, thickness);
        for (int i = 0; i < to; i++) {
            double t = thickness[i];
            double q11 = plane[6 * i];
            double q12 = plane[6 * i + 1];
            double q22 = plane[6 * i + 2];
            double q16 = plane[6 * i + 3];
            double q26 = plane[6 * i + 4];
            double q66 = plane[6 * i + 5];
            double k11 = t * t / 2 * (q11 * x1 + q12 * x2 + q16 * x6);
            double k61 = t * t / 2 * (q16 * x1 + q26 * x2 + q66 * x6);
            double k62 = t * t / 2 * (q16 * y1 + q26 * y2 + q66 * y6);
            double k22 = t * t / 2 * (q12 * y1 + q22 * y2 + q26 * y6);
            double u1 = p1 + bottom * x1;
            double u2 = p2 + bottom * x2;
            double u6 = p6 + bottom * x6;
            double v1 = r1 + bottom * y1;
            double v2 = r2 + bottom * y2;
            double v6 = r6 + bottom * y6;
            double m11 = t * (q11 * u1 + q12 * u2 + q16 * u6);
            double m61 = t * (q16 * u1 + q26 * u2 + q66 * u6);
            double m62 = t * (q16 * v1 + q26 * v2 + q66 * v6);
            double m22 = t * (q12 * v1 + q22 * v2 + q26 * v6);
            if (i >= from) {
                double g = shear[3 * i] * shear[3 * i + 2] - shear[3 * i + 1] * shear[3 * i + 1];
                double g11 = shear[3 * i + 2] / g;
                double g12 = -shear[3 * i + 1] / g;
                double g22 = shear[3 * i] / g;
                for (int point = -1; point <= 1; point++) {
                    double s = 0.5 + OFF * point;
                    double weight = t * (point == 0 ? MIDDLE_WEIGHT : EDGE_WEIGHT);
                    double w11 = f11 + s * (m11 + s * k11);
                    double w61 = f61 + s * (m61 + s * k61);
                    double w62 = f62 + s * (m62 + s * k62);
                    double w22 = f22 + s * (m22 + s * k22);
                    double h11 = g11 * w11 + g12 * w61;
                    double h21 = g12 * w11 + g22 * w61;
                    s11 += weight * (w11 * h11 + w61 * h21);
                    s12 += weight * (w62 * h11 + w22 * h21);
                    s22 += weight * (w62 * (g11 * w62 + g12 * w22) + w22 * (g12 * w62 + g22 * w22));
                }
                share11 -= t * (f11 + m11 / 2 + k11 / 3);
                share61 -= t * (f61 + m61 / 2 + k61 / 3);
                share62 -= t * (f62 + m62 / 2 + k62 / 3);
                share22 -= t * (f22 + m22 / 2 + k22 / 3);
            }
            f11 += m11 + k11;
            f61 += m61 + k61;
            f62 += m62 + k62;
            f22 += m22 + k22;
            bottom += t;
        }
        out[COMPLIANCE] = s11;
        out[COMPLIANCE + 1] = s12;
        out[COMPLIANCE + 2] = s22;
        out[SHARE] = share11;
        out[SHARE + 1] = share61;
        out[SHARE + 2] = share62;
        out[SHARE + 3] = share22;
    }
}
