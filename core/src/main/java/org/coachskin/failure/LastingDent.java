package org.coachskin.failure;

import java.util.Arrays;
import java.util.Optional;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Patch;

/**
 * The dent that stays: a skin bonded to foam that gives no more than its crushing strength, loaded
 * and let go.
 *
 * <p>The foam gives in just under the skin, where it is pressed most, by y beside what it gives
 * elastically: p = bed (w - y), p at most the crushing strength, y growing only where p has reached
 * it. This is a plate on an elastic, perfectly plastic bed (Steeves and Fleck, "Collapse mechanisms
 * of sandwich beams with composite faces and a foam core", International Journal of Mechanical
 * Sciences 46, 2004, 561-583, treat the strip on a rigid, plastic one; from memory). It is solved
 * in steps, ring after ring of {@link SkinOnFoam}, as rates with y not falling (after Maier, "A
 * matrix structural theory of piecewise linear elastoplasticity", Meccanica 5, 1970, 54-66; from
 * memory): at each step the forces at which the next ring reaches the strength are solved for and
 * the smallest is taken. Letting go is elastic, so what stays is the skin's let-down by y; its
 * deepest place is the dent.
 *
 * <p>The dent therefore starts at the force of {@link FirstCrush}, from nothing and with no kink
 * but that of a ring, and grows with the force. Under a wide patch crushing starts in a ring inside
 * the edge and all of the middle follows within a few per cent more force; then the skin hangs over
 * the patch like a lid and the dent grows fast, but never by a jump.
 *
 * <p><b>Limits.</b> Small slopes of the skin (the dent below about three times its thickness), skin
 * elastic and not stretched, foam that crushes at an even pressure and is far from crushed flat; a
 * rectangle is taken as the disc of equal area.
 */
public final class LastingDent {

    private final double[] forces;
    private final double[] depths;
    private final double area;

    private LastingDent(double[] forces, double[] depths, double area) {
        this.forces = forces;
        this.depths = depths;
        this.area = area;
    }

    /**
     * Returns the dent under {@code patch} on the outside, or empty where there is no foam or no
     * skin on it.
     */
    public static Optional<LastingDent> of(Laminate laminate, Patch patch) {
        Skin skin = Skin.of(laminate, Face.OUTSIDE);
        int core = laminate.outermostCore();
        if (skin == null || !(laminate.layers().get(core) instanceof Layer.Core foam)) {
            return Optional.empty();
        }
        double radius = Math.sqrt(patch.area() / Math.PI);
        SkinOnFoam rings = SkinOnFoam.of(FoamBed.of(laminate), skin.meanBending(), radius);
        return Optional.of(of(rings, foam.foam().crush().value(), patch.area()));
    }

    static LastingDent of(SkinOnFoam rings, double crush, double area) {
        return new Loading(rings, crush).dent(area);
    }

    /**
     * Returns the depth of the dent that stays after {@code force} [m]. Beyond what the rings reach
     * it grows on as at their end.
     *
     * @param force [N], not below zero
     */
    public double depth(double force) {
        return along(forces, depths, force);
    }

    /**
     * Returns the force after which a dent of {@code depth} stays [N]. For a dent deeper than the
     * rings reach, many times the skin's thickness, it is that of the deepest they do: on the safe
     * side.
     */
    public double force(double depth) {
        return along(depths, forces, Math.min(depth, depths[depths.length - 1]));
    }

    /** Force at which crushing starts in the rings; that of {@link FirstCrush}, to one per cent. */
    double start() {
        return forces[1];
    }

    /** Returns the area of the patch [m^2]. */
    public double area() {
        return area;
    }

    /** Interpolates; {@code xs} do not fall. Past the end the last slope is kept. */
    private static double along(double[] xs, double[] ys, double x) {
        int i = 1;
        while (i < xs.length - 1 && xs[i] < x) {
            i++;
        }
        double width = xs[i] - xs[i - 1];
        return width <= 0 ? ys[i] : ys[i - 1] + (ys[i] - ys[i - 1]) * (x - xs[i - 1]) / width;
    }

    /** One patch pressed on harder and harder. Fields are times the root of each ring's area. */
    private static final class Loading {

