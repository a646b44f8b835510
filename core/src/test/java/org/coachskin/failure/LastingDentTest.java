package org.coachskin.failure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Objects;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.special.BesselJ;
import org.coachskin.TestStacks;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Patch;
import org.coachskin.material.Foam;
import org.junit.jupiter.api.Test;

class LastingDentTest {

    private static final double CRUSH = 0.45e6;

    private static Laminate lid(int plies, double foam) {
        return TestStacks.sandwich(plies, foam, 1, 12e6, 4.2e6);
    }

    private static LastingDent dent(Laminate laminate, Patch patch) {
        return LastingDent.of(laminate, patch).orElseThrow();
    }

    private static double bending(Laminate laminate) {
        return Objects.requireNonNull(Skin.of(laminate, Face.OUTSIDE)).meanBending();
    }

    /** Returns the force that first crushes the foam, where the dent has to start. */
    private static double assertStarts(LastingDent dent, Laminate laminate, Patch patch) {
        double start = FirstCrush.of(laminate, patch).orElseThrow().force();
        assertEquals(start, dent.start(), 0.01 * start);
        return start;
    }

    @Property(tries = 60, seed = "41")
    void aDentOfEveryDepthHasItsForceAndTheForceGrowsWithTheDepth(
            @ForAll @IntRange(min = 1, max = 6) int plies,
            @ForAll @IntRange(min = 5, max = 50) int foam,
            @ForAll @IntRange(min = 5, max = 200) int diameter) {
        Patch patch = new Patch.Disc(diameter * 1e-3);
        Laminate laminate = lid(plies, foam * 1e-3);
        LastingDent dent = dent(laminate, patch);
        double before = assertStarts(dent, laminate, patch);
        assertEquals(0, dent.depth(0));
        assertEquals(0, dent.depth(dent.start()));
        for (double depth = 1e-5; depth <= 1e-3; depth += 1e-5) {
            double force = dent.force(depth);
            assertTrue(force > before, depth + " m");
            // A jump would leave depths out.
            assertEquals(depth, dent.depth(force), 1e-9, depth + " m");
            before = force;
        }
    }

    /** As wide as a whole panel: few rings lie outside it. */
    @Property(tries = 30, seed = "44")
    void aWidePatchCrushesAtItsOwnForce(
            @ForAll @IntRange(min = 1, max = 6) int plies,
            @ForAll @IntRange(min = 5, max = 50) int foam,
            @ForAll @IntRange(min = 200, max = 5000) int diameter) {
        Patch patch = new Patch.Disc(diameter * 1e-3);
        Laminate laminate = lid(plies, foam * 1e-3);
        LastingDent dent = dent(laminate, patch);
        assertTrue(dent.force(0.5e-3) > assertStarts(dent, laminate, patch));
    }

    @Property(tries = 30, seed = "42")
    void theCurveLeavesTheElasticOneWithItsSlope(
            @ForAll @IntRange(min = 1, max = 6) int plies,
            @ForAll @IntRange(min = 5, max = 50) int foam,
            @ForAll @IntRange(min = 5, max = 200) int diameter) {
        Patch patch = new Patch.Disc(diameter * 1e-3);
        Laminate laminate = lid(plies, foam * 1e-3);
        LastingDent dent = dent(laminate, patch);
        double start = dent.start();
        // Per force, against what the foam alone would give elastically, evenly pressed.
        double elastic = foam * 1e-3 / 12e6 / patch.area();
        double near = dent.depth(1.001 * start) / (0.001 * start) / elastic;
        double later = dent.depth(1.01 * start) / (0.01 * start) / elastic;
        assertTrue(near < 0.2, "slope " + near);
        assertTrue(near < later * (1 + 1e-9), near + " then " + later);
    }

