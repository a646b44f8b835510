package org.coachskin.reinforce;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ForkJoinPool;
import org.coachskin.NoAnswerException;
import org.coachskin.TestFittings;
import org.coachskin.TestSchedules;
import org.coachskin.check.Job;
import org.coachskin.check.Limits;
import org.coachskin.check.Margin;
import org.coachskin.check.PanelCheck;
import org.coachskin.check.Verdict;
import org.coachskin.failure.Factors;
import org.coachskin.failure.Mode;
import org.coachskin.laminate.Patch;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.Foam;
import org.coachskin.panel.Crown;
import org.coachskin.panel.Edge;
import org.coachskin.panel.EverydayLoads;
import org.coachskin.panel.Height;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Opening;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Region;
import org.coachskin.panel.Shape;
import org.coachskin.panel.Support;
import org.coachskin.panel.TurnedEdge;
import org.coachskin.panel.ZoneRecipe;
import org.junit.jupiter.api.Test;

/** A hatch with a vent that a palm beside it finds too soft. */
class ReinforcingTest {

    private static final Schedule SCHEDULE = TestSchedules.sandwich(2, 0.012, 1);

    /** So thin that the foam is sheared at the vent's corner. */
    private static final Schedule THIN = TestSchedules.sandwich(2, 0.01, 1);

    private static final Opening VENT =
            new Opening("vent", new Shape.Rectangle(0.26, 0.14, 0.03), 0.25, 0.24);

    /** Bands no wider than 40 mm, inside alone. */
    private static final Rules FEW =
            new Rules(
                    EnumSet.of(Rules.Means.PLIES, Rules.Means.STRIP, Rules.Means.TURNED),
                    0.04,
                    0.012);

    private final Reinforcing reinforcing = new Reinforcing(TestSchedules.TABLES);

    /** What is wanted lies so many times above what the bare hatch has. */
    private static Job job(double times, Opening... openings) {
        return job(SCHEDULE, times, openings);
    }

    private static Job job(Schedule schedule, double times, Opening... openings) {
        Panel panel =
                new Panel(
                                "hatch",
                                0.5,
                                0.4,
                                Crown.FLAT,
                                schedule.laminate(),
                                new Support.Fittings(TestFittings.hinged(0.5, 0.4, 0.03)))
                        .withOpenings(
                                List.of(openings.length == 0 ? new Opening[] {VENT} : openings));
        Limits s = Limits.STANDARD;
        Limits limits =
                new Limits(
                        times * BARE,
                        s.spanShare(),
                        s.sealGap(),
                        s.lastingDent(),
                        s.marksAllowed(),
                        s.factors(),
                        s.criterion());
        return Job.of(
                panel,
                schedule,
                List.of(),
                List.of(EverydayLoads.named("palm").orElseThrow().at(0.25, 0.11)),
                limits);
    }

    /** Felt stiffness of the bare hatch, about [N/m]. */
    private static final double BARE = 75e3;

    private static Target vent(Job job) {
        return Target.named(job, "Vent").orElseThrow();
    }

    @Test
    void choosesTheLightestThatIsStiffEnough() {
        Job job = job(1.25);
        Reinforcement found = lightest(job, vent(job), FEW, Mode.FELT_STIFFNESS);
        // The stiffness of most is told, and none of them solved.
        assertTrue(found.solved() < found.offered());
    }

    @Test
    void choosesTheLightestThatIsStrongEnough() {
        Job job = job(THIN, 0.5);
        lightest(job, vent(job), FEW, Mode.CORE_SHEAR);
    }

    /** A strap pulls the hatch out beside its vent, whose corners are tight. */
    private static Job pulled() {
        Schedule schedule = TestSchedules.sandwich(2, 0.012, 1);
        Foam dense = TestSchedules.TABLES.foam(Foam.Kind.POLYURETHANE, 200).orElseThrow();
        Schedule.Board board = new Schedule.Board(dense, 0.012, 0.7e-3);
        Opening tight = new Opening("vent", new Shape.Rectangle(0.26, 0.14, 0.005), 0.25, 0.24);
        Job job = job(schedule.withBoard(board), 0.5, tight);
        Limits s = job.limits();
        Factors wary =
                s.factors()
                        .with(Factors.On.LAMINATE_MEAN, 13.5)
                        .with(Factors.On.LAMINATE_MINIMUM, 9);
        Load.Press strap = new Load.Press(-250, new Patch.Rectangle(0.1, 0.08), 0.25, 0.11);
        return job.withLoads(List.of(LoadCase.of("strap", LoadCase.Kind.TOUCH, strap)))
                .withLimits(
                        new Limits(
                                s.feltStiffness(),
                                0.1,
                                1,
                                s.lastingDent(),
                                true,
                                wary,
                                s.criterion()));
    }

