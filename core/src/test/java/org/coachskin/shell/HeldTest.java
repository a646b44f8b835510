package org.coachskin.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.coachskin.NoAnswerException;
import org.coachskin.TestFittings;
import org.coachskin.TestStacks;
import org.coachskin.analysis.CaseResponse;
import org.coachskin.analysis.Held;
import org.coachskin.analysis.SectionForces;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Patch;
import org.coachskin.laminate.Stiffness;
import org.coachskin.panel.Crown;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Height;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Region;
import org.coachskin.panel.Shape;
import org.coachskin.panel.Stretch;
import org.coachskin.panel.Support;
import org.coachskin.panel.Zone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What hinges, latches, seals and edges bear. */
class HeldTest {

    private static final Laminate LID = TestStacks.sandwich(2, 0.012, 1, 12e6, 4.2e6);

    private static Panel round(double side, Laminate stack, List<Fitting> fittings) {
        return new Panel(
                "lid",
                side,
                0.7 * side,
                Crown.FLAT,
                stack,
                new Support.Fittings(fittings),
                new Shape.Rectangle(side, 0.7 * side, 0.1 * side),
                List.of(),
                List.of());
    }

    private static List<Fitting> lidFittings(double a) {
        return List.of(
                Fitting.Pad.hinge("left hinge", 0.2 * a, 0.65 * a),
                Fitting.Pad.hinge("right hinge", 0.8 * a, 0.65 * a),
                Fitting.Pad.latch("latch", 0.5 * a, 0.05 * a),
                Fitting.RubberSeal.allRound());
    }

    @ParameterizedTest
    @CsvSource({"0.01, 1e-9", "1e-3, 1e-6", "1e-4, 1e-4"})
    void hingesLatchAndSealBearWhatIsPressed(double slenderness, double share) {
        double t = slenderness;
        Laminate stack =
                Laminate.of(
                        new Layer.Laid(TestStacks.isotropic(30e9, 0.2, t / 10), 0),
                        new Layer.Core(TestStacks.foam(12e6, 4.2e6), 0.8 * t),
                        new Layer.Laid(TestStacks.isotropic(30e9, 0.2, t / 10), 0));
        Panel panel = round(1, stack, lidFittings(1));
        // As much as bends each panel about equally.
        double force = 100 * (t / 0.02) * (t / 0.02);
        Load.Press press = new Load.Press(force, new Patch.Rectangle(0.1, 0.08), 0.62, 0.28);
        LoadCase load = LoadCase.of("palm", LoadCase.Kind.FELT, press);
        CaseResponse answer = new ShellAnalysis().loadCases(panel, List.of(load)).get(0);
        double[] sum = {0, 0, -force, -force * 0.28, force * 0.62};
        double size = force;
        for (Held.Grip grip : answer.held().grips()) {
            switch (grip.direction()) {
                case X -> sum[0] += grip.force();
                case Y -> sum[1] += grip.force();
                case Z -> {
                    sum[2] += grip.force();
                    sum[3] += grip.force() * grip.y();
                    sum[4] -= grip.force() * grip.x();
                }
            }
            // A hinge at the inside surface takes hold of a lever.
            double lever = -t / 2;
            switch (grip.direction()) {
                case X -> sum[4] += lever * grip.force();
                case Y -> sum[3] -= lever * grip.force();
                case Z -> size += Math.abs(grip.force());
            }
        }
        for (Held.SealPlace place : answer.held().seals()) {
            double f = place.force() * place.length();
            sum[2] += f;
            sum[3] += f * place.y();
            sum[4] -= f * place.x();
            size += Math.abs(f);
        }
        for (int i = 0; i < 5; i++) {
            assertEquals(0, sum[i], share * size, "balance " + i);
        }
    }

