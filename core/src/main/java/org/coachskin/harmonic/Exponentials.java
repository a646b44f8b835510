package org.coachskin.harmonic;

/**
 * The solution of -g'' + &nu; g = 1 on y1 to y2, 0 elsewhere, with g = 0 at 0 and b, for complex
 * &nu;; less 1/&nu; on the patch. Written in exponentials that only fall, so nothing overflows.
 */
final class Exponentials {

    /** exp of minus this is below the last bit of 1. */
    private static final double NOTHING = 40;

    private Exponentials() {}

    /**
     * Writes g, g' and g'' (each without the part 1/nu on the patch).
     *
     * @param g overwritten with real and imaginary parts of g, g', g''; length 6
     */
    static void patch(double re, double im, double b, double y1, double y2, double y, double[] g) {
        double size = Math.sqrt(re * re + im * im);
        // The root with real part above zero.
        double lr = Math.sqrt((size + re) / 2);
        double li = lr > 0 ? im / (2 * lr) : Math.sqrt(size);
        java.util.Arrays.fill(g, 0);
        if (y <= y1) {
            add(lr, li, b, y + b - y1, 0.5, 1, g);
            add(lr, li, b, y - b + y1, 0.5, 1, g);
        } else {
            add(lr, li, b, b - y + y1, -0.5, -1, g);
            add(lr, li, b, b - y - y1, -0.5, -1, g);
        }
        if (y >= y2) {
            add(lr, li, b, b - y + y2, 0.5, -1, g);
            add(lr, li, b, b - y - y2, 0.5, -1, g);
        } else {
            add(lr, li, b, y + b - y2, -0.5, 1, g);
            add(lr, li, b, y - b + y2, -0.5, 1, g);
        }
        // g holds the sums of sinh and of cosh, over sinh(lambda b); divide by nu, and the
        // derivative by lambda.
        double sr = g[0];
        double si = g[1];
        double cr = g[2];
        double ci = g[3];
        double square = re * re + im * im;
        g[0] = (sr * re + si * im) / square;
        g[1] = (si * re - sr * im) / square;
        g[2] = (cr * lr + ci * li) / size;
        g[3] = (ci * lr - cr * li) / size;
        g[4] = sr;
        g[5] = si;
        // On an edge line the part 1/nu is taken half from each side.
        if (y == y1 || y == y2) {
            double half = 0.5;
            g[0] -= half * re / square;
            g[1] += half * im / square;
            g[4] -= half;
        }
    }

    /** Adds weight sinh(lambda s)/sinh(lambda b) and, with the sign of ds/dy, the cosh. */
    private static void add(
            double lr, double li, double b, double s, double weight, double sign, double[] g) {
        double distance = Math.abs(s);
        double decay = lr * (b - distance);
        if (decay > 60) {
            return;
        }
        double e = StrictMath.exp(-decay);
        double er = e;
        double ei = 0;
        if (li != 0) {
            er = e * StrictMath.cos(li * (b - distance));
            ei = -e * StrictMath.sin(li * (b - distance));
        }
        // What is below the last bit of 1 is not worked out.
        double tr = 0;
        double ti = 0;
        if (2 * lr * distance < NOTHING) {
            double twice = StrictMath.exp(-2 * lr * distance);
            tr = li == 0 ? twice : twice * StrictMath.cos(2 * li * distance);
            ti = li == 0 ? 0 : -twice * StrictMath.sin(2 * li * distance);
        }
        double br = 1;
        double bi = 0;
        if (2 * lr * b < NOTHING) {
            double whole = StrictMath.exp(-2 * lr * b);
            br = li == 0 ? 1 - whole : 1 - whole * StrictMath.cos(2 * li * b);
            bi = li == 0 ? 0 : whole * StrictMath.sin(2 * li * b);
        }
        double size = br * br + bi * bi;
        double fr = (er * br + ei * bi) / size;
        double fi = (ei * br - er * bi) / size;
        double signed = s < 0 ? -weight : weight;
        g[0] += signed * (fr * (1 - tr) + fi * ti);
        g[1] += signed * (fi * (1 - tr) - fr * ti);
        g[2] += sign * weight * (fr * (1 + tr) - fi * ti);
        g[3] += sign * weight * (fi * (1 + tr) + fr * ti);
    }
}
