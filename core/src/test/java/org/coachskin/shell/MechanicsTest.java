package org.coachskin.shell;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.coachskin.TestStacks;
import org.coachskin.analysis.SectionForces;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Patch;
import org.coachskin.laminate.Ply;
import org.coachskin.panel.Crown;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Height;
import org.coachskin.panel.Load;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Region;
import org.coachskin.panel.Stretch;
import org.coachskin.panel.Support;
import org.coachskin.panel.Zone;
import org.junit.jupiter.api.Test;

/** What must hold on any linear supports. */
class MechanicsTest {

    private static final double A = 0.6;
    private static final double B = 0.5;
    private static final Ply UNEQUAL = TestStacks.unequal();
    private static final double[] XS = {0, 0.05, 0.09, 0.2, 0.3, 0.4, 0.51, 0.55, 0.6};
    private static final double[] YS = {0, 0.05, 0.09, 0.2, 0.3, 0.4, 0.5};

    /** A panel of bias cloth, what holds it, and two palms on lines of the lattice. */
    record Case(
            double angle, double foam, double crown, Set<Edge> held, boolean pad, boolean sprung) {}

    @Provide
    Arbitrary<Case> cases() {
        return Combinators.combine(
                        Arbitraries.doubles().between(0, 90),
                        Arbitraries.doubles().between(0.005, 0.02).ofScale(4),
                        Arbitraries.doubles().between(-0.3, 0.3),
                        Arbitraries.of(Edge.values()).set().ofMinSize(1).ofMaxSize(3),
                        Arbitraries.of(true, false),
                        Arbitraries.of(true, false))
                .as(Case::new);
    }

    private static Laminate stack(double degrees, double foam) {
        double angle = StrictMath.toRadians(degrees);
        return Laminate.of(
                new Layer.Laid(UNEQUAL, angle),
                new Layer.Core(TestStacks.foam(12e6, 4.2e6), foam),
                new Layer.Laid(UNEQUAL, angle),
                new Layer.Laid(TestStacks.ply(), 0));
    }

    private static Fitting.Pad pad(double x, double y, double stiffness) {
        return new Fitting.Pad(
                "rest",
                x,
                y,
                0.04,
                0.04,
                Set.of(Fitting.Direction.values()),
                stiffness,
                Height.INSIDE);
    }

    private static List<Fitting> fittings(Case c) {
        List<Fitting> fittings = new ArrayList<>();
        for (Edge edge : Edge.values()) {
            if (c.held.contains(edge)) {
                fittings.add(
                        fittings.isEmpty()
                                ? Fitting.HeldEdge.clamped(edge)
                                : Fitting.HeldEdge.carried(edge));
            }
        }
        if (c.pad) {
            fittings.add(pad(0.53, 0.07, c.sprung ? 1e5 : Double.POSITIVE_INFINITY));
        }
        return fittings;
    }

    private static Panel panel(Case c) {
        return Panel.flat("panel", A, B, stack(c.angle, c.foam))
                .withCrown(new Crown(c.crown, 0.1))
                .withSupport(new Support.Fittings(fittings(c)));
    }

    private static ShellPanel shell(Panel panel) {
        return new ShellPanel(panel, Grids.lattice(XS, YS), 3, false);
    }

    private static Load.Press one(double force) {
        return new Load.Press(force, new Patch.Rectangle(0.1, 0.1), 0.25, 0.25);
    }

    private static Load.Press two(double force) {
        return new Load.Press(force, new Patch.Rectangle(0.1, 0.1), 0.35, 0.35);
    }

    /** Mean inward deflection under a press, as the work of one newton spread like it. */
    private static double mean(ShellPanel shell, ShellResponse response, Load.Press press) {
        double[] load = new double[shell.model.unknowns.count];
        shell.model.addEven(
                t -> {
                    double[] c = shell.model.grid.centre(t);
                    return Math.abs(c[0] - press.x()) < 0.05 && Math.abs(c[1] - press.y()) < 0.05;
                },
                new double[] {0, 0, -1 / 0.01, 0, 0, 0, 0},
                load);
        return Fields.dot(response.solution(), load);
    }

    @Property(tries = 12, seed = "5401")
    void palmsMoveOneAnotherAlikeAndLoadsAddUp(@ForAll("cases") Case c) {
        ShellPanel shell = shell(panel(c));
        ShellResponse first = shell.solve(List.of(one(250)));
        ShellResponse second = shell.solve(List.of(two(90)));
        ShellResponse both = shell.solve(List.of(one(250), two(90)));
        double there = 90 * mean(shell, first, two(1));
        double back = 250 * mean(shell, second, one(1));
        double own = 250 * mean(shell, first, one(1));
        assertEquals(there, back, 1e-9 * own);
        double sum = first.deflection(0.31, 0.12) + second.deflection(0.31, 0.12);
        assertEquals(sum, both.deflection(0.31, 0.12), 1e-9 * Math.abs(sum));
        // What the palm does is what panel and springs store.
        double stored = shell.model.energy(first.solution(), first.solution());
        for (Pads.Hold hold : shell.holds) {
            double moved = hold.of(first.solution());
            stored += hold.isRigid() ? 0 : hold.stiffness * moved * moved;
        }
        assertEquals(own, stored, 1e-9 * own);
    }

