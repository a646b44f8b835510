package org.coachskin.series;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.coachskin.analysis.Response;
import org.coachskin.analysis.SectionForces;
import org.coachskin.harmonic.Cholesky;
import org.coachskin.harmonic.Theory;
import org.coachskin.harmonic.WaveSystem;
import org.coachskin.laminate.SectionState;
import org.coachskin.laminate.Stiffness;
import org.coachskin.laminate.Triple;
import org.coachskin.panel.Load;
import org.coachskin.panel.Panel;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The promise of 1e-6, by two series that share nothing but the stiffness of a wave. */
class SeriesAccuracyTest {

    private static final double PROMISE = 1e-6;

    @TestFactory
    List<DynamicTest> theSeriesAlongXGivesWhatTheOneAlongYGives() {
        List<DynamicTest> tests = new ArrayList<>();
        for (Map.Entry<String, Panel> entry : SeriesPanels.all().entrySet()) {
            Panel panel = entry.getValue();
            for (Theory theory : List.of(Theory.FIRST_ORDER, Theory.LAYERED)) {
                loads(panel)
                        .forEach(
                                (words, load) ->
                                        tests.add(
                                                DynamicTest.dynamicTest(
                                                        entry.getKey()
                                                                + ", "
                                                                + theory.words()
                                                                + ", "
                                                                + words,
                                                        () -> compare(panel, theory, load))));
            }
        }
        return tests;
    }

    private static Map<String, SeriesAnalysis.PatchLoad> loads(Panel panel) {
        double a = panel.width();
        double b = panel.length();
        return Map.of(
                "pressure",
                SeriesPanels.pressure(panel),
                "patch",
                patch(panel),
                "free bow",
                new SeriesAnalysis.PatchLoad(1, 0, a, 0, b, new Triple(0.02, 0.03, 0)));
    }

    private static SeriesAnalysis.PatchLoad patch(Panel panel) {
        double x = 0.31 * panel.width();
        double y = 0.57 * panel.length();
        return new SeriesAnalysis.PatchLoad(-30000, x, x + 0.06, y, y + 0.04, Triple.ZERO);
    }

    /** Under, at the edge of, beside and far from the patch; never where neither converges. */
    private static List<double[]> places(Panel panel, SeriesAnalysis.PatchLoad load) {
        double a = panel.width();
        double b = panel.length();
        double t = panel.laminate().thickness();
        List<double[]> places =
                new ArrayList<>(
                        List.of(
                                new double[] {0.5 * a, 0.5 * b},
                                new double[] {0.1 * a, 0.2 * b},
                                new double[] {0.83 * a, 0.3 * b},
                                new double[] {0.33 * a, 0.9 * b},
                                new double[] {a - t, t}));
        if (load.x1() > 0) {
            double middleX = (load.x1() + load.x2()) / 2;
            double middleY = (load.y1() + load.y2()) / 2;
            places.add(new double[] {middleX, middleY});
            places.add(new double[] {load.x1() + 0.5 * t, middleY});
            places.add(new double[] {load.x1() - 0.5 * t, middleY});
            places.add(new double[] {middleX, load.y2() + 0.5 * t});
            places.add(new double[] {load.x1() - 0.8 * t, load.y1() - 0.8 * t});
            places.add(new double[] {load.x2() + t, load.y2() - t});
        }
        return places;
    }

    private static void compare(Panel panel, Theory theory, SeriesAnalysis.PatchLoad load) {
        Response alongX = SeriesPanels.along(SeriesResponse.Along.X, theory, panel, load);
        Response alongY = SeriesPanels.along(SeriesResponse.Along.Y, theory, panel, load);
        Response chosen = SeriesPanels.along(SeriesResponse.Along.EITHER, theory, panel, load);
        List<double[]> places = places(panel, load);
        List<double[]> x = figures(alongX, panel, places);
        List<double[]> y = figures(alongY, panel, places);
        List<double[]> own = figures(chosen, panel, places);
        double[] largest = new double[NAMES.length];
        double[] ofGroup = new double[NAMES.length];
        for (double[] figures : y) {
            for (int i = 0; i < largest.length; i++) {
                largest[i] = Math.max(largest[i], Math.abs(figures[i]));
                ofGroup[GROUP[i]] = Math.max(ofGroup[GROUP[i]], Math.abs(figures[i]));
            }
        }
        // Membrane forces of a flat even stack are nought: set them beside what such strains raise.
        double a11 = Stiffness.of(panel.laminate()).a().m11();
        ofGroup[2] = Math.max(ofGroup[2], a11 * ofGroup[1]);
        for (int p = 0; p < places.size(); p++) {
            for (int i = 0; i < largest.length; i++) {
                // A field that vanishes by symmetry holds rounding only: set it beside its like.
                double scale = Math.max(1e-3 * largest[i], 1e-4 * ofGroup[GROUP[i]]);
                double allowed = PROMISE * Math.max(Math.abs(y.get(p)[i]), scale);
                String where =
                        String.format(
                                Locale.ROOT,
                                "%s at %.4f, %.4f m",
                                NAMES[i],
                                places.get(p)[0],
                                places.get(p)[1]);
                assertEquals(y.get(p)[i], x.get(p)[i], allowed, where);
                assertEquals(y.get(p)[i], own.get(p)[i], allowed, where);
            }
        }
    }