    @Property(tries = 10, seed = "43")
    void theRingsAreFineEnoughAndReachFarEnough(
            @ForAll @IntRange(min = 1, max = 6) int plies,
            @ForAll @IntRange(min = 5, max = 50) int foam,
            @ForAll @IntRange(min = 8, max = 200) int diameter,
            @ForAll @DoubleRange(min = 1, max = 8) double stiffer) {
        double area = Math.PI * diameter * diameter * 1e-6 / 4;
        Laminate laminate =
                TestStacks.sandwich(plies, foam * 1e-3, 1, 12e6 * stiffer, 4.2e6 * stiffer);
        FoamBed bed = FoamBed.of(laminate);
        double d = bending(laminate);
        SkinOnFoam usual = SkinOnFoam.of(bed, d, diameter / 2e3);
        SkinOnFoam fine = SkinOnFoam.of(bed, d, diameter / 2e3, 240, 1.5);
        assertEquals(1, usual.largestPressure() / fine.largestPressure(), 0.005);
        LastingDent ours = LastingDent.of(usual, CRUSH, area);
        LastingDent finer = LastingDent.of(fine, CRUSH, area);
        for (double depth : new double[] {5e-5, 1e-4, 5e-4, 1e-3}) {
            assertEquals(1, ours.force(depth) / finer.force(depth), 0.01, depth + " m");
        }
    }

    @Property(tries = 10, seed = "44")
    void thePressureIsThatOfTheHankelIntegralAtItsLargestPlace(
            @ForAll @IntRange(min = 1, max = 6) int plies,
            @ForAll @IntRange(min = 5, max = 50) int foam,
            @ForAll @IntRange(min = 8, max = 120) int diameter) {
        Laminate laminate = lid(plies, foam * 1e-3);
        Patch patch = new Patch.Disc(diameter * 1e-3);
        double largest = 0;
        for (int i = 0; i < 50; i++) {
            largest =
                    Math.max(
                            largest,
                            hankel(
                                    FoamBed.of(laminate),
                                    bending(laminate),
                                    diameter / 2e3,
                                    i / 50.0));
        }
        double ours = FirstCrush.of(laminate, patch).orElseThrow().pressure(patch.area());
        assertEquals(largest, ours, 0.005 * largest);
    }

    /** Pressure on the foam over that on a disc, at a share of its radius. */
    private static double hankel(FoamBed bed, double d, double radius, double at) {
        double length = StrictMath.cbrt(d / bed.halfSpace());
        double step = Math.min(0.02 / length, 0.15 / radius);
        double sum = 0;
        for (double k = step / 2; k < 40 / length + 4 / radius; k += step) {
            double b = bed.stiffness(k);
            sum +=
                    radius
                            * BesselJ.value(1, k * radius)
                            * BesselJ.value(0, k * radius * at)
                            * b
                            / (d * k * k * k * k + b)
                            * step;
        }
        return sum;
    }

    @Test
    void underAWidePatchCrushingStartsInsideItsEdge() {
        FoamBed bed = FoamBed.of(lid(2, 0.012));
        double d = bending(lid(2, 0.012));
        double middle = hankel(bed, d, 0.05, 0);
        double inside = hankel(bed, d, 0.05, 0.68);
        assertEquals(1, middle, 0.003);
        assertTrue(inside > 1.025, "inside the edge " + inside);
        Patch wide = new Patch.Disc(0.1);
        double ours = FirstCrush.of(lid(2, 0.012), wide).orElseThrow().pressure(wide.area());
        assertEquals(inside, ours, 0.002);
    }

    @Test
    void underAPatchFarWiderThanTheSkinReachesTheFoamIsAColumn() {
        Patch wide = new Patch.Disc(0.3);
        LastingDent dent = dent(lid(1, 0.012), wide);
        double column = CRUSH * wide.area();
        assertEquals(column, dent.force(1e-4), 0.002 * column);
        assertEquals(column, dent.force(1e-3), 0.002 * column);
        // Nothing stays at less than what crushes inside the edge.
        assertEquals(0, dent.depth(0.97 * column));
    }

    @Test
    void aSkinThinAsPaintCarriesNothing() {
        Patch thumb = new Patch.Disc(0.02);
        Laminate paint =
                Laminate.of(
                        new Layer.Laid(TestStacks.isotropic(3e9, 0.3, 0.02e-3), 0),
                        new Layer.Core(TestStacks.foam(12e6, 4.2e6), 0.012),
                        new Layer.Laid(TestStacks.isotropic(3e9, 0.3, 0.02e-3), 0));
        double plateau = CRUSH * thumb.area();
        assertEquals(plateau, dent(paint, thumb).force(1e-5), 0.02 * plateau);
    }

