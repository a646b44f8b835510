package org.coachskin.harmonic;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Sine series along one side, exact along the other.
 *
 * <p>For each m the fields solve (P + &beta;^2 R) X = load. With R^-1 P = V diag(&nu;) V^-1 the sum
 * over n is taken in closed form: X is the sum over j of V<sub>j</sub> (V^-1 R^-1 load)<sub>j</sub>
 * g(&radic;&nu;<sub>j</sub>, y), where g solves -g'' + &nu; g = 1 on the patch and vanishes at both
 * rims. The remaining sum over m falls off like exp(-&alpha; d), with d the distance along y to the
 * nearest edge of the patch, but for the part that does not vary along y within the patch's band.
 * That part is S0^-1 load, a rational function of &alpha;, summed in closed form ({@link Strip}).
 *
 * <p>"Along x" and "along y" here are the series' own: the caller exchanges them where it must.
 */
public final class SingleSeries {

    /** What may be left out, as a share of the sum, of one that is to be as good as it can be. */
    public static final double EXACT = 1e-10;

    /** What may be left out of a deflection: dents are small differences of it. */
    private static final double SMALL_DEFLECTION = 1e-9;

    /**
     * Largest alpha times thickness that is summed; only reached nearer to a corner of the patch
     * than a thickness, where strain grows without limit.
     */
    private static final double SHORTEST = 80;

    private final WaveSystem system;
    private final boolean bow;
    private final double small;
    private final double a;
    private final double b;
    private final int n;
    private final List<@Nullable Mode> modes = new ArrayList<>();
    private final List<double @Nullable []> profiles = new ArrayList<>();
    private double[] line = new double[0];
    private @Nullable Strip strip;

    /**
     * Creates the series.
     *
     * @param a side along the series [m]
     * @param b side along which the solution is exact [m]
     * @param bow whether the load is the stack's free bow; else a pressure outward
     * @param small what may be left out, as a share of the sum
     */
    public SingleSeries(WaveSystem system, double a, double b, boolean bow, double small) {
        this.system = system;
        this.a = a;
        this.b = b;
        this.bow = bow;
        this.small = small;
        this.n = system.size;
    }

    /**
     * Adds the fields and their first derivatives at one place.
     *
     * @param load strength, outward positive [Pa], or a factor on the bow
     * @param x1 x2 y1 y2 the patch [m]
     * @param out added to; for each field value, x-derivative and y-derivative; length 3 n; fields
     *     in the order of {@link WaveSystem}; the value of a rotation is its shear strain, slope
     *     included
     */
    public void add(
            double load,
            double x1,
            double x2,
            double y1,
            double y2,
            double x,
            double y,
            double[] out) {
        add(load, x1, x2, y1, y2, x, y, false, out);
    }

    /**
     * Adds as {@link #add} does, with as many waves as the deflections need: they settle long
     * before strains do. Of {@code out} nothing but the values of the deflections is to be used.
     */
    public void addDeflection(
            double load,
            double x1,
            double x2,
            double y1,
            double y2,
            double x,
            double y,
            double[] out) {
        add(load, x1, x2, y1, y2, x, y, true, out);
    }

