package org.coachskin.series;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.NoAnswerException;
import org.coachskin.TestStacks;
import org.coachskin.analysis.Response;
import org.coachskin.harmonic.Theory;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Patch;
import org.coachskin.laminate.Triple;
import org.coachskin.panel.Crown;
import org.coachskin.panel.Load;
import org.coachskin.panel.Panel;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class SeriesAnalysisTest {

    /**
     * What the series promises, relative to the larger of the value and a thousandth of its field's
     * largest.
     */
    private static final double PROMISED = 1e-6;

    private static final Laminate LID = TestStacks.sandwich(2, 0.012, 1, 12e6, 4.2e6);

    private static final double[][] PLACES = {
        {0.45, 0.40}, {0.30, 0.20}, {0.47, 0.38}, {0.52, 0.46}, {0.05, 0.55}, {0.85, 0.10}
    };

    @TestFactory
    List<DynamicTest> aSeriesAlongXAgreesWithOneAlongY() {
        List<DynamicTest> tests = new ArrayList<>();
        for (Theory theory : List.of(Theory.FIRST_ORDER, Theory.LAYERED)) {
            for (Crown crown : List.of(Crown.FLAT, new Crown(0.25, 0.1))) {
                for (Laminate laminate :
                        List.of(LID, TestStacks.sandwich(2, 0.012, 0, 12e6, 4.2e6))) {
                    Panel panel = Panel.flat("lid", 0.9, 0.6, laminate).withCrown(crown);
                    tests.add(
                            DynamicTest.dynamicTest(
                                    theory + " " + crown + " " + laminate.layers().size(),
                                    () -> compare(theory, panel)));
                }
            }
        }
        return tests;
    }

    @Test
    void aStripIsAPatchAcrossTheWholeWidth() {
        Panel panel = Panel.flat("lid", 0.9, 0.6, LID);
        Load strip = new Load.StripPressure(500, 0, 0.09);
        Load press = new Load.Press(500 * 0.9 * 0.09, new Patch.Rectangle(0.9, 0.09), 0.45, 0.045);
        Response ours = new SeriesAnalysis().statics(panel, List.of(strip));
        Response same = new SeriesAnalysis().statics(panel, List.of(press));
        for (double[] place : PLACES) {
            double expected = same.deflection(place[0], place[1]);
            assertTrue(expected > 0);
            assertEquals(expected, ours.deflection(place[0], place[1]), 1e-9 * expected);
        }
        Load tooFar = new Load.StripPressure(500, 0.5, 0.61);
        assertThrows(
                IllegalArgumentException.class,
                () -> new SeriesAnalysis().statics(panel, List.of(tooFar)));
    }

    private static void compare(Theory theory, Panel panel) {
        var patch = new SeriesAnalysis.PatchLoad(-31250, 0.4, 0.5, 0.36, 0.44, Triple.ZERO);
        var part = new SeriesResponse.Part(patch, new PanelSeries(theory, panel, Triple.ZERO));
        var alongX = new SeriesResponse(theory, panel, List.of(part), SeriesResponse.Along.X);
        var alongY = new SeriesResponse(theory, panel, List.of(part), SeriesResponse.Along.Y);
        double[][] x = new double[PLACES.length][];
        double[][] y = new double[PLACES.length][];
        for (int p = 0; p < PLACES.length; p++) {
            x[p] = alongX.fields(PLACES[p][0], PLACES[p][1]);
            y[p] = alongY.fields(PLACES[p][0], PLACES[p][1]);
        }
        for (int i = 0; i < x[0].length; i++) {
            double largest = 0;
            for (double[] fields : x) {
                largest = Math.max(largest, Math.abs(fields[i]));
            }
            for (int p = 0; p < PLACES.length; p++) {
                // Symmetric stacks do not move in their plane: there only rounding is left.
                double scale = Math.max(Math.abs(x[p][i]), 1e-3 * largest) + 1e-9;
                assertEquals(x[p][i], y[p][i], PROMISED * scale, "field " + i + " at place " + p);
            }
        }
    }

    @Test
    void theShearForceAtTheEdgeOfAPatchIsSmoothAcrossIt() {
        Response response = pressed(0.45, 0.3);
        double at = response.forces(0.5, 0.3).qx();
        double inside = response.forces(0.5 - 1e-7, 0.3).qx();
        double outside = response.forces(0.5 + 1e-7, 0.3).qx();
        assertEquals(at, (inside + outside) / 2, 1e-5 * Math.abs(at));
    }

    @Test
    void aThinIsotropicSquareSagsByTheBooksCoefficient() {
        // 0.00406 q a^4 / D (Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed.
        // 1959, table 8).
        double t = 0.002;
        Panel plate =
                Panel.flat(
                        "plate",
                        0.8,
                        0.8,
                        Laminate.of(new Layer.Laid(TestStacks.isotropic(70e9, 0.3, t), 0)));
        double d = 70e9 * t * t * t / 12 / (1 - 0.09);
        double sag =
                new SeriesAnalysis()
                        .statics(plate, List.of(new Load.Pressure(100)))
                        .deflection(0.4, 0.4);
        assertEquals(0.00406, sag * d / (100 * Math.pow(0.8, 4)), 0.000005);
    }

    @Test
    void theRimCarriesWhatPressesOnThePanel() {
        // Vertical forces on the four edges; the corners' share of a twisting moment is none when
        // rotations are held.
        Panel panel = Panel.flat("lid", 0.9, 0.6, LID);
        Response response = new SeriesAnalysis().statics(panel, List.of(new Load.Pressure(1000)));
        int n = 400;
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double x = 0.9 * (i + 0.5) / n;
            double y = 0.6 * (i + 0.5) / n;
            sum += 2 * Math.abs(response.forces(x, 0).qy()) * 0.9 / n;
            sum += 2 * Math.abs(response.forces(0, y).qx()) * 0.6 / n;
        }
        assertEquals(1000 * 0.9 * 0.6, sum, 0.005 * 540);
    }

    @Test
    void twoPalmsChangePlacesWithoutChangingWhatTheOtherFeels() {
        double there = pressed(0.3, 0.2).deflection(0.6, 0.4);
        double back = pressed(0.6, 0.4).deflection(0.3, 0.2);
        // Reciprocity holds for the mean over the patch; the difference to its middle is a few per
        // cent.
        assertEquals(there, back, 0.02 * there);
    }

    @Test
    void loadsAddUp() {
        Panel panel = Panel.flat("lid", 0.9, 0.6, LID);
        Load palm = new Load.Press(250, new Patch.Rectangle(0.1, 0.08), 0.3, 0.2);
        Load wind = new Load.Pressure(-500);
        SeriesAnalysis analysis = new SeriesAnalysis();
        double both = analysis.statics(panel, List.of(palm, wind)).deflection(0.4, 0.3);
        double apart =
                analysis.statics(panel, List.of(palm)).deflection(0.4, 0.3)
                        + analysis.statics(panel, List.of(wind)).deflection(0.4, 0.3);
        assertEquals(apart, both, 1e-9 * Math.abs(apart) + 1e-12);
    }

    @Test
    void aCrownStiffensAndThinnerFoamSoftens() {
        double flat = pressed(0.45, 0.3).deflection(0.45, 0.3);
        Panel crowned =
                Panel.flat("lid", 0.9, 0.6, LID).withCrown(Crown.ofRise(0.03, 0.9, 0.02, 0.6));
        double less =
                new SeriesAnalysis()
                        .statics(crowned, List.of(palm(0.45, 0.3)))
                        .deflection(0.45, 0.3);
        assertTrue(less < 0.8 * flat, less + " against " + flat);
    }

    @Test
    void clothAtAnUnbalancedAngleIsRefusedInWords() {
        Laminate turned =
                Laminate.of(
                        new Layer.Laid(
                                TestStacks.ply(14.5e9, 12e9, 0.13, 3.1e9, 3.0e9, 0.414e-3), 0.3),
                        new Layer.Core(TestStacks.foam(12e6, 4.2e6), 0.012),
                        new Layer.Laid(TestStacks.ply(), 0));
        NoAnswerException e =
                assertThrows(
                        NoAnswerException.class,
                        () ->
                                new SeriesAnalysis()
                                        .statics(
                                                Panel.flat("lid", 0.9, 0.6, turned),
                                                List.of(palm(0.45, 0.3))));
        assertTrue(e.problem().what().contains("twists"), e.problem().what());
    }

    @Test
    void frequencyAndStaticDeflectionUnderOwnWeightAreOfAKind() {
        Panel panel = Panel.flat("lid", 0.9, 0.6, LID);
        double sag =
                new SeriesAnalysis()
                        .statics(panel, List.of(new Load.OwnWeight(9.81)))
                        .deflection(0.45, 0.3);
        double omega = 2 * Math.PI * new SeriesAnalysis().frequency(panel);
        // A sine wave of pressure p bends by p/(m omega^2); an even pressure raises 16/pi^2 of the
        // first wave in the
        // middle, and the waves (1,3) and (3,1) take away some per cent of it.
        double firstWave = 16 / (Math.PI * Math.PI) * 9.81 / (omega * omega);
        assertTrue(sag < firstWave && sag > 0.9 * firstWave, sag + " against " + firstWave);
    }

    private static Load palm(double x, double y) {
        return new Load.Press(250, new Patch.Rectangle(0.1, 0.08), x, y);
    }

    private static Response pressed(double x, double y) {
        return new SeriesAnalysis().statics(Panel.flat("lid", 0.9, 0.6, LID), List.of(palm(x, y)));
    }
}