    private static final String[] NAMES = {
        "deflection",
        "ex",
        "ey",
        "exy",
        "skin kx",
        "skin ky",
        "skin kxy",
        "foam kx",
        "foam ky",
        "foam kxy",
        "skin shear x",
        "skin shear y",
        "foam shear x",
        "foam shear y",
        "Nx",
        "Ny",
        "Nxy",
        "Mx",
        "My",
        "Mxy",
        "Qx",
        "Qy"
    };

    /**
     * Figures of one kind: deflection, strains, membrane forces, moments, shear forces, shear
     * strains of skins and of foam.
     */
    private static final int[] GROUP = {
        0, 1, 1, 1, 1, 1, 1, 1, 1, 1, 5, 5, 6, 6, 2, 2, 2, 3, 3, 3, 4, 4
    };

    /** Strains of the surface, so that curvatures and membrane strains are of one kind. */
    private static List<double[]> figures(Response response, Panel panel, List<double[]> places) {
        double half = panel.laminate().thickness() / 2;
        List<double[]> all = new ArrayList<>();
        for (double[] at : places) {
            SectionState s = response.state(at[0], at[1]);
            SectionForces f = response.forces(at[0], at[1]);
            all.add(
                    new double[] {
                        response.deflection(at[0], at[1]),
                        s.membrane().x(),
                        s.membrane().y(),
                        s.membrane().xy(),
                        half * s.skinCurvature().x(),
                        half * s.skinCurvature().y(),
                        half * s.skinCurvature().xy(),
                        half * s.foamCurvature().x(),
                        half * s.foamCurvature().y(),
                        half * s.foamCurvature().xy(),
                        s.skinShearX(),
                        s.skinShearY(),
                        s.foamShearX(),
                        s.foamShearY(),
                        f.n().x(),
                        f.n().y(),
                        f.n().xy(),
                        f.m().x(),
                        f.m().y(),
                        f.m().xy(),
                        f.qx(),
                        f.qy()
                    });
        }
        return all;
    }

    @TestFactory
    List<DynamicTest> aDoubleSineSeriesSummedTermByTermGivesTheSameDeflection() {
        List<DynamicTest> tests = new ArrayList<>();
        SeriesPanels.all()
                .forEach(
                        (name, panel) -> {
                            for (Theory theory : Theory.values()) {
                                tests.add(
                                        DynamicTest.dynamicTest(
                                                name + ", " + theory.words(),
                                                () -> termByTerm(panel, theory)));
                            }
                        });
        return tests;
    }

    private static void termByTerm(Panel panel, Theory theory) {
        double a = panel.width();
        double b = panel.length();
        WaveSystem system =
                WaveSystem.of(
                        theory,
                        panel.laminate(),
                        panel.crown().across(),
                        panel.crown().along(),
                        false);
        double[] k = new double[system.size * system.size];
        double[] x = new double[system.size];
        double sum = 0;
        int most = 101;
        for (int m = 1; m <= most; m += 2) {
            for (int n = 1; n <= most; n += 2) {
                double alpha = m * Math.PI / a;
                double beta = n * Math.PI / b;
                system.stiffness(alpha, beta, k);
                system.pressure(x);
                Cholesky.solve(k, system.size, x);
                double sign = (m + n) % 4 == 2 ? 1 : -1;
                boolean ofTwoSurfaces = theory == Theory.FULL_LAYERED && !panel.laminate().isBare();
                double w =
                        ofTwoSurfaces
                                ? (x[system.second] + x[system.second + 1]) / 2
                                : x[system.second];
                sum += sign * 16 / (a * b * alpha * beta) * w;
            }
        }
        Response response =
                new SeriesAnalysis(theory).statics(panel, List.of(new Load.Pressure(1)));
        // What 51 by 51 waves leave out of the shear part, which falls off like 1/(mn(m^2 + n^2)).
        assertEquals(sum, response.deflection(a / 2, b / 2), 3e-6 * sum);
    }

    @Test
    void theShearForceAtThePatchsOwnEdgeIsThatOfABeam() {
        // Far from the ends of a long panel a band of load bends a strip: Qx is plain statics.
        for (Map.Entry<String, Panel> entry : SeriesPanels.all().entrySet()) {
            Panel panel = entry.getValue();
            if (!panel.crown().isFlat()) {
                continue;
            }
            double a = panel.width();
            Panel strip = Panel.flat("strip", a, 50 * a, panel.laminate());
            double x1 = 0.2 * a;
            double x2 = 0.5 * a;
            SeriesAnalysis.PatchLoad band =
                    new SeriesAnalysis.PatchLoad(-2000, x1, x2, 0, 50 * a, Triple.ZERO);
            double total = 2000 * (x2 - x1);
            double left = total * (1 - (x1 + x2) / (2 * a));
            for (Theory theory : List.of(Theory.FIRST_ORDER, Theory.LAYERED)) {
                Response response =
                        SeriesPanels.along(SeriesResponse.Along.EITHER, theory, strip, band);
                String what = entry.getKey() + ", " + theory.words();
                // Q is positive where the deflection outward grows under a load outward.
                assertEquals(-left, response.forces(0, 25 * a).qx(), PROMISE * left, what);
                assertEquals(-left, response.forces(x1, 25 * a).qx(), PROMISE * left, what);
                assertEquals(total - left, response.forces(x2, 25 * a).qx(), PROMISE * left, what);
                assertEquals(
                        -left + 2000 * 0.1 * a,
                        response.forces(0.3 * a, 25 * a).qx(),
                        PROMISE * left,
                        what);
                assertEquals(
                        -left * x1, response.forces(x1, 25 * a).m().x(), PROMISE * left * a, what);
            }
        }
    }
}
