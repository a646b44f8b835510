package org.coachskin.laminate;

import static org.coachskin.laminate.Stacks.foam;
import static org.coachskin.laminate.Stacks.isotropic;
import static org.coachskin.laminate.Stacks.laid;
import static org.coachskin.laminate.Stacks.woven;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class LayerStressTest {

    private static final Triple E = new Triple(1e-4, -3e-4, 2e-4);
    private static final Triple K = new Triple(0.02, 0.01, -0.03);

    @Provide
    Arbitrary<Laminate> stacks() {
        return Stacks.any();
    }

    @Property(tries = 200, seed = "21")
    void stressSumsToForcesAndMoments(@ForAll("stacks") Laminate laminate) {
        Stiffness s = Stiffness.of(laminate);
        Triple n = s.a().times(E).plus(s.b().times(K), 1);
        Triple m = s.b().times(E).plus(s.d().times(K), 1);
        List<LayerStress> layers = LayerStress.of(laminate, new SectionState(E, K, K, 0, 0, 0, 0));
        assertClose(n, force(laminate, layers), norm(n));
        assertClose(m, moment(laminate, layers), norm(n) * laminate.thickness() + norm(m));
    }

    @Property(tries = 200, seed = "22")
    void stressOfAWarmedFreeStackSumsToNothing(
            @ForAll("stacks") Laminate laminate,
            @ForAll @DoubleRange(min = -80, max = 80) double inside,
            @ForAll @DoubleRange(min = -80, max = 80) double outside) {
        ThermalState warm = ThermalState.of(laminate, inside, outside);
        List<LayerStress> layers = LayerStress.of(laminate, warm);
        ThermalResultants load = ThermalResultants.of(laminate, 100, 100);
        double size = norm(load.n());
        assertClose(Triple.ZERO, force(laminate, layers), size);
        assertClose(Triple.ZERO, moment(laminate, layers), size * laminate.thickness());
    }

    @Property(tries = 100, seed = "23")
    void oneMaterialWarmedEvenlyOnlyGrows(@ForAll @DoubleRange(min = -80, max = 80) double rise) {
        Laminate laminate = Stacks.split(Laminate.of(laid(woven(1e-3), 0)));
        ThermalState warm = ThermalState.of(laminate, rise, rise);
        Triple free = laminate.layers().get(0).expansion();
        assertEquals(free.x() * rise, warm.membrane().x(), 1e-15);
        assertEquals(free.y() * rise, warm.membrane().y(), 1e-15);
        assertEquals(0, warm.curvature().x(), 1e-12);
    }

    @Test
    void oneMaterialWarmedOnTheOutsideBowsWithoutStress() {
        Laminate laminate = Laminate.of(laid(isotropic(3e9, 0.3, 4e-3), 0));
        ThermalState warm = ThermalState.of(laminate, 0, 40);
        Triple expansion = laminate.layers().get(0).expansion();
        assertEquals(expansion.x() * 40 / 4e-3, warm.curvature().x(), 1e-12);
        assertEquals(expansion.y() * 40 / 4e-3, warm.curvature().y(), 1e-12);
        assertEquals(0, LayerStress.of(laminate, warm).get(0).outer().s1(), 1e-3);
    }

    @Test
    void layeredStateStrainsSkinsAndFoamByTheirOwnCurvature() {
        double c = 20e-3;
        double t = 0.5e-3;
        Laminate laminate = Laminate.of(laid(woven(t), 0), foam(10e6, 4e6, c), laid(woven(t), 0));
        SectionState state =
                new SectionState(
                        Triple.ZERO, new Triple(3, 0, 0), new Triple(0.1, 0, 0), 0, 0, 0, 0);
        List<LayerStress> layers = LayerStress.of(laminate, state);
        assertEquals(0.1 * c / 2, layers.get(1).strainOuter().x(), 1e-15);
        assertEquals(0.1 * c / 2 + 3 * t, layers.get(2).strainOuter().x(), 1e-15);
        assertEquals(layers.get(1).strainOuter(), layers.get(2).strainInner());
    }

    @Test
    void stressInThePlysOwnAxesIsThatOfThePlyLaw() {
        Ply ply = Stacks.unequal(1e-3);
        Layer.Laid layer = laid(ply, 37);
        LayerStress stress =
                LayerStress.of(Laminate.of(layer), new SectionState(E, K, K, 0, 0, 0, 0)).get(0);
        PlyStress expected = PlyStress.of(ply, layer.angle(), E.plus(K, 0.5e-3));
        assertEquals(expected.s1(), stress.outer().s1(), 1e-3);
        assertEquals(expected.s2(), stress.outer().s2(), 1e-3);
        assertEquals(expected.t12(), stress.outer().t12(), 1e-3);
    }

    @Test
    void massCentreAndRotaryInertiaOfTwoUnlikeHalves() {
        Laminate laminate = Laminate.of(foam(10e6, 4e6, 10e-3), laid(woven(10e-3), 0));
        double foam = 60;
        double skin = 1700;
        assertEquals((foam + skin) * 10e-3, laminate.mass(), 1e-12);
        assertEquals(5e-3 * (skin - foam) / (skin + foam), laminate.centreOfMass(), 1e-15);
        assertEquals((foam + skin) * 1e-6 / 3, laminate.rotaryInertia(), 1e-15);
    }

    private static Triple force(Laminate laminate, List<LayerStress> layers) {
        Triple sum = Triple.ZERO;
        for (LayerStress layer : layers) {
            double t = laminate.layers().get(layer.layer()).thickness();
            sum = sum.plus(layer.panelInner(), t / 2).plus(layer.panelOuter(), t / 2);
        }
        return sum;
    }

    private static Triple moment(Laminate laminate, List<LayerStress> layers) {
        Triple sum = Triple.ZERO;
        for (LayerStress layer : layers) {
            double t = laminate.layers().get(layer.layer()).thickness();
            double bottom = laminate.bottom(layer.layer());
            sum =
                    sum.plus(layer.panelInner(), t / 6 * (3 * bottom + t))
                            .plus(layer.panelOuter(), t / 6 * (3 * bottom + 2 * t));
        }
        return sum;
    }

    private static double norm(Triple a) {
        return Math.abs(a.x()) + Math.abs(a.y()) + Math.abs(a.xy());
    }

    private static void assertClose(Triple expected, Triple actual, double size) {
        assertEquals(expected.x(), actual.x(), 1e-9 * size);
        assertEquals(expected.y(), actual.y(), 1e-9 * size);
        assertEquals(expected.xy(), actual.xy(), 1e-9 * size);
    }
}