        private final SkinOnFoam rings;
        private final int count;
        private final double crush;
        private final boolean[] crushing;
        private final double[] pressure;
        private final double[] crushed;
        private final double[] rate;
        private final double[] pressureRate;

        Loading(SkinOnFoam rings, double crush) {
            this.rings = rings;
            this.count = rings.rings();
            this.crush = crush;
            crushing = new boolean[count];
            pressure = new double[count];
            crushed = new double[count];
            rate = new double[count];
            pressureRate = new double[count];
        }

        LastingDent dent(double area) {
            double[] forces = new double[3 * count];
            double[] depths = new double[3 * count];
            int steps = 0;
            int next;
            // Crushing must not come near the rim of the rings, which is held; under a patch so
            // wide that few rings lie outside it, half of those.
            double last = Math.max(count - count / 8, (rings.edge() + count) / 2);
            double force = 0;
            while ((next = advance()) >= 0 && next < last && steps < 3 * count - 1) {
                double step = toCrush(next);
                force += step;
                for (int i = 0; i < count; i++) {
                    pressure[i] += step * pressureRate[i];
                    crushed[i] += step * rate[i];
                }
                crushing[next] = true;
                forces[++steps] = force;
                depths[steps] = Math.max(depths[steps - 1], deepest());
            }
            // Up to the first crush nothing stays.
            return new LastingDent(
                    Arrays.copyOfRange(forces, 0, steps + 1),
                    Arrays.copyOfRange(depths, 0, steps + 1),
                    area);
        }

        /** Finds the rates under more force; returns the ring that crushes next, or -1. */
        private int advance() {
            while (!solve()) {
                // A ring whose crushing would go back is left as it is.
            }
            int next = -1;
            for (int i = 0; i < count; i++) {
                double sum = rings.pressure(i);
                for (int j = 0; j < count; j++) {
                    sum -= rings.relief(i, j) * rate[j];
                }
                pressureRate[i] = sum;
                if (!crushing[i]
                        && sum > 1e-9 * rings.pressure(0)
                        && (next < 0 || toCrush(i) < toCrush(next))) {
                    next = i;
                }
            }
            return next;
        }

        private double toCrush(int ring) {
            double wanted = crush * rings.root(ring) - pressure[ring];
            return Math.max(0, wanted / pressureRate[ring]);
        }

        /**
         * Rates that keep every crushing ring at the strength, by Cholesky's factors; false, with
         * the ring that goes back most let off, where one would.
         */
        private boolean solve() {
            Arrays.fill(rate, 0);
            int[] active = new int[count];
            int m = 0;
            for (int i = 0; i < count; i++) {
                if (crushing[i]) {
                    active[m++] = i;
                }
            }
            double[][] factor = new double[m][m];
            double[] x = new double[m];
            for (int i = 0; i < m; i++) {
                double right = rings.pressure(active[i]);
                for (int j = 0; j <= i; j++) {
                    double sum = rings.relief(active[i], active[j]);
                    for (int k = 0; k < j; k++) {
                        sum -= factor[i][k] * factor[j][k];
                    }
                    factor[i][j] = i == j ? Math.sqrt(sum) : sum / factor[j][j];
                    right -= j < i ? factor[i][j] * x[j] : 0;
                }
                x[i] = right / factor[i][i];
            }
            int back = -1;
            for (int i = m - 1; i >= 0; i--) {
                for (int j = i + 1; j < m; j++) {
                    x[i] -= factor[j][i] * x[j];
                }
                x[i] /= factor[i][i];
                rate[active[i]] = x[i];
                if (x[i] < 0 && (back < 0 || x[i] < rate[back])) {
                    back = active[i];
                }
            }
            if (back >= 0) {
                crushing[back] = false;
            }
            return back < 0;
        }

        private double deepest() {
            double deepest = 0;
            for (int i = 0; i < count; i++) {
                double sum = 0;
                for (int j = 0; j < count; j++) {
                    sum += rings.letDown(i, j) * crushed[j];
                }
                deepest = Math.max(deepest, sum / rings.root(i));
            }
            return deepest;
        }
    }
}
