package org.coachskin.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.coachskin.TestStacks;
import org.coachskin.analysis.Analysis;
import org.coachskin.analysis.Response;
import org.coachskin.analysis.SectionForces;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Patch;
import org.coachskin.laminate.Ply;
import org.coachskin.laminate.Triple;
import org.coachskin.panel.Crown;
import org.coachskin.panel.Load;
import org.coachskin.panel.Panel;
import org.coachskin.series.SeriesAnalysis;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Two solvers that share no code beyond the stack's stiffness. */
class ShellAgainstSeriesTest {

    private static final double[][] PLACES = {{0.5, 0.5}, {0.28, 0.37}, {0.15, 0.85}, {0.4, 0.6}};

    private static Laminate laid(Layer... layers) {
        return Laminate.of(layers);
    }

    private static Laminate uneven() {
        Ply unequal = TestStacks.unequal();
        return laid(
                new Layer.Laid(unequal, Math.PI / 2),
                new Layer.Core(TestStacks.foam(12e6, 4.2e6), 0.01),
                new Layer.Laid(unequal, 0));
    }

    private static Panel saddle() {
        return Panel.flat("saddle", 0.5, 0.5, uneven()).withCrown(new Crown(0.4, -0.3));
    }

    private static Map<String, Panel> panels() {
        Laminate lid = TestStacks.sandwich(2, 0.012, 1, 12e6, 4.2e6);
        Laminate uneven = uneven();
        Laminate bare =
                laid(new Layer.Laid(TestStacks.ply(), 0), new Layer.Laid(TestStacks.ply(), 0));
        Map<String, Panel> panels = new LinkedHashMap<>();
        panels.put("lid", Panel.flat("lid", 0.9, 0.7, lid));
        panels.put(
                "one skin",
                Panel.flat("one skin", 0.5, 0.8, TestStacks.sandwich(2, 0.012, 0, 12e6, 4.2e6)));
        panels.put("bare", Panel.flat("bare", 0.4, 0.3, bare));
        panels.put("uneven", Panel.flat("uneven", 0.5, 0.5, uneven));
        panels.put(
                "crowned lid",
                Panel.flat("crowned lid", 0.9, 0.7, lid).withCrown(new Crown(0.3, 0.1)));
        panels.put("saddle", saddle());
        return panels;
    }

    private static Map<String, Load> loads(Panel panel) {
        Map<String, Load> loads = new LinkedHashMap<>();
        loads.put("pressure", new Load.Pressure(1000));
        loads.put("weight", new Load.OwnWeight(9.81));
        loads.put("heat", new Load.Heat(40, 10));
        loads.put("strip", new Load.StripPressure(700, 0.1, 0.2));
        loads.put(
                "palm",
                new Load.Press(
                        250,
                        new Patch.Rectangle(0.1, 0.08),
                        0.4 * panel.width(),
                        0.6 * panel.length()));
        return loads;
    }

    @TestFactory
    List<DynamicTest> everyPanelDoesWhatTheSeriesSays() {
        List<DynamicTest> tests = new ArrayList<>();
        for (Panel panel : panels().values()) {
            for (boolean firstOrder : new boolean[] {false, true}) {
                if (firstOrder && panel.name().endsWith("lid")) {
                    continue;
                }
                tests.add(
                        DynamicTest.dynamicTest(
                                panel.name() + (firstOrder ? ", first order" : ""),
                                () -> agree(panel, firstOrder)));
            }
        }
        return tests;
    }

    private static void agree(Panel panel, boolean firstOrder) {
        Analysis series = firstOrder ? SeriesAnalysis.firstOrder() : new SeriesAnalysis();
        Analysis shell = new ShellAnalysis(ShellAnalysis.ORDER, firstOrder);
        Map<String, Load> loads = loads(panel);
        List<List<Load>> cases = loads.values().stream().map(List::of).toList();
        List<Response> exact = series.cases(panel, cases);
        List<Response> found = shell.cases(panel, cases);
        int i = 0;
        for (String load : loads.keySet()) {
            agree(panel, exact.get(i), found.get(i), panel.name() + ", " + load, firstOrder);
            i++;
        }
        double frequency = series.frequency(panel);
        assertEquals(frequency, shell.frequency(panel), 1e-6 * frequency);
    }

