package org.coachskin.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.coachskin.check.Job;
import org.coachskin.laminate.Layer;
import org.coachskin.panel.Bevels;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Opening;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Region;
import org.coachskin.panel.Shape;
import org.coachskin.panel.Stretch;
import org.coachskin.panel.Support;
import org.coachskin.panel.Zone;
import org.junit.jupiter.api.Test;

/** What outline, openings, zones and what holds a panel are read as. */
class HardwareTest extends LidFiles {

    private static final String LID = SANDWICH.replace("outside: [", "outside: [2 x ") + PALM;

    private static final String HINGED =
            """
            held:
              front edge: hinges
              rear edge: latch
              all edges: rubber seal
            """;

    private static final String VENT =
            """
            openings:
              - {name: vent, shape: 120 mm x 60 mm, corner radius: 20 mm,
                 centre: {from left: 450 mm, from front: 480 mm}}
            """;

    /** Some roundings of sums and products of lengths. */
    private static final double ROUNDING = 1e-12;

    private Panel panel(String text) throws IOException {
        return read(text).asDrawn().panel();
    }

    private static List<Fitting.Pad> pads(Panel panel) {
        return panel.support().fittings().stream()
                .filter(Fitting.Pad.class::isInstance)
                .map(Fitting.Pad.class::cast)
                .toList();
    }

    private static void same(Fitting.Pad expected, Fitting.Pad pad) {
        assertEquals(expected.name(), pad.name());
        assertEquals(expected.x(), pad.x(), ROUNDING);
        assertEquals(expected.y(), pad.y(), ROUNDING);
        assertEquals(expected.sizeX(), pad.sizeX(), ROUNDING);
        assertEquals(expected.sizeY(), pad.sizeY(), ROUNDING);
        assertEquals(expected.held(), pad.held());
        assertEquals(expected.stiffness(), pad.stiffness());
        assertEquals(expected.height(), pad.height());
    }

    private static void same(Fitting.RubberSeal expected, Fitting.RubberSeal seal) {
        assertEquals(Set.copyOf(expected.stretches()), Set.copyOf(seal.stretches()));
        assertEquals(expected.force(), seal.force(), ROUNDING);
        assertEquals(expected.squeeze(), seal.squeeze(), ROUNDING);
        assertEquals(expected.solid(), seal.solid(), ROUNDING);
        assertEquals(expected.solidFactor(), seal.solidFactor(), ROUNDING);
    }