    @Test
    void onStiffFoamUnderAPointItIsThePlateOnARigidPlasticBed() {
        // Where w, its slope and curvature end together, D w'''' = -crush and a point force give
        // F = pi b^2 crush/2 and w = crush b^4/(64 D), so F = 4 pi sqrt(D crush w): our derivation.
        Laminate stiff = TestStacks.sandwich(2, 0.012, 1, 12e9, 4.2e9);
        FoamBed bed = FoamBed.of(stiff);
        double d = bending(stiff);
        SkinOnFoam rings = SkinOnFoam.of(bed, d, 1e-4, 200, 8);
        LastingDent dent = LastingDent.of(rings, CRUSH, Math.PI * 1e-8);
        for (double depth : new double[] {2e-4, 4e-4, 8e-4}) {
            // Letting go springs back by a little of it.
            double rigid = 4 * Math.PI * Math.sqrt(d * CRUSH * depth);
            assertEquals(rigid, dent.force(depth), 0.05 * rigid, depth + " m");
        }
    }

    @Property(tries = 6, seed = "45")
    void onSpringsItIsThePlateOnAnElasticPlasticBed(
            @ForAll @IntRange(min = 1, max = 4) int plies,
            @ForAll @IntRange(min = 10, max = 60) int diameter,
            @ForAll @DoubleRange(min = 1.05, max = 2) double times) {
        Foam springs = TestStacks.foam(12e6, 1e-3);
        Layer.Laid ply = new Layer.Laid(TestStacks.isotropic(14.5e9, 0.1, plies * 0.414e-3), 0);
        Laminate laminate = Laminate.of(ply, new Layer.Core(springs, 0.012), ply);
        Patch patch = new Patch.Disc(diameter * 1e-3);
        double force = times * FirstCrush.of(laminate, patch).orElseThrow().force();
        double other = byNewton(bending(laminate), 12e6 / 0.012, diameter / 2e3, force);
        // Beyond a millimetre nobody asks.
        if (other < 1e-3) {
            double ours = dent(laminate, patch).depth(force);
            assertEquals(other, ours, 0.03 * other + 1e-6);
        }
    }

    /** Plate on springs that end at the crushing strength: other rings, loaded step by step. */
    private static double byNewton(double d, double spring, double radius, double force) {
        int n = 240;
        double h = (radius + 9 * StrictMath.pow(d / spring, 0.25)) / n;
        double[][] laplacian = new double[n][n];
        double[] load = new double[n];
        for (int i = 0; i < n; i++) {
            double middle = (i + 0.5) * h;
            double in = i * h / (middle * h * h);
            double out = (i + 1) * h / (middle * h * h);
            laplacian[i][i] = -in - out;
            if (i > 0) {
                laplacian[i][i - 1] = in;
            }
            if (i + 1 < n) {
                laplacian[i][i + 1] = out;
            }
            double covered = Math.min(Math.max(radius, i * h), (i + 1) * h);
            load[i] =
                    (covered * covered - i * h * i * h)
                            / (((i + 1.0) * (i + 1) - (double) i * i) * h * h)
                            / (Math.PI * radius * radius);
        }
        Array2DRowRealMatrix l = new Array2DRowRealMatrix(laplacian);
        Array2DRowRealMatrix plate = (Array2DRowRealMatrix) l.multiply(l).scalarMultiply(d);
        RealVector elastic = onBed(plate, spring, new ArrayRealVector(n), load, 1);
        RealVector w = elastic.mapMultiply(0);
        for (int step = 1; step <= 40; step++) {
            double now = force * step / 40;
            for (int i = 0; i < 30; i++) {
                RealVector next = onBed(plate, spring, w, load, now);
                double change = next.subtract(w).getLInfNorm();
                w = next;
                if (change < 1e-12) {
                    break;
                }
            }
        }
        return w.subtract(elastic.mapMultiply(force)).getMaxValue();
    }

    private static RealVector onBed(
            Array2DRowRealMatrix plate, double spring, RealVector w, double[] load, double force) {
        Array2DRowRealMatrix a = (Array2DRowRealMatrix) plate.copy();
        RealVector right = new ArrayRealVector(load).mapMultiply(force);
        for (int i = 0; i < load.length; i++) {
            if (spring * w.getEntry(i) > CRUSH) {
                right.addToEntry(i, -CRUSH);
            } else {
                a.addToEntry(i, i, spring);
            }
        }
        return new LUDecomposition(a, 0).getSolver().solve(right);
    }
}