    @Property(tries = 8, seed = "5402")
    void moreNeverSoftens(@ForAll("cases") Case c) {
        double soft = compliance(panel(c));
        List<Fitting> more = new ArrayList<>(fittings(c));
        more.add(pad(0.07, 0.07, 2e4));
        double supported = compliance(panel(c).withSupport(new Support.Fittings(more)));
        assertTrue(supported <= soft * (1 + 1e-10), supported + " " + soft);
        List<Layer> layers = new ArrayList<>(stack(c.angle, c.foam).layers());
        layers.add(new Layer.Laid(TestStacks.ply(), 0.3));
        assertTrue(compliance(panel(c).withLaminate(new Laminate(layers))) < soft);
        Panel flat = panel(c).withCrown(Crown.FLAT);
        double thicker = compliance(flat.withLaminate(stack(c.angle, 1.3 * c.foam)));
        assertTrue(thicker < compliance(flat));
    }

    @Property(tries = 6, seed = "5406")
    void aRestNeverLowersAFrequencyNorABucklingLoad(@ForAll("cases") Case c) {
        List<Fitting> more = new ArrayList<>(fittings(c));
        more.add(pad(0.07, 0.07, 2e4));
        ShellPanel before = shell(panel(c));
        ShellPanel after = shell(panel(c).withSupport(new Support.Fittings(more)));
        List<Vibration> slow = Eigenshapes.vibrations(before, 3);
        List<Vibration> fast = Eigenshapes.vibrations(after, 3);
        for (int i = 0; i < 3; i++) {
            double hertz = slow.get(i).frequency();
            assertTrue(fast.get(i).frequency() >= hertz * (1 - 1e-9), "shape " + i);
        }
        // The same push, that of the panel before, in both.
        ShellResponse pushed = before.solve(List.of(one(250), new Load.Heat(30, 5)));
        ShellResponse still = before.solve(List.of());
        List<Buckling> soft = Eigenshapes.buckling(before, still, pushed, 1);
        // A pad ties no unknowns, so both panels have the same.
        List<Buckling> stiff = Eigenshapes.buckling(after, still, pushed, 1);
        assertEquals(soft.isEmpty(), stiff.isEmpty());
        if (!soft.isEmpty()) {
            assertTrue(stiff.get(0).factor() >= soft.get(0).factor() * (1 - 1e-7));
        }
    }

    private static double compliance(Panel panel) {
        ShellPanel shell = shell(panel);
        return mean(shell, shell.solve(List.of(one(1))), one(1));
    }

    /** The place (x, y) goes to (B - y, x). */
    private static Fitting turned(Fitting fitting) {
        if (fitting instanceof Fitting.Pad p) {
            return pad(B - p.y(), p.x(), p.stiffness());
        }
        Fitting.HeldEdge held = (Fitting.HeldEdge) fitting;
        Edge edge =
                switch (held.stretch().edge()) {
                    case LEFT -> Edge.FRONT;
                    case FRONT -> Edge.RIGHT;
                    case RIGHT -> Edge.REAR;
                    case REAR -> Edge.LEFT;
                };
        return new Fitting.HeldEdge(Stretch.whole(edge), held.held(), held.height());
    }

    private static double[] reversed(double[] lines, double length) {
        double[] out = new double[lines.length];
        for (int i = 0; i < lines.length; i++) {
            out[i] = length - lines[lines.length - 1 - i];
        }
        return out;
    }

    @Property(tries = 8, seed = "5403")
    void aPanelTurnedByARightAngleDoesTheSame(@ForAll("cases") Case c) {
        Panel panel = panel(c);
        Panel other =
                new Panel(
                        "turned",
                        B,
                        A,
                        new Crown(0.1, c.crown),
                        laid(panel.laminate(), angle -> angle + Math.PI / 2),
                        new Support.Fittings(
                                fittings(c).stream().map(MechanicsTest::turned).toList()));
        Load.Heat heat = new Load.Heat(30, 5);
        ShellResponse here = shell(panel).solve(List.of(one(250), heat));
        Load palm = new Load.Press(250, new Patch.Rectangle(0.1, 0.1), B - 0.25, 0.25);
        ShellResponse there =
                new ShellPanel(other, Grids.lattice(reversed(YS, B), XS), 3, false)
                        .solve(List.of(palm, heat));
        double w = here.deflection(0.27, 0.22);
        assertEquals(w, there.deflection(B - 0.22, 0.27), 1e-9 * Math.abs(w));
        SectionForces f = here.forces(0.27, 0.22);
        SectionForces g = there.forces(B - 0.22, 0.27);
        same(new double[] {f.n().x(), f.n().y(), f.n().xy()}, g.n().y(), g.n().x(), -g.n().xy());
        same(new double[] {f.m().x(), f.m().y(), f.m().xy()}, g.m().y(), g.m().x(), -g.m().xy());
        same(new double[] {f.qx(), f.qy()}, g.qy(), -g.qx());
        double hertz = Eigenshapes.vibrations(shell(panel), 1).get(0).frequency();
        ShellPanel turned = new ShellPanel(other, Grids.lattice(reversed(YS, B), XS), 3, false);
        // Rigid pads are props a hundred thousand times as stiff as the panel, by its x.
        assertEquals(hertz, Eigenshapes.vibrations(turned, 1).get(0).frequency(), 1e-4 * hertz);
    }