    /** Figures of one kind, side by side. */
    private static final class Figures {
        private double largest;
        private double apart;

        void add(double exact, double found) {
            largest = Math.max(largest, Math.abs(exact));
            apart = Math.max(apart, Math.abs(exact - found));
        }

        void add(Triple exact, Triple found) {
            add(exact.x(), found.x());
            add(exact.y(), found.y());
            add(exact.xy(), found.xy());
        }
    }

    private static void agree(
            Panel panel, Response exact, Response found, String words, boolean firstOrder) {
        Figures w = new Figures();
        Figures m = new Figures();
        Figures n = new Figures();
        Figures q = new Figures();
        for (double[] share : PLACES) {
            double x = share[0] * panel.width();
            double y = share[1] * panel.length();
            w.add(exact.deflection(x, y), found.deflection(x, y));
            SectionForces e = exact.forces(x, y);
            SectionForces f = found.forces(x, y);
            m.add(e.m(), f.m());
            n.add(e.n(), f.n());
            q.add(e.qx(), f.qx());
            q.add(e.qy(), f.qy());
        }
        assertTrue(w.apart < (firstOrder ? 3e-5 : 3e-4) * w.largest, words + " deflection");
        // Heat bends the rim in a narrow strip only, which the usual mesh sees from afar.
        boolean heat = words.endsWith("heat");
        assertTrue(m.apart < (heat ? 2e-2 : 3e-3) * m.largest, words + " moments");
        double force = Math.max(n.largest, m.largest / panel.laminate().thickness());
        assertTrue(n.apart < (heat ? 4e-2 : 3e-3) * force, words + " membrane forces");
        // In a bare sheet the shear strain is what two large slopes leave: only movement is asked.
        if (!panel.laminate().isBare() && !heat) {
            assertTrue(q.apart < 0.12 * q.largest, words + " shear forces");
        }
    }

    @Test
    void withAHigherOrderForcesUnderHeatAreTheSame() {
        Panel panel = saddle();
        List<Load> heat = List.of(new Load.Heat(40, 10));
        Response exact = new SeriesAnalysis().statics(panel, heat);
        Response found = new ShellAnalysis(8, false).statics(panel, heat);
        Figures n = new Figures();
        Figures m = new Figures();
        for (double[] share : PLACES) {
            double x = share[0] * panel.width();
            double y = share[1] * panel.length();
            n.add(exact.forces(x, y).n(), found.forces(x, y).n());
            m.add(exact.forces(x, y).m(), found.forces(x, y).m());
        }
        assertTrue(n.apart < 1e-3 * n.largest, n.apart + " of " + n.largest);
        assertTrue(m.apart < 1e-3 * m.largest, m.apart + " of " + m.largest);
    }

    /** Twice the energy that a load puts into a panel on a lattice. */
    private static double work(Panel panel, Load load, int order, int cells) {
        ShellPanel shell = new ShellPanel(panel, lattice(panel, cells), order, false);
        double[] x = shell.solve(List.of(load)).solution();
        return shell.model.energy(x, x);
    }

    /** Lines through the sides of the palm, each strip cut in {@code cells}. */
    private static Grid lattice(Panel panel, int cells) {
        double a = panel.width();
        double b = panel.length();
        return Grids.lattice(
                lines(new double[] {0, a / 3, 2 * a / 3, a}, cells),
                lines(new double[] {0, b / 3, 2 * b / 3, b}, cells));
    }

    private static Panel stout(double crown) {
        return Panel.flat("stout", 0.45, 0.36, TestStacks.sandwich(3, 0.02, 3, 50e6, 18e6))
                .withCrown(new Crown(crown, crown / 2));
    }

