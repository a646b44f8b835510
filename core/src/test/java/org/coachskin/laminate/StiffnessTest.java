package org.coachskin.laminate;

import static org.coachskin.laminate.Stacks.assertClose;
import static org.coachskin.laminate.Stacks.foam;
import static org.coachskin.laminate.Stacks.isotropic;
import static org.coachskin.laminate.Stacks.laid;
import static org.coachskin.laminate.Stacks.unequal;
import static org.coachskin.laminate.Stacks.woven;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class StiffnessTest {

    @Provide
    Arbitrary<Laminate> stacks() {
        return Stacks.any();
    }

    @Provide
    Arbitrary<List<Layer>> skins() {
        return Stacks.skins(1);
    }

    @Property(tries = 200, seed = "1")
    void membraneCouplingAndBendingTurnAsTensors(
            @ForAll("stacks") Laminate laminate,
            @ForAll @DoubleRange(min = -1.5, max = 1.5) double angle) {
        Stiffness before = Stiffness.of(laminate);
        Stiffness after = Stiffness.of(Stacks.turned(laminate, angle));
        double h = laminate.thickness();
        assertClose(Turn.turned(before.a(), angle), after.a());
        assertClose(Turn.turned(before.b(), angle), after.b(), before.a().m11() * h);
        assertClose(Turn.turned(before.d(), angle), after.d());
    }

    @Property(tries = 200, seed = "2")
    void transverseShearTurnsAsATensorByAQuarterTurn(@ForAll("stacks") Laminate laminate) {
        Sym2 before = Stiffness.of(laminate).h();
        Sym2 after = Stiffness.of(Stacks.turned(laminate, Math.PI / 2)).h();
        assertClose(new Sym2(before.m22(), -before.m12(), before.m11()), after);
    }

    @Property(tries = 200, seed = "3")
    void transverseShearOfOneMaterialIsFiveSixthsOfGtAtAnyAngle(
            @ForAll @DoubleRange(min = 0.1, max = 10) double millimetres,
            @ForAll @DoubleRange(min = -90, max = 90) double degrees) {
        Laminate laminate = Stacks.split(Laminate.of(laid(unequal(millimetres / 1000), degrees)));
        Sym2 expected = laminate.layers().get(0).shearStiffness();
        assertClose(
                Sym2.ZERO.plus(expected, 5.0 / 6 * laminate.thickness()),
                Stiffness.of(laminate).h());
    }

    @Property(tries = 200, seed = "4")
    void cuttingLayersInTwoChangesNothing(@ForAll("stacks") Laminate laminate) {
        Stiffness whole = Stiffness.of(laminate);
        Stiffness cut = Stiffness.of(Stacks.split(laminate));
        assertClose(whole.a(), cut.a());
        assertClose(whole.b(), cut.b(), whole.a().m11() * laminate.thickness());
        assertClose(whole.d(), cut.d());
        assertClose(whole.h(), cut.h());
    }

    @Property(tries = 200, seed = "5")
    void turningTheStackOverTurnsOnlyTheSignOfTheCoupling(@ForAll("stacks") Laminate laminate) {
        List<Layer> layers = new ArrayList<>(laminate.layers());
        Collections.reverse(layers);
        Stiffness before = Stiffness.of(laminate);
        Stiffness over = Stiffness.of(new Laminate(layers));
        assertClose(before.a(), over.a());
        assertClose(before.b().times(-1), over.b(), before.a().m11() * laminate.thickness());
        assertClose(before.d(), over.d());
        assertClose(before.h(), over.h());
    }

    @Property(tries = 200, seed = "6")
    void symmetricStackDoesNotCouple(@ForAll("skins") List<Layer> half) {
        List<Layer> layers = new ArrayList<>(half);
        layers.add(foam(12e6, 4.2e6, 12e-3));
        List<Layer> mirrored = new ArrayList<>(half);
        Collections.reverse(mirrored);
        layers.addAll(mirrored);
        Laminate laminate = new Laminate(layers);
        Stiffness s = Stiffness.of(laminate);
        assertClose(Sym3.ZERO, s.b(), s.a().m11() * laminate.thickness());
    }

    @Property(tries = 200, seed = "7")
    void movingTheReferenceSurfaceLeavesTheAnswerToForcesUnchanged(
            @ForAll("stacks") Laminate laminate,
            @ForAll @DoubleRange(min = -0.5, max = 0.5) double place) {
        double r = place * laminate.thickness();
        Stiffness middle = Stiffness.of(laminate);
        Stiffness moved = Stiffness.of(laminate, r);
        assertEquals(middle.h(), moved.h());
        // N at mid-height acts at r with the moment M - r N, and the strain there is e + r k.
        Triple n = new Triple(1000, -300, 200);
        Triple m = new Triple(2, 5, -1);
        Compliance before = Compliance.of(middle);
        Compliance after = Compliance.of(moved);
        Triple k = before.curvature(n, m);
        Triple e = before.membrane(n, m);
        Triple k2 = after.curvature(n, m.plus(n, -r));
        Triple e2 = after.membrane(n, m.plus(n, -r));
        double size = Math.abs(k.x()) + Math.abs(k.y()) + Math.abs(k.xy());
        assertEquals(k.x(), k2.x(), 1e-7 * size);
        assertEquals(k.y(), k2.y(), 1e-7 * size);
        assertEquals(k.xy(), k2.xy(), 1e-7 * size);
        assertEquals(e.x() + r * k.x(), e2.x(), 1e-7 * size * laminate.thickness());
    }

    @Property(tries = 200, seed = "8")
    void onePlyMoreMakesEveryBendingStiffer(@ForAll("stacks") Laminate laminate) {
        List<Layer> layers = new ArrayList<>(laminate.layers());
        layers.add(laid(woven(0.4e-3), 20));
        Sym3 less = Compliance.of(Stiffness.of(laminate)).d();
        Sym3 more = Compliance.of(Stiffness.of(new Laminate(layers))).d();
        assertTrue(more.m11() < less.m11());
        assertTrue(more.m22() < less.m22());
        assertTrue(more.m66() < less.m66());
    }

    @Test
    void oneIsotropicLayerIsTheTextbookPlate() {
        double e = 70e9;
        double nu = 0.3;
        double t = 2e-3;
        Stiffness s = Stiffness.of(Laminate.of(laid(isotropic(e, nu, t), 33)));
        double d = e * t * t * t / (12 * (1 - nu * nu));
        assertClose(new Sym3(d, nu * d, d, 0, 0, (1 - nu) / 2 * d), s.d());
        assertClose(s.a(), s.d().times(12 / (t * t)));
    }

    @Test
    void thinStiffSkinsOnSoftFoamHaveTheShearStiffnessOfTheFoamOverItsDepth() {
        double c = 25e-3;
        double t = 0.1e-3;
        double g = 1.5e6;
        Laminate laminate =
                Laminate.of(laid(woven(t), 0), foam(0.5e6, g, c), laid(woven(2 * t), 0));
        double d = c + 1.5 * t;
        assertEquals(g * d * d / c, Stiffness.of(laminate).h().m11(), 2e-4 * g * c);
    }

    @Test
    void vanishingFoamLeavesTheBareLaminate() {
        Layer ply = laid(unequal(0.5e-3), 30);
        Layer other = laid(woven(0.5e-3), 0);
        Sym2 bare = Stiffness.of(Laminate.of(ply, other)).h();
        Sym2 thin = Stiffness.of(Laminate.of(ply, foam(12e6, 4e6, 1e-12), other)).h();
        assertEquals(bare.m11(), thin.m11(), 1e-5 * bare.m11());
        assertEquals(bare.m22(), thin.m22(), 1e-5 * bare.m22());
    }

    @Test
    void anglePliesCoupleTheTwoShears() {
        Sym2 h =
                Stiffness.of(Laminate.of(laid(unequal(0.5e-3), 30), laid(unequal(0.5e-3), 30))).h();
        assertTrue(h.m12() > 0.05 * h.m11());
    }

    @Test
    void transverseShearTurnsNearlyAsATensorByAnyAngle() {
        Layer skin = laid(woven(0.4e-3), 0);
        Layer foam = foam(12e6, 4.2e6, 12e-3);
        Layer.Laid unidirectional = laid(Stacks.ply(25, 1, 0.25, 0.5, 0.5, 0.2, 1), 0);
        Laminate crossPly = Laminate.of(unidirectional, laid(unidirectional.ply(), 90));
        assertTrue(departure(Laminate.of(skin, foam, skin, skin)) < 0.001);
        assertTrue(departure(Laminate.of(foam, skin, skin)) < 0.035);
        assertTrue(departure(crossPly) < 0.05);
    }

    /** The largest departure of H from the tensor rule, over quarter of a turn, relative to H11. */
    private static double departure(Laminate laminate) {
        Sym2 h = Stiffness.of(laminate).h();
        double worst = 0;
        for (int degrees = 5; degrees < 90; degrees += 5) {
            double angle = StrictMath.toRadians(degrees);
            double c = StrictMath.cos(angle);
            double s = StrictMath.sin(angle);
            double along = h.m11() * c * c + h.m22() * s * s - 2 * h.m12() * c * s;
            double mixed = (h.m11() - h.m22()) * c * s + h.m12() * (c * c - s * s);
            Sym2 turned = Stiffness.of(Stacks.turned(laminate, angle)).h();
            worst = Math.max(worst, Math.abs(turned.m11() - along));
            worst = Math.max(worst, Math.abs(turned.m12() - mixed));
        }
        return worst / h.m11();
    }
}
