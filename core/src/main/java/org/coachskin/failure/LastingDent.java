package org.coachskin.failure;

import java.util.Optional;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Patch;

/**
 * The dent that stays: a plate on a bed whose pressure ends at the crushing strength, loaded and
 * let go.
 *
 * <p>Axisymmetric finite differences. The bed is springs whose stiffness is chosen so that crushing
 * starts at the force of {@link FirstCrush}; beyond it the bed gives no more than the crushing
 * strength (Steeves and Fleck, "Collapse mechanisms of sandwich beams with composite faces and a
 * foam core", International Journal of Mechanical Sciences 46, 2004, 561-583, treat the strip; from
 * memory). Letting go is elastic, so what stays is the dent under load less the elastic one of the
 * same force.
 *
 * <p><b>Limits.</b> Small slopes of the skin (the dent below about three times its thickness), skin
 * elastic, foam that crushes at an even pressure; a rectangle is taken as the disc of equal area.
 */
public final class LastingDent {

    private static final int NODES = 120;

    /** Radius over length at which springs under the middle of a disc are pressed most. */
    private static final double PEAK = 3.9147;

    private final double radius;
    private final double step;
    private final double spring;
    private final double crush;
    private final double area;
    private final double start;
    private final double[] plate = new double[NODES * 5];
    private final double[] load = new double[NODES];
    private final double elastic;

    private LastingDent(double d, double spring, double crush, double area, double start) {
        this.area = area;
        this.radius = Math.sqrt(area / Math.PI);
        this.spring = spring;
        this.crush = crush;
        this.start = start;
        double length = StrictMath.pow(d / spring, 0.25);
        this.step = (radius + 14 * length) / NODES;
        biharmonic(d);
        for (int i = 0; i < NODES; i++) {
            double inner = i * step;
            double outer = inner + step;
            double covered = Math.min(Math.max(radius, inner), outer);
            load[i] = (covered * covered - inner * inner) / (outer * outer - inner * inner) / area;
        }
        elastic = solve(1, 0)[0];
    }

    /**
     * Returns the dent under {@code patch} on the outside, or empty where there is no foam or no
     * skin on it.
     */
    public static Optional<LastingDent> of(Laminate laminate, Patch patch) {
        Optional<FirstCrush> first = FirstCrush.of(laminate, patch);
        Skin skin = Skin.of(laminate, Face.OUTSIDE);
        if (first.isEmpty() || skin == null) {
            return Optional.empty();
        }
        double d = skin.meanBending();
        double crush =
                ((Layer.Core) laminate.layers().get(laminate.outermostCore()))
                        .foam()
                        .crush()
                        .value();
        return Optional.of(
                new LastingDent(
                        d,
                        matchedSpring(FoamBed.of(laminate), d, patch, first.get()),
                        crush,
                        patch.area(),
                        first.get().force()));
    }

    /** Springs under which crushing starts at the same force, and no softer than the whole foam. */
    private static double matchedSpring(FoamBed bed, double d, Patch patch, FirstCrush first) {
        double radius = Math.sqrt(patch.area() / Math.PI);
        double wanted = first.pressure(1) * patch.area();
        // On springs the share rises to its peak and then swings about 1: the first spring counts.
        double soft = StrictMath.log(bed.springs());
        double hard = StrictMath.log(d * StrictMath.pow(PEAK / radius, 4));
        if (hard <= soft || wanted <= onSprings(StrictMath.pow(d / bed.springs(), 0.25), radius)) {
            return bed.springs();
        }
        if (wanted >= onSprings(radius / PEAK, radius)) {
            return StrictMath.exp(hard);
        }
        return StrictMath.exp(
                new BrentSolver(1e-6)
                        .solve(
                                60,
                                x ->
                                        onSprings(
                                                        StrictMath.pow(d / StrictMath.exp(x), 0.25),
                                                        radius)
                                                - wanted,
                                soft,
                                hard));
    }

