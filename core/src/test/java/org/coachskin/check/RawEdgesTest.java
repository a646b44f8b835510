package org.coachskin.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coachskin.TestStacks;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.material.Inserts;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Height;
import org.coachskin.panel.Opening;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Region;
import org.coachskin.panel.Shape;
import org.coachskin.panel.TurnedEdge;
import org.coachskin.panel.Zone;
import org.junit.jupiter.api.Test;

class RawEdgesTest {

    private static final Laminate FOAM = TestStacks.sandwich(1, 0.012, 1, 12e6, 4e6);

    private static final Laminate BARE = new Laminate(List.of(new Layer.Laid(TestStacks.ply(), 0)));

    private static final Region RIM = new Region.AlongEdges(List.of(Edge.values()), 0.03);

    private static Panel panel(Zone... zones) {
        return Panel.flat("lid", 0.6, 0.4, FOAM)
                .withOpenings(List.of(new Opening("vent", new Shape.Circle(0.08), 0.3, 0.2)))
                .withZones(List.of(zones));
    }

    private static String where(Panel panel) {
        return RawEdges.caution(panel)
                .map(words -> words.substring(0, words.indexOf(':')))
                .orElse("nowhere");
    }

    @Test
    void foamShowsAtEveryEdgeThatIsNotClosed() {
        assertEquals("Raw foam shows along its edges and round the vent", where(panel()));
        assertEquals("Raw foam shows along its edges", where(Panel.flat("lid", 0.6, 0.4, FOAM)));
    }

    @Test
    void aLipClosesTheEdgeItLiesAlong() {
        assertEquals("Raw foam shows round the vent", where(panel(new Zone("lip", RIM, BARE, 0))));
        assertEquals(
                "Raw foam shows along its edges",
                where(panel(new Zone("ring", new Region.Around("vent", 0.01), BARE, 0))));
        Zone oneEdge = new Zone("lip", new Region.AlongEdges(List.of(Edge.REAR), 0.03), BARE, 0);
        assertTrue(where(panel(oneEdge)).contains("along its edges"));
    }

    @Test
    void aSolidInsertClosesItToo() {
        Laminate solid = FOAM.withFoam(foam -> Inserts.all().get(0));
        assertEquals("Raw foam shows round the vent", where(panel(new Zone("rim", RIM, solid, 0))));
    }

    @Test
    void aSkinTurnedRoundItClosesItEdgeByEdge() {
        TurnedEdge vent = new TurnedEdge.Round("vent", Height.INSIDE);
        assertEquals("Raw foam shows along its edges", where(panel().withTurned(List.of(vent))));
        List<TurnedEdge> turned = new ArrayList<>();
        for (Edge edge : Edge.values()) {
            assertTrue(where(panel().withTurned(turned)).contains("along its edges"));
            turned.add(new TurnedEdge.Along(edge, Height.OUTSIDE));
        }
        assertEquals("Raw foam shows round the vent", where(panel().withTurned(turned)));
        turned.add(vent);
        assertEquals("nowhere", where(panel().withTurned(turned)));
        Zone lip = new Zone("lip", new Region.AlongEdges(List.of(Edge.REAR), 0.03), BARE, 0);
        turned.remove(new TurnedEdge.Along(Edge.REAR, Height.OUTSIDE));
        assertEquals("nowhere", where(panel(lip).withTurned(turned)));
    }

    @Test
    void aPanelWithoutFoamHasNone() {
        assertEquals(Optional.empty(), RawEdges.caution(Panel.flat("lid", 0.6, 0.4, BARE)));
    }

    @Test
    void aPolygonIsLookedAtAllRound() {
        List<Shape.Point> corners =
                List.of(
                        new Shape.Point(0, 0),
                        new Shape.Point(0.6, 0),
                        new Shape.Point(0.5, 0.4),
                        new Shape.Point(0.1, 0.4));
        Panel whole = Panel.flat("lid", 0.6, 0.4, FOAM);
        Panel cut =
                new Panel(
                        "lid",
                        0.6,
                        0.4,
                        whole.crown(),
                        FOAM,
                        whole.support(),
                        new Shape.Polygon(corners),
                        List.of(),
                        List.of());
        assertEquals("Raw foam shows along its edges", where(cut));
        Zone all = new Zone("all", new Region.Box(-1, 1, -1, 1), BARE, 0);
        assertEquals("nowhere", where(cut.withZones(List.of(all))));
    }
}
