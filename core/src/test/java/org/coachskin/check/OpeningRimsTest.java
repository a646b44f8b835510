package org.coachskin.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.coachskin.TestSchedules;
import org.coachskin.analysis.CaseResponse;
import org.coachskin.failure.Mode;
import org.coachskin.failure.OpenHole;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.LayeredStiffness;
import org.coachskin.laminate.Schedule;
import org.coachskin.laminate.SectionState;
import org.coachskin.panel.Crown;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Opening;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Shape;
import org.coachskin.panel.Support;
import org.coachskin.shell.ShellAnalysis;
import org.junit.jupiter.api.Test;

class OpeningRimsTest {

    private static final Shape.Rectangle SHARP = new Shape.Rectangle(0.12, 0.06, 0);

    private static List<Shape.Point> corners() {
        return List.of(
                new Shape.Point(-0.06, -0.03),
                new Shape.Point(0.06, -0.03),
                new Shape.Point(0.06, 0.03),
                new Shape.Point(-0.06, 0.03));
    }

    private static Job job(Shape shape) {
        Schedule schedule = TestSchedules.sandwich(1, 0.012, 1);
        Panel panel =
                new Panel("lid", 0.6, 0.4, Crown.FLAT, schedule.laminate(), new Support.WholeRim())
                        .withOpenings(List.of(new Opening("vent", shape, 0.26, 0.22)));
        LoadCase wind = LoadCase.of("wind", LoadCase.Kind.SPREAD, new Load.Pressure(600));
        return Job.of(panel, schedule, List.of(), List.of(wind), Limits.STANDARD);
    }

    private static Margin weakestPly(Job job) {
        return PanelCheck.brief().margins(job).stream()
                .filter(
                        m ->
                                List.of(Mode.PLY_PULLED, Mode.PLY_CRUSHED, Mode.PLY_SHEARED)
                                        .contains(m.mode()))
                .reduce((a, b) -> b.multiplier() < a.multiplier() ? b : a)
                .orElseThrow();
    }

    /** Worked out here once more, from the answer of the elements alone. */
    @Test
    void theWorseOfPointAndMeanGoverns() {
        Job job = job(new Shape.Circle(0.05));
        Panel panel = job.panel();
        CaseResponse answer =
                new ShellAnalysis(ShellAnalysis.ORDER - 1, false)
                        .loadCases(panel, job.loads())
                        .get(0);
        OpenHole hole = OpenHole.STANDARD;
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < 48; k++) {
            double c = StrictMath.cos(2 * Math.PI * k / 48);
            double s = StrictMath.sin(2 * Math.PI * k / 48);
            SectionState mean = SectionState.ZERO;
            for (OpenHole.Sample sample : hole.samples()) {
                double r = 0.025 + sample.distance();
                mean =
                        mean.plus(
                                answer.loaded().state(0.26 + r * c, 0.22 + r * s), sample.weight());
            }
            double r = 0.025 + hole.point();
            SectionState point = answer.loaded().state(0.26 + r * c, 0.22 + r * s);
            least = Math.min(least, Math.min(reserve(panel, mean), reserve(panel, point)));
        }
        Margin weakest = weakestPly(job);
        assertEquals(least, weakest.multiplier(), 1e-4 * least);
        assertTrue(weakest.remark().endsWith("an assumption"), weakest.remark());
        assertTrue(weakest.place().words().contains("beside the vent"));
    }

    private static double reserve(Panel panel, SectionState state) {
        Laminate laminate = panel.laminate();
        LayeredStiffness stiffness = LayeredStiffness.of(laminate);
        return PlyReserve.least(laminate, 0, z -> state.strainAt(stiffness, z));
    }

    /** Right at a sharp corner there is no stress to be had; what is read here has a limit. */
    @Test
    void atASharpCornerMoreOrdersOfElementsChangeLittle() {
        Job job = job(SHARP);
        Margin fine =
                new PanelCheck()
                        .check(job).margins().stream()
                                .filter(m -> m.mode() == weakestPly(job).mode())
                                .findFirst()
                                .orElseThrow();
        assertEquals(1, weakestPly(job).multiplier() / fine.multiplier(), 0.1);
        assertFalse(fine.remark().isEmpty());
    }

    @Test
    void aPolygonIsJudgedAsTheRectangleItIs() {
        double rectangle = weakestPly(job(SHARP)).multiplier();
        double polygon = weakestPly(job(new Shape.Polygon(corners()))).multiplier();
        assertEquals(rectangle, polygon, 0.02 * rectangle);
    }

    @Test
    void aRoundedCornerSpares() {
        double sharp = weakestPly(job(SHARP)).multiplier();
        double round = weakestPly(job(new Shape.Rectangle(0.12, 0.06, 0.03))).multiplier();
        assertTrue(round > 1.2 * sharp, round + " against " + sharp);
    }

    /**
     * A wide sheet has 3 to 4 times the stress of the uncut skin; a plate that does not shear 1.8
     * (isotropic, bent one way), and foam lies between.
     */
    @Test
    void aRoundOpeningRaisesStressByLessThanInAWideSheet() {
        Verdict verdict = new PanelCheck().check(job(new Shape.Circle(0.05)));
        Concentration raised = Concentration.of(verdict).orElseThrow();
        assertEquals("vent", raised.opening());
        assertTrue(raised.solved() > 1.2 && raised.solved() < raised.wideSheet(), "" + raised);
        assertTrue(raised.wideSheet() > 2 && raised.wideSheet() < 5, "" + raised);
        assertEquals(
                Concentration.of(verdict),
                verdict.margins().stream()
                        .filter(m -> m.mode().isOfPlies())
                        .findFirst()
                        .flatMap(m -> Concentration.of(verdict, m)));
    }

    @Test
    void whereTheTheoryHasNothingToSayItIsNotAsked() {
        assertTrue(Concentration.of(new PanelCheck().check(job(SHARP))).isEmpty());
        Shape.Circle nearTheEdge = new Shape.Circle(0.3);
        assertTrue(Concentration.of(new PanelCheck().check(job(nearTheEdge))).isEmpty());
    }
}
