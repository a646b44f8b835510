package org.coachskin.harmonic;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.SingularMatrixException;
import org.jspecify.annotations.Nullable;

/**
 * Sine series along one side, exact along the other.
 *
 * <p>For each m the fields solve (P + &beta;^2 R) X = load. With R^-1 P = V diag(&nu;) V^-1 the sum
 * over n is taken in closed form: X is the sum over j of V<sub>j</sub> (V^-1 R^-1 load)<sub>j</sub>
 * g(&radic;&nu;<sub>j</sub>, y), where g solves -g'' + &nu; g = 1 on the patch and vanishes at both
 * rims. The remaining sum over m falls off like exp(-&alpha; d), with d the distance along y to the
 * nearest edge of the patch, but for the part that does not vary along y within the patch's band.
 * That part is S0^-1 load, a rational function of &alpha;; its tail is summed through its two
 * leading powers ({@link PowerTail}).
 *
 * <p>"Along x" and "along y" here are the series' own: the caller exchanges them where it must.
 */
public final class SingleSeries {

    /** Terms below this share of the sum so far end a sum that is to be as good as it can be. */
    public static final double EXACT = 1e-10;

    /**
     * Relative change of the diagonal that sets repeated eigenvalues apart; the answers change as
     * little.
     */
    private static final double APART = 1e-10;

    /** No sum is longer; reached only within a corner disc of a patch. */
    private static final int LONGEST = 4000;

    private final WaveSystem system;
    private final boolean bow;
    private final double small;
    private final double a;
    private final double b;
    private final int n;
    private final List<@Nullable Mode> modes = new ArrayList<>();
    private double[][] strip = new double[0][];
    private double[] tail = new double[0];

    /**
     * Creates the series.
     *
     * @param a side along the series [m]
     * @param b side along which the solution is exact [m]
     * @param bow whether the load is the stack's free bow; else a pressure outward
     * @param small terms below this share of the sum so far end it
     */
    public SingleSeries(WaveSystem system, double a, double b, boolean bow, double small) {
        this.system = system;
        this.a = a;
        this.b = b;
        this.bow = bow;
        this.small = small;
        this.n = system.size;
    }

    /** One wave along x: eigenvalues, vectors and weights. */
    private static final class Mode {
        final double[] re;
        final double[] im;
        final double[][] v;
        final double[] weightRe;
        final double[] weightIm;

        Mode(double[] re, double[] im, double[][] v, double[] weightRe, double[] weightIm) {
            this.re = re;
            this.im = im;
            this.v = v;
            this.weightRe = weightRe;
            this.weightIm = weightIm;
        }
    }

    /**
     * Adds the fields and their first derivatives at one place.
     *
     * @param load strength, outward positive [Pa], or a factor on the bow
     * @param x1 x2 y1 y2 the patch [m]
     * @param out added to; for each field value, x-derivative and y-derivative; length 3 n; fields
     *     in the order of {@link WaveSystem}
     */
    public synchronized void add(
            double load,
            double x1,
            double x2,
            double y1,
            double y2,
            double x,
            double y,
            double[] out) {
        double[] sum = new double[3 * n];
        double[] size = new double[3 * n];
        double[] s = new double[n];
        double[] ds = new double[n];
        int quiet = 0;
        for (int m = 1; m <= LONGEST && quiet < 3; m++) {
            double alpha = m * Math.PI / a;
            double q = 2 / (a * alpha) * (StrictMath.cos(alpha * x1) - StrictMath.cos(alpha * x2));
            if (Math.abs(q) * alpha * a < 1e-9) {
                continue; // a wave that this patch does not raise
            }
            Arrays.fill(s, 0);
            Arrays.fill(ds, 0);
            profile(mode(m), y1, y2, y, s, ds);
            double sin = StrictMath.sin(alpha * x);
            double cos = StrictMath.cos(alpha * x);
            boolean done = true;
            for (int i = 0; i < n; i++) {
                boolean alongX = i < system.second;
                double value = alongX ? cos : sin;
                double slope = alongX ? -alpha * sin : alpha * cos;
                sum[3 * i] += q * s[i] * value;
                sum[3 * i + 1] += q * s[i] * slope;
                sum[3 * i + 2] += q * ds[i] * value;
                boolean value1 = quiet(size, 3 * i, q * s[i]);
                boolean slope1 = quiet(size, 3 * i + 1, q * s[i] * alpha);
                boolean slope2 = quiet(size, 3 * i + 2, q * ds[i]);
                done = done && value1 && slope1 && slope2;
            }
            quiet = done ? quiet + 1 : 0;
        }
        if (y > y1 && y < y2) {
            addStrip(x1, x2, x, sum);
        } else if (y == y1 || y == y2) {
            double[] half = new double[3 * n];
            addStrip(x1, x2, x, half);
            for (int i = 0; i < 3 * n; i++) {
                sum[i] += half[i] / 2;
            }
        }
        for (int i = 0; i < 3 * n; i++) {
            out[i] += load * sum[i];
        }
    }

