package org.coachskin.series;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.coachskin.NoAnswerException;
import org.coachskin.TestStacks;
import org.coachskin.analysis.Response;
import org.coachskin.analysis.SectionForces;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Patch;
import org.coachskin.laminate.Stiffness;
import org.coachskin.laminate.ThermalState;
import org.coachskin.panel.Crown;
import org.coachskin.panel.Load;
import org.coachskin.panel.Panel;
import org.junit.jupiter.api.Test;

/** What must hold in any panel whatever its figures. */
class SeriesMechanicsTest {

    private static final double[] GAUSS = {
        0.03376524289842,
        0.16939530676686,
        0.3806904069584,
        0.61930959304159,
        0.83060469323313,
        0.96623475710157
    };

    private static final double[] WEIGHT = {
        0.08566224618958,
        0.18038078652406,
        0.23395696728634,
        0.23395696728634,
        0.18038078652406,
        0.08566224618958
    };

    /** A panel of any sort and two presses on it. */
    record Pressed(Panel panel, Load.Press one, Load.Press two) {}

    @Provide
    Arbitrary<Pressed> pressed() {
        Arbitrary<Panel> panel =
                Combinators.combine(
                                Arbitraries.of(List.copyOf(SeriesPanels.all().values())),
                                Arbitraries.doubles().between(0.3, 1.5),
                                Arbitraries.doubles().between(0.3, 1.5))
                        .as(
                                (p, a, b) ->
                                        new Panel(
                                                p.name(),
                                                a,
                                                b,
                                                p.crown(),
                                                p.laminate(),
                                                p.support()));
        return Combinators.combine(panel, place(), place(), place(), place())
                .as(
                        (p, x1, y1, x2, y2) ->
                                new Pressed(p, press(p, 250, x1, y1), press(p, 90, x2, y2)));
    }

    private static Arbitrary<Double> place() {
        return Arbitraries.doubles().between(0.2, 0.8);
    }

    private static Load.Press press(Panel panel, double force, double x, double y) {
        return new Load.Press(
                force, new Patch.Rectangle(0.05, 0.08), x * panel.width(), y * panel.length());
    }

    private static Response solve(Panel panel, Load... loads) {
        return new SeriesAnalysis().statics(panel, List.of(loads));
    }

    /** Mean deflection over the patch of {@code press}, by a product Gauss rule. */
    private static double mean(Response response, Load.Press press) {
        double sum = 0;
        for (int i = 0; i < GAUSS.length; i++) {
            for (int j = 0; j < GAUSS.length; j++) {
                sum +=
                        WEIGHT[i]
                                * WEIGHT[j]
                                * response.deflection(
                                        press.x() + press.patch().halfX() * (2 * GAUSS[i] - 1),
                                        press.y() + press.patch().halfY() * (2 * GAUSS[j] - 1));
            }
        }
        return sum;
    }

    @Property(tries = 25, seed = "7261")
    void oneForceMovesAnotherAsTheOtherMovesIt(@ForAll("pressed") Pressed pressed) {
        double there = pressed.two.force() * mean(solve(pressed.panel, pressed.one), pressed.two);
        double back = pressed.one.force() * mean(solve(pressed.panel, pressed.two), pressed.one);
        double own = pressed.one.force() * mean(solve(pressed.panel, pressed.one), pressed.one);
        assertEquals(there, back, 1e-6 * Math.max(Math.abs(there), 1e-3 * own));
    }

    @Property(tries = 25, seed = "7262")
    void aPressDoesPositiveWorkAndLoadsAddUp(@ForAll("pressed") Pressed pressed) {
        Response one = solve(pressed.panel, pressed.one);
        Response two = solve(pressed.panel, pressed.two);
        Response both = solve(pressed.panel, pressed.one, pressed.two);
        double x = pressed.two.x();
        double y = pressed.two.y();
        assertTrue(mean(one, pressed.one) > 0);
        double sum = one.deflection(x, y) + two.deflection(x, y);
        assertEquals(sum, both.deflection(x, y), 1e-12 * Math.abs(two.deflection(x, y)));
    }

    @Property(tries = 25, seed = "7263")
    void aPanelInAMirrorDoesTheSameInTheMirror(@ForAll("pressed") Pressed pressed) {
        Panel panel = pressed.panel;
        Load.Press press = pressed.one;
        Load.Press mirrored =
                new Load.Press(press.force(), press.patch(), panel.width() - press.x(), press.y());
        double x = pressed.two.x();
        double y = pressed.two.y();
        Response here = solve(panel, press);
        double expected = here.deflection(x, y);
        double scale = here.deflection(press.x(), press.y());
        assertEquals(
                expected,
                solve(panel, mirrored).deflection(panel.width() - x, y),
                1e-8 * Math.max(Math.abs(expected), 1e-3 * Math.abs(scale)));
    }