    @ParameterizedTest
    @CsvSource({"0.02, 1e-9", "0.01, 1e-9", "1e-3, 1e-6", "1e-4, 1e-4"})
    void heldEdgesBearWhatIsPressed(double slenderness, double share) {
        for (boolean bare : new boolean[] {false, true}) {
            double t = slenderness;
            Layer face = new Layer.Laid(TestStacks.isotropic(30e9, 0.2, bare ? t : t / 10), 0);
            Layer foam = new Layer.Core(TestStacks.foam(12e6, 4.2e6), 0.8 * t);
            Panel panel =
                    Panel.flat(
                                    "p",
                                    1,
                                    0.8,
                                    bare ? Laminate.of(face) : Laminate.of(face, foam, face))
                            .withSupport(
                                    new Support.Fittings(
                                            List.of(
                                                    Fitting.HeldEdge.clamped(Edge.FRONT),
                                                    Fitting.HeldEdge.carried(Edge.RIGHT))));
            Grid grid = Grids.lattice(Grids.even(1, 4), Grids.even(0.8, 4));
            ShellPanel shell = new ShellPanel(panel, grid, ShellAnalysis.ORDER, false);
            double[] x = shell.solve(List.of(new Load.Pressure(1000))).solution();
            Fields free = new Fields(panel, grid, ShellAnalysis.ORDER);
            double[] load = new double[free.model.unknowns.count];
            free.model.addEven(i -> true, new double[] {0, 0, -1000, 0, 0, 0, 0}, load);
            Reactions reactions = new Reactions(shell, panel, x, load);
            double[] loads = {0, 0, -800, -800 * 0.4, 800 * 0.5, 0};
            for (int i = 0; i < 6; i++) {
                assertEquals(-loads[i], reactions.total[i], share * 800, "balance " + i);
            }
        }
    }

    @Test
    void aVeryStiffHingeIsARigidOne() {
        double factor = 1e10;
        Fitting.Pad[] pads = {
            Fitting.Pad.hinge("left hinge", 0.1, 0.6),
            Fitting.Pad.hinge("right hinge", 0.8, 0.6),
            Fitting.Pad.latch("latch", 0.45, 0.1)
        };
        Fitting[] rigid = {pads[0], pads[1], pads[2], Fitting.RubberSeal.allRound()};
        Fitting[] sprung = {
            stiff(pads[0], factor), stiff(pads[1], factor), stiff(pads[2], factor), rigid[3]
        };
        List<Load> loads = List.of(new Load.Pressure(300));
        double exact =
                new ShellPanel(held(rigid), LATTICE, 3, false).solve(loads).deflection(0.4, 0.3);
        double found =
                new ShellPanel(held(sprung), LATTICE, 3, false).solve(loads).deflection(0.4, 0.3);
        assertTrue(found > exact);
        assertEquals(exact, found, 1e-4 * exact);
    }

    private static Fitting stiff(Fitting.Pad p, double stiffness) {
        return new Fitting.Pad(
                p.name(), p.x(), p.y(), p.sizeX(), p.sizeY(), p.held(), stiffness, p.height());
    }

    private static final Grid LATTICE =
            Grids.lattice(
                    new double[] {0, 0.08, 0.12, 0.43, 0.47, 0.78, 0.82, 0.9},
                    new double[] {0, 0.08, 0.12, 0.33, 0.37, 0.58, 0.62, 0.7});

    private static Panel held(Fitting... fittings) {
        return Panel.flat("lid", 0.9, 0.7, LID)
                .withSupport(new Support.Fittings(List.of(fittings)));
    }

    private static Fitting.Pad pad(double x, double y, Fitting.Direction... held) {
        return TestFittings.pad(x, y, 0.04, held);
    }

