package org.coachskin.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.coachskin.NoAnswerException;
import org.coachskin.TestStacks;
import org.coachskin.analysis.Held;
import org.coachskin.laminate.Patch;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Height;
import org.coachskin.panel.Load;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Support;
import org.junit.jupiter.api.Test;

/** The rubber seal that only pushes. */
class ContactTest {

    private static final double A = 0.6;
    private static final double B = 0.4;
    private static final Grid GRID =
            Grids.lattice(
                    new double[] {0, 0.08, 0.12, 0.28, 0.3, 0.32, 0.48, 0.52, 0.6},
                    new double[] {0, 0.04, 0.2, 0.36, 0.4});

    private static Fitting.Pad pad(double x, double y, double k, Fitting.Direction... held) {
        return new Fitting.Pad("pad", x, y, 0.04, 0.04, Set.of(held), k, Height.INSIDE);
    }

    private static ShellPanel lid(double stiffness, Fitting... instead) {
        Fitting.Direction x = Fitting.Direction.X;
        Fitting.Direction y = Fitting.Direction.Y;
        Fitting.Direction z = Fitting.Direction.Z;
        List<Fitting> fittings =
                instead.length > 0
                        ? List.of(instead)
                        : List.of(
                                pad(0.1, 0.38, stiffness, x, y, z),
                                pad(0.5, 0.38, stiffness, x, y, z),
                                pad(0.3, 0.02, stiffness, z),
                                Fitting.RubberSeal.allRound());
        Panel panel =
                Panel.flat("lid", A, B, TestStacks.sandwich(1, 0.006, 1, 12e6, 4.2e6))
                        .withSupport(new Support.Fittings(fittings));
        return new ShellPanel(panel, GRID, 3, false);
    }

    private static final ShellPanel SPRUNG = lid(3e5);
    private static final ShellPanel RIGID = lid(Double.POSITIVE_INFINITY);

    /** A pressure and a push on a corner, either way. */
    record Push(double pressure, double force, boolean left) {
        List<Load> loads() {
            return List.of(
                    new Load.Pressure(pressure),
                    new Load.Press(
                            force, new Patch.Rectangle(0.08, 0.16), left ? 0.04 : A - 0.04, 0.12));
        }
    }

    @Provide
    Arbitrary<Push> pushes() {
        return Combinators.combine(
                        Arbitraries.doubles().between(-3000, 3000),
                        Arbitraries.doubles().between(-400, 400),
                        Arbitraries.of(true, false))
                .as(Push::new);
    }

    @Property(tries = 30, seed = "5411")
    void theSealPushesWhereItTouchesAndNowhereElse(@ForAll("pushes") Push push) {
        ShellResponse response = RIGID.solve(push.loads());
        double balance = -push.pressure * A * B - push.force;
        double size = Math.abs(balance);
        for (Held.SealPlace place : response.held().seals()) {
            assertTrue(place.force() >= 0);
            assertEquals(place.squeeze() > 0, place.force() > 0);
            assertEquals(place.squeeze() > 0.009, place.solid());
            double soft = 50 / 0.006 * Math.min(Math.max(place.squeeze(), 0), 0.009);
            double hard = 50 * 50 / 0.006 * Math.max(place.squeeze() - 0.009, 0);
            assertEquals(soft + hard, place.force(), 1e-9 * (soft + hard));
            balance += place.force() * place.length();
            size += place.force() * place.length();
        }
        for (Held.Grip grip : response.held().grips()) {
            if (grip.direction() == Fitting.Direction.Z) {
                balance += grip.force();
                size += Math.abs(grip.force());
            }
        }
        assertEquals(0, balance, 1e-8 * size);
    }

    /** Energy of panel, springs, rubber and loads. */
    private static double energy(double[] x, double[] load) {
        double sum = SPRUNG.model.energy(x, x) / 2;
        for (int i = 0; i < load.length; i++) {
            sum -= load[i] * x[i];
        }
        for (Pads.Hold hold : SPRUNG.holds) {
            double moved = hold.of(x);
            sum += hold.stiffness * moved * moved / 2;
        }
        for (int i = 0; i < SPRUNG.seal.points.size(); i++) {
            SealLine.Point p = SPRUNG.seal.points.get(i);
            double squeezed = p.seal.squeeze() - SPRUNG.seal.deflection(i, x);
            double k = p.seal.stiffness();
            double soft = Math.max(squeezed, 0);
            double hard = Math.max(squeezed - p.seal.solid(), 0);
            sum += p.length * k * (soft * soft + (p.seal.solidFactor() - 1) * hard * hard) / 2;
        }
        return sum;
    }

