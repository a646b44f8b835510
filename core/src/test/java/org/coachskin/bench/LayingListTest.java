package org.coachskin.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.coachskin.TestFittings;
import org.coachskin.TestSchedules;
import org.coachskin.check.Job;
import org.coachskin.check.Limits;
import org.coachskin.check.PanelCheck;
import org.coachskin.check.Weights;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.Foam;
import org.coachskin.material.Inserts;
import org.coachskin.panel.Crown;
import org.coachskin.panel.Edge;
import org.coachskin.panel.EverydayLoads;
import org.coachskin.panel.Height;
import org.coachskin.panel.Opening;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Region;
import org.coachskin.panel.Shape;
import org.coachskin.panel.Support;
import org.coachskin.panel.TurnedEdge;
import org.coachskin.panel.ZoneRecipe;
import org.junit.jupiter.api.Test;

class LayingListTest {

    private static final Schedule LAID = TestSchedules.sandwich(2, 0.015, 1);

    private static final Schedule.Item PLY = LAID.inside().get(0);

    private static final Schedule.Item LIGHT =
            new Schedule.Wet(TestSchedules.TABLES.cloth("plain glass 160 g/m^2").orElseThrow(), 0);

    private static final Opening WINDOW =
            new Opening("window", new Shape.Rectangle(0.2, 0.1, 0), 0.3, 0.6);

    /** Cloth of one of the usual plies [kg/m^2]. */
    private static final double GLASS = 0.3;

    private static Job job(Schedule schedule, List<TurnedEdge> turned, ZoneRecipe... recipes) {
        Panel panel =
                new Panel(
                                "door",
                                0.6,
                                0.9,
                                Crown.FLAT,
                                schedule.laminate(),
                                new Support.Fittings(TestFittings.hinged(0.6, 0.9, 0.02)))
                        .withOpenings(List.of(WINDOW))
                        .withTurned(turned);
        return Job.of(
                panel,
                schedule,
                List.of(recipes),
                List.of(EverydayLoads.named("palm").orElseThrow().at(0.3, 0.2)),
                Limits.STANDARD);
    }

    private static Job job(ZoneRecipe... recipes) {
        return job(LAID, List.of(), recipes);
    }

    private static ZoneRecipe ring(double width, ZoneRecipe.Build build) {
        return new ZoneRecipe("ring", new Region.Around("window", width), build);
    }

    private static ZoneRecipe inside(double width, Schedule.Item... plies) {
        return ring(width, new ZoneRecipe.MorePlies(List.of(), List.of(plies)));
    }

    private static List<Step> steps(Job job) {
        return LayingList.of(job).stages().stream().flatMap(s -> s.steps().stream()).toList();
    }