    private static boolean isAslant(Measure measure) {
        return measure.build() instanceof Build.Plies plies && plies.ply().angle() != 0;
    }

    @Test
    void choosesClothAtFortyFiveDegreesWhereSkinsBreakBesideTheVent() {
        Rules rules = new Rules(EnumSet.of(Rules.Means.PLIES), 0.04, 1);
        Measure chosen =
                lightest(pulled(), vent(pulled()), rules, Mode.PLY_CRUSHED)
                        .chosen()
                        .orElseThrow()
                        .measure();

        assertEquals("1 more 300 g ply at 45 degrees inside, 40 mm wide", chosen.words());
        assertEquals(
                "On the inside skin, wet on wet, one 300 g ply at 45 degrees more: 340 mm x 220 mm"
                        + " with the vent cut out.",
                BenchSteps.of(pulled().panel(), vent(pulled()), chosen).get(1));
    }

    @Test
    void whereStiffnessOrFoamIsShortNoClothIsTurned() {
        for (Job job : List.of(job(1.25), job(THIN, 0.5))) {
            Offers offers = new Offers(TestSchedules.TABLES, job, job, vent(job), Rules.ANY);
            assertTrue(
                    offers.all(PanelCheck.brief().check(job)).stream()
                            .noneMatch(ReinforcingTest::isAslant));
        }
        Offers offers = new Offers(TestSchedules.TABLES, pulled(), pulled(), vent(pulled()), FEW);
        assertEquals(
                // One ply in two widths, two in one, edge raw and turned.
                6,
                offers.all(PanelCheck.brief().check(pulled())).stream()
                        .filter(ReinforcingTest::isAslant)
                        .count());
    }

    /** Two skins on one another all round the hatch, and somebody who kneels there. */
    private static Job kneeling(String load) {
        Schedule schedule = TestSchedules.sandwich(2, 0.012, 1);
        Job job = job(schedule, 0.01);
        ZoneRecipe lip =
                new ZoneRecipe(
                        "lip",
                        new Region.AlongEdges(List.of(Edge.values()), 0.06),
                        new ZoneRecipe.NoFoam(List.of(), Height.OUTSIDE));
        Limits s = job.limits();
        return Job.of(
                job.panel().withOpenings(List.of()),
                schedule,
                List.of(lip),
                List.of(EverydayLoads.named(load).orElseThrow().at(0.25, 0.04)),
                new Limits(
                        s.feltStiffness(),
                        s.spanShare(),
                        1,
                        s.lastingDent(),
                        true,
                        s.factors(),
                        s.criterion()));
    }

    @Test
    void choosesTheFewestPliesThatMakeALipHold() {
        Job job = kneeling("knee");
        Target lip = Target.named(job, "lip").orElseThrow();
        Measure chosen =
                lightest(job, lip, Rules.ANY, Mode.PLY_CRUSHED).chosen().orElseThrow().measure();

        assertEquals("3 more 300 g plies in the lip", chosen.words());
        assertEquals(
                List.of(
                        "Lay three 300 g plies more in the lip, between the outside skin and the inside"
                                + " one."),
                BenchSteps.of(job.panel(), lip, chosen));
        Job laid = Laying.on(job, lip, chosen);
        assertEquals(1, laid.recipes().size());
        assertEquals(3, ((ZoneRecipe.NoFoam) laid.recipes().get(0).build()).more().size());
        assertEquals(job.recipes().get(0).region(), laid.recipes().get(0).region());
    }

    @Test
    void theNearestIsToldWhereNoLipHolds() {
        Job job = kneeling("heel");
        Target lip = Target.named(job, "lip").orElseThrow();
        Reinforcement found = reinforcing.of(job, lip, Rules.ANY, Watch.NOBODY);

        assertEquals(Optional.empty(), found.chosen());
        assertEquals(Practice.LIP, found.offered());
        PanelCheck check = new PanelCheck();
        double best = 0;
        for (Tried one : found.tried()) {
            Verdict verdict = check.check(Laying.on(job, lip, one.measure()));
            assertFalse(verdict.holds(), one.measure().words());
            best = Math.max(best, verdict.governing().reserve());
        }
        Tried nearest = found.nearest().orElseThrow();
        assertTrue(nearest.reserve() > 0.98 * best && nearest.reserve() < 1, "" + best);
        assertTrue(nearest.reserve() > found.bare().governing().reserve());
        assertTrue(found.uncut().isEmpty());
    }

