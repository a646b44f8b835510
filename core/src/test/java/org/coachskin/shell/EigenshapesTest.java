package org.coachskin.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.coachskin.NoAnswerException;
import org.coachskin.TestStacks;
import org.coachskin.harmonic.Cholesky;
import org.coachskin.harmonic.Theory;
import org.coachskin.harmonic.WaveSystem;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Triple;
import org.coachskin.panel.Crown;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Support;
import org.coachskin.series.SeriesAnalysis;
import org.junit.jupiter.api.Test;

/** How panels vibrate and buckle by themselves. */
class EigenshapesTest {

    private static final double A = 0.8;
    private static final double B = 0.5;

    private static final ShellAnalysis SHELL = new ShellAnalysis();

    private static final ShellAnalysis COARSE = new ShellAnalysis(3, false);

    private static Panel uneven(Crown crown) {
        return Panel.flat("panel", A, B, TestStacks.uneven()).withCrown(crown);
    }

    /** A panel that feels {@code n} everywhere, without having moved. */
    private static List<Buckling> under(Panel panel, Triple n, int count) {
        ShellPanel shell =
                new ShellPanel(panel, Grids.lattice(Grids.even(A, 5), Grids.even(B, 4)), 5, false);
        double[][] none = new double[shell.model.grid.triangles()][];
        double[][] free = new double[none.length][];
        Triple e = shell.model.section(0).layered.a().inverse().times(n);
        for (int t = 0; t < free.length; t++) {
            free[t] = new double[Section.STRAINS];
            free[t][0] = -e.x();
            free[t][1] = -e.y();
            free[t][2] = -e.xy();
        }
        double[] still = new double[shell.model.unknowns.count];
        return Eigenshapes.buckling(
                shell,
                new ShellResponse(shell, still, none),
                new ShellResponse(shell, still, free),
                count);
    }

    @Test
    void wavesOfTheLayeredTheoryBuckleAsTheirOwnStiffnessSays() {
        for (Crown crown : List.of(Crown.FLAT, new Crown(0.3, 0.2))) {
            Panel panel = uneven(crown);
            WaveSystem waves =
                    WaveSystem.of(
                            Theory.LAYERED, panel.laminate(), crown.across(), crown.along(), false);
            List<Double> factors = new ArrayList<>();
            for (int m = 1; m < 8; m++) {
                for (int n = 1; n < 6; n++) {
                    double alpha = m * Math.PI / A;
                    double beta = n * Math.PI / B;
                    double[] k = new double[waves.size * waves.size];
                    double[] x = new double[waves.size];
                    waves.stiffness(alpha, beta, k);
                    waves.pressure(x);
                    Cholesky.solve(k, waves.size, x);
                    double stiff = 1 / x[waves.second];
                    factors.add(stiff / (1000 * alpha * alpha + 300 * beta * beta));
                }
            }
            factors.sort(null);
            List<Buckling> found = under(panel, new Triple(-1000, -300, 0), 3);
            assertEquals(3, found.size());
            for (int i = 0; i < 3; i++) {
                double wanted = factors.get(i);
                assertEquals(wanted, found.get(i).factor(), 1e-4 * wanted, crown + " " + i);
            }
        }
    }

    @Test
    void whatPullsThePanelTautNeverBucklesIt() {
        assertEquals(List.of(), under(uneven(Crown.FLAT), new Triple(2000, 500, 300), 1));
    }

    @Test
    void aFlatPanelAlikeBothSidesHasNoForceInIt() {
        LoadCase snow = LoadCase.of("snow", LoadCase.Kind.SPREAD, new Load.Pressure(1500));
        Laminate alike = TestStacks.sandwich(1, 0.01, 1, 12e6, 4.2e6);
        assertEquals(List.of(), SHELL.buckling(Panel.flat("flat", A, B, alike), snow, 1));
    }