    private static void same(double[] expected, double... found) {
        double most = 0;
        for (double v : expected) {
            most = Math.max(most, Math.abs(v));
        }
        assertArrayEquals(expected, found, 1e-7 * most);
    }

    private static Fitting mirrored(Fitting fitting) {
        if (fitting instanceof Fitting.Pad p) {
            return pad(A - p.x(), p.y(), p.stiffness());
        }
        Fitting.HeldEdge held = (Fitting.HeldEdge) fitting;
        Edge edge =
                switch (held.stretch().edge()) {
                    case LEFT -> Edge.RIGHT;
                    case RIGHT -> Edge.LEFT;
                    case FRONT -> Edge.FRONT;
                    case REAR -> Edge.REAR;
                };
        return new Fitting.HeldEdge(Stretch.whole(edge), held.held(), held.height());
    }

    @Property(tries = 8, seed = "5405")
    void aPanelInAMirrorDoesTheSameInTheMirror(@ForAll("cases") Case c) {
        Panel panel = panel(c);
        Panel other =
                panel.withLaminate(laid(panel.laminate(), angle -> -angle))
                        .withSupport(
                                new Support.Fittings(
                                        fittings(c).stream()
                                                .map(MechanicsTest::mirrored)
                                                .toList()));
        Load palm = new Load.Press(250, new Patch.Rectangle(0.1, 0.1), A - 0.25, 0.25);
        ShellResponse here = shell(panel).solve(List.of(one(250)));
        ShellResponse there =
                new ShellPanel(other, Grids.lattice(reversed(XS, A), YS), 3, false)
                        .solve(List.of(palm));
        double w = here.deflection(0.27, 0.22);
        assertEquals(w, there.deflection(A - 0.27, 0.22), 1e-9 * Math.abs(w));
        SectionForces f = here.forces(0.27, 0.22);
        SectionForces g = there.forces(A - 0.27, 0.22);
        same(new double[] {f.n().x(), f.n().y(), f.n().xy()}, g.n().x(), g.n().y(), -g.n().xy());
        same(new double[] {f.m().x(), f.m().y(), f.m().xy()}, g.m().x(), g.m().y(), -g.m().xy());
        same(new double[] {f.qx(), f.qy()}, -g.qx(), g.qy());
    }

    private static Laminate laid(Laminate stack, DoubleUnaryOperator angle) {
        List<Layer> layers = new ArrayList<>();
        for (Layer layer : stack.layers()) {
            layers.add(
                    layer instanceof Layer.Laid laid
                            ? new Layer.Laid(laid.ply(), angle.applyAsDouble(laid.angle()))
                            : layer);
        }
        return new Laminate(layers);
    }

    @Property(tries = 8, seed = "5404")
    void aSurfaceToReckonFromChangesNothing(@ForAll("cases") Case c) {
        Panel flat = panel(c).withCrown(Crown.FLAT);
        Region whole = new Region.Box(-1, 2, -1, 2);
        double w = shell(flat).solve(List.of(one(250))).deflection(0.33, 0.29);
        for (double depth : new double[] {0, 0.004, -0.01}) {
            Panel zoned = flat.withZones(List.of(new Zone("all", whole, flat.laminate(), depth)));
            ShellResponse r = shell(zoned).solve(List.of(one(250)));
            double share = depth == 0 ? 1e-15 : 1e-9;
            assertEquals(w, r.deflection(0.33, 0.29), share * Math.abs(w));
        }
    }

    @Test
    void twoThreadsFindTheSameBits() {
        Case c = new Case(30, 0.01, 0.2, Set.of(Edge.REAR), true, false);
        ShellAnalysis shared = new ShellAnalysis();
        Panel panel = panel(c).withSupport(new Support.Fittings(sealed()));
        List<Load> loads = List.of(new Load.Pressure(-600), one(100));
        double[] alone = ((ShellResponse) new ShellAnalysis().statics(panel, loads)).solution();
        List<CompletableFuture<double[]>> runs = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            runs.add(
                    CompletableFuture.supplyAsync(
                            () -> ((ShellResponse) shared.statics(panel, loads)).solution()));
        }
        for (CompletableFuture<double[]> run : runs) {
            assertArrayEquals(alone, run.join());
        }
    }

    private static List<Fitting> sealed() {
        return List.of(
                Fitting.Pad.hinge("left hinge", 0.1, 0.45),
                Fitting.Pad.hinge("right hinge", 0.5, 0.45),
                Fitting.Pad.latch("latch", 0.3, 0.05),
                Fitting.RubberSeal.allRound());
    }
}