    /** Every offer judged in full, one by one. */
    private Reinforcement lightest(Job job, Target target, Rules rules, Mode shortOf) {
        Reinforcement found = reinforcing.of(job, target, rules, Watch.NOBODY);
        Verdict bare = found.bare();
        List<Measure> all = new Offers(TestSchedules.TABLES, job, job, target, rules).all(bare);
        PanelCheck check = new PanelCheck();
        List<Measure> holding = new ArrayList<>();
        for (Measure measure : all) {
            if (check.check(Laying.on(job, target, measure)).holds()) {
                holding.add(measure);
            }
        }
        // In steps of 5 g, then the one whose skins are more alike, then the lighter.
        Comparator<Measure> lighter =
                Comparator.<Measure>comparingLong(one -> Math.round(200 * added(job, target, one)))
                        .thenComparingInt(one -> unlike(job, one))
                        .thenComparingDouble(one -> added(job, target, one));

        assertEquals(shortOf, bare.governing().mode());
        assertFalse(bare.holds());
        assertTrue(holding.size() > 1 && holding.size() < all.size(), holding.size() + " hold");
        assertEquals(all.size(), found.offered());
        assertEquals(
                all.stream().sorted(lighter).toList(),
                found.tried().stream().map(Tried::measure).toList());
        Tried chosen = found.chosen().orElseThrow();
        assertEquals(holding.stream().min(lighter).orElseThrow(), chosen.measure());
        assertEquals(added(job, target, chosen.measure()), chosen.addedMass(), 1e-12);
        assertTrue(chosen.verdict().orElseThrow().holds());
        return found;
    }

    private static double added(Job job, Target target, Measure measure) {
        PanelCheck check = PanelCheck.brief();
        return check.mass(Laying.on(job, target, measure)) - check.mass(job);
    }

    private static int unlike(Job job, Measure measure) {
        int more = job.schedule().outside().size() - job.schedule().inside().size();
        if (measure.build() instanceof Build.Plies plies) {
            more += plies.outside() - plies.inside();
        } else if (measure.build() instanceof Build.Strip strip) {
            more -= strip.over().size();
        }
        return Math.abs(more);
    }

    @Test
    void answersTheSameOnOneThread() throws Exception {
        Job job = job(1.25);
        Reinforcement here = reinforcing.of(job, vent(job), FEW, Watch.NOBODY);
        ForkJoinPool one = new ForkJoinPool(1);
        Reinforcement alone =
                one.submit(
                                () ->
                                        new Reinforcing(TestSchedules.TABLES)
                                                .of(job, vent(job), FEW, Watch.NOBODY))
                        .get();
        one.shutdown();

        assertEquals(here.chosen().map(Tried::measure), alone.chosen().map(Tried::measure));
        assertEquals(here.solved(), alone.solved());
        assertEquals(
                here.tried().stream().map(Tried::felt).toList(),
                alone.tried().stream().map(Tried::felt).toList());
    }

    @Test
    void stoppedItTellsOneThatHoldsOrNone() {
        Job job = job(1.25);
        for (int after = 0; after < 3; after++) {
            int most = after;
            Reinforcement found =
                    reinforcing.of(
                            job,
                            vent(job),
                            FEW,
                            new Watch() {
                                private int told;

                                @Override
                                public void tried(int count, int of) {
                                    told++;
                                }

                                @Override
                                public boolean isStopped() {
                                    return told > most;
                                }
                            });
            assertTrue(
                    found.chosen().isEmpty()
                            || found.chosen().get().verdict().orElseThrow().holds());
            assertTrue(found.tried().size() <= found.offered());
            assertEquals(found.tried().size() < found.offered(), found.stopped());
            assertTrue(after > 0 || found.stopped());
        }
    }

    @Test
    void nothingIsTriedWhereNothingIsNeeded() {
        Job job = job(0.5);
        Reinforcement found = reinforcing.of(job, vent(job), Rules.ANY, Watch.NOBODY);

        assertTrue(found.isNeedless());
        assertEquals(List.of(), found.tried());
        assertTrue(found.uncut().orElseThrow().mass() > found.bare().mass());
    }

    @Test
    void theNearestIsToldWhereNoneHolds() {
        Job job = job(9);
        Reinforcement found = reinforcing.of(job, vent(job), FEW, Watch.NOBODY);

        assertEquals(Optional.empty(), found.chosen());
        Tried nearest = found.nearest().orElseThrow();
        assertTrue(nearest.reserve() < 1 && nearest.reserve() > found.bare().governing().reserve());
        assertTrue(found.further().stream().anyMatch(c -> c.words().contains("a fifth smaller")));
        assertFalse(found.isBesideThePoint());
        // None could hold by the forecast, so none was worth a verdict but the nearest.
        assertEquals(0, found.solved());
    }

    @Test
    void aPlaceThatHasLittleToDoWithItIsSaidToHave() {
        Job job = job(3, new Opening("vent", new Shape.Circle(0.03), 0.06, 0.34));
        Reinforcement found = reinforcing.of(job, vent(job), FEW, Watch.NOBODY);

        assertEquals(Optional.empty(), found.chosen());
        assertTrue(found.isBesideThePoint());
    }

