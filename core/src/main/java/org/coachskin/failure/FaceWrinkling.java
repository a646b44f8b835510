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
 * pulled, as in bending, else 0 (both skins compressed together is {@link ShearCrimping}). For
 * thick foam N is 0.825 t (E<sub>f</sub>/(1-&nu;^2) E<sub>c</sub> G<sub>c</sub>)^(1/3), between the
 * 0.91 of Hoff and Mautner (linear decay; Journal of the Aeronautical Sciences 12, 1945, 285-297)
 * and their 0.5 for skins as built, which is a knock-down of 1.65 for waviness. The caller's factor
 * of safety covers waviness; do not combine it with the 0.5.
 *
 * <p>Compression in every direction is tried; the reserve is the least of critical over applied.
 */
public final class FaceWrinkling {

    private static final int DIRECTIONS = 12;

    private final Skin skin;
    private final FoamBed bed;
    private final double otherBending;
    private final double[] otherPulled = new double[DIRECTIONS];
    private final double[] otherIdle = new double[DIRECTIONS];

    private FaceWrinkling(Skin skin, @Nullable Skin other, FoamBed bed) {
        this.skin = skin;
        this.bed = bed;
        this.otherBending = other == null ? 0 : other.meanBending();
        for (int i = 0; i < DIRECTIONS; i++) {
            otherPulled[i] = critical(Math.PI * i / DIRECTIONS, other == null ? 0 : -1);
            otherIdle[i] = critical(Math.PI * i / DIRECTIONS, 0);
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
        return at(angle, ratio)[0];
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
        // The wave on a half-space, from which that on a thin layer cannot be far; searched over
        // log k.
        double log = StrictMath.log(StrictMath.cbrt(bed.halfSpace() / (2 * d)));
        var best =
                new BrentOptimizer(1e-9, 1e-12)
                        .optimize(
                                new MaxEval(200),
                                GoalType.MINIMIZE,
                                new UnivariateObjectiveFunction(
                                        x -> force(d, StrictMath.exp(x), ratio)),
                                new SearchInterval(log - 1.5, log + 1.5, log));
        return new double[] {best.getValue(), StrictMath.exp(best.getPoint())};
    }

    private double force(double d, double k, double ratio) {
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
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < DIRECTIONS; i++) {
            double angle = Math.PI * i / DIRECTIONS;
            double compression = -along(n, angle);
            if (compression > 0) {
                boolean pulled = along(other, angle) >= 0.5 * compression;
                least = Math.min(least, (pulled ? otherPulled[i] : otherIdle[i]) / compression);
            }
        }
        return least;
    }

    /** Returns the force per width normal to crests across {@code angle} [N/m]. */
    private static double along(Triple n, double angle) {
        double c = StrictMath.cos(angle);
        double s = StrictMath.sin(angle);
        return n.x() * c * c + n.y() * s * s + 2 * n.xy() * c * s;
    }
}
