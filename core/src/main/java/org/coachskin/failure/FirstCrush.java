package org.coachskin.failure;

import java.util.Optional;
import org.apache.commons.math3.special.BesselJ;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Patch;
import org.coachskin.material.Strength;

/**
 * When the foam under a patch starts to crush: a plate on a bonded elastic layer under an even
 * pressure.
 *
 * <p>With the Hankel transform, the pressure on the foam at r from the middle of a disc of radius a
 * is
 *
 * <pre>
 *   p(r)/q = integral over k from 0 of  a J1(k a) J0(k r) bed(k) / (D k^4 + bed(k))
 * </pre>
 *
 * <p>(Timoshenko and Woinowsky-Krieger, <i>Theory of Plates and Shells</i>, 2nd ed. 1959, section
 * 57, with the bed of {@link FoamBed} in place of springs; from memory). The middle is integrated,
 * other places follow from it by the rings of {@link SkinOnFoam}. Crushing starts where it is
 * largest: under a small patch in the middle, under one wider than about three lengths of the skin,
 * (D/bed)^ (1/4) each, in a ring inside its edge, where it is up to a tenth above the middle.
 *
 * <p><b>Limits.</b> The pressure of the patch is even: a stiff sharp-edged block presses harder at
 * its rim. A rectangle is taken as the disc of equal area, an unlike skin by the mean of its
 * bending stiffness over all directions; the other skin is at rest, which is true for patches short
 * against the panel.
 */
public final class FirstCrush {

    /** Middles this many times as far from the edge as it is felt are pressed like the patch. */
    private static final double FAR = 3;

    /** Waves to here, past which the Bessel function is not to be had and nothing is left. */
    private static final double MOST_WAVES = 9.99e3;

    private final double share;
    private final double area;
    private final Strength crush;

    private FirstCrush(double share, double area, Strength crush) {
        this.share = share;
        this.area = area;
        this.crush = crush;
    }

    /** Returns the crushing under {@code patch} on the outside, or empty where there is no foam. */
    public static Optional<FirstCrush> of(Laminate laminate, Patch patch) {
        int core = laminate.outermostCore();
        if (core < 0 || !(laminate.layers().get(core) instanceof Layer.Core foam)) {
            return Optional.empty();
        }
        Skin skin = Skin.of(laminate, Face.OUTSIDE);
        double d = skin == null ? 0 : skin.meanBending();
        return Optional.of(
                new FirstCrush(
                        share(FoamBed.of(laminate), d, Math.sqrt(patch.area() / Math.PI)),
                        patch.area(),
                        foam.foam().crush()));
    }

    /** Largest pressure on the foam over pressure on the patch. */
    private static double share(FoamBed bed, double d, double radius) {
        return d == 0 ? 1 : middle(bed, d, radius) * SkinOnFoam.of(bed, d, radius).overMiddle();
    }

    /** Pressure on the foam under the middle over pressure on the patch. */
    private static double middle(FoamBed bed, double d, double radius) {
        if (radius > FAR * SkinOnFoam.around(bed, d)) {
            return 1;
        }
        // What the plate carries falls off slowly with k, so integrate what the foam carries.
        // The plate carries waves shorter than this; on thin foam the springs set it.
        double length =
                Math.min(
                        StrictMath.cbrt(d / bed.halfSpace()),
                        StrictMath.pow(d / bed.springs(), 0.25));
        double step = Math.min(0.02 / length, 0.15 / radius);
        double sum = 0;
        double end = Math.min(40 / length + 4 / radius, MOST_WAVES / radius);
        int steps = (int) Math.ceil(end / step);
        for (int i = 0; i < steps; i++) {
            double k = (i + 0.5) * step;
            double b = bed.stiffness(k);
            sum += radius * BesselJ.value(1, k * radius) * b / (d * k * k * k * k + b) * step;
        }
        return sum;
    }

    /** Returns the largest pressure on the foam [Pa]. */
    public double pressure(double force) {
        return share * force / area;
    }

    /** Returns the force at which crushing starts [N]. */
    public double force() {
        return crush.value() * area / share;
    }

    /** Returns the crushing strength that is met. */
    public Strength strength() {
        return crush;
    }
}