    @Test
    void whatCanBeCuredIsCuredWhereTheRestIsOutOfReach() {
        Job job = job(THIN, 4);
        Reinforcement found = reinforcing.of(job, vent(job), FEW, Watch.NOBODY);

        assertEquals(Optional.empty(), found.chosen());
        assertEquals(Set.of(Mode.CORE_SHEAR), found.cured());
        Tried nearest = found.nearest().orElseThrow();
        assertEquals(
                found.tried().stream()
                        .filter(
                                one ->
                                        PanelCheck.brief().margins(one.job()).stream()
                                                .allMatch(this::holdsButForStiffness))
                        .findFirst()
                        .orElseThrow()
                        .measure(),
                nearest.measure());
        assertTrue(
                nearest.verdict().orElseThrow().margins().stream()
                        .allMatch(this::holdsButForStiffness));
        assertFalse(found.isBesideThePoint());
    }

    private boolean holdsButForStiffness(Margin margin) {
        return margin.holds() || margin.mode() == Mode.FELT_STIFFNESS;
    }

    @Test
    void whatTheFileHasThereIsSetAside() {
        Job job = job(1.25);
        List<ZoneRecipe> own =
                List.of(
                        new ZoneRecipe(
                                "ring",
                                new Region.Around("vent", 0.03),
                                new ZoneRecipe.FoamStrip(0.01, List.of())),
                        new ZoneRecipe(
                                "insert",
                                new Region.Box(0.1, 0.2, 0, 0.05),
                                new ZoneRecipe.MorePlies(List.of(), SCHEDULE.inside())));
        List<TurnedEdge> turned = List.of(new TurnedEdge.Round("vent", Height.INSIDE));
        Job drawn =
                Job.of(job.panel().withTurned(turned), SCHEDULE, own, job.loads(), job.limits());
        Job bare = Laying.bare(drawn, vent(drawn));

        assertEquals(own.subList(1, 2), bare.recipes());
        assertEquals(List.of(), bare.panel().turned());
    }

    @Test
    void whatOneTurnsDownIsNotTried() {
        Job job = job(1.25);
        Offers offers = new Offers(TestSchedules.TABLES, job, job, vent(job), FEW);
        for (Measure measure : offers.all(new PanelCheck().check(job))) {
            assertTrue(measure.width() <= 0.04, measure.words());
            assertFalse(measure.words().contains("outside"), measure.words());
            assertFalse(
                    measure.build() instanceof Build.Strip strip && strip.thickness() > 0.012,
                    measure.words());
        }
    }

    @Test
    void pliesEndOneAtATimeWithinTheirBand() {
        Job job = job(1.25);
        Offers offers = new Offers(TestSchedules.TABLES, job, job, vent(job), Rules.ANY);
        for (Measure measure : offers.all(new PanelCheck().check(job))) {
            List<ZoneRecipe> zones = Laying.recipes(job.panel(), vent(job), measure);
            double last = Double.POSITIVE_INFINITY;
            int plies = 0;
            for (ZoneRecipe zone : zones) {
                double width = ((Region.Around) zone.region()).width();
                assertTrue(width >= Practice.OVERLAP - 1e-9, measure.words());
                assertTrue(last - width >= Practice.OVERLAP - 1e-9, measure.words());
                last = width;
                if (zone.build() instanceof ZoneRecipe.MorePlies more) {
                    assertTrue(more.inside().size() <= plies + 1, measure.words());
                    assertTrue(more.outside().size() <= plies + 1, measure.words());
                    plies++;
                }
            }
        }
    }

    @Test
    void saysThatThereIsNoRoom() {
        Opening near = new Opening("vent", new Shape.Circle(0.1), 0.25, 0.065);
        Job job = job(1.25, near);

        assertEquals(
                "There is no room to reinforce the vent: a band wants 20 mm, and there are 15 mm.",
                refused(job, Rules.Means.PLIES));
    }

    @Test
    void saysThatNothingIsLeftToTry() {
        assertEquals(
                "Of what is allowed nothing is left to try for the vent.",
                refused(job(1.25), Rules.Means.INSERT));
    }

    /** What it says where nothing can be tried but one means. */
    private String refused(Job job, Rules.Means means) {
        Rules rules = new Rules(EnumSet.of(means), 1, 1);
        return assertThrows(
                        NoAnswerException.class,
                        () -> reinforcing.of(job, vent(job), rules, Watch.NOBODY))
                .problem()
                .what();
    }

    @Test
    void everythingOfThePanelHasAName() {
        assertEquals(
                List.of(
                        "vent",
                        "left hinge",
                        "right hinge",
                        "latch",
                        "front edge",
                        "rear edge",
                        "left edge",
                        "right edge"),
                Target.of(job(1)).stream().map(Target::name).toList());
    }
}