    @Test
    void whatStandsIsCountedOnceAndTheLoadAsOftenAsTheFactorSays() {
        Panel panel = uneven(new Crown(0.5, 0.4));
        Load.Pressure snow = new Load.Pressure(1500);
        List<Buckling> found =
                COARSE.buckling(panel, LoadCase.of("snow", LoadCase.Kind.SPREAD, snow), 2);
        double alone = found.get(0).factor();
        assertTrue(alone > 1 && found.get(1).factor() >= alone);
        assertEquals(alone / 4, factor(panel, new Load.Pressure(6000)), 1e-6 * alone);
        double before = factor(panel, snow, new Load.Pressure(1500 * alone / 4));
        assertEquals(0.75 * alone, before, 1e-6 * alone);
        Load tooMuch = new Load.Pressure(1500 * alone * 1.01);
        NoAnswerException refused =
                assertThrows(NoAnswerException.class, () -> factor(panel, snow, tooMuch));
        assertTrue(refused.problem().toString().contains("what stands"));
        ModeShape shape = found.get(0).shape();
        double most = 0;
        for (double x = 0.01; x < A; x += 0.01) {
            for (double y = 0.01; y < B; y += 0.01) {
                most = Math.max(most, Math.abs(shape.deflection(x, y)));
            }
        }
        assertEquals(1, most, 0.05);
    }

    private static double factor(Panel panel, Load load, Load... standing) {
        LoadCase all =
                new LoadCase(
                        "all",
                        List.of(load),
                        List.of(standing),
                        LoadCase.Kind.SPREAD,
                        false,
                        false);
        return COARSE.buckling(panel, all, 1).get(0).factor();
    }

    @Test
    void frequenciesAndShapesAreThoseOfTheSeries() {
        SeriesAnalysis series = new SeriesAnalysis();
        Panel panel = uneven(new Crown(0.1, 0.05));
        double[][] waves = new double[16][];
        for (int i = 0; i < 16; i++) {
            int m = 1 + i % 4;
            int n = 1 + i / 4;
            waves[i] = new double[] {series.frequency(panel, m, n), m, n};
        }
        Arrays.sort(waves, (a, b) -> Double.compare(a[0], b[0]));
        List<Vibration> found = SHELL.vibrations(panel, 5);
        assertEquals(5, found.size());
        for (int i = 0; i < 5; i++) {
            double hertz = waves[i][0];
            assertEquals(hertz, found.get(i).frequency(), 1e-5 * hertz, "shape " + i);
            ModeShape shape = found.get(i).shape();
            double mx = waves[i][1] * Math.PI / A;
            double ny = waves[i][2] * Math.PI / B;
            double sign = 0;
            for (double[] at : new double[][] {{0.23, 0.17}, {0.31, 0.4}, {0.7, 0.1}}) {
                double wanted = Math.sin(mx * at[0]) * Math.sin(ny * at[1]);
                double w = shape.deflection(at[0], at[1]);
                sign = sign == 0 ? Math.signum(w * wanted) : sign;
                assertEquals(sign * wanted, w, 0.02, "shape " + i);
            }
        }
        double lowest = found.get(0).frequency();
        assertEquals(lowest, SHELL.frequency(panel), 1e-9 * lowest);
    }

    @Test
    void aLidOnItsSealSwingsOnEvenSpringsAndARestNeverSlowsIt() {
        List<Fitting> fittings =
                new ArrayList<>(
                        List.of(
                                Fitting.Pad.hinge("left hinge", 0.1, 0.45),
                                Fitting.Pad.hinge("right hinge", 0.7, 0.45),
                                Fitting.Pad.latch("latch", 0.4, 0.05),
                                Fitting.RubberSeal.allRound()));
        Panel lid = uneven(Crown.FLAT).withSupport(new Support.Fittings(fittings));
        List<Vibration> before = COARSE.vibrations(lid, 4);
        fittings.add(Fitting.Pad.latch("rest", 0.1, 0.05));
        List<Vibration> after =
                COARSE.vibrations(lid.withSupport(new Support.Fittings(fittings)), 4);
        for (int i = 0; i < 4; i++) {
            double hertz = before.get(i).frequency();
            assertTrue(after.get(i).frequency() >= hertz * (1 - 1e-9), "shape " + i);
        }
        // The corner that the rest takes hold of swings no more.
        assertTrue(Math.abs(after.get(0).shape().deflection(0.1, 0.05)) < 0.05);
    }
}
