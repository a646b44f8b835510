package org.coachskin.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.coachskin.TestFittings;
import org.coachskin.TestStacks;
import org.coachskin.analysis.Held;
import org.coachskin.analysis.Response;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Patch;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Fitting.Direction;
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

/** Skins turned round raw edges of the foam. */
class TurnedTest {

    private static final double FOAM = 0.012;

    /** Over the foam and onto the other skin. */
    private static final double REACH = 0.032;

    /** Two plies outside, one inside. */
    private static final Laminate SANDWICH = TestStacks.sandwich(2, FOAM, 1, 12e6, 4.2e6);

    private static final Layer.Laid PLY = new Layer.Laid(TestStacks.ply(), 0);

    private static final double PLY_SHEAR = PLY.stiffness().m66() * PLY.thickness();

    private static final double PLY_MASS = PLY.density() * PLY.thickness();

    private static final Opening WINDOW = new Opening("window", new Shape.Circle(0.2), 0.3, 0.3);

    private static List<TurnedEdge> everywhere(Height skin) {
        List<TurnedEdge> all = new ArrayList<>();
        for (Edge edge : Edge.values()) {
            all.add(new TurnedEdge.Along(edge, skin));
        }
        all.add(new TurnedEdge.Round("window", skin));
        return all;
    }

    private static Panel windowed() {
        return Panel.flat("door", 0.8, 0.6, SANDWICH).withOpenings(List.of(WINDOW));
    }

    private static double[] forces(Fields fields, Panel panel, double[] x) {
        EndWall wall = new EndWall(fields.model, panel);
        SymmetricMatrix matrix = fields.roomFor(wall);
        wall.addStiffness(matrix, 0);
        double[] force = Fields.times(matrix, x);
        double[] again = new double[x.length];
        wall.addForces(x, again);
        for (int i = 0; i < x.length; i++) {
            assertEquals(force[i], again[i], 1e-11 * PLY_SHEAR * FOAM);
        }
        return force;
    }

    private static Fields fields(Panel panel) {
        return new Fields(panel, Drawn.grid(Drawn.mesh(panel, List.of()), 4), 4);
    }

    private static double twiceEnergy(Panel panel, double skins, double foam, double slope) {
        Fields fields = fields(panel);
        double[] x = fields.of((px, py) -> new double[] {0, 0, slope * py, 0, skins, 0, foam});
        return Fields.dot(x, forces(fields, panel, x));
    }

    /**
     * Skins that slide over one another by gamma along the edge shear what is turned round it: k
     * gamma^2 / 2 per length, whatever the skins themselves turn by.
     */
    @Test
    void storesWhatItsSkinShearedInItsPlaneStores() {
        double gamma = 0.01 + 0.03;
        for (Height skin : List.of(Height.INSIDE, Height.OUTSIDE)) {
            Panel panel = windowed().withTurned(List.of(new TurnedEdge.Along(Edge.LEFT, skin)));
            double k = (skin == Height.INSIDE ? 1 : 2) * PLY_SHEAR * FOAM;
            double wanted = k * gamma * gamma * 0.6;
            assertEquals(wanted, twiceEnergy(panel, 0.5, 0.01, 0.03), 1e-10 * wanted);
        }
        // Across the edge nothing is sheared.
        Panel front =
                windowed().withTurned(List.of(new TurnedEdge.Along(Edge.FRONT, Height.INSIDE)));
        assertEquals(0, twiceEnergy(front, 0.5, 0.01, 0.03), 1e-12);
    }

    /** Round a circle the mean square of the share along the rim is a half; cloth by its angle. */
    @Test
    void roundAnOpeningClothIsShearedInTheDirectionOfTheRim() {
        double gamma = 0.04;
        Laminate even = stack(new Layer.Laid(TestStacks.isotropic(10e9, 0.3, 0.5e-3), 0), 4.2e6);
        Panel panel =
                Panel.flat("door", 0.8, 0.6, even)
                        .withOpenings(List.of(WINDOW))
                        .withTurned(List.of(new TurnedEdge.Round("window", Height.OUTSIDE)));
        double k = 10e9 / 2.6 * 0.5e-3 * FOAM;
        double wanted = k * gamma * gamma * Math.PI * 0.2 / 2;
        assertEquals(wanted, twiceEnergy(panel, 0, 0.01, 0.03), 1e-6 * wanted);
        // A square stood on its corner: cloth sheared at 45 degrees to its warp.
        double half = 0.1;
        Opening diamond =
                new Opening(
                        "window",
                        new Shape.Polygon(
                                List.of(
                                        new Shape.Point(half, 0),
                                        new Shape.Point(0, half),
                                        new Shape.Point(-half, 0),
                                        new Shape.Point(0, -half))),
                        0.3,
                        0.3);
        Panel slanted =
                Panel.flat("door", 0.8, 0.6, stack(PLY, 4.2e6))
                        .withOpenings(List.of(diamond))
                        .withTurned(List.of(new TurnedEdge.Round("window", Height.OUTSIDE)));
        double e = 14.5e9;
        double turned = e / (1 + 0.13) / 2 * PLY.thickness() * FOAM;
        double rim = 4 * half * Math.sqrt(2);
        assertEquals(
                turned * gamma * gamma / 2 * rim,
                twiceEnergy(slanted, 0, 0.01, 0.03),
                1e-9 * turned * gamma * gamma * rim);
    }