    private synchronized void add(
            double load,
            double x1,
            double x2,
            double y1,
            double y2,
            double x,
            double y,
            boolean deflectionAlone,
            double[] out) {
        double[] sum = new double[3 * n];
        double[] size = new double[3 * n];
        lookAlong(y1, y2, y);
        int quiet = 0;
        int longest = (int) Math.ceil(SHORTEST * a / (Math.PI * system.thickness()));
        double share =
                (deflectionAlone ? Math.min(small, SMALL_DEFLECTION) : small)
                        * Math.min(1, Math.PI * Math.min(Math.abs(y - y1), Math.abs(y - y2)) / a);
        for (int m = 1; m <= longest && quiet < 3; m++) {
            double alpha = m * Math.PI / a;
            double q = 2 / (a * alpha) * (StrictMath.cos(alpha * x1) - StrictMath.cos(alpha * x2));
            if (Math.abs(q) * alpha * a < 1e-9) {
                continue; // a wave that this patch does not raise
            }
            double[] wave = profile(m);
            double sin = StrictMath.sin(alpha * x);
            double cos = StrictMath.cos(alpha * x);
            boolean done = true;
            for (int i = 0; i < n; i++) {
                boolean alongX = i < system.second;
                double value = alongX ? cos : sin;
                double slope = alongX ? -alpha * sin : alpha * cos;
                double own = q * wave[3 * i];
                double along = q * wave[3 * i + 1];
                double across = q * wave[3 * i + 2];
                sum[3 * i] += own * value;
                sum[3 * i + 1] += along * slope;
                sum[3 * i + 2] += across * value;
                boolean value1 = quiet(size, 3 * i, own, share);
                if (deflectionAlone) {
                    // Against the first of them, so that a bubble in the foam does not hold it up.
                    boolean counts = i >= system.second && i < system.first;
                    double whole = share * size[3 * system.second];
                    done = done && (!counts || Math.abs(own) <= whole);
                    continue;
                }
                boolean slope1 = quiet(size, 3 * i + 1, along * alpha, share);
                boolean slope2 = quiet(size, 3 * i + 2, across, share);
                done = done && value1 && slope1 && slope2;
            }
            quiet = done ? quiet + 1 : 0;
        }
        if (y > y1 && y < y2) {
            strip().add(x1, x2, x, sum);
        } else if (y == y1 || y == y2) {
            double[] half = new double[3 * n];
            strip().add(x1, x2, x, half);
            for (int i = 0; i < 3 * n; i++) {
                sum[i] += half[i] / 2;
            }
        }
        for (int i = 0; i < 3 * n; i++) {
            out[i] += load * sum[i];
        }
    }

    /**
     * Adds to the size of a sum; returns whether the term is below {@code share} of it. Terms fall
     * off like exp(-alpha d), so what follows one of them is a/(pi d) times as large.
     */
    private static boolean quiet(double[] size, int at, double term, double share) {
        double magnitude = Math.abs(term);
        size[at] += magnitude;
        return magnitude <= share * size[at];
    }

    private Strip strip() {
        if (strip == null) {
            strip = new Strip(system, a, bow, small);
        }
        return strip;
    }

    private Mode mode(int m) {
        while (modes.size() < m) {
            modes.add(null);
        }
        Mode known = modes.get(m - 1);
        if (known == null) {
            known = Mode.of(system, bow, m * Math.PI / a);
            modes.set(m - 1, known);
        }
        return known;
    }

    /** Forgets the profiles of another line. */
    private void lookAlong(double y1, double y2, double y) {
        double[] wanted = {y1, y2, y};
        if (!Arrays.equals(line, wanted)) {
            line = wanted;
            profiles.clear();
        }
    }

    /**
     * Returns what one wave does on the line looked along, less the part that does not vary along
     * y: for each field the value to take, the value whose x-derivative to take, and the derivative
     * along y. Places on one line share it.
     */
    private double[] profile(int m) {
        while (profiles.size() < m) {
            profiles.add(null);
        }
        double[] known = profiles.get(m - 1);
        if (known == null) {
            known = new double[3 * n];
            profile(mode(m), line[0], line[1], line[2], known);
            profiles.set(m - 1, known);
        }
        return known;
    }

    private void profile(Mode mode, double y1, double y2, double y, double[] wave) {
        double[] g = new double[6];
        for (int j = 0; j < n; j++) {
            boolean pair = mode.im()[j] != 0;
            Exponentials.patch(mode.re()[j], mode.im()[j], b, y1, y2, y, g);
            double cr = mode.weightRe()[j];
            double ci = mode.weightIm()[j];
            for (int i = 0; i < n; i++) {
                double vr = mode.v()[i * n + j];
                double vi = pair ? mode.v()[i * n + j + 1] : 0;
                double wr = cr * vr - ci * vi;
                double wi = cr * vi + ci * vr;
                double zr = mode.z()[i * n + j];
                double zi = pair ? mode.z()[i * n + j + 1] : 0;
                int part = i < system.first ? 0 : 2;
                wave[3 * i] += (cr * zr - ci * zi) * g[part] - (cr * zi + ci * zr) * g[part + 1];
                if (i < system.first) {
                    wave[3 * i + 1] += wr * g[0] - wi * g[1];
                    wave[3 * i + 2] += wr * g[2] - wi * g[3];
                } else {
                    wave[3 * i + 1] += wr * g[2] - wi * g[3];
                    wave[3 * i + 2] += wr * g[4] - wi * g[5];
                }
            }
            if (pair) {
                j++;
            }
        }
    }
}
