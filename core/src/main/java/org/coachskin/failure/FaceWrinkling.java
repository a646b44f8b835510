package org.coachskin.failure;

import java.util.Optional;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Triple;
import org.jspecify.annotations.Nullable;

/**
 * Wrinkling: a skin in compression buckles in short waves, the foam acting as its bed.
 *
 * <p>A wave of number k across direction &theta; on foam of thickness c with another skin behind it
 * starts at the compression N for which
 *
 * <pre>
 *   (D1 k^4 + bed - N k^2) (D2 k^4 + bed - r N k^2) = across^2
 *   bed = k sqrt(E G) coth(k c sqrt(G/E)),   across = k sqrt(E G) / sinh(k c sqrt(G/E))
 * </pre>
 *
 * <p>the least over k; r is the compression of the other skin over that of this one: -1 where it is
 * pulled as much, as in bending, 0 where it idles, 1 where both are compressed alike (then the
 * other is taken at least as stout as this one: a weaker skin wrinkles by itself, in its own
 * answer). 1/N is the largest of expressions that are linear in r, so a chord between these three
 * is on the safe side. For thick foam N is 0.825 t (E<sub>f</sub>/(1-&nu;^2) E<sub>c</sub>
 * G<sub>c</sub>)^(1/3), between the 0.91 of Hoff and Mautner (linear decay; Journal of the
 * Aeronautical Sciences 12, 1945, 285-297) and their 0.5 for skins as built, which is a knock-down
 * of 1.65 for waviness. The caller's factor of safety covers waviness; do not combine it with the
 * 0.5.
 *
 * <p>Compression in every direction is tried; the reserve is the least of critical over applied.
 */
public final class FaceWrinkling {

    private static final int DIRECTIONS = 12;

    /** Steps between two directions for which a skin was worked out. */
    private static final int STEPS = 3;

    /** A chord that may be further than this on the safe side is worked out instead. */
    private static final double CHORD = 0.005;

    /** How closely a reserve beside standing forces is found, relative. */
    private static final double CLOSE = 1e-9;

    private static final double ROUGHLY = 1e-3;

    /** By chords no factor comes out larger than the true one by more than between directions. */
    private static final double BELOW = 0.99;

    private static final double[] COS2 = new double[DIRECTIONS * STEPS];
    private static final double[] SIN2 = new double[DIRECTIONS * STEPS];
    private static final double[] SIN_TWICE = new double[DIRECTIONS * STEPS];

    static {
        for (int i = 0; i < DIRECTIONS * STEPS; i++) {
            double angle = Math.PI * i / (DIRECTIONS * STEPS);
            double c = StrictMath.cos(angle);
            double s = StrictMath.sin(angle);
            COS2[i] = c * c;
            SIN2[i] = s * s;
            SIN_TWICE[i] = 2 * c * s;
        }
    }

    private final Skin skin;
    private final FoamBed bed;
    private final @Nullable Skin other;

    /** One over the critical force, other skin pulled, idle, compressed; by direction [m/N]. */
    private final double[][] inverse = new double[3][DIRECTIONS];

    private FaceWrinkling(Skin skin, @Nullable Skin other, FoamBed bed) {
        this.skin = skin;
        this.bed = bed;
        this.other = other;
        for (int i = 0; i < DIRECTIONS; i++) {
            double angle = Math.PI * i / DIRECTIONS;
            inverse[1][i] = 1 / critical(angle, 0);
            inverse[0][i] = other == null ? inverse[1][i] : 1 / critical(angle, -1);
            inverse[2][i] = other == null ? inverse[1][i] : 1 / critical(angle, 1);
        }
    }

    /**
     * Returns the wrinkling of a skin, or empty where the stack has none on that face or no foam.
     */
    public static Optional<FaceWrinkling> of(Laminate laminate, Face face) {
        Skin skin = Skin.of(laminate, face);
        return skin == null
                ? Optional.empty()
                : Optional.of(
                        new FaceWrinkling(
                                skin,
                                Skin.of(
                                        laminate,
                                        face == Face.OUTSIDE ? Face.INSIDE : Face.OUTSIDE),
                                FoamBed.of(laminate)));
    }

    /**
     * Returns the compression per width at which waves across {@code angle} start [N/m].
     *
     * @param ratio compression of the other skin over that of this one; -1 in bending
     */
    public double critical(double angle, double ratio) {
        double force = at(angle, ratio)[0];
        return ratio > 0 ? Math.min(force, at(angle, 0)[0]) : force;
    }

    /**
     * Returns half the length of the wave that starts first across {@code angle}, in bending [m].
     */
    public double halfWave(double angle) {
        return Math.PI / at(angle, -1)[1];
    }

    /** Critical force and wave number. */
    private double[] at(double angle, double ratio) {
        double d = skin.bending(angle);
        double behind = other == null ? 0 : other.bending(angle);
        // A weaker skin that is compressed too wrinkles by itself first: its own answer says so.
        double stout = ratio > 0 ? Math.max(d, behind) : behind;
        // The wave on a half-space, from which that on a thin layer cannot be far; searched over
        // log k.
        double log = StrictMath.log(StrictMath.cbrt(bed.halfSpace() / (2 * d)));
        var best =
                new BrentOptimizer(1e-9, 1e-12)
                        .optimize(
                                new MaxEval(200),
                                GoalType.MINIMIZE,
                                new UnivariateObjectiveFunction(
                                        x -> force(d, stout, StrictMath.exp(x), ratio)),
                                new SearchInterval(log - 1.5, log + 1.5, log));
        return new double[] {best.getValue(), StrictMath.exp(best.getPoint())};
    }