    /** Twice the energy of a panel under one wave of pressure, of which nothing is singular. */
    private static double ofAWave(double crown, int order, int cells) {
        Panel panel = stout(crown);
        ShellPanel shell = new ShellPanel(panel, lattice(panel, cells), order, false);
        Model model = shell.model;
        ReferenceTriangle fine = new ReferenceTriangle(new Basis(10), 0);
        double[] load = new double[model.unknowns.count];
        double[] force = new double[Section.FIELDS];
        for (int t = 0; t < model.grid.triangles(); t++) {
            for (int q = 0; q < fine.points; q++) {
                double[] m = model.grid.elements[t].map(fine.xi[q], fine.eta[q]);
                force[2] =
                        -1000
                                * StrictMath.sin(Math.PI * m[0] / panel.width())
                                * StrictMath.sin(Math.PI * m[1] / panel.length())
                                * fine.weight[q]
                                * Math.abs(m[2] * m[5] - m[3] * m[4]);
                model.addPoint(t, new double[] {fine.xi[q], fine.eta[q]}, force, load);
            }
        }
        double[] x = shell.linear(load);
        return model.energy(x, x);
    }

    @ParameterizedTest
    @CsvSource({"0.4, 2, 1, 2", "0.4, 3, 2, 3", "0, 4, 1, 2", "0.4, 4, 1, 2"})
    void theEnergyErrorFallsWithTwiceTheOrderAsTrianglesShrink(
            double crown, int order, int first, int second) {
        double exact = ofAWave(crown, 8, 1);
        double coarse = 1 - ofAWave(crown, order, first) / exact;
        double fine = 1 - ofAWave(crown, order, second) / exact;
        double rate = Math.log(coarse / fine) / Math.log((double) second / first);
        assertTrue(fine > 0);
        assertEquals(2 * order, rate, 0.6);
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void everyOrderIsSofterAndNearerToTheSeries(boolean palm) {
        Panel panel = stout(0.4);
        Load load =
                palm
                        ? new Load.Press(250, new Patch.Rectangle(0.15, 0.12), 0.225, 0.18)
                        : new Load.Pressure(1000);
        ShellPanel fine = new ShellPanel(panel, lattice(panel, 2), 7, false);
        ShellResponse best = fine.solve(List.of(load));
        double exact = fine.model.energy(best.solution(), best.solution());
        double error = 1;
        for (int order = 2; order <= 6; order++) {
            double now = 1 - work(panel, load, order, 1) / exact;
            assertTrue(now > 0 && now < error / 1.8, order + ": " + error + " to " + now);
            error = now;
        }
        double series = new SeriesAnalysis().statics(panel, List.of(load)).deflection(0.2, 0.17);
        assertEquals(series, best.deflection(0.2, 0.17), 5e-5 * series);
    }

    private static double[] lines(double[] at, int cells) {
        double[] out = new double[(at.length - 1) * cells + 1];
        for (int i = 0; i + 1 < at.length; i++) {
            for (int k = 0; k <= cells; k++) {
                out[i * cells + k] = at[i] + (at[i + 1] - at[i]) * k / cells;
            }
        }
        return out;
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-2, 1e-3, 1e-4})
    void aThinPanelIsAsSoftAsItIs(double t) {
        Layer face = new Layer.Laid(TestStacks.ply(14.5e9, 14.5e9, 0.13, 3.1e9, 3e9, t / 10), 0);
        Layer foam = new Layer.Core(TestStacks.foam(12e6, 4.2e6), 0.8 * t);
        for (Laminate stack :
                List.of(
                        laid(new Layer.Laid(TestStacks.isotropic(70e9, 0.3, t), 0)),
                        laid(face, foam, face))) {
            for (double crown : new double[] {0, 0.2}) {
                Panel panel =
                        Panel.flat("thin", 1, 1, stack).withCrown(new Crown(crown, crown / 2));
                List<Load> loads = List.of(new Load.Pressure(1000));
                double exact = new SeriesAnalysis().statics(panel, loads).deflection(0.4, 0.45);
                Grid grid = Grids.lattice(Grids.even(1, 6), Grids.even(1, 6));
                double found =
                        new ShellPanel(panel, grid, ShellAnalysis.ORDER, false)
                                .solve(loads)
                                .deflection(0.4, 0.45);
                assertEquals(exact, found, (crown == 0 ? 3e-5 : 6e-3) * exact);
            }
        }
    }
}
