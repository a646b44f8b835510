package org.coachskin.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.coachskin.TestSchedules;
import org.coachskin.TestStacks;
import org.coachskin.analysis.Analysis;
import org.coachskin.laminate.Patch;
import org.coachskin.panel.Crown;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Opening;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Shape;
import org.coachskin.panel.Support;
import org.coachskin.shell.ShellAnalysis;
import org.junit.jupiter.api.Test;

class SweepingTest {

    private static final Analysis SHELL = new ShellAnalysis(2, false);

    private static final LoadCase PALM =
            LoadCase.of(
                    "palm",
                    LoadCase.Kind.FELT,
                    new Load.Press(250, new Patch.Rectangle(0.1, 0.08), 0.3, 0.3));

    private static final Job FIRST =
            Job.of(
                    "lid",
                    0.6,
                    0.4,
                    Crown.FLAT,
                    new Support.WholeRim(),
                    TestSchedules.sandwich(1, 0.012, 1),
                    List.of(PALM),
                    Limits.STANDARD);

    private static Panel carried(Edge... edges) {
        return new Panel(
                "shelf",
                0.6,
                0.4,
                Crown.FLAT,
                TestStacks.sandwich(1, 0.012, 1, 12e6, 4.2e6),
                new Support.Fittings(
                        Arrays.stream(edges)
                                .map(edge -> (Fitting) Fitting.HeldEdge.carried(edge))
                                .toList()));
    }

    @Test
    void aFreeEdgeIsSoftestInItsMiddle() {
        Swept swept = Sweeping.of(carried(Edge.FRONT, Edge.LEFT, Edge.RIGHT), PALM, SHELL);
        Swept.Feel softest = swept.softest();
        assertEquals(0.3, softest.x(), 0.02);
        assertEquals(0.36, softest.y(), 1e-9);
        for (Swept.Feel feel : swept.places()) {
            assertTrue(feel.stiffness() >= softest.stiffness() * (1 - Swept.SAME), feel.toString());
            assertTrue(feel.x() > 0.0499 && feel.x() < 0.5501, feel.toString());
            assertTrue(feel.y() > 0.0399 && feel.y() < 0.3601, feel.toString());
        }
    }

    @Test
    void ofTwoImagesTheFirstIsNamed() {
        Panel clamped =
                carried(Edge.FRONT)
                        .withSupport(
                                new Support.Fittings(
                                        List.of(
                                                Fitting.HeldEdge.clamped(Edge.FRONT),
                                                Fitting.HeldEdge.clamped(Edge.REAR))));
        Swept swept = Sweeping.of(clamped, PALM, SHELL);
        assertEquals(0.05, swept.softest().x(), 1e-9);
        assertEquals(0.2, swept.softest().y(), 0.02);
    }

    @Test
    void noPlaceOverAnOpeningIsTried() {
        Panel window =
                carried(Edge.values())
                        .withOpenings(
                                List.of(
                                        new Opening(
                                                "window",
                                                new Shape.Rectangle(0.2, 0.1, 0.02),
                                                0.3,
                                                0.2)));
        Swept swept = Sweeping.of(window, PALM, SHELL);
        for (Swept.Feel feel : swept.places()) {
            boolean over = Math.abs(feel.x() - 0.3) < 0.149 && Math.abs(feel.y() - 0.2) < 0.089;
            assertTrue(!over, feel.toString());
        }
        // It is softest beside the longer side of the window.
        assertEquals(0.3, swept.softest().x(), 0.03);
    }

    @Test
    void aJobIsPlacedByLookingAndAPlainPanelInItsMiddle() {
        Panel plain = Panel.flat("lid", 0.6, 0.4, TestStacks.sandwich(1, 0.012, 1, 12e6, 4.2e6));
        Job job = FIRST.withPanel(plain).withLoads(List.of(PALM.withSoftest(true)));
        Load.Press there = (Load.Press) Sweeping.placed(job, SHELL).loads().get(0).loads().get(0);
        assertEquals(0.3, there.x(), 1e-12);
        assertEquals(0.2, there.y(), 1e-12);
        Job free = job.withPanel(carried(Edge.FRONT, Edge.LEFT, Edge.RIGHT));
        LoadCase found = Sweeping.placed(free, SHELL).loads().get(0);
        assertTrue(found.softest());
        assertEquals(0.36, ((Load.Press) found.loads().get(0)).y(), 1e-9);
        assertEquals(free.withLoadsPlaced(), Sweeping.placed(free.withLoadsPlaced(), SHELL));
    }

    @Test
    void aPlaceIsLookedForOnePressAlone() {
        LoadCase wind = LoadCase.of("wind", LoadCase.Kind.SPREAD, new Load.Pressure(-100));
        assertThrows(IllegalArgumentException.class, () -> wind.withSoftest(true));
    }

    @Test
    void aPlaceAtTheRimIsToldByEdgeOrCorner() {
        Panel panel = carried(Edge.FRONT);
        assertEquals("in the rear left corner", Surroundings.atRim(panel, 0.001, 0.395));
        assertEquals("in the front right corner", Surroundings.atRim(panel, 0.6, 0));
        assertEquals("at the rear edge, 300 mm from left", Surroundings.atRim(panel, 0.3, 0.4));
        assertEquals("at the left edge, 200 mm from front", Surroundings.atRim(panel, 0, 0.2));
        assertEquals("300 mm from left, 200 mm from front", Surroundings.atRim(panel, 0.3, 0.2));
    }
}
