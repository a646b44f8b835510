package org.coachskin.failure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.statistics.Statistics;
import org.coachskin.TestStacks;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Patch;
import org.coachskin.laminate.Ply;
import org.coachskin.laminate.PlyStrength;
import org.coachskin.laminate.PlyStress;
import org.coachskin.laminate.Sym2;
import org.coachskin.laminate.Triple;
import org.junit.jupiter.api.Test;

class FailureLimitsTest {

    private static final double ROUNDING = 1e-9;

    /** A chord kept, and reading between directions: half a per cent each. */
    private static final double BETWEEN = 0.01;

    private static PlyStrength strength(double one, double two, double shear) {
        return new PlyStrength(
                TestStacks.strength(one),
                TestStacks.strength(one),
                TestStacks.strength(two),
                TestStacks.strength(two),
                TestStacks.strength(shear));
    }

    @Property(tries = 200, seed = "31")
    void ofEqualStrengthsTsaiWuAndTsaiHillAreVonMises(
            @ForAll @DoubleRange(min = -1, max = 1) double s1,
            @ForAll @DoubleRange(min = -1, max = 1) double s2,
            @ForAll @DoubleRange(min = 0.01, max = 1) double t12) {
        Ply ply = TestStacks.ply().withStrength(strength(1e8, 1e8, 1e8 / Math.sqrt(3)));
        double mises = 1e8 * Math.sqrt(s1 * s1 - s1 * s2 + s2 * s2 + 3 * t12 * t12);
        PlyStress load = new PlyStress(s1 * 1e8, s2 * 1e8, t12 * 1e8);
        for (PlyCriterion criterion :
                new PlyCriterion[] {new PlyCriterion.TsaiHill(), new PlyCriterion.TsaiWu(-0.5)}) {
            double reserve = criterion.reserve(load, PlyStress.ZERO, ply);
            assertEquals(1e8 / mises, reserve, ROUNDING * reserve, criterion.words());
        }
    }

    @Property(tries = 200, seed = "32")
    void tsaiHillDoesNotDependOnWhichYarnIsCalledWarp(
            @ForAll @DoubleRange(min = -1, max = 1) double s1,
            @ForAll @DoubleRange(min = -1, max = 1) double s2,
            @ForAll @DoubleRange(min = 1, max = 10) double ratio) {
        PlyCriterion criterion = new PlyCriterion.TsaiHill();
        PlyStress load = new PlyStress(s1 * 1e8, s2 * 1e8, 1e7);
        PlyStress turned = new PlyStress(s2 * 1e8, s1 * 1e8, 1e7);
        Ply ply = TestStacks.ply().withStrength(strength(1e8, 1e8 * ratio, 5e7));
        Ply other = TestStacks.ply().withStrength(strength(1e8 * ratio, 1e8, 5e7));
        double reserve = criterion.reserve(load, PlyStress.ZERO, ply);
        assertTrue(Double.isFinite(reserve));
        assertEquals(reserve, criterion.reserve(turned, PlyStress.ZERO, other), ROUNDING * reserve);
    }

    @Property(tries = 200, seed = "33")
    void crimpingIsTheWorstOfAllDirections(
            @ForAll @DoubleRange(min = -1, max = 1) double x,
            @ForAll @DoubleRange(min = -1, max = 1) double y,
            @ForAll @DoubleRange(min = -1, max = 1) double xy,
            @ForAll @DoubleRange(min = -0.4, max = 0.4) double h12) {
        Sym2 h = new Sym2(1e5, h12 * 1e5, 0.6e5);
        double most = 0;
        for (int i = 0; i < 1800; i++) {
            double c = StrictMath.cos(Math.PI * i / 1800);
            double s = StrictMath.sin(Math.PI * i / 1800);
            most =
                    Math.max(
                            most,
                            -(x * c * c + y * s * s + 2 * xy * c * s)
                                    / (h.m11() * c * c + 2 * h.m12() * c * s + h.m22() * s * s));
        }
        double reserve = ShearCrimping.reserve(h, new Triple(x, y, xy), Triple.ZERO);
        if (most == 0) {
            assertEquals(Double.POSITIVE_INFINITY, reserve);
        } else if (most > 1e-9) {
            assertTrue(reserve <= (1 + ROUNDING) / most);
            assertEquals(1 / most, reserve, 1e-4 * reserve + 1e-11 / (most * most));
        }
    }