    /**
     * Share of pressure under the middle of a disc on springs: 1 + (a/l) ker'(a/l), by its
     * integral.
     */
    private static double onSprings(double length, double radius) {
        double x = radius / length;
        double sum = 0;
        double step = Math.min(0.05, 0.25 / x);
        for (double k = step / 2; k < 12; k += step) {
            sum +=
                    x
                            * org.apache.commons.math3.special.BesselJ.value(1, k * x)
                            / (k * k * k * k + 1)
                            * step;
        }
        return sum;
    }

    /** Rows of D times the biharmonic operator on rings, five diagonals; nodes at ring middles. */
    private void biharmonic(double d) {
        double[] lap = new double[NODES * 3];
        for (int i = 0; i < NODES; i++) {
            double inner = i * step;
            double outer = inner + step;
            double middle = inner + step / 2;
            double left = inner / (middle * step * step);
            double right = outer / (middle * step * step);
            // The far rim is fixed: its neighbour outside is zero.
            lap[3 * i] = left;
            lap[3 * i + 1] = -left - right;
            lap[3 * i + 2] = right;
        }
        for (int i = 0; i < NODES; i++) {
            for (int j = Math.max(0, i - 1); j <= Math.min(NODES - 1, i + 1); j++) {
                double outerFactor = lap[3 * i + j - i + 1];
                for (int k = Math.max(0, j - 1); k <= Math.min(NODES - 1, j + 1); k++) {
                    plate[5 * i + k - i + 2] += d * outerFactor * lap[3 * j + k - j + 1];
                }
            }
        }
    }

    /**
     * Deflection under {@code force} where the first {@code crushed} rings push back with the
     * crushing strength.
     */
    private double[] solve(double force, int crushed) {
        double[] a = plate.clone();
        double[] x = new double[NODES];
        for (int i = 0; i < NODES; i++) {
            a[5 * i + 2] += i < crushed ? 0 : spring;
            x[i] = force * load[i] - (i < crushed ? crush : 0);
        }
        // Elimination of five diagonals; diagonally safe without exchange of rows, spring and plate
        // are both positive.
        for (int i = 0; i < NODES; i++) {
            for (int r = i + 1; r <= Math.min(NODES - 1, i + 2); r++) {
                double factor = a[5 * r + i - r + 2] / a[5 * i + 2];
                for (int c = i; c <= Math.min(NODES - 1, i + 2); c++) {
                    a[5 * r + c - r + 2] -= factor * a[5 * i + c - i + 2];
                }
                x[r] -= factor * x[i];
            }
        }
        for (int i = NODES - 1; i >= 0; i--) {
            for (int c = i + 1; c <= Math.min(NODES - 1, i + 2); c++) {
                x[i] -= a[5 * i + c - i + 2] * x[c];
            }
            x[i] /= a[5 * i + 2];
        }
        return x;
    }

    /**
     * Returns the depth of the dent that stays after {@code force} [m].
     *
     * @param force [N], not below zero
     */
    public double depth(double force) {
        if (force <= start) {
            return 0;
        }
        // Rings crush from the middle outward: add rings until none beyond them is pressed too
        // hard.
        int crushed = 0;
        double[] w = solve(force, 0);
        while (crushed < NODES && w[crushed] * spring > crush) {
            while (crushed < NODES && w[crushed] * spring > crush) {
                crushed++;
            }
            w = solve(force, crushed);
        }
        return Math.max(0, w[0] - elastic * force);
    }

    /** Returns the force after which a dent of {@code depth} stays [N]. */
    public double force(double depth) {
        double low = start;
        double high = 2 * start;
        while (depth(high) < depth && high < 1e4 * start) {
            low = high;
            high *= 2;
        }
        // Chords, and every third step the middle, never outside the bracket.
        double below = depth(low) - depth;
        double above = depth(high) - depth;
        for (int i = 0; i < 60 && high - low > 1e-3 * high; i++) {
            double chord = (low * above - high * below) / (above - below);
            double next = i % 3 == 2 ? (low + high) / 2 : chord;
            double value = depth(next) - depth;
            if (value < 0) {
                low = next;
                below = value;
            } else {
                high = next;
                above = value;
            }
        }
        return (low + high) / 2;
    }

    /** Returns the area of the patch [m^2]. */
    public double area() {
        return area;
    }
}
