package org.coachskin.failure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.coachskin.TestStacks;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Patch;
import org.coachskin.laminate.Ply;
import org.coachskin.laminate.PlyStress;
import org.coachskin.laminate.Sym2;
import org.coachskin.laminate.Triple;
import org.junit.jupiter.api.Test;

class FailureTest {

    private static final double ROUNDING = 1e-9;

    private static final Ply PLY = TestStacks.ply();

    @Property(tries = 200, seed = "20261125")
    void aReserveIsTheLoadMultiplierThatLandsOnTsaiWu(
            @ForAll @DoubleRange(min = -1, max = 1) double s1,
            @ForAll @DoubleRange(min = -1, max = 1) double s2,
            @ForAll @DoubleRange(min = -1, max = 1) double t12,
            @ForAll @DoubleRange(min = -0.2, max = 0.2) double heat) {
        PlyCriterion.TsaiWu criterion = new PlyCriterion.TsaiWu(-0.5);
        PlyStress load = new PlyStress(s1 * 1e8, s2 * 1e8, t12 * 1e8 + 1);
        PlyStress standing = new PlyStress(heat * 1e8, -heat * 1e8, 0);
        double reserve = criterion.reserve(load, standing, PLY);
        double there = criterion.quadric(PLY.strength()).value(standing.plus(load, reserve));
        assertEquals(1, there, 1e-7);
    }

    @Property(tries = 200, seed = "20261125")
    void twiceTheLoadHasHalfTheReserve(
            @ForAll @DoubleRange(min = -1, max = 1) double s1,
            @ForAll @DoubleRange(min = -1, max = 1) double s2,
            @ForAll @DoubleRange(min = 0.01, max = 1) double t12) {
        PlyStress load = new PlyStress(s1 * 1e8, s2 * 1e8, t12 * 1e8);
        PlyStress twice = new PlyStress(s1 * 2e8, s2 * 2e8, t12 * 2e8);
        for (PlyCriterion criterion :
                new PlyCriterion[] {
                    new PlyCriterion.MaxStress(),
                    new PlyCriterion.MaxStrain(),
                    new PlyCriterion.TsaiHill(),
                    new PlyCriterion.TsaiWu(0)
                }) {
            double once = criterion.reserve(load, PlyStress.ZERO, PLY);
            assertEquals(
                    once / 2,
                    criterion.reserve(twice, PlyStress.ZERO, PLY),
                    1e-9 * once,
                    criterion.words());
        }
    }

    @Test
    void whatStandsIsNotMultiplied() {
        PlyStress load = new PlyStress(10e6, 0, 0);
        PlyStress standing = new PlyStress(90e6, 0, 0);
        assertEquals(10, new PlyCriterion.MaxStress().reserve(load, standing, PLY), ROUNDING);
        assertEquals(
                0, new PlyCriterion.MaxStress().reserve(load, new PlyStress(200e6, 0, 0), PLY));
    }

    @Test
    void wrinklingOnThickFoamIsTheHalfSpace() {
        Laminate thick = TestStacks.sandwich(1, 0.100, 1, 12e6, 4.2e6);
        double e = PLY.e1() / (1 - PLY.nu12() * PLY.nu12());
        double halfSpace =
                1.5 * Math.cbrt(2 * e * Math.pow(PLY.thickness(), 3) / 12 * 12e6 * 4.2e6);
        double ours = FaceWrinkling.of(thick, Face.OUTSIDE).orElseThrow().critical(0, -1);
        assertEquals(halfSpace, ours, 0.01 * halfSpace);
    }

    @Test
    void aSkinThatIsPulledDoesNotWrinkle() {
        FaceWrinkling skin =
                FaceWrinkling.of(TestStacks.sandwich(2, 0.012, 2, 12e6, 4.2e6), Face.OUTSIDE)
                        .orElseThrow();
        assertEquals(Double.POSITIVE_INFINITY, skin.reserve(new Triple(1e3, 1e3, 0), Triple.ZERO));
        double one = skin.reserve(new Triple(-1e4, 0, 0), new Triple(1e4, 0, 0));
        assertEquals(
                one / 2,
                skin.reserve(new Triple(-2e4, 0, 0), new Triple(2e4, 0, 0)),
                ROUNDING * one);
    }

    @Test
    void coreShearTakesBothDirectionsTogetherAndStandingStressAsItIs() {
        assertEquals(2, CoreShear.reserve(3, 4, 0, 0, TestStacks.strength(10)), ROUNDING);
        assertEquals(4, CoreShear.reserve(1, 0, 6, 0, TestStacks.strength(10)), ROUNDING);
        assertEquals(0, CoreShear.reserve(1, 0, 11, 0, TestStacks.strength(10)));
    }