    @Test
    void aPadThatTheRimCutsBearsInTheMiddleOfWhatIsOnThePanel() {
        List<Fitting> fittings =
                List.of(
                        Fitting.Pad.hinge("left hinge", 0.2, 0.65),
                        Fitting.Pad.hinge("right hinge", 0.8, 0.65),
                        Fitting.Pad.latch("latch", 0.5, 0.01));
        Load.Press press = new Load.Press(100, new Patch.Rectangle(0.1, 0.08), 0.5, 0.3);
        Held held =
                new ShellAnalysis(3, false)
                        .loadCases(
                                round(1, LID, fittings),
                                List.of(LoadCase.of("palm", LoadCase.Kind.FELT, press)))
                        .get(0)
                        .held();
        double moment = -press.force() * press.y();
        for (Held.Grip grip : held.grips()) {
            if (grip.direction() == Fitting.Direction.Z) {
                moment += grip.force() * grip.y();
                if (grip.name().equals("latch")) {
                    // The pad reaches 10 mm over the front edge.
                    assertEquals(0.015, grip.y(), 1e-9);
                    assertEquals(0.5, grip.x(), 1e-9);
                }
            }
        }
        assertEquals(0, moment, 1e-6);
    }

    @Test
    void whatNothingHoldsIsNamed() {
        Fitting.Direction x = Fitting.Direction.X;
        Fitting.Direction y = Fitting.Direction.Y;
        Fitting.Direction z = Fitting.Direction.Z;
        var seal = Fitting.RubberSeal.allRound();
        String tip = "lifting or tipping.";
        String slides = "from sliding left and right, sliding to front and rear or turning in";
        assertSays(
                "from sliding left and right.",
                pad(0.1, 0.1, y, z),
                pad(0.8, 0.1, y, z),
                pad(0.45, 0.6, z));
        assertSays(
                "from sliding to front and rear.",
                pad(0.1, 0.1, x, z),
                pad(0.1, 0.6, x, z),
                pad(0.8, 0.35, z));
        assertSays("from " + tip, pad(0.1, 0.1, x, y, z), pad(0.8, 0.1, x, y, z));
        assertSays("from " + tip, pad(0.1, 0.1, x, y), pad(0.8, 0.1, x, y));
        assertSays("from turning in its own plane.", pad(0.45, 0.35, x, y, z), seal);
        assertSays("from turning in its own plane.", pad(0.1, 0.6, x, y, z), seal);
        assertSays("from turning in its own plane or " + tip, pad(0.1, 0.1, x, y, z));
        assertSays(slides, seal);
    }

    private static void assertSays(String words, Fitting... fittings) {
        ShellPanel shell = new ShellPanel(held(fittings), LATTICE, 2, false);
        assertFalse(shell.stands());
        assertTrue((shell.mechanism() + ".").contains(words), shell.mechanism());
    }

    @Test
    void aPanelThatCanMoveFreelyIsRefused() {
        List<Load> loads = List.of(new Load.Pressure(100));
        Panel panel = held(Fitting.RubberSeal.allRound());
        NoAnswerException refused =
                assertThrows(
                        NoAnswerException.class, () -> new ShellAnalysis().statics(panel, loads));
        assertTrue(refused.problem().toString().contains("lid can move freely"));
    }

    /** A strip that bends along its length only, both ends held at one height. */
    private static Panel strip(Laminate stack, Height height) {
        List<Fitting> held = new ArrayList<>();
        for (Edge end : List.of(Edge.LEFT, Edge.RIGHT)) {
            held.add(
                    new Fitting.HeldEdge(
                            Stretch.whole(end),
                            Set.of(Fitting.Motion.DEFLECTION, Fitting.Motion.ACROSS),
                            height));
        }
        for (Edge side : List.of(Edge.FRONT, Edge.REAR)) {
            held.add(
                    new Fitting.HeldEdge(
                            Stretch.whole(side),
                            Set.of(Fitting.Motion.ACROSS, Fitting.Motion.TURN),
                            Height.MIDDLE));
        }
        return Panel.flat("strip", 0.4, 0.05, stack).withSupport(new Support.Fittings(held));
    }