    private static Laminate stack(Layer.Laid ply, double g) {
        return Laminate.of(ply, new Layer.Core(TestStacks.foam(1e6, g), FOAM), ply);
    }

    @Test
    void aPanelThatMovesAsAWholeShearsNothing() {
        Panel panel = windowed().withTurned(everywhere(Height.INSIDE));
        Fields fields = fields(panel);
        double a = 0.01;
        double b = -0.02;
        double[] x =
                fields.of(
                        (px, py) ->
                                new double[] {
                                    0.1 - a * py,
                                    0.2 + a * px,
                                    0.3 + a * px + b * py,
                                    -a,
                                    -b,
                                    -a,
                                    -b
                                });
        for (double f : forces(fields, panel, x)) {
            assertEquals(0, f, 1e-9 * PLY_SHEAR * FOAM * a);
        }
    }

    /**
     * A strip twisted by couples at its ends, in closed form. Skins alone slide over one another
     * towards its long edges, and foam sheared holds them; what is turned round them shears as the
     * wall of a box does. With chi the shear of the foam across the strip, D = A66 c^2 / 2 and S =
     * G c: D chi'' = S chi inside, D (chi' - 2 kappa (c + t) / c) = -k chi at the edges.
     */
    @Test
    void aTwistedStripIsAsStiffAsABoxOnFoam() {
        double g = 1.3e6;
        double open = twist(List.of(), g);
        double closed =
                twist(
                        List.of(
                                new TurnedEdge.Along(Edge.FRONT, Height.INSIDE),
                                new TurnedEdge.Along(Edge.REAR, Height.OUTSIDE)),
                        g);
        assertEquals(closedForm(0, g), open, 5e-3 * open);
        assertEquals(closedForm(PLY_SHEAR * FOAM, g), closed, 5e-3 * closed);
        assertTrue(closed < 0.8 * open, closed + " " + open);
    }

    private static final double WIDE = 0.2;

    private static final double IN = 0.02;

    private static double closedForm(double k, double g) {
        double t = PLY.thickness();
        double d = PLY_SHEAR * FOAM * FOAM / 2;
        double lambda = Math.sqrt(g * FOAM / d);
        double lever = (FOAM + t) / FOAM;
        double half = lambda * WIDE / 2;
        double chi = 2 * lever * d / (d * lambda * Math.cosh(half) + k * Math.sinh(half));
        double box = 4 * d * lever * (lever * WIDE - chi * Math.sinh(half));
        double skins = 2 * 4 * PLY_SHEAR * t * t / 12 * WIDE;
        return 10 * (WIDE - 2 * IN) / (box + skins);
    }

    /** Returns the twist in the middle of a strip under 10 N at one corner, three others held. */
    private static double twist(List<TurnedEdge> turned, double g) {
        double length = 1.2;
        Panel panel =
                Panel.flat("strip", length, WIDE, stack(PLY, g))
                        .withTurned(turned)
                        .withSupport(
                                new Support.Fittings(
                                        List.of(
                                                rest(IN, IN, Direction.values()),
                                                rest(IN, WIDE - IN, Direction.Z),
                                                rest(length - IN, IN, Direction.Z, Direction.Y))));
        Load push = new Load.Press(10, new Patch.Rectangle(IN, IN), length - IN, WIDE - IN);
        Response r = new ShellAnalysis().cases(panel, List.of(List.of(push))).get(0);
        double apart = 0.3;
        double x = (length - apart) / 2;
        double turnedBy =
                r.deflection(x + apart, WIDE)
                        - r.deflection(x + apart, 0)
                        - r.deflection(x, WIDE)
                        + r.deflection(x, 0);
        return Math.abs(turnedBy) / (apart * WIDE);
    }

    private static Fitting rest(double x, double y, Direction... held) {
        return TestFittings.pad(x, y, IN, held);
    }