    @Property(tries = 10, seed = "5412")
    void noOtherStateHasLessEnergy(@ForAll("pushes") Push push) {
        double[] x = SPRUNG.solve(push.loads()).solution();
        double[] load = new double[x.length];
        double[] even = {0, 0, -push.pressure, 0, 0, 0, 0};
        SPRUNG.model.addEven(t -> true, even, load);
        double[] corner = {0, 0, -push.force / (0.08 * 0.16), 0, 0, 0, 0};
        SPRUNG.model.addEven(
                t -> {
                    double[] c = GRID.centre(t);
                    return (push.left ? c[0] < 0.08 : c[0] > A - 0.08) && c[1] > 0.04 && c[1] < 0.2;
                },
                corner,
                load);
        double least = energy(x, load);
        Random random = new Random(17);
        double[] other = new double[x.length];
        // Other states: those of other loads, and noise.
        double[] far =
                SPRUNG.solve(List.of(new Load.Pressure(random.nextInt(4000) - 2000))).solution();
        for (double step : new double[] {1e-3, 1e-2, 0.1, 1, -1e-3, -1e-2, -0.1}) {
            for (int i = 0; i < x.length; i++) {
                other[i] = x[i] + step * (far[i] - x[i]);
            }
            assertTrue(energy(other, load) >= least, step + " towards another load");
            for (int i = 0; i < x.length; i++) {
                other[i] = x[i] * (1 + step * random.nextGaussian());
            }
            assertTrue(energy(other, load) >= least, step + " of noise");
        }
    }

    @Property(tries = 10, seed = "5413")
    void aMirroredPushLiftsTheOtherCorner(@ForAll("pushes") Push push) {
        Push mirrored = new Push(push.pressure, push.force, !push.left);
        ShellResponse here = RIGID.solve(push.loads());
        ShellResponse there = RIGID.solve(mirrored.loads());
        double w = here.deflection(0.02, 0.03);
        assertEquals(w, there.deflection(A - 0.02, 0.03), 1e-7 * Math.abs(w));
        double gap = here.held().widestGap();
        assertEquals(gap, there.held().widestGap(), 1e-7 * Math.max(gap, 1e-3));
        double force = here.held().sealForce();
        assertEquals(force, there.held().sealForce(), 1e-7 * force);
    }

    @Test
    void aHardPushMakesTheRubberSolid() {
        List<Held.SealPlace> places = RIGID.solve(new Push(0, 900, true).loads()).held().seals();
        assertTrue(places.stream().anyMatch(Held.SealPlace::solid));
        double deepest = places.stream().mapToDouble(Held.SealPlace::squeeze).max().orElse(0);
        // Left soft it would have given way by a hand's breadth.
        assertTrue(deepest < 0.02, "squeezed " + deepest);
    }

    @Test
    void aPanelThatItsSealCannotHoldDownIsNamed() {
        Fitting.Direction x = Fitting.Direction.X;
        Fitting.Direction y = Fitting.Direction.Y;
        double rigid = Double.POSITIVE_INFINITY;
        ShellPanel loose =
                lid(
                        rigid,
                        pad(0.1, 0.38, rigid, x, y),
                        pad(0.5, 0.38, rigid, x, y),
                        Fitting.RubberSeal.allRound());
        assertTrue(loose.stands());
        List<Load> wind = List.of(new Load.Pressure(-500));
        NoAnswerException refused = assertThrows(NoAnswerException.class, () -> loose.solve(wind));
        assertTrue(
                refused.problem().toString().contains("lifts off"), refused.problem().toString());
        // Its own push alone leaves nothing to press on either; a weight does.
        double w = loose.solve(List.of(new Load.Pressure(600))).deflection(0.3, 0.2);
        assertTrue(w > 0);
    }
}
