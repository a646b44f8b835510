package org.coachskin.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.coachskin.TestSchedules;
import org.coachskin.TestStacks;
import org.coachskin.failure.Mode;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Schedule;
import org.coachskin.laminate.Triple;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Opening;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Region;
import org.coachskin.panel.Shape;
import org.coachskin.panel.Zone;
import org.coachskin.panel.ZoneRecipe;
import org.junit.jupiter.api.Test;

class StripEdgesTest {

    private static final double A = 0.8;
    private static final double B = 0.5;
    private static final Laminate PLAIN = TestStacks.sandwich(2, 0.012, 1, 20e6, 8e6);
    private static final Laminate STRIP = TestStacks.sandwich(2, 0.027, 2, 20e6, 8e6);
    private static final Laminate BARE = Laminate.of(PLAIN.layers().get(0));

    private static Panel panel(Region region, Laminate laminate) {
        Opening vent = new Opening("vent", new Shape.Circle(0.1), 0.4, 0.25);
        return Panel.flat("lid", A, B, PLAIN)
                .withOpenings(List.of(vent))
                .withZones(List.of(new Zone("strip", region, laminate, 0, 0.25)));
    }

    private static double length(List<StripEdges.Side> sides) {
        return sides.stream()
                .filter(StripEdges.Side::thin)
                .mapToDouble(StripEdges.Side::length)
                .sum();
    }

    @Test
    void aRingIsReadAllRoundOnBothSides() {
        Panel panel = panel(new Region.Around("vent", 0.06), STRIP);
        List<StripEdges.Side> sides = StripEdges.of(panel);
        assertEquals(2 * Math.PI * 0.11, length(sides), 1e-9);
        assertEquals(sides.size() / 2, sides.stream().filter(StripEdges.Side::thin).count());
        for (StripEdges.Side side : sides) {
            double x = side.station().x() - 0.4;
            double y = side.station().y() - 0.25;
            assertEquals(side.thin(), Math.hypot(x, y) > 0.11);
            assertEquals(Math.atan2(y, x), side.angle(), 1e-9);
            assertEquals(side.thin() ? STRIP : PLAIN, side.beyond());
        }
    }

    @Test
    void aBandHasOneEdgeInsideThePanel() {
        Region front = new Region.AlongEdges(List.of(Edge.FRONT), 0.08);
        List<StripEdges.Side> sides = StripEdges.of(panel(front, STRIP));
        assertEquals(A, length(sides), 1e-9);
        assertTrue(sides.stream().allMatch(side -> Math.abs(side.station().y() - 0.08) < 1e-3));
    }

    /** By its corners a disc is read, and nearer to them nothing. */
    @Test
    void aRectangleIsReadButByItsCorners() {
        Region box = new Region.Box(0.1, 0.2, 0.1, 0.4);
        double read = length(StripEdges.of(panel(box, STRIP)));
        assertTrue(read > 0.5 && read < 0.8, "length " + read);
    }

    @Test
    void whereFoamGoesOnOrEndsThereIsNoBevel() {
        Region ring = new Region.Around("vent", 0.06);
        assertEquals(List.of(), StripEdges.of(panel(ring, BARE)));
        Laminate morePlies = TestStacks.sandwich(3, 0.012, 2, 20e6, 8e6);
        assertEquals(List.of(), StripEdges.of(panel(ring, morePlies)));
    }

    /** What is found to fail at so many times the load fails under so many times the load. */
    @Test
    void theLoadTimesItsReserveHasTheReserveOne() {
        for (Mode mode : List.of(Mode.BOND, Mode.KINK)) {
            double reserve = reserve(mode, 1);
            assertTrue(reserve > 0.01 && reserve < 100, mode + " " + reserve);
            assertEquals(1, reserve(mode, reserve), 1e-6);
        }
        assertTrue(reserve(Mode.BOND, 1, 0.2) > 1.5 * reserve(Mode.BOND, 1));
    }

    private static double reserve(Mode mode, double times) {
        return reserve(mode, times, 1 / 3.0);
    }

    private static double reserve(Mode mode, double times, double slope) {
        Schedule schedule = TestSchedules.sandwich(2, 0.012, 1);
        ZoneRecipe strip =
                new ZoneRecipe(
                        "strip",
                        new Region.Box(0.2, 0.6, 0.1, 0.4),
                        new ZoneRecipe.FoamStrip(0.015, List.of(), slope));
        Panel panel = Panel.flat("lid", A, B, schedule.laminate());
        LoadCase snow = LoadCase.of("snow", LoadCase.Kind.SPREAD, new Load.Pressure(1000 * times));
        Job job = Job.of(panel, schedule, List.of(strip), List.of(snow), Limits.STANDARD);
        return PanelCheck.brief().margins(job).stream()
                .filter(margin -> margin.mode() == mode)
                .findFirst()
                .orElseThrow()
                .reserve();
    }

    /** Pulled, the skin comes off where foam is thin; pushed, where it is thick. */
    @Test
    void pullGoesByTheForceAcrossTheEdge() {
        Region front = new Region.AlongEdges(List.of(Edge.FRONT), 0.08);
        for (StripEdges.Side side : StripEdges.of(panel(front, STRIP))) {
            double off = side.pull(new Triple(7000, 1000, 300));
            assertEquals(side.thin() ? 250 : -250, off, 1e-9);
            assertEquals(1, side.across().y(), 1e-12);
        }
    }
}