    @Property(tries = 15, seed = "7264")
    void theRimCarriesWhatIsPressedOnAFlatPanel(@ForAll("pressed") Pressed pressed) {
        Panel panel = pressed.panel.withCrown(Crown.FLAT);
        double force = pressed.one.force();
        assertEquals(force, carried(panel, solve(panel, pressed.one)::forces), 1e-6 * force);
        double weight = 1000 * panel.area();
        assertEquals(
                weight,
                carried(panel, solve(panel, new Load.Pressure(1000))::forces),
                1e-6 * weight);
    }

    /** The shear force along all four edges, which is what the rim pushes back with. */
    static double carried(Panel panel, BiFunction<Double, Double, SectionForces> forces) {
        double a = panel.width();
        double b = panel.length();
        double sum = 0;
        int parts = 24;
        for (int p = 0; p < parts; p++) {
            for (int i = 0; i < GAUSS.length; i++) {
                // Shear forces change fast near the corners: more points there.
                double turn = Math.PI * (p + GAUSS[i]) / parts;
                double s = (1 - StrictMath.cos(turn)) / 2;
                double w = Math.PI / 2 * StrictMath.sin(turn) * WEIGHT[i] / parts;
                sum += b * w * (forces.apply(a, s * b).qx() - forces.apply(0.0, s * b).qx());
                sum += a * w * (forces.apply(s * a, b).qy() - forces.apply(s * a, 0.0).qy());
            }
        }
        return sum;
    }

    @Test
    void aWarmedIsotropicSheetBowsAtItsMiddleWithAKnownMoment() {
        // Free bow k, Poisson nu: the middle of a square takes up M = D (1 - nu^2) k/2, since the
        // curvatures add up to (1 + nu) k everywhere (Timoshenko and Woinowsky-Krieger, Theory of
        // plates and shells, 2nd ed. 1959, article 24; derived here).
        Laminate sheet =
                SeriesPanels.laminate(SeriesPanels.laid(TestStacks.isotropic(70e9, 0.3, 2e-3), 0));
        Panel panel = Panel.flat("sheet", 0.5, 0.5, sheet);
        double k = ThermalState.of(sheet, 10, 40).curvature().x();
        Response response = solve(panel, new Load.Heat(40, 10));
        double d = Stiffness.of(sheet).d().m11();
        double moment = -d * (1 - 0.3 * 0.3) * k / 2;
        assertEquals(moment, response.forces(0.25, 0.25).m().x(), 1e-6 * Math.abs(moment));
        assertEquals(moment, response.forces(0.25, 0.25).m().y(), 1e-6 * Math.abs(moment));
    }

    @Test
    void theLowestFrequencyIsTheLowestOfAllWaves() {
        for (Map.Entry<String, Panel> entry : SeriesPanels.all().entrySet()) {
            SeriesAnalysis analysis = new SeriesAnalysis();
            double lowest = Double.POSITIVE_INFINITY;
            for (int m = 1; m <= 12; m++) {
                for (int n = 1; n <= 12; n++) {
                    lowest = Math.min(lowest, analysis.frequency(entry.getValue(), m, n));
                }
            }
            assertEquals(
                    lowest, analysis.frequency(entry.getValue()), 1e-9 * lowest, entry.getKey());
        }
    }

    @Test
    void aDeepTroughOfThinSheetSwingsInMoreThanTenWaves() {
        Laminate sheet =
                SeriesPanels.laminate(SeriesPanels.laid(TestStacks.isotropic(70e9, 0.3, 1e-3), 0));
        Panel trough = Panel.flat("trough", 4, 1, sheet).withCrown(new Crown(1 / 1.5, 0));
        SeriesAnalysis analysis = new SeriesAnalysis();
        double lowest = analysis.frequency(trough);
        double ofTen = Double.POSITIVE_INFINITY;
        double ofForty = Double.POSITIVE_INFINITY;
        for (int m = 1; m <= 40; m++) {
            double f = analysis.frequency(trough, m, 1);
            ofForty = Math.min(ofForty, f);
            ofTen = m <= 10 ? Math.min(ofTen, f) : ofTen;
        }
        assertTrue(ofForty < 0.99 * ofTen);
        assertEquals(ofForty, lowest, 1e-9 * lowest);
    }

