package org.coachskin.laminate;

import static org.coachskin.laminate.Stacks.assertClose;
import static org.coachskin.laminate.Stacks.foam;
import static org.coachskin.laminate.Stacks.laid;
import static org.coachskin.laminate.Stacks.unequal;
import static org.coachskin.laminate.Stacks.woven;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class LayeredStiffnessTest {

    private static final double C = 12e-3;
    private static final double G = 4.2e6;

    @Provide
    Arbitrary<Laminate> stacks() {
        return Stacks.any();
    }

    @Property(tries = 200, seed = "31")
    void isFirstOrderStiffnessWhereSkinsAndFoamTurnAlike(
            @ForAll("stacks") Laminate laminate,
            @ForAll @DoubleRange(min = -0.5, max = 0.5) double place) {
        double r = place * laminate.thickness();
        Stiffness first = Stiffness.of(laminate, r);
        LayeredStiffness layered = LayeredStiffness.of(laminate, r);
        double size = first.a().m11() * laminate.thickness();
        assertClose(first.a(), layered.a());
        assertClose(first.b(), layered.bf().plus(layered.bg(), 1), size);
        assertClose(
                first.d(),
                layered.dff().plus(layered.dfg(), 2).plus(layered.dgg(), 1),
                size * laminate.thickness());
    }

    @Property(tries = 200, seed = "32")
    void cuttingLayersInTwoChangesNothing(@ForAll("stacks") Laminate laminate) {
        LayeredStiffness whole = LayeredStiffness.of(laminate);
        LayeredStiffness cut = LayeredStiffness.of(Stacks.split(laminate));
        assertClose(whole.dff(), cut.dff());
        assertClose(whole.dgg(), cut.dgg());
        assertClose(whole.hs(), cut.hs());
        assertClose(whole.hf(), cut.hf());
    }

    @Test
    void foamBetweenTwoSkinsCarriesNearlyConstantShear() {
        Laminate laminate =
                Laminate.of(laid(woven(0.4e-3), 0), foam(12e6, G, C), laid(woven(0.8e-3), 0));
        assertEquals(1, LayeredStiffness.of(laminate).hf().m11() / (G * C), 1e-3);
    }

    @Test
    void foamUnderOneSkinCarriesShearThatFallsToZeroAtItsFreeSurface() {
        Layer skin = laid(woven(0.4e-3), 0);
        Layer foam = foam(1e5, G, C);
        double outside = LayeredStiffness.of(Laminate.of(foam, skin)).hf().m11();
        double inside = LayeredStiffness.of(Laminate.of(skin, foam)).hf().m11();
        // With a skin far stiffer than the foam the stress is s - s^2/2 over the depth s of 0 to 1:
        // the square of its mean, 1/9, over the mean of its square, 2/15.
        assertEquals(5.0 / 6, outside / (G * C), 5e-3);
        assertEquals(outside, inside, 1e-9 * outside);
    }

    @Test
    void twoFoamsInARowShearLikeSprings() {
        Laminate laminate =
                Laminate.of(
                        laid(woven(0.4e-3), 0),
                        foam(1e6, G, C),
                        foam(1e6, 3 * G, C),
                        laid(woven(0.4e-3), 0));
        double springs = 4 * C * C / (C / G + C / (3 * G));
        assertEquals(1, LayeredStiffness.of(laminate).hf().m11() / springs, 2e-3);
    }

    @Test
    void plyInTheMiddleOfTwoFoamsBelongsToTheFoam() {
        double t = 0.4e-3;
        Laminate laminate =
                Laminate.of(
                        laid(woven(t), 0),
                        foam(1e6, G, C),
                        laid(woven(t), 0),
                        foam(1e6, G, C),
                        laid(woven(t), 0));
        LayeredStiffness s = LayeredStiffness.of(laminate);
        double group = 2 * C + t;
        assertEquals(group, s.foamTop() - s.foamBottom(), 1e-15);
        assertEquals(2 * 5.0 / 6 * 3.0e9 * t, s.hs().m11(), 1e-3);
        assertEquals(1, s.hf().m11() / (group * group / (2 * C / G)), 2e-3);
    }

    @Test
    void bareLaminateHasNoFoamToTurn() {
        Laminate laminate = Laminate.of(laid(unequal(0.5e-3), 0), laid(unequal(0.5e-3), 90));
        LayeredStiffness s = LayeredStiffness.of(laminate);
        assertTrue(s.isBare());
        assertEquals(Sym3.ZERO, s.dff());
        assertEquals(Sym2.ZERO, s.hf());
        assertEquals(Stiffness.of(laminate).h(), s.hs());
    }
}
