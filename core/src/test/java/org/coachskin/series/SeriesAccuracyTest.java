package org.coachskin.series;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.coachskin.analysis.Response;
import org.coachskin.analysis.SectionForces;
import org.coachskin.harmonic.Cholesky;
import org.coachskin.harmonic.Theory;
import org.coachskin.harmonic.WaveSystem;
import org.coachskin.laminate.Patch;
import org.coachskin.laminate.SectionState;
import org.coachskin.laminate.Triple;
import org.coachskin.panel.Load;
import org.coachskin.panel.Panel;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The promise of 1e-6, by two series that share nothing but the stiffness of a wave. */
class SeriesAccuracyTest extends TwoSeries {

    @TestFactory
    List<DynamicTest> theSeriesAlongXGivesWhatTheOneAlongYGives() {
        List<DynamicTest> tests = new ArrayList<>(tests(Theory.FIRST_ORDER, SeriesPanels.all()));
        tests.addAll(tests(Theory.LAYERED, SeriesPanels.all()));
        return tests;
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

    @Override
    List<String> names() {
        return List.of(NAMES);
    }

    @Override
    int kind(int figure) {
        return GROUP[figure];
    }

    /** Strains of the surface, so that curvatures and membrane strains are of one kind. */
    @Override
    double[] figures(SeriesSum sum, double x, double y) {
        double half = sum.panel().laminate().thickness() / 2;
        Response response = new SeriesResponse(sum, List.of(), () -> sum);
        SectionState s = response.state(x, y);
        SectionForces f = response.forces(x, y);
        return new double[] {
            response.deflection(x, y),
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
        };
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
                                ? x[system.second] - x[system.second + 1] / 2
                                : x[system.second];
                sum += sign * 16 / (a * b * alpha * beta) * w;
            }
        }
        List<Load> pressure = List.of(new Load.Pressure(1));
        double ours =
                switch (theory) {
                    case FIRST_ORDER ->
                            SeriesAnalysis.firstOrder()
                                    .statics(panel, pressure)
                                    .deflection(a / 2, b / 2);
                    case LAYERED ->
                            new SeriesAnalysis().statics(panel, pressure).deflection(a / 2, b / 2);
                    case FULL_LAYERED ->
                            new FullLayeredAnalysis()
                                    .statics(panel, pressure)
                                    .deflection(a / 2, b / 2);
                };
        // What 51 by 51 waves leave out of the shear part, which falls off like 1/(mn(m^2 + n^2)).
        assertEquals(sum, ours, 3e-6 * sum);
    }

    @Test
    void theShearForceAtTheEdgeOfAPatchIsSmoothAcrossIt() {
        Load palm = new Load.Press(250, new Patch.Rectangle(0.1, 0.08), 0.45, 0.3);
        Response response = new SeriesAnalysis().statics(SeriesPanels.lid(), List.of(palm));
        double at = response.forces(0.5, 0.3).qx();
        double inside = response.forces(0.5 - 1e-7, 0.3).qx();
        double outside = response.forces(0.5 + 1e-7, 0.3).qx();
        assertEquals(at, (inside + outside) / 2, 1e-5 * Math.abs(at));
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
            PatchLoad band = new PatchLoad(-2000, x1, x2, 0, 50 * a, Triple.ZERO);
            double total = 2000 * (x2 - x1);
            double left = total * (1 - (x1 + x2) / (2 * a));
            for (Theory theory : List.of(Theory.FIRST_ORDER, Theory.LAYERED)) {
                SeriesSum sum = SeriesPanels.along(SeriesSum.Along.EITHER, theory, strip, band);
                Response response = new SeriesResponse(sum, List.of(), () -> sum);
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
