package org.coachskin.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.coachskin.TestStacks;
import org.coachskin.analysis.Held;
import org.coachskin.analysis.Response;
import org.coachskin.analysis.SectionForces;
import org.coachskin.laminate.Patch;
import org.coachskin.laminate.Triple;
import org.coachskin.panel.Crown;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Fitting.Motion;
import org.coachskin.panel.Height;
import org.coachskin.panel.Load;
import org.coachskin.panel.Opening;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Shape;
import org.coachskin.panel.Stretch;
import org.coachskin.panel.Support;
import org.coachskin.series.SeriesAnalysis;
import org.junit.jupiter.api.Test;

/** What held edges do to a panel. */
class EdgeReactionsTest {

    private static final double A = 0.8;
    private static final double B = 0.5;

    /** X, Y, Z, moments about the x- and y-axis and the upright axis through left front. */
    private static double[] sum(List<EdgeReaction> reactions) {
        double[] sum = new double[6];
        for (EdgeReaction r : reactions) {
            double mx = r.bending() * r.normalX() - r.twisting() * r.normalY();
            double my = r.bending() * r.normalY() + r.twisting() * r.normalX();
            double[] parts = {
                r.forceX(),
                r.forceY(),
                r.forceZ(),
                r.forceZ() * r.y() - my,
                mx - r.forceZ() * r.x(),
                r.forceY() * r.x() - r.forceX() * r.y()
            };
            for (int i = 0; i < 6; i++) {
                sum[i] += parts[i] * r.length();
            }
        }
        return sum;
    }

    @Test
    void edgesPadsAndSealBalanceWhatPressesAndHeats() {
        Panel panel =
                Panel.flat("door", A, B, TestStacks.uneven())
                        .withOpenings(
                                List.of(
                                        new Opening(
                                                "window",
                                                new Shape.Rectangle(0.2, 0.15, 0),
                                                0.45,
                                                0.25)))
                        .withSupport(
                                new Support.Fittings(
                                        List.of(
                                                new Fitting.HeldEdge(
                                                        new Stretch(Edge.LEFT, 0.1, 0.4),
                                                        Set.of(Motion.values()),
                                                        Height.INSIDE),
                                                Fitting.HeldEdge.carried(Edge.REAR),
                                                Fitting.Pad.latch("latch", 0.7, 0.05),
                                                new Fitting.RubberSeal(
                                                        List.of(Stretch.whole(Edge.RIGHT)),
                                                        50,
                                                        0.006,
                                                        0.009,
                                                        50))));
        List<Load> loads =
                List.of(
                        new Load.Pressure(-400),
                        new Load.Press(250, new Patch.Rectangle(0.1, 0.08), 0.3, 0.1),
                        new Load.Heat(30, 5));
        ShellAnalysis shell = new ShellAnalysis();
        List<EdgeReaction> reactions = shell.edgeReactions(panel, loads);
        double[] sum = sum(reactions);
        // Pressure acts on what is left of the panel: seen from its middle, less the window.
        double window = new Shape.Rectangle(0.2, 0.15, 0).area();
        double[] acts = {
            0,
            0,
            400 * (A * B - window) - 250,
            400 * (A * B * B / 2 - window * 0.25) - 250 * 0.1,
            -400 * (A * A * B / 2 - window * 0.45) + 250 * 0.3,
            0
        };
        Held held = ((ShellResponse) shell.statics(panel, loads)).held();
        for (Held.Grip grip : held.grips()) {
            acts[2] += grip.force();
            acts[3] += grip.force() * grip.y();
            acts[4] -= grip.force() * grip.x();
        }
        for (Held.SealPlace place : held.seals()) {
            double f = place.force() * place.length();
            acts[2] += f;
            acts[3] += f * place.y();
            acts[4] -= f * place.x();
        }
        for (int i = 0; i < 6; i++) {
            assertEquals(0, sum[i] + acts[i], 1e-8 * 250, "balance " + i);
        }
        assertTrue(
                reactions.stream()
                        .allMatch(
                                r ->
                                        r.side() == Edge.REAR
                                                || (r.side() == Edge.LEFT
                                                        && r.y() > 0.1
                                                        && r.y() < 0.4)));
    }

    @Test
    void alongAnEdgeTheyAreTheForcesOfTheSection() {
        Panel panel = Panel.flat("crown", A, B, TestStacks.uneven()).withCrown(new Crown(0.2, 0.1));
        List<Load> loads = List.of(new Load.Pressure(1000));
        Response series = new SeriesAnalysis().statics(panel, loads);
        int seen = 0;
        double upward = 0;
        double wanted = 0;
        for (EdgeReaction r : new ShellAnalysis().edgeReactions(panel, loads)) {
            double along = r.side().alongX() ? r.x() / A : r.y() / B;
            if (along < 0.3 || along > 0.7) {
                continue;
            }
            seen++;
            SectionForces f = series.forces(r.x(), r.y());
            double nx = r.normalX();
            double ny = r.normalY();
            assertEquals(1, Math.hypot(nx, ny), 1e-12);
            double q = f.qx() * nx + f.qy() * ny;
            assertEquals(q, r.forceZ(), 5);
            upward += r.length() * r.forceZ();
            wanted += r.length() * q;
            assertEquals(across(f.n(), nx, ny), r.forceX() * nx + r.forceY() * ny, 5);
            assertEquals(along(f.n(), nx, ny), r.forceY() * nx - r.forceX() * ny, 25);
            assertEquals(across(f.m(), nx, ny), r.bending(), 0.05);
            assertEquals(along(f.m(), nx, ny), r.twisting(), 0.1);
        }
        assertTrue(seen > 20);
        // One by one they swing a little about the force they stand for.
        assertEquals(wanted, upward, 2e-3 * wanted);
    }

    private static double across(Triple t, double nx, double ny) {
        return t.x() * nx * nx + t.y() * ny * ny + 2 * t.xy() * nx * ny;
    }

    private static double along(Triple t, double nx, double ny) {
        return (t.y() - t.x()) * nx * ny + t.xy() * (nx * nx - ny * ny);
    }

    @Test
    void aPanelOnPadsHasNone() {
        Support pads =
                new Support.Fittings(
                        List.of(
                                Fitting.Pad.hinge("left hinge", 0.1, 0.4),
                                Fitting.Pad.hinge("right hinge", 0.7, 0.4),
                                Fitting.Pad.latch("latch", 0.4, 0.1)));
        Panel panel = Panel.flat("lid", A, B, TestStacks.uneven()).withSupport(pads);
        List<Load> loads = List.of(new Load.Pressure(1000));
        assertEquals(List.of(), new ShellAnalysis().edgeReactions(panel, loads));
    }
}
