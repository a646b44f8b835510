package org.coachskin.laminate;

import static org.coachskin.laminate.Stacks.foam;
import static org.coachskin.laminate.Stacks.isotropic;
import static org.coachskin.laminate.Stacks.laid;
import static org.coachskin.laminate.Stacks.woven;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class ShearThroughThicknessTest {

    @Provide
    Arbitrary<Laminate> stacks() {
        return Stacks.any();
    }

    @Property(tries = 200, seed = "11")
    void stressSumsToTheShearForceAndVanishesAtBothSurfaces(
            @ForAll("stacks") Laminate laminate,
            @ForAll @DoubleRange(min = -900, max = 900) double qx,
            @ForAll @DoubleRange(min = -900, max = 900) double qy) {
        ShearThroughThickness shear = ShearThroughThickness.of(laminate, qx, qy);
        double half = laminate.thickness() / 2;
        double size = 1 + Math.abs(qx) + Math.abs(qy);
        assertEquals(qx, sum(laminate, z -> shear.at(z).xz(), -half, half), 1e-8 * size);
        assertEquals(qy, sum(laminate, z -> shear.at(z).yz(), -half, half), 1e-8 * size);
        assertEquals(0, shear.at(-half).magnitude(), 0);
        assertEquals(0, shear.at(half).magnitude(), 1e-8 * size / half);
    }

    @Property(tries = 200, seed = "12")
    void stressIsContinuousFromLayerToLayer(@ForAll("stacks") Laminate laminate) {
        ShearThroughThickness shear = ShearThroughThickness.of(laminate, 300, -200);
        double h = laminate.thickness();
        for (int i = 1; i < laminate.layers().size(); i++) {
            double z = laminate.bottom(i);
            assertEquals(shear.at(z - 1e-12 * h).xz(), shear.at(z + 1e-12 * h).xz(), 1e-5 / h);
            assertEquals(shear.at(z - 1e-12 * h).yz(), shear.at(z + 1e-12 * h).yz(), 1e-5 / h);
        }
    }

    @Property(tries = 200, seed = "13")
    void energyOfTheStressIsThatOfTheShearStiffness(@ForAll("stacks") Laminate laminate) {
        double qx = 700;
        double qy = -400;
        ShearThroughThickness shear = ShearThroughThickness.of(laminate, qx, qy);
        TransverseShear gamma = Stiffness.of(laminate).h().inverse().times(qx, qy);
        double energy = 0;
        for (int i = 0; i < laminate.layers().size(); i++) {
            Layer layer = laminate.layers().get(i);
            Sym2 compliance = layer.shearStiffness().inverse();
            double bottom = laminate.bottom(i);
            double t = layer.thickness();
            energy +=
                    composite(
                            z -> {
                                TransverseShear s = shear.at(z);
                                TransverseShear g = compliance.times(s.xz(), s.yz());
                                return s.xz() * g.xz() + s.yz() * g.yz();
                            },
                            bottom,
                            bottom + t);
        }
        double expected = qx * gamma.xz() + qy * gamma.yz();
        assertEquals(expected, energy, 1e-5 * expected);
    }

    @Property(tries = 200, seed = "14")
    void layeredStressSumsToTheForceOfFoamAndOfSkins(
            @ForAll("stacks") Laminate laminate,
            @ForAll @DoubleRange(min = -1, max = 1) double skin,
            @ForAll @DoubleRange(min = -1, max = 1) double foam) {
        SectionState state =
                new SectionState(
                        Triple.ZERO,
                        Triple.ZERO,
                        Triple.ZERO,
                        skin / 1000,
                        foam / 2000,
                        foam / 100,
                        skin / 50);
        LayeredStiffness s = LayeredStiffness.of(laminate);
        TransverseShear qs = s.hs().times(state.skinShearX(), state.skinShearY());
        TransverseShear qf = s.hf().times(state.foamShearX(), state.foamShearY());
        ShearThroughThickness shear = ShearThroughThickness.of(laminate, state);
        double half = laminate.thickness() / 2;
        double size = 1 + qs.magnitude() + qf.magnitude();
        assertEquals(
                qs.xz() + qf.xz(), sum(laminate, z -> shear.at(z).xz(), -half, half), 1e-6 * size);
        if (!s.isBare()) {
            assertEquals(
                    qf.xz(),
                    sum(laminate, z -> shear.at(z).xz(), s.foamBottom(), s.foamTop()),
                    1e-6 * size);
            assertEquals(
                    qf.yz(),
                    sum(laminate, z -> shear.at(z).yz(), s.foamBottom(), s.foamTop()),
                    1e-6 * size);
        }
        assertEquals(0, shear.at(half).magnitude(), 1e-6 * size / half);
    }

    @Test
    void oneLayerIsTheTextbookParabola() {
        ShearThroughThickness shear =
                ShearThroughThickness.of(Laminate.of(laid(isotropic(10e9, 0.3, 2e-3), 0)), 100, 0);
        assertEquals(1.5 * 100 / 2e-3, shear.at(0).xz(), 1e-6);
        assertEquals(0.75 * 1.5 * 100 / 2e-3, shear.at(0.5e-3).xz(), 1e-6);
        assertEquals(0, shear.at(0).yz(), 1e-9);
    }

    @Test
    void softFoamBetweenThinSkinsCarriesTheForceOverItsDepth() {
        double c = 25e-3;
        double t = 0.4e-3;
        Laminate laminate = Laminate.of(laid(woven(t), 0), foam(0.01e6, 1e6, c), laid(woven(t), 0));
        TransverseShear inFoam = ShearThroughThickness.of(laminate, 1000, 0).at(0);
        assertEquals(1000 / (c + t), inFoam.xz(), 2e-3 * 1000 / c);
    }

    @Test
    void heightOutsideTheStackIsRefused() {
        ShearThroughThickness shear =
                ShearThroughThickness.of(Laminate.of(laid(woven(1e-3), 0)), 1, 1);
        assertThrows(IllegalArgumentException.class, () -> shear.at(0.6e-3));
        assertThrows(IllegalArgumentException.class, () -> shear.at(Double.NaN));
    }

    /** Integrates layer by layer; exact for parabolas. */
    private static double sum(Laminate laminate, DoubleUnaryOperator f, double from, double to) {
        double sum = 0;
        for (int i = 0; i < laminate.layers().size(); i++) {
            double a = laminate.bottom(i);
            double t = laminate.layers().get(i).thickness();
            if (a + t / 2 > from && a + t / 2 < to) {
                sum +=
                        t
                                / 6
                                * (f.applyAsDouble(a)
                                        + 4 * f.applyAsDouble(a + t / 2)
                                        + f.applyAsDouble(a + t));
            }
        }
        return sum;
    }

    private static double composite(DoubleUnaryOperator f, double from, double to) {
        double sum = 0;
        int n = 20;
        double t = (to - from) / n;
        for (int i = 0; i < n; i++) {
            double a = from + i * t;
            sum +=
                    t
                            / 6
                            * (f.applyAsDouble(a)
                                    + 4 * f.applyAsDouble(a + t / 2)
                                    + f.applyAsDouble(a + t));
        }
        return sum;
    }
}