    private static Fitting.RubberSeal seal(Panel panel) {
        return panel.support().fittings().stream()
                .filter(Fitting.RubberSeal.class::isInstance)
                .map(Fitting.RubberSeal.class::cast)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void readyMadeWordsStandForWhatTheLibraryCallsByTheSameNames() throws IOException {
        PanelFile file = read(LID + HINGED);
        List<Fitting.Pad> pads = pads(file.asDrawn().panel());

        assertEquals(3, pads.size());
        same(Fitting.Pad.hinge("left hinge", 0.15, 0.02), pads.get(0));
        same(Fitting.Pad.hinge("right hinge", 0.75, 0.02), pads.get(1));
        same(Fitting.Pad.latch("latch", 0.45, 0.58), pads.get(2));
        same(Fitting.RubberSeal.allRound(), seal(file.asDrawn().panel()));
        assertEquals(
                3, file.assumptions().stream().filter(each -> each.key().equals("held")).count());
    }

    @Test
    void theLongFormSaysTheSame() throws IOException {
        Panel inShort = panel(LID + HINGED);
        Panel atLength =
                panel(
                        LID
                                + """
                                held:
                                  - {hinge: front edge, at: 150 mm from left, pad: 40 mm}
                                  - {hinge: front edge, at: 150 mm from right, pad: 40 mm x 40 mm}
                                  - {latch: rear edge, at: middle}
                                  - {rubber seal: all edges, force: 50 N per m, squeezed: 6 mm, solid at: 9 mm}
                                """);

        for (int i = 0; i < 3; i++) {
            same(pads(inShort).get(i), pads(atLength).get(i));
        }
        same(seal(inShort), seal(atLength));
    }

    @Test
    void aSingleEdgeHasTheSayOverAllEdges() throws IOException {
        Panel panel =
                panel(
                        LID
                                + "held: {left edge: free, all edges: rubber seal, right edge: clamped, front edge: carried}\n");

        assertEquals(List.of(Stretch.whole(Edge.REAR)), seal(panel).stretches());
        assertEquals(
                Set.of(Fitting.HeldEdge.carried(Edge.FRONT), Fitting.HeldEdge.clamped(Edge.RIGHT)),
                Set.copyOf(
                        panel.support().fittings().stream()
                                .filter(Fitting.HeldEdge.class::isInstance)
                                .toList()));
    }

    @Test
    void everyWayToSayThatTheWholeRimIsCarriedIsTheSame() throws IOException {
        for (String held : List.of("all edges", "{all edges: carried}", "[{carried: all edges}]")) {
            assertEquals(
                    new Support.WholeRim(), panel(LID + "held: " + held + "\n").support(), held);
        }
    }

    @Test
    void restsPropsAndPartsOfEdgesAreWhereTheTapeSays() throws IOException {
        Panel panel =
                panel(
                        LID
                                + """
                                held:
                                  - {carried: left edge, from: 100 mm, to: 500 mm}
                                  - {clamped: rear edge, from: 300 mm}
                                  - {rest: {from left: 400 mm, from front: 300 mm}, pad: 60 mm x 30 mm}
                                  - {prop: {from left: 600 mm, from front: 300 mm}}
                                  - {hinge: right edge, at: 100 mm from rear}
                                """);
        List<Fitting> fittings = panel.support().fittings();

        assertEquals(
                new Stretch(Edge.LEFT, 0.1, 0.5), ((Fitting.HeldEdge) fittings.get(0)).stretch());
        Fitting.HeldEdge clamped = (Fitting.HeldEdge) fittings.get(1);
        assertEquals(0.3, clamped.stretch().from(), ROUNDING);
        assertEquals(Double.POSITIVE_INFINITY, clamped.stretch().to());
        assertEquals(EnumSet.allOf(Fitting.Motion.class), clamped.held());
        List<Fitting.Pad> pads = pads(panel);
        assertEquals(
                List.of("rest", "prop", "rear hinge"),
                pads.stream().map(Fitting.Pad::name).toList());
        assertEquals(0.06, pads.get(0).sizeX(), ROUNDING);
        assertEquals(0.03, pads.get(0).sizeY(), ROUNDING);
        assertEquals(Set.of(Fitting.Direction.Z), pads.get(1).held());
        assertEquals(0.88, pads.get(2).x(), ROUNDING);
        assertEquals(0.5, pads.get(2).y(), ROUNDING);
    }

    @Test
    void openingsOfEveryShapeAreWhereTheTapeSays() throws IOException {
        Panel panel =
                panel(
                        LID
                                + "held: all edges\ncorner radius: 80 mm\n"
                                + VENT
                                + """
                                  - {shape: circle 80 mm, centre: {from left: 700 mm, from front: 300 mm}}
                                  - {name: slot, shape: slot 120 mm x 40 mm, centre: {from left: 700 mm, from front: 100 mm}}
                                  - {name: triangle, shape: polygon, corners: [{from left: 400 mm, from front: 200 mm},
                                     {from left: 500 mm, from front: 200 mm}, {from left: 450 mm, from front: 290 mm}]}
                                """);
        List<Opening> openings = panel.openings();

        assertEquals(new Shape.Rectangle(0.9, 0.6, 0.08), panel.outline());
        assertEquals(
                List.of("vent", "opening 2", "slot", "triangle"),
                openings.stream().map(Opening::name).toList());
        assertEquals(new Shape.Rectangle(0.12, 0.06, 0.02), openings.get(0).shape());
        assertEquals(new Shape.Circle(0.08), openings.get(1).shape());
        assertEquals(new Shape.Rectangle(0.12, 0.04, 0.02), openings.get(2).shape());
        assertEquals(0.1 * 0.09 / 2, openings.get(3).shape().area(), ROUNDING);
        assertEquals(0, openings.get(3).distance(0.45, 0.2), ROUNDING);
        assertEquals(0, openings.get(3).distance(0.45, 0.29), ROUNDING);
    }

    @Test
    void anOutlineOfItsOwnIsMeasuredFromLeftAndFront() throws IOException {
        Panel panel =
                panel(
                        LID
                                + """
                                held: {rear edge: clamped}
                                outline: [{from left: 100 mm, from front: 0 mm}, {from left: 800 mm, from front: 0 mm},
                                  {from left: 900 mm, from front: 600 mm}, {from left: 0 mm, from front: 600 mm}]
                                """);

        assertEquals((0.7 + 0.9) / 2 * 0.6, panel.area(), ROUNDING);
        assertTrue(panel.hasMaterialAt(0.1, 0.1));
    }

    private static double foam(Zone zone) {
        return zone.laminate().layers().stream()
                .filter(Layer.Core.class::isInstance)
                .mapToDouble(Layer::thickness)
                .sum();
    }

    private static long plies(Zone zone) {
        return zone.laminate().layers().stream().filter(Layer.Laid.class::isInstance).count();
    }

    @Test
    void zonesAreLaidInTheirOrderAndTheLipLast() throws IOException {
        Panel panel =
                panel(
                        LID
                                + "held: all edges\n"
                                + "lip: {width: 30 mm, more plies: 2 x twill glass 300 g/m^2}\n"
                                + VENT
                                + """
                                zones:
                                  - {round: vent, width: 50 mm, foam strip: 15 mm, over it: [twill glass 300 g/m^2]}
                                  - {at: rear edge, width: 80 mm, insert: plywood 9 mm}
                                  - {patch: 200 mm x 100 mm, centre: {from left: 200 mm, from front: 300 mm},
                                     outside: twill glass 300 g/m^2}
                                """);
        List<Zone> zones = panel.zones();

        assertEquals(
                List.of("ring round the vent", "insert", "patch", "lip"),
                zones.stream().map(Zone::name).toList());
        assertEquals(
                List.of(0.027, 0.009, 0.012, 0.0),
                zones.stream().map(zone -> Math.round(1e6 * foam(zone)) / 1e6).toList());
        assertEquals(List.of(4L, 3L, 4L, 5L), zones.stream().map(HardwareTest::plies).toList());
        assertTrue(zones.get(2).depth() < 0);
        assertEquals(zones.get(3), panel.zoneAt(0.45, 0.59).orElseThrow());
        assertEquals(zones.get(1), panel.zoneAt(0.45, 0.53).orElseThrow());
        assertEquals(Optional.empty(), panel.zoneAt(0.6, 0.3));
    }

    @Test
    void steppedPliesGetNarrowerOneByOne() throws IOException {
        Panel panel =
                panel(
                        LID
                                + "held: all edges\n"
                                + VENT
                                + "zones: [{round: vent, width: 60 mm, step: 20 mm, inside: [3 x twill glass 300 g/m^2]}]\n");

        assertEquals(
                List.of(60L, 40L, 20L),
                panel.zones().stream()
                        .map(zone -> (Region.Around) zone.region())
                        .map(ring -> Math.round(1000 * ring.width()))
                        .toList());
        double sideY = 0.48 + 0.03;
        assertEquals(
                List.of(6L, 5L, 4L),
                Stream.of(0.01, 0.03, 0.05)
                        .map(out -> plies(panel.zoneAt(0.45, sideY + out).orElseThrow()))
                        .toList());
    }

    @Test
    void variantsMayBeHeldCutAndLaidOtherwise() throws IOException {
        PanelFile file =
                read(
                        LID
                                + HINGED
                                + VENT
                                + """
                                variants:
                                  rim carried: {held: all edges}
                                  uncut: {openings: []}
                                  with a ring: {zones: [{round: vent, width: 50 mm, foam strip: 15 mm}]}
                                  round: {corner radius: 50 mm, lip: {width: 20 mm}, foam: {thickness: 20 mm}}
                                """);

        assertEquals(new Support.WholeRim(), variant(file, "rim carried").panel().support());
        assertEquals(List.of(), variant(file, "uncut").panel().openings());
        assertEquals(1, variant(file, "with a ring").panel().zones().size());
        assertEquals(new Shape.Rectangle(0.9, 0.6, 0.05), variant(file, "round").panel().outline());
        assertEquals(List.of(), file.asDrawn().panel().zones());
    }

    @Test
    void aBevelIsAsLongAsItIsSaidToBe() throws IOException {
        String strip = "zones: [{at: rear edge, width: 50 mm, foam strip: 15 mm%s}]\n";
        PanelFile said = read(LID + "held: all edges\n" + strip.formatted(", bevel: 60 mm"));
        PanelFile usual = read(LID + "held: all edges\n" + strip.formatted(""));

        assertEquals(0.25, said.asDrawn().panel().zones().get(0).slope(), ROUNDING);
        assertEquals(1 / 3.0, usual.asDrawn().panel().zones().get(0).slope(), ROUNDING);
        assertEquals(
                List.of(0L, 1L),
                Stream.of(said, usual)
                        .map(
                                file ->
                                        file.assumptions().stream()
                                                .filter(taken -> taken.key().equals("bevel"))
                                                .count())
                        .toList());
    }

    /** What the file does not say is no mistake in it; the verdict says what becomes of it. */
    @Test
    void theUsualBevelIsCutOffWhereItFindsNoRoom() throws IOException {
        String strip =
                "zones: [{patch: 200 mm x 100 mm, centre: {from left: 785 mm, from front: 300 mm},"
                        + " foam strip: 15 mm}]\n";
        Job job = read(LID + "held: all edges\n" + strip).asDrawn();
        Bevels.Cut cut = Bevels.cut(job.panel(), job.panel().zones().get(0)).orElseThrow();

        assertEquals(0.015, cut.room(), 1e-6);
        assertEquals("the rim", cut.before());
    }

    @Test
    void aFoamStripFollowsWhenTheFoamChanges() throws IOException {
        Job job =
                read(LID
                                + "held: all edges\n"
                                + VENT
                                + "zones: [{round: vent, width: 50 mm, foam strip: 15 mm}]\n"
                                + "variants: {thick: {foam: {thickness: 20 mm}}}\n")
                        .jobs()
                        .get("thick");

        assertEquals(
                0.035,
                foam(Optional.ofNullable(job).orElseThrow().panel().zones().get(0)),
                ROUNDING);
    }

    private static Job variant(PanelFile file, String name) {
        return Optional.ofNullable(file.jobs().get(name)).orElseThrow();
    }
}
