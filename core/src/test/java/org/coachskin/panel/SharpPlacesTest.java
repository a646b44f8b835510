package org.coachskin.panel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.coachskin.TestStacks;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.junit.jupiter.api.Test;

class SharpPlacesTest {

    private static final Laminate STACK = TestStacks.sandwich(2, 0.012, 1, 12e6, 4.2e6);

    private static final Laminate BARE = Laminate.of(new Layer.Laid(TestStacks.ply(), 0));

    private static Panel lid() {
        return Panel.flat("lid", 0.9, 0.6, STACK);
    }

    private static void assertSharp(Panel panel, double... xy) {
        Set<Shape.Point> wanted = new HashSet<>();
        for (int i = 0; i < xy.length; i += 2) {
            wanted.add(new Shape.Point(xy[i], xy[i + 1]));
        }
        assertEquals(wanted, new HashSet<>(panel.sharpPlaces()));
    }

    @Test
    void aPlainPanelHasNone() {
        assertSharp(lid());
    }

    @Test
    void aBandHasOneWhereItTurns() {
        Region corner = new Region.AlongEdges(List.of(Edge.FRONT, Edge.LEFT), 0.05);
        assertSharp(lid().withZones(List.of(new Zone("lip", corner, BARE, 0))), 0.05, 0.05);
        Region straight = new Region.AlongEdges(List.of(Edge.FRONT, Edge.REAR), 0.05);
        assertSharp(lid().withZones(List.of(new Zone("lip", straight, BARE, 0))));
    }

    @Test
    void aPatchHasThoseCornersThatLieOnThePanel() {
        Region patch = new Region.Box(-0.1, 0.25, 0.125, 0.5);
        assertSharp(
                lid().withZones(List.of(new Zone("patch", patch, BARE, 0))),
                0.25,
                0.125,
                0.25,
                0.5);
    }

    @Test
    void anOpeningHasThemWhereItIsNotRound() {
        Opening sharp = new Opening("vent", new Shape.Rectangle(0.25, 0.125, 0), 0.5, 0.25);
        assertSharp(
                lid().withOpenings(List.of(sharp)),
                0.375,
                0.1875,
                0.625,
                0.1875,
                0.375,
                0.3125,
                0.625,
                0.3125);
        Opening round = new Opening("vent", new Shape.Rectangle(0.25, 0.125, 0.01), 0.5, 0.25);
        assertSharp(lid().withOpenings(List.of(round)));
    }

    @Test
    void anOutlineHasThemWhereItPointsInward() {
        Shape outline =
                new Shape.Polygon(
                        List.of(
                                new Shape.Point(0, 0),
                                new Shape.Point(0.9, 0),
                                new Shape.Point(0.9, 0.6),
                                new Shape.Point(0.5, 0.6),
                                new Shape.Point(0.5, 0.4),
                                new Shape.Point(0, 0.4)));
        Panel panel =
                new Panel(
                        "L",
                        0.9,
                        0.6,
                        Crown.FLAT,
                        STACK,
                        new Support.WholeRim(),
                        outline,
                        List.of(),
                        List.of());
        assertSharp(panel, 0.5, 0.4);
    }

    @Test
    void aHoldHasThemWhereItBeginsAndEnds() {
        Fitting.HeldEdge held =
                new Fitting.HeldEdge(
                        new Stretch(Edge.LEFT, 0, 0.25),
                        Set.of(Fitting.Motion.DEFLECTION),
                        Height.MIDDLE);
        assertSharp(lid().withSupport(new Support.Fittings(List.of(held))), 0, 0.25);
    }
}