    private double force(double d, double otherBending, double k, double ratio) {
        double k2 = k * k;
        double own = d * k2 * k2 + bed.stiffness(k);
        double other = otherBending * k2 * k2 + bed.stiffness(k);
        double across = bed.across(k);
        if (ratio == 0) {
            return (own - across * across / other) / k2;
        }
        // r N^2 k^4 - N k^2 (other + r own) + own other - across^2 = 0; the smaller root that is a
        // compression.
        double sum = other + ratio * own;
        double rest = own * other - across * across;
        double root = Math.sqrt(sum * sum - 4 * ratio * rest);
        return 2 * rest / (sum + root) / k2;
    }

    /**
     * Returns the least reserve over all directions, infinite where the skin is not compressed in
     * any.
     *
     * @param n forces per width in this skin [N/m], tension positive
     * @param other the same in the other skin
     */
    public double reserve(Triple n, Triple other) {
        return reserve(n, other, true);
    }

    /**
     * @param exact whether chords that lie far on the safe side are replaced by what they are for
     */
    private double reserve(Triple n, Triple other, boolean exact) {
        double most = 0;
        for (int i = 0; i < DIRECTIONS * STEPS; i++) {
            double compression = -along(n, i);
            if (compression > 0) {
                double ratio = Math.max(-1, Math.min(1, -along(other, i) / compression));
                double idle = inverse(1, i);
                double end = inverse(ratio < 0 ? 0 : 2, i);
                double part = Math.abs(ratio);
                double worse = compression * (idle + part * (end - idle));
                boolean far = part * (1 - part) * Math.abs(end - idle) > CHORD * idle;
                if (exact && far && worse > most) {
                    worse = compression / critical(Math.PI * i / (DIRECTIONS * STEPS), ratio);
                }
                most = Math.max(most, worse);
            }
        }
        return most == 0 ? Double.POSITIVE_INFINITY : 1 / most;
    }

    /**
     * Returns the factor on the load at which the skin wrinkles with the standing forces added; 0
     * where those do it alone, infinite where no amount of the load does.
     *
     * <p>What is used up, one over {@link #reserve(Triple, Triple)}, is convex and homogeneous in
     * the forces of both skins, so it crosses 1 once: between (1 - that of the standing forces) and
     * (1 + that of their opposite) over that of the load.
     *
     * @param n forces per width of the load in this skin [N/m], tension positive
     * @param other the same in the other skin
     * @param standing forces that stand all the time in this skin [N/m]
     * @param standingOther the same in the other skin
     */
    public double reserve(Triple n, Triple other, Triple standing, Triple standingOther) {
        return reserve(n, other, standing, standingOther, true);
    }

    /**
     * Returns what that factor does not lie below, at a small part of the cost: as a rule it is
     * somewhat larger.
     */
    public double leastReserve(Triple n, Triple other, Triple standing, Triple standingOther) {
        return BELOW * reserve(n, other, standing, standingOther, false);
    }

    private double reserve(
            Triple n, Triple other, Triple standing, Triple standingOther, boolean exact) {
        double alone = reserve(n, other, exact);
        if (standing.equals(Triple.ZERO) && standingOther.equals(Triple.ZERO)) {
            return alone;
        }
        double used = 1 / reserve(standing, standingOther, exact);
        if (used >= 1) {
            return 0;
        }
        if (Double.isInfinite(alone)) {
            return alone;
        }
        double low = 0;
        double high = alone * (1 + 1 / reserve(standing.times(-1), standingOther.times(-1), exact));
        while (holds(n, other, standing, standingOther, high, exact)) {
            low = high;
            high *= 2;
        }
        while (high - low > (exact ? CLOSE : ROUGHLY) * high) {
            double middle = (low + high) / 2;
            if (holds(n, other, standing, standingOther, middle, exact)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private boolean holds(
            Triple n,
            Triple other,
            Triple standing,
            Triple standingOther,
            double times,
            boolean exact) {
        return reserve(standing.plus(n, times), standingOther.plus(other, times), exact) > 1;
    }

    /**
     * Between directions that were worked out, on a smooth curve through the nearest four; a third
     * of a per cent off for balanced cloth.
     */
    private double inverse(int ratio, int step) {
        double[] of = inverse[ratio];
        int i = step / STEPS + DIRECTIONS;
        double t = (double) (step % STEPS) / STEPS;
        double before = of[(i - 1) % DIRECTIONS];
        double from = of[i % DIRECTIONS];
        double to = of[(i + 1) % DIRECTIONS];
        double after = of[(i + 2) % DIRECTIONS];
        double slope = to - before;
        double bend = 2 * before - 5 * from + 4 * to - after;
        double twist = 3 * (from - to) + after - before;
        return from + t / 2 * (slope + t * (bend + t * twist));
    }

    /** Returns the force per width normal to the crests of direction {@code step} [N/m]. */
    private static double along(Triple n, int step) {
        return n.x() * COS2[step] + n.y() * SIN2[step] + n.xy() * SIN_TWICE[step];
    }
}