    @Property(tries = 40, seed = "20261125")
    void aReserveBesideStandingForcesLandsOnWrinklingOnCrimpingAndOnTearing(
            @ForAll @DoubleRange(min = -1, max = 1) double x,
            @ForAll @DoubleRange(min = -1, max = 1) double y,
            @ForAll @DoubleRange(min = -1, max = 1) double xy,
            @ForAll @DoubleRange(min = -1, max = 1) double heat) {
        FaceWrinkling skin =
                FaceWrinkling.of(TestStacks.sandwich(2, 0.012, 1, 12e6, 4.2e6), Face.OUTSIDE)
                        .orElseThrow();
        Triple load = new Triple(x * 1e4 - 1, y * 1e4, xy * 1e4);
        Triple other = load.times(-0.9);
        Triple standing = new Triple(heat * 2e4, -heat * 1e4, 0);
        Triple opposite = standing.times(-1);
        double wrinkles = skin.reserve(load, other, standing, opposite);
        if (wrinkles > 0 && Double.isFinite(wrinkles)) {
            Triple own = standing.plus(load, wrinkles);
            assertEquals(1, skin.reserve(own, opposite.plus(other, wrinkles)), 1e-6);
        }

        Sym2 h = new Sym2(6e4, 1e4, 5e4);
        double crimps = ShearCrimping.reserve(h, load, standing);
        if (Double.isFinite(crimps)) {
            Triple all = standing.plus(load, crimps);
            assertEquals(1, ShearCrimping.reserve(h, all, Triple.ZERO), 1e-9);
        }

        double tears = CoreTension.reserve(load, standing, TestStacks.strength(5e4));
        if (Double.isFinite(tears)) {
            assertEquals(5e4, CoreTension.largest(standing.plus(load, tears)), 1e-4);
        }
    }

    @Test
    void whatStandsAloneWrinklesShearsOverTearsOrPullsOff() {
        FaceWrinkling skin =
                FaceWrinkling.of(TestStacks.sandwich(1, 0.012, 1, 12e6, 4.2e6), Face.OUTSIDE)
                        .orElseThrow();
        Triple pressed = new Triple(-1e6, 0, 0);
        assertEquals(0, skin.reserve(new Triple(1, 0, 0), Triple.ZERO, pressed, Triple.ZERO));
        Sym2 h = new Sym2(6e4, 0, 5e4);
        assertEquals(0, ShearCrimping.reserve(h, new Triple(1, 0, 0), pressed));
        Triple pulled = new Triple(0, 1e6, 0);
        assertEquals(0, CoreTension.reserve(new Triple(1, 0, 0), pulled, TestStacks.strength(5e5)));
        assertEquals(0, SkinBond.reserve(1, 6e5, TestStacks.strength(5e5)));
    }

    @Test
    void aCrownIsPulledOffItsFoamWhereItsOutsideIsPressedOrItsInsidePulled() {
        // 10 kN/m on a radius of 2 m: 5 kPa, as in a hoop.
        Triple pressed = new Triple(-1e4, 0, 0);
        assertEquals(5e3, SkinBond.pull(Face.OUTSIDE, pressed, 0.5, 0.3), ROUNDING);
        assertEquals(-5e3, SkinBond.pull(Face.INSIDE, pressed, 0.5, 0.3), ROUNDING);
        assertEquals(99, SkinBond.reserve(5e3, 5e3, TestStacks.strength(5e5)), ROUNDING);
        assertEquals(Double.POSITIVE_INFINITY, SkinBond.reserve(-5e3, 0, TestStacks.strength(5e5)));
    }

    @Test
    void theDentStartsAtTheFirstCrushAndGrows() {
        Laminate lid = TestStacks.sandwich(2, 0.012, 1, 12e6, 4.2e6);
        Patch thumb = new Patch.Disc(0.02);
        double start = FirstCrush.of(lid, thumb).orElseThrow().force();
        LastingDent dent = LastingDent.of(lid, thumb).orElseThrow();
        assertEquals(0, dent.depth(start), 1e-15);
        double before = 0;
        for (double force = start; force < 5 * start; force += start / 4) {
            double depth = dent.depth(force);
            assertTrue(depth >= before, force + " N");
            before = depth;
        }
        double force = dent.force(1e-4);
        assertEquals(1e-4, dent.depth(force), 2e-6);
    }

    @Test
    void aThickerSkinSpreadsAThumb() {
        Patch thumb = new Patch.Disc(0.015);
        double before = Double.POSITIVE_INFINITY;
        for (int plies = 1; plies <= 4; plies++) {
            double pressure =
                    FirstCrush.of(TestStacks.sandwich(plies, 0.012, 1, 12e6, 4.2e6), thumb)
                            .orElseThrow()
                            .pressure(100);
            assertTrue(pressure < before, plies + " plies");
            before = pressure;
        }
    }
}