    @Test
    void aTurnedEdgeNeverSoftens() {
        Panel plain =
                windowed()
                        .withSupport(
                                new Support.Fittings(
                                        List.of(
                                                Fitting.Pad.hinge("left hinge", 0.1, 0.03),
                                                Fitting.Pad.hinge("right hinge", 0.7, 0.03),
                                                Fitting.Pad.latch("latch", 0.6, 0.57))));
        Load palm = new Load.Press(250, new Patch.Rectangle(0.1, 0.08), 0.1, 0.5);
        List<TurnedEdge> turned = new ArrayList<>();
        double before = moved(plain, palm);
        for (TurnedEdge edge : everywhere(Height.INSIDE)) {
            turned.add(edge);
            double after = moved(plain.withTurned(turned), palm);
            assertTrue(after < before, edge + ": " + after + " m, before " + before + " m");
            before = after;
        }
    }

    private static double moved(Panel panel, Load palm) {
        return new ShellAnalysis().cases(panel, List.of(List.of(palm))).get(0).deflection(0.1, 0.5);
    }

    @Test
    void whatIsTurnedIsWeighed() {
        ShellAnalysis shell = new ShellAnalysis();
        double all = (2 * (0.8 + 0.6) + Math.PI * 0.2) * REACH * PLY_MASS;
        Panel plain = windowed();
        Panel outside = plain.withTurned(everywhere(Height.OUTSIDE));
        assertEquals(2 * all, shell.mass(outside) - shell.mass(plain), 1e-6 * all);
        // A lip leaves no foam at the edge.
        Zone lip =
                new Zone(
                        "lip",
                        new Region.AlongEdges(List.of(Edge.LEFT), 0.05),
                        Laminate.of(PLY, PLY, PLY),
                        0);
        Panel lipped = plain.withZones(List.of(lip));
        double left = 0.6 * REACH * PLY_MASS;
        assertEquals(
                2 * (all - left) - 2 * 2 * 0.05 * REACH * PLY_MASS,
                shell.mass(lipped.withTurned(everywhere(Height.OUTSIDE))) - shell.mass(lipped),
                1e-6 * all);
    }

    /** A lid that swings as a whole takes it along, and what turns about a line by its distance. */
    @Test
    void itSwingsWithThePanel() {
        Panel panel =
                windowed().withTurned(List.of(new TurnedEdge.Along(Edge.REAR, Height.OUTSIDE)));
        double mass = 0.8 * REACH * 2 * PLY_MASS;
        assertEquals(mass, swing(panel, (x, y) -> new double[] {0, 0, 1, 0, 0, 0, 0}), 1e-9 * mass);
        assertEquals(
                mass * 0.8 * 0.8 / 3,
                swing(panel, (x, y) -> new double[] {0, 0, x, -1, 0, -1, 0})
                        - mass * deep() * deep(),
                1e-9 * mass);
    }

    /** Middle of the foam under the outside surface. */
    private static double deep() {
        return FOAM / 2 + 2 * PLY.thickness();
    }

    private static double swing(Panel panel, Fields.Given motion) {
        Fields fields = fields(panel);
        double[] x = fields.of(motion);
        EndWall wall = new EndWall(fields.model, panel);
        SymmetricMatrix matrix = fields.roomFor(wall);
        wall.addMass(matrix, 0);
        return Fields.dot(x, Fields.times(matrix, x));
    }

    /** On three pads the forces are those of statics, turned plies along the rear edge counted. */
    @Test
    void itsWeightLiesWhereItIs() {
        Panel panel =
                Panel.flat("lid", 0.8, 0.6, SANDWICH)
                        .withTurned(List.of(new TurnedEdge.Along(Edge.REAR, Height.OUTSIDE)))
                        .withSupport(
                                new Support.Fittings(
                                        List.of(
                                                rest(0.2, 0.1, Direction.values()),
                                                rest(0.6, 0.1, Direction.Z, Direction.Y),
                                                rest(0.4, 0.5, Direction.Z))));
        double turned = 0.8 * REACH * 2 * PLY_MASS * 9.81;
        double rest = 0.8 * 0.6 * SANDWICH.mass() * 9.81;
        double atRear = (rest * 0.2 + turned * 0.5) / 0.4;
        Held held =
                new ShellPanel(panel, Drawn.grid(Drawn.mesh(panel, List.of()), 4), 4, false)
                        .solve(List.of(new Load.OwnWeight(9.81)))
                        .held();
        double[] z =
                held.grips().stream()
                        .filter(grip -> grip.direction() == Direction.Z)
                        .mapToDouble(Held.Grip::force)
                        .toArray();
        assertEquals(atRear, z[2], 1e-7 * atRear, Arrays.toString(z));
        assertEquals(rest + turned, z[0] + z[1] + z[2], 1e-7 * rest);
    }
}