    /**
     * A bare strip of modulus Q and thickness t under pressure p, held at both ends at z = e under
     * its middle. Moments are M = p x (L - x) / 2 + N e with N the pull the ends need: their place
     * at e stays, so N L / (Q t) = -e (turn of both ends), turn of both ends = int M dx / D. So N
     * (L / (Q t) + e^2 L / D) = -e p L^3 / (12 D).
     */
    @Test
    void aStripHeldAtItsSurfaceIsPushedAsInClosedForm() {
        double t = 0.004;
        double length = 0.4;
        Laminate stack = Laminate.of(new Layer.Laid(TestStacks.isotropic(30e9, 0.25, t), 0));
        double q = 30e9 / (1 - 0.25 * 0.25);
        double d = q * t * t * t / 12;
        for (Height height : Height.values()) {
            double e = height == Height.MIDDLE ? 0 : (height == Height.OUTSIDE ? 1 : -1) * t / 2;
            ShellResponse r = bent(strip(stack, height), false);
            double pull = e * 500 * length * length / 12 / (d / (q * t) + e * e);
            double n = r.forces(0.17, 0.02).n().x();
            double m = r.forces(0.2, 0.02).m().x();
            double free = -500 * length * length / 8;
            assertEquals(pull, n, 1e-7 * Math.max(Math.abs(pull), 1));
            assertEquals(free + pull * e, m, 1e-7 * Math.abs(free));
        }
    }

    /**
     * A sandwich strip with a bare lip at each end, flush with the outside and held there. About
     * the outside surface the moment is that of a beam on two knife edges, M = -p x (L - x) / 2;
     * the stretch there is a N + b M with the compliances of each stack, and adds up to nothing.
     * First-order theory, in which the pull does not know of shear.
     */
    @Test
    void aStripWithALipAtEachEndPullsAtItsEndsAsInClosedForm() {
        double lip = 0.03;
        double length = 0.4;
        Laminate bare =
                Laminate.of(
                        new Layer.Laid(TestStacks.ply(), 0), new Layer.Laid(TestStacks.ply(), 0));
        Panel panel =
                strip(LID, Height.OUTSIDE)
                        .withZones(
                                List.of(
                                        new Zone("left", new Region.Box(-1, lip, -1, 1), bare, 0),
                                        new Zone(
                                                "right",
                                                new Region.Box(length - lip, 1, -1, 1),
                                                bare,
                                                0)));
        double[] ofLip = compliance(bare);
        double[] ofMiddle = compliance(LID);
        double ends = 2 * moment(lip, length);
        double between = 2 * moment(length / 2, length) - ends;
        double pull =
                -(ofLip[1] * ends + ofMiddle[1] * between)
                        / (2 * lip * ofLip[0] + (length - 2 * lip) * ofMiddle[0]);
        SectionForces middle = bent(panel, true).forces(0.2, 0.02);
        assertTrue(Math.abs(pull) > 100);
        assertEquals(pull, middle.n().x(), 1e-7 * Math.abs(pull));
        double m = -500 * length * length / 8 + pull * LID.thickness() / 2;
        assertEquals(m, middle.m().x(), 1e-7 * Math.abs(m));
    }

    private static ShellResponse bent(Panel panel, boolean firstOrder) {
        Grid grid =
                Grids.lattice(
                        new double[] {0, 0.03, 0.1, 0.2, 0.3, 0.37, 0.4}, new double[] {0, 0.05});
        return new ShellPanel(panel, grid, ShellAnalysis.ORDER, firstOrder)
                .solve(List.of(new Load.Pressure(500)));
    }

    /** Returns the integral of the beam's moment from 0 to x. */
    private static double moment(double x, double length) {
        return -500 * (length * x * x / 4 - x * x * x / 6);
    }

    /** Returns what a pull and a moment about the outside surface stretch it by. */
    private static double[] compliance(Laminate stack) {
        Stiffness s = Stiffness.of(stack, stack.thickness() / 2);
        double a = s.a().m11();
        double b = s.b().m11();
        double d = s.d().m11();
        double det = a * d - b * b;
        return new double[] {d / det, -b / det};
    }
}
