package org.coachskin.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.coachskin.TestFittings;
import org.coachskin.TestStacks;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Patch;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Height;
import org.coachskin.panel.Load;
import org.coachskin.panel.Opening;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Region;
import org.coachskin.panel.Shape;
import org.coachskin.panel.Support;
import org.coachskin.panel.TurnedEdge;
import org.coachskin.panel.Zone;
import org.coachskin.sparse.SymmetricMatrix;
import org.junit.jupiter.api.Test;

class EndWallTest {

    private static final double FOAM = 0.012;

    private static final Laminate SANDWICH = TestStacks.sandwich(2, FOAM, 1, 12e6, 4.2e6);

    private static Zone lip(List<Edge> edges) {
        Layer.Laid ply = new Layer.Laid(TestStacks.ply(), 0);
        return new Zone("lip", new Region.AlongEdges(edges, 0.05), Laminate.of(ply, ply, ply), 0);
    }

    /** Sliding by gamma along the line stores k gamma^2 / 2 per length, k = A66 c of one ply. */
    @Test
    void storesWhatItsSkinShearedInItsPlaneStores() {
        Panel panel =
                Panel.flat("panel", 0.8, 0.6, SANDWICH).withZones(List.of(lip(List.of(Edge.LEFT))));
        Fields fields = new Fields(panel, Drawn.grid(Drawn.mesh(panel, List.of()), 4), 4);
        EndWall wall = new EndWall(fields.model, panel);
        SymmetricMatrix matrix = fields.roomFor(wall);
        wall.addStiffness(matrix, 0);
        double turn = 0.01;
        double slope = 0.03;
        double[] x = fields.of((px, py) -> new double[] {0, 0, slope * py, 0, turn, 0, turn});
        double twice = Fields.dot(x, Fields.times(matrix, x));
        Layer.Laid ply = new Layer.Laid(TestStacks.ply(), 0);
        double k = ply.stiffness().m66() * ply.thickness() * FOAM;
        double wanted = k * (turn + slope) * (turn + slope) * 0.6;
        assertEquals(wanted, twice, 1e-10 * wanted);
        // A turn as a rigid body does not slide.
        double[] rigid = fields.of((px, py) -> new double[] {0, 0, turn * py, 0, -turn, 0, -turn});
        for (double f : Fields.times(matrix, rigid)) {
            assertEquals(0, f, 1e-9 * k * turn);
        }
    }

    /** Without the wall elements of order four were 2 % off, and those of order six 1 %. */
    @Test
    void elementsOfTheUsualOrderFollowALip() {
        Panel panel =
                Panel.flat("lid", 0.8, 0.6, SANDWICH)
                        .withZones(List.of(lip(List.of(Edge.values()))))
                        .withSupport(new Support.Fittings(TestFittings.hinged(0.8, 0.6, 0.025)));
        List<Load> palm = List.of(new Load.Press(250, new Patch.Rectangle(0.1, 0.08), 0.4, 0.3));
        double usual = moved(new ShellAnalysis(), panel, palm);
        double finer = moved(new ShellAnalysis(7, false), panel, palm);
        assertTrue(usual < finer, usual + " m, finer " + finer + " m");
        assertEquals(finer, usual, 5e-3 * finer);
    }

    /** Of a lip flush with the inside two plies come down, of one flush with the outside one. */
    @Test
    void theSkinThatIsNotFlushComesDown() {
        Zone flush = lip(List.of(Edge.LEFT));
        double deep = SANDWICH.thickness() - flush.laminate().thickness();
        Zone inside = new Zone("lip", flush.region(), flush.laminate(), deep);
        Layer.Laid ply = new Layer.Laid(TestStacks.ply(), 0);
        double one = 0.6 * FOAM * ply.density() * ply.thickness();
        for (int plies = 1; plies <= 2; plies++) {
            Zone lip = plies == 1 ? flush : inside;
            Panel panel = Panel.flat("panel", 0.8, 0.6, SANDWICH).withZones(List.of(lip));
            Fields fields = new Fields(panel, Drawn.grid(Drawn.mesh(panel, List.of()), 4), 4);
            EndWall wall = new EndWall(fields.model, panel);
            SymmetricMatrix matrix = fields.roomFor(wall);
            wall.addMass(matrix, 0);
            double[] down = fields.of((px, py) -> new double[] {0, 0, 1, 0, 0, 0, 0});
            double swung = Fields.dot(down, Fields.times(matrix, down));
            assertEquals(plies * one, swung, 1e-9 * one);
            double[] weight = new double[down.length];
            wall.addWeight(9.81, weight);
            assertEquals(-9.81 * swung, Fields.dot(down, weight), 1e-9 * swung);
        }
    }

    /** What swings is what is weighed: nothing is left out, nothing counted twice. */
    @Test
    void whatSwingsIsWhatIsWeighed() {
        Panel panel =
                Panel.flat("panel", 0.8, 0.6, SANDWICH)
                        .withOpenings(List.of(new Opening("vent", new Shape.Circle(0.2), 0.4, 0.3)))
                        .withTurned(
                                List.of(
                                        new TurnedEdge.Round("vent", Height.INSIDE),
                                        new TurnedEdge.Along(Edge.FRONT, Height.INSIDE)))
                        .withZones(List.of(lip(List.of(Edge.LEFT, Edge.REAR))));
        Fields fields = new Fields(panel, Drawn.grid(Drawn.mesh(panel, List.of()), 4), 4);
        EndWall wall = new EndWall(fields.model, panel);
        SymmetricMatrix ends = fields.roomFor(wall);
        wall.addMass(ends, 0);
        SymmetricMatrix all = fields.room();
        fields.model.addMass(all);
        double[] down = fields.of((px, py) -> new double[] {0, 0, 1, 0, 0, 0, 0});
        double swung =
                Fields.dot(down, Fields.times(all, down))
                        + Fields.dot(down, Fields.times(ends, down));
        assertEquals(new ShellAnalysis().mass(panel), swung, 1e-9 * swung);
    }

    private static double moved(ShellAnalysis analysis, Panel panel, List<Load> palm) {
        List<Load> nothing = List.of();
        var both = analysis.cases(panel, List.of(palm, nothing));
        return both.get(0).deflection(0.4, 0.3) - both.get(1).deflection(0.4, 0.3);
    }
}