    private static <T extends Step> List<T> steps(Job job, Class<T> kind) {
        return steps(job).stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    private static List<String> kinds(LayingList.Stage stage) {
        return stage.steps().stream().map(step -> step.getClass().getSimpleName()).toList();
    }

    /** All that is laid is the panel without its foam, by the weight that the verdict prints. */
    private static void assertAddsUp(Job job) {
        Weights weights = Weights.of(job);
        double foam = weights.foam() + weights.inserts();
        double all = new PanelCheck().mass(job) - foam;
        Weight laid = LayingList.of(job).weight();
        assertEquals(all, laid.total(), 1e-6 * all);
        assertEquals(weights.glass() + weights.given(), laid.cloth(), 1e-9);
        assertEquals(weights.resin() + weights.sealCoat(), laid.resin(), 1e-9);
    }

    @Test
    void aPlainPanelIsItsPliesOutsideFirst() {
        LayingList list = LayingList.of(job());

        assertEquals(2, list.stages().size());
        assertEquals(List.of("SealCoat", "Ply", "Ply"), kinds(list.stages().get(0)));
        assertEquals(List.of("SealCoat", "Ply"), kinds(list.stages().get(1)));
        Step.Ply last = (Step.Ply) list.stages().get(1).steps().get(1);
        assertEquals(3, last.number());
        assertEquals(new Piece(1, 0.65, 0.95), rounded(last.cut()));
        assertEquals(GLASS * (0.54 - 0.02), last.weight().cloth(), 1e-9);
        assertAddsUp(job());
    }

    private static Piece rounded(Piece piece) {
        return new Piece(
                piece.count(),
                Math.rint(1e6 * piece.one()) / 1e6,
                Math.rint(1e6 * piece.other()) / 1e6);
    }

    private static List<Piece> rounded(List<Piece> pieces) {
        return pieces.stream().map(LayingListTest::rounded).toList();
    }

    @Test
    void aPlyThatGoesOnThroughSmallerRingsIsOnePiece() {
        Job job = job(inside(0.06, PLY), inside(0.04, PLY, PLY), inside(0.02, PLY, PLY, LIGHT));
        List<Step.ZonePly> plies = steps(job, Step.ZonePly.class);

        assertEquals(3, plies.size());
        for (int k = 0; k < 3; k++) {
            Step.ZonePly ply = plies.get(k);
            double width = 0.06 - 0.02 * k;
            assertEquals(k, ply.zone());
            assertEquals(List.of(), ply.without());
            assertEquals(
                    rounded(List.of(new Piece(1, 0.2 + 2 * width, 0.1 + 2 * width))),
                    rounded(ply.cut()));
            // A ring round a sharp corner has a round one, which elements follow by polynomials.
            double area = 2 * 0.3 * width + Math.PI * width * width;
            double cloth = k == 2 ? 0.16 : GLASS;
            assertEquals(cloth * area, ply.weight().cloth(), 1e-5 * cloth * area);
        }
        assertAddsUp(job);
    }

    @Test
    void aPlyOfAnotherZoneIsCutOutWhereThatZoneLies() {
        ZoneRecipe band =
                new ZoneRecipe(
                        "band",
                        new Region.AlongEdges(List.of(Edge.LEFT, Edge.FRONT), 0.1),
                        new ZoneRecipe.MorePlies(List.of(), List.of(PLY)));
        ZoneRecipe patch =
                new ZoneRecipe(
                        "patch",
                        new Region.Box(0.05, 0.2, 0.3, 0.4),
                        new ZoneRecipe.MorePlies(List.of(LIGHT), List.of(PLY)));
        Job job = job(band, patch);
        List<Step.ZonePly> plies = steps(job, Step.ZonePly.class);

        assertEquals(List.of(1, 0, 1), plies.stream().map(Step.ZonePly::zone).toList());
        assertEquals(LIGHT, plies.get(0).item());
        assertEquals(List.of(1), plies.get(1).without());
        assertEquals(
                List.of(new Piece(1, 0.1, 0.6), new Piece(1, 0.1, 0.8)),
                rounded(plies.get(1).cut()));
        assertEquals(GLASS * (0.06 + 0.08 - 0.005), plies.get(1).weight().cloth(), 1e-9);
        assertEquals(List.of(), plies.get(2).without());
        assertEquals(GLASS * 0.015, plies.get(2).weight().cloth(), 1e-9);
        assertAddsUp(job);
    }

    @Test
    void stripAndInsertComeInBeforeTheInsideSkin() {
        Foam plywood = Inserts.named("plywood").orElseThrow();
        Job job =
                job(
                        LAID,
                        List.of(
                                new TurnedEdge.Round("window", Height.INSIDE),
                                new TurnedEdge.Along(Edge.LEFT, Height.OUTSIDE)),
                        ring(0.08, new ZoneRecipe.MorePlies(List.of(), List.of(PLY))),
                        ring(0.05, new ZoneRecipe.FoamStrip(0.01, List.of(PLY), 0.5)),
                        new ZoneRecipe(
                                "insert",
                                new Region.Box(0.25, 0.35, 0.8, 0.9),
                                new ZoneRecipe.OtherFoam(Optional.of(plywood), 0.015, List.of())));
        LayingList list = LayingList.of(job);

        assertEquals(List.of("SealCoat", "Ply", "Ply", "Hem"), kinds(list.stages().get(0)));
        assertEquals(
                List.of("Strip", "Insert", "SealCoat", "Ply", "ZonePly", "Hem"),
                kinds(list.stages().get(1)));
        Step.Strip strip = steps(job, Step.Strip.class).get(0);
        assertEquals(0.02, strip.bevel(), 1e-12);
        assertEquals(
                List.of(new Piece(2, 0.07, 0.24), new Piece(2, 0.07, 0.2)), rounded(strip.cut()));
        Step.Hem round = steps(job, Step.Hem.class).get(1);
        assertEquals(0.045, round.over(), 1e-12);
        assertEquals(0.6 * 0.045 * 2 * GLASS, round.weight().cloth(), 1e-9);
        assertEquals(new Piece(1, 0.685, 0.95), rounded(steps(job, Step.Ply.class).get(0).cut()));
        assertAddsUp(job);
    }

    @Test
    void theSkinThatRunsOnOverALipComesFirst() {
        List<Edge> all = List.of(Edge.values());
        for (Height flush : List.of(Height.OUTSIDE, Height.INSIDE)) {
            Job job =
                    job(
                            new ZoneRecipe(
                                    "lip",
                                    new Region.AlongEdges(all, 0.03),
                                    new ZoneRecipe.NoFoam(List.of(LIGHT), flush)));
            LayingList list = LayingList.of(job);

            assertEquals(flush, list.stages().get(0).skin());
            assertEquals(1, steps(job, Step.Ply.class).get(0).number());
            List<String> second = kinds(list.stages().get(1));
            assertEquals(List.of("NoFoam", "SealCoat", "ZonePly", "Ply"), second.subList(0, 4));
            Step.ZonePly between = steps(job, Step.ZonePly.class).get(0);
            assertTrue(between.between());
            assertEquals(
                    List.of(new Piece(2, 0.03, 0.6), new Piece(2, 0.03, 0.84)),
                    rounded(between.cut()));
            assertEquals(0.16 * (0.54 - 0.54 * 0.84), between.weight().cloth(), 1e-9);
            Step.SealCoat coat = steps(job, Step.SealCoat.class).get(0);
            assertEquals(0.3 * (0.54 * 0.84 - 0.02), coat.weight().resin(), 1e-9);
            // The other skin comes down over 15 mm of foam, its seal coat with it.
            double down = 2 * (0.54 + 0.84) * 0.015;
            Step.SealCoat last = steps(job, Step.SealCoat.class).get(1);
            assertEquals(0.3 * (0.54 * 0.84 - 0.02 + down), last.weight().resin(), 1e-9);
            for (Step.Ply ply : steps(job, Step.Ply.class)) {
                boolean other = list.stages().get(1).steps().contains(ply);
                double area = 0.54 - 0.02 + (other ? down : 0);
                assertEquals(GLASS * area, ply.weight().cloth(), 1e-9);
            }
            assertAddsUp(job);
        }
    }

    /** A zone's ply beside a lip comes down with the skin it lies on. */
    @Test
    void aPlyBesideALipComesDownToo() {
        ZoneRecipe lip =
                new ZoneRecipe(
                        "lip",
                        new Region.AlongEdges(List.of(Edge.FRONT), 0.03),
                        new ZoneRecipe.NoFoam(List.of(), Height.OUTSIDE));
        for (int outside = 0; outside < 2; outside++) {
            ZoneRecipe patch =
                    new ZoneRecipe(
                            "patch",
                            new Region.Box(0.1, 0.3, 0.03, 0.13),
                            new ZoneRecipe.MorePlies(
                                    Collections.nCopies(outside, LIGHT),
                                    Collections.nCopies(1 - outside, LIGHT)));
            Job job = job(lip, patch);
            Step.ZonePly ply = steps(job, Step.ZonePly.class).get(0);
            double down = outside == 1 ? 0 : 0.2 * 0.015;
            assertEquals(0.16 * (0.02 + down), ply.weight().cloth(), 1e-9);
            assertAddsUp(job);
        }
    }

    @Test
    void withoutFoamThereAreOnlyPlies() {
        Schedule bare = LAID.withBoard(null).withInside(List.of());
        Job job =
                job(
                        bare,
                        List.of(),
                        ring(0.05, new ZoneRecipe.MorePlies(List.of(LIGHT), List.of(PLY, LIGHT))));
        LayingList list = LayingList.of(job);

        assertEquals(List.of("Ply", "Ply", "ZonePly"), kinds(list.stages().get(0)));
        assertEquals(List.of("ZonePly", "ZonePly"), kinds(list.stages().get(1)));
        assertEquals(PLY, ((Step.ZonePly) list.stages().get(1).steps().get(0)).item());
        assertAddsUp(job);
    }

    @Test
    void aSkinAloneIsOneStage() {
        Job job = job(LAID.withInside(List.of()), List.of());

        assertEquals(1, LayingList.of(job).stages().size());
        assertAddsUp(job);
        Job other = job(LAID.withOutside(List.of()), List.of());
        assertEquals(Height.INSIDE, LayingList.of(other).stages().get(0).skin());
        assertAddsUp(other);
    }

    @Test
    void aPanelWithOtherStacksThanItsScheduleIsRefused() {
        Job job = job();
        Job other =
                new Job(
                        job.panel(),
                        TestSchedules.sandwich(3, 0.015, 1),
                        List.of(),
                        job.loads(),
                        job.limits());
        assertThrows(IllegalArgumentException.class, () -> LayingList.of(other));
    }

    /** Whatever lies over what, in whatever order: nothing is lost and nothing counted twice. */
    @Property(tries = 25, seed = "20261126")
    void zonesOverOneAnotherAddUp(
            @ForAll @IntRange(min = 0, max = 119) int order,
            @ForAll @IntRange(min = 20, max = 150) int band,
            @ForAll @IntRange(min = 20, max = 150) int ring,
            @ForAll @IntRange(min = 0, max = 3) int plies) {
        List<ZoneRecipe> zones =
                new ArrayList<>(
                        List.of(
                                inside(ring / 1000.0, PLY),
                                ring(
                                        ring / 2000.0,
                                        new ZoneRecipe.FoamStrip(0.01, List.of(PLY, LIGHT))),
                                new ZoneRecipe(
                                        "band",
                                        new Region.AlongEdges(
                                                List.of(Edge.REAR, Edge.LEFT), band / 1000.0),
                                        new ZoneRecipe.MorePlies(
                                                Collections.nCopies(plies, LIGHT), List.of(PLY))),
                                new ZoneRecipe(
                                        "insert",
                                        new Region.Box(0.1, 0.5, 0.6, 0.8),
                                        new ZoneRecipe.OtherFoam(
                                                Optional.empty(), 0.01, List.of())),
                                new ZoneRecipe(
                                        "lip",
                                        new Region.AlongEdges(List.of(Edge.REAR), 0.03),
                                        new ZoneRecipe.NoFoam(List.of(PLY), Height.OUTSIDE))));
        List<ZoneRecipe> mixed = new ArrayList<>();
        int rest = order;
        while (!zones.isEmpty()) {
            int next = rest % zones.size();
            rest /= zones.size();
            mixed.add(zones.remove(next));
        }
        assertAddsUp(
                job(
                        LAID,
                        List.of(new TurnedEdge.Round("window", Height.INSIDE)),
                        mixed.toArray(ZoneRecipe[]::new)));
    }
}