    @Property(tries = 40, seed = "34")
    void wrinklingHardlyDependsOnHowTheForceIsTurned(
            @ForAll @DoubleRange(min = 0, max = 3.14) double angle,
            @ForAll @DoubleRange(min = -1, max = 1) double second) {
        // Isotropic skins: the direction of the force cannot matter.
        Ply ply = TestStacks.isotropic(10e9, 0.3, 0.8e-3);
        Laminate laminate =
                Laminate.of(
                        new Layer.Laid(ply, 0),
                        new Layer.Core(TestStacks.foam(12e6, 4.2e6), 0.012),
                        new Layer.Laid(ply, 0));
        FaceWrinkling skin = FaceWrinkling.of(laminate, Face.OUTSIDE).orElseThrow();
        double c = StrictMath.cos(angle);
        double s = StrictMath.sin(angle);
        double n = -1e4;
        Triple turned =
                new Triple(
                        n * (c * c + second * s * s),
                        n * (s * s + second * c * c),
                        n * (1 - second) * c * s);
        double along = skin.reserve(new Triple(n, n * second, 0), Triple.ZERO);
        assertEquals(along, skin.reserve(turned, Triple.ZERO), BETWEEN * along);
    }

    @Property(tries = 40, seed = "35")
    void theMoreTheOtherSkinIsPressedTheSoonerASkinWrinkles(
            @ForAll @IntRange(min = 1, max = 3) int outside,
            @ForAll @IntRange(min = 1, max = 3) int inside,
            @ForAll @IntRange(min = 5, max = 30) int foam) {
        FaceWrinkling skin =
                FaceWrinkling.of(
                                TestStacks.sandwich(outside, foam * 1e-3, inside, 12e6, 4.2e6),
                                Face.OUTSIDE)
                        .orElseThrow();
        double before = Double.POSITIVE_INFINITY;
        for (double ratio = -1; ratio <= 1; ratio += 0.25) {
            double reserve = skin.reserve(new Triple(-1e4, 0, 0), new Triple(-1e4 * ratio, 0, 0));
            assertTrue(reserve <= before * (1 + BETWEEN), "ratio " + ratio);
            // On the safe side, by little where the other skin is pulled.
            double exact = skin.critical(0, ratio) / 1e4;
            assertTrue(reserve <= exact * (1 + BETWEEN), "ratio " + ratio);
            assertEquals(exact, reserve, 2 * BETWEEN * exact, "ratio " + ratio);
            before = reserve;
        }
    }

    @Property(tries = 300, seed = "36")
    void whatAReserveDoesNotLieBelowIsNoMoreThanIt(
            @ForAll @IntRange(min = 1, max = 3) int outside,
            @ForAll @IntRange(min = 1, max = 3) int inside,
            @ForAll @IntRange(min = 3, max = 30) int foam,
            @ForAll @Size(12) List<@DoubleRange(min = -2e4, max = 2e4) Double> forces,
            @ForAll boolean still) {
        FaceWrinkling skin =
                FaceWrinkling.of(
                                TestStacks.sandwich(outside, foam * 1e-3, inside, 12e6, 4.2e6),
                                Face.OUTSIDE)
                        .orElseThrow();
        Triple[] n = new Triple[4];
        for (int i = 0; i < 4; i++) {
            Triple force =
                    new Triple(forces.get(3 * i), forces.get(3 * i + 1), forces.get(3 * i + 2));
            n[i] = i < 2 ? force : still ? force.times(0.3) : Triple.ZERO;
        }
        double reserve = skin.reserve(n[0], n[1], n[2], n[3]);
        double bound = skin.leastReserve(n[0], n[1], n[2], n[3]);
        assertTrue(bound <= reserve, bound + " " + reserve);
        Statistics.collect(reserve > 0 && bound > 0.8 * reserve ? "near" : "far");
        Statistics.coverage(near -> near.check("near").percentage(p -> p > 50));
    }

    @Test
    void bothSkinsPressedAlikeNeedAtLeastTheForceOfCrimping() {
        // The wave would be long, and each skin takes half of G c to shear over.
        double foam = 0.003;
        Laminate stout = TestStacks.sandwich(6, foam, 6, 12e6, 4.2e6);
        double n = FaceWrinkling.of(stout, Face.OUTSIDE).orElseThrow().critical(0, 1);
        assertTrue(n > 4.2e6 * foam / 2);
        // A slender skin on thick foam does not feel the other.
        FaceWrinkling slender =
                FaceWrinkling.of(TestStacks.sandwich(1, 0.1, 1, 12e6, 4.2e6), Face.OUTSIDE)
                        .orElseThrow();
        double idle = slender.critical(0, 0);
        assertEquals(idle, slender.critical(0, 1), 1e-6 * idle);
    }

    @Test
    void aLastingMarkDoesNotWaitForThickerFoam() {
        // One ply spreads a thumb over a few millimetres, so foam deeper than 12 mm is out of its
        // reach.
        Patch thumb = new Patch.Disc(0.015);
        double thin =
                LastingDent.of(TestStacks.sandwich(1, 0.012, 1, 12e6, 4.2e6), thumb)
                        .orElseThrow()
                        .force(1e-4);
        double thick =
                LastingDent.of(TestStacks.sandwich(1, 0.050, 1, 12e6, 4.2e6), thumb)
                        .orElseThrow()
                        .force(1e-4);
        assertEquals(thin, thick, 0.02 * thin);
    }
}