    @Test
    void clothAtAnAngleThatNothingBalancesIsRefusedWithWhatToDo() {
        Laminate slanted =
                SeriesPanels.laminate(
                        SeriesPanels.laid(TestStacks.unequal(), 30), SeriesPanels.foam(0.01));
        Panel panel = Panel.flat("slanted", 0.5, 0.5, slanted);
        NoAnswerException refused =
                assertThrows(NoAnswerException.class, () -> solve(panel, new Load.Pressure(1000)));
        String words = refused.problem().toString();
        assertTrue(words.contains("twists"), words);
        assertTrue(words.contains("cloth lies at an angle"), words);
        assertThrows(NoAnswerException.class, () -> new SeriesAnalysis().frequency(panel));
    }

    @Test
    void aPatchOverTheEdgeIsRefused() {
        Panel panel = SeriesPanels.lid();
        assertThrows(
                IllegalArgumentException.class,
                () -> solve(panel, new Load.Press(250, new Patch.Rectangle(0.1, 0.1), 0.04, 0.3)));
    }

    @Test
    void aStripIsAPatchAcrossTheWholeWidth() {
        Panel panel = SeriesPanels.lid();
        Response strip = solve(panel, new Load.StripPressure(500, 0, 0.09));
        Load across = new Load.Press(500 * 0.9 * 0.09, new Patch.Rectangle(0.9, 0.09), 0.45, 0.045);
        Response same = solve(panel, across);
        for (double y : new double[] {0.05, 0.09, 0.2, 0.6}) {
            double expected = same.deflection(0.3, y);
            assertTrue(expected > 0);
            assertEquals(expected, strip.deflection(0.3, y), 1e-9 * expected);
        }
        assertThrows(
                IllegalArgumentException.class,
                () -> solve(panel, new Load.StripPressure(500, 0.6, 0.71)));
    }

    @Test
    void aDiscIsTheSquareOfEqualAreaAndFarAwayItDoesNotMatter() {
        Panel panel = SeriesPanels.lid();
        double side = Math.sqrt(Math.PI) * 0.03;
        Response disc = solve(panel, new Load.Press(250, new Patch.Disc(0.06), 0.4, 0.3));
        Response square =
                solve(panel, new Load.Press(250, new Patch.Rectangle(side, side), 0.4, 0.3));
        assertEquals(square.deflection(0.4, 0.3), disc.deflection(0.4, 0.3), 1e-15);
    }

    @Test
    void ownWeightIsAPressureOfMassTimesGravity() {
        Panel panel = SeriesPanels.lid();
        double weight = 9.81 * panel.laminate().mass();
        assertEquals(
                solve(panel, new Load.Pressure(weight)).deflection(0.4, 0.3),
                solve(panel, new Load.OwnWeight(9.81)).deflection(0.4, 0.3),
                1e-15);
    }

    @Test
    void withFoamThatHardlyShearsEveryTheoryIsTheFirstOrderOne() {
        Laminate rigid = TestStacks.sandwich(1, 0.01, 1, 12e6, 4.2e9);
        Panel panel = Panel.flat("rigid", 0.6, 0.5, rigid);
        List<Load> loads = List.of(new Load.Pressure(1000));
        double first = SeriesAnalysis.firstOrder().statics(panel, loads).deflection(0.3, 0.25);
        double layered = new SeriesAnalysis().statics(panel, loads).deflection(0.3, 0.25);
        assertEquals(first, layered, 1e-3 * first);
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
    void loadsAddUp() {
        Panel panel = SeriesPanels.lid();
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
    void aCrownStiffens() {
        Load palm = new Load.Press(250, new Patch.Rectangle(0.1, 0.08), 0.45, 0.35);
        Panel flat = SeriesPanels.lid();
        Panel crowned = flat.withCrown(Crown.ofRise(0.03, 0.9, 0.02, 0.7));
        double less = solve(crowned, palm).deflection(0.45, 0.35);
        double more = solve(flat, palm).deflection(0.45, 0.35);
        assertTrue(less < 0.8 * more, less + " against " + more);
    }

    @Test
    void frequencyAndStaticDeflectionUnderOwnWeightAreOfAKind() {
        Panel panel = Panel.flat("lid", 0.9, 0.6, SeriesPanels.lid().laminate());
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
}