    private boolean quiet(double[] size, int at, double term) {
        double magnitude = Math.abs(term);
        size[at] += magnitude;
        return magnitude <= small * size[at];
    }

    private Mode mode(int m) {
        while (modes.size() < m) {
            modes.add(null);
        }
        Mode known = modes.get(m - 1);
        if (known == null) {
            known = solve(m * Math.PI / a);
            modes.set(m - 1, known);
        }
        return known;
    }

    /**
     * Eigenvalues of R^-1 P and weights V^-1 R^-1 load; rotations are scaled by alpha to lengths
     * first.
     */
    private Mode solve(double alpha) {
        double[] p = new double[n * n];
        double[] r = new double[n * n];
        double[] rhs = new double[n];
        system.pencil(alpha, p, r);
        if (bow) {
            system.bow(alpha, rhs);
        } else {
            system.pressure(rhs);
        }
        double[] scale = new double[n];
        for (int i = 0; i < n; i++) {
            // Fields of the second block are divided by beta, so they are one power of alpha apart.
            scale[i] = 1 / Math.sqrt(Math.max(p[i * n + i], r[i * n + i] * alpha * alpha));
        }
        double[][] rm = new double[n][n];
        double[][] pm = new double[n][n];
        double[][] load = new double[n][1];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                rm[i][j] = r[i * n + j] * scale[i] * scale[j] * alpha * alpha;
                pm[i][j] = p[i * n + j] * scale[i] * scale[j];
            }
            load[i][0] = rhs[i] * scale[i];
        }
        try {
            return solve(alpha, pm, rm, load, scale);
        } catch (SingularMatrixException e) {
            // An isotropic stack has exactly repeated eigenvalues that share a vector: set them
            // apart a little.
            for (int i = 0; i < n; i++) {
                pm[i][i] *= 1 + APART * (i + 1);
            }
            return solve(alpha, pm, rm, load, scale);
        }
    }

    private Mode solve(
            double alpha, double[][] pm, double[][] rm, double[][] load, double[] scale) {
        // Of P^-1 R rather than R^-1 P: the slowly falling modes, which matter, are then its
        // largest.
        DecompositionSolver lu =
                new LUDecomposition(new Array2DRowRealMatrix(pm, false), 1e-300).getSolver();
        EigenDecomposition eigen =
                new EigenDecomposition(lu.solve(new Array2DRowRealMatrix(rm, false)));
        RealMatrix vectors = eigen.getV();
        double[] c =
                new LUDecomposition(vectors, 1e-300)
                        .getSolver()
                        .solve(lu.solve(new Array2DRowRealMatrix(load, false)))
                        .getColumn(0);
        double[][] v = vectors.getData();
        double[] re = eigen.getRealEigenvalues();
        double[] im = eigen.getImagEigenvalues();
        double[] weightRe = new double[n];
        double[] weightIm = new double[n];
        double square = alpha * alpha;
        for (int i = 0; i < n; i++) {
            double size = re[i] * re[i] + im[i] * im[i];
            re[i] *= square / size;
            im[i] *= -square / size;
            for (int j = 0; j < n; j++) {
                v[i][j] *= scale[i];
            }
        }
        for (int j = 0; j < n; j++) {
            double ci = im[j] != 0 && j + 1 < n ? -c[j + 1] : 0;
            weightRe[j] = c[j] * re[j] - ci * im[j];
            weightIm[j] = c[j] * im[j] + ci * re[j];
        }
        return new Mode(re, im, v, weightRe, weightIm);
    }

    /**
     * Adds the fields at y of one wave, less the part that does not vary along y, and their
     * derivatives along y.
     */
    private void profile(Mode mode, double y1, double y2, double y, double[] s, double[] ds) {
        double[] g = new double[6];
        for (int j = 0; j < n; j++) {
            boolean pair = mode.im[j] != 0;
            Exponentials.patch(mode.re[j], mode.im[j], b, y1, y2, y, g);
            double cr = mode.weightRe[j];
            double ci = mode.weightIm[j];
            for (int i = 0; i < n; i++) {
                double vr = mode.v[i][j];
                double vi = pair ? mode.v[i][j + 1] : 0;
                double wr = cr * vr - ci * vi;
                double wi = cr * vi + ci * vr;
                if (i < system.first) {
                    s[i] += wr * g[0] - wi * g[1];
                    ds[i] += wr * g[2] - wi * g[3];
                } else {
                    s[i] += wr * g[2] - wi * g[3];
                    ds[i] += wr * g[4] - wi * g[5];
                }
            }
            if (pair) {
                j++;
            }
        }
    }

    /** Adds the part that does not vary along y. */
    private void addStrip(double x1, double x2, double x, double[] sum) {
        prepareStrip();
        int k = system.first;
        int last = strip.length;
        double[] phase = {x + x1, x - x1, x + x2, x - x2};
        double[] sin = new double[4];
        double[] cos = new double[4];
        double[] stepSin = new double[4];
        double[] stepCos = new double[4];
        for (int f = 0; f < 4; f++) {
            stepSin[f] = StrictMath.sin(Math.PI * phase[f] / a);
            stepCos[f] = StrictMath.cos(Math.PI * phase[f] / a);
            cos[f] = 1;
        }
        for (int m = 1; m <= last; m++) {
            double sines = 0;
            double cosines = 0;
            for (int f = 0; f < 4; f++) {
                double next = sin[f] * stepCos[f] + cos[f] * stepSin[f];
                cos[f] = cos[f] * stepCos[f] - sin[f] * stepSin[f];
                sin[f] = next;
                double sign = f < 2 ? 1 : -1;
                sines += sign * next;
                cosines += sign * cos[f];
            }
            double alpha = m * Math.PI / a;
            double q = 1 / (a * alpha);
            for (int i = 0; i < k; i++) {
                double rest = strip[m - 1][i] - PowerTail.model(tail, i, alpha);
                if (i < system.second) {
                    sum[3 * i] += q * rest * cosines;
                    sum[3 * i + 1] -= q * rest * alpha * sines;
                } else {
                    sum[3 * i] += q * rest * sines;
                    sum[3 * i + 1] += q * rest * alpha * cosines;
                }
            }
        }
        for (int f = 0; f < 4; f++) {
            double sign = f < 2 ? 1 : -1;
            for (int i = 0; i < k; i++) {
                PowerTail.add(tail, i, i < system.second, a, Math.PI * phase[f] / a, sign / a, sum);
            }
        }
    }

    /** Solves the strip for as many waves as its tail needs. */
    private void prepareStrip() {
        if (strip.length > 0) {
            return;
        }
        int k = system.first;
        double[] matrix = new double[k * k];
        double[] rhs = new double[n];
        // Powers of 1/alpha are read far out, where they are all there is.
        double far = 3e4 * Math.PI / Math.min(a, b);
        double[] one = stripAt(far, matrix, rhs);
        double[] two = stripAt(2 * far, matrix, rhs);
        tail = PowerTail.fit(one, two, far, system.second);
        List<double[]> found = new ArrayList<>();
        int settled = 0;
        for (int m = 1; m <= 40 * LONGEST && settled < 3; m++) {
            double alpha = m * Math.PI / a;
            double[] s = stripAt(alpha, matrix, rhs);
            found.add(s);
            boolean close = m >= 32;
            for (int i = 0; i < k && close; i++) {
                // What the next power leaves out of the slopes, summed from here on, against the
                // first wave.
                double rest = Math.abs(s[i] - PowerTail.model(tail, i, alpha));
                close = rest * m <= 1e-9 * Math.abs(found.get(0)[i]);
            }
            settled = close ? settled + 1 : 0;
        }
        strip = found.toArray(new double[0][]);
    }

    private double[] stripAt(double alpha, double[] matrix, double[] rhs) {
        int k = system.first;
        system.strip(alpha, matrix);
        if (bow) {
            system.bow(alpha, rhs);
        } else {
            system.pressure(rhs);
        }
        double[] s = Arrays.copyOf(rhs, k);
        Cholesky.solve(matrix, k, s);
        return s;
    }
}
