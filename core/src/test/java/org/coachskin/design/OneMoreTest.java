package org.coachskin.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.coachskin.TestSchedules;
import org.coachskin.check.Job;
import org.coachskin.check.Limits;
import org.coachskin.check.Margin;
import org.coachskin.check.PanelCheck;
import org.coachskin.check.Verdict;
import org.coachskin.failure.Mode;
import org.coachskin.laminate.Schedule;
import org.coachskin.panel.Crown;
import org.coachskin.panel.EverydayLoads;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Support;
import org.junit.jupiter.api.Test;

class OneMoreTest {

    private static final LoadCase THUMB = EverydayLoads.named("thumb").orElseThrow().at(0.45, 0.3);

    /** A corner behind the latch, where a palm presses the rubber solid. */
    private static final LoadCase CORNER = EverydayLoads.named("palm").orElseThrow().at(0.06, 0.54);

    private static void agreesWithFullSolutions(Job job, List<String> some) {
        Verdict verdict = new PanelCheck().check(job);
        OneMore oneMore = OneMore.of(verdict, TestSchedules.TABLES, () -> {});
        Map<String, Schedule> changes = OneMore.changes(job.schedule(), TestSchedules.TABLES);
        Map<String, Job> jobs = new LinkedHashMap<>();
        for (String words : some) {
            jobs.put(words, job.withSchedule(Objects.requireNonNull(changes.get(words))));
        }
        for (Comparison.Column column : Comparison.of(jobs).columns()) {
            OneMore.Step step =
                    oneMore.steps().stream()
                            .filter(s -> s.words().equals(column.name()))
                            .findFirst()
                            .orElseThrow();
            Verdict after = column.verdict();
            assertEquals(after.mass() - verdict.mass(), step.addedMass(), 1e-6);
            assertEquals(
                    after.felt().orElseThrow().nominal() / verdict.felt().orElseThrow().nominal(),
                    oneMore.stiffer(step).orElseThrow(),
                    OneMore.STIFFNESS_WITHIN,
                    step.words());
            for (Mode.Question question : Mode.Question.values()) {
                assertEquals(
                        least(after, question) / least(verdict, question),
                        oneMore.reserve(step, question).orElseThrow(),
                        OneMore.RESERVES_WITHIN,
                        step.words() + " " + question);
            }
        }
    }

    private static double least(Verdict verdict, Mode.Question question) {
        return verdict.governing(question).map(Margin::reserve).orElseThrow();
    }

    @Test
    void underAPalmItAgreesWithFullSolutions() {
        agreesWithFullSolutions(
                FittingLid.job(0.012, 0, FittingLid.fittings(), FittingLid.PALM, THUMB),
                List.of(
                        "one more 300 g ply outside",
                        "foam 96 kg/m^3 instead of 64",
                        "every cloth 10 % heavier"));
    }

    @Test
    void whereRubberLetsGoAndGoesSolidItAgreesWithFullSolutions() {
        Job job = FittingLid.job(0.012, 0, FittingLid.fittings(), CORNER, THUMB, FittingLid.WIND);
        Verdict verdict = PanelCheck.brief().check(job);
        assertTrue(verdict.held().get(2).widestGap() > 0.001);
        assertTrue(verdict.held().get(0).seals().stream().anyMatch(place -> place.solid()));
        agreesWithFullSolutions(job, List.of("5 mm more foam"));
    }

    @Test
    void stepsFollowWhatIsLaid() {
        Schedule lid = TestSchedules.sandwich(2, 0.012, 1);
        assertEquals(
                List.of(
                        "one more 300 g ply outside",
                        "one more 300 g ply inside",
                        "5 mm more foam",
                        "foam 96 kg/m^3 instead of 64",
                        "every cloth 10 % heavier"),
                List.copyOf(OneMore.changes(lid, TestSchedules.TABLES).keySet()));
        Schedule bare = lid.withBoard(null).withInside(List.of());
        assertEquals(
                List.of("one more 300 g ply", "every cloth 10 % heavier"),
                List.copyOf(OneMore.changes(bare, TestSchedules.TABLES).keySet()));
        Schedule heavier =
                Objects.requireNonNull(
                        OneMore.changes(lid, TestSchedules.TABLES).get("every cloth 10 % heavier"));
        assertEquals(1.1 * lid.masses().glass(), heavier.masses().glass(), 1e-12);
        assertEquals(1.1 * lid.masses().resin(), heavier.masses().resin(), 1e-12);
        assertEquals(lid.masses().foam(), heavier.masses().foam(), 1e-12);
    }

    @Test
    void saysHowManySolutionsItTakesAndTakesThem() {
        Job job = FittingLid.job(0.012, 0, FittingLid.fittings(), THUMB);
        AtomicInteger done = new AtomicInteger();
        OneMore oneMore =
                OneMore.of(
                        PanelCheck.brief().check(job), TestSchedules.TABLES, done::incrementAndGet);
        assertEquals(OneMore.solutions(job, TestSchedules.TABLES), done.get());
        assertEquals(done.get() - 1, oneMore.steps().size());
        assertEquals(Optional.empty(), oneMore.stiffer(oneMore.steps().get(0)));
    }

    /** Carried all round, where the series is exact, a step never makes a panel softer. */
    @Property(tries = 8, seed = "20261126")
    void noStepMakesAPanelSofter(
            @ForAll @IntRange(min = 1, max = 3) int outside,
            @ForAll @IntRange(min = 0, max = 2) int inside,
            @ForAll @IntRange(min = 5, max = 25) int foam,
            @ForAll @DoubleRange(min = 0.4, max = 0.9) double width) {
        Schedule schedule = TestSchedules.sandwich(outside, foam / 1000.0, inside);
        Job job =
                Job.of(
                        "cover",
                        width,
                        0.5,
                        Crown.FLAT,
                        new Support.WholeRim(),
                        schedule,
                        List.of(EverydayLoads.named("palm").orElseThrow().at(0.5 * width, 0.25)),
                        Limits.STANDARD);
        OneMore oneMore = OneMore.of(PanelCheck.brief().check(job), TestSchedules.TABLES, () -> {});
        for (OneMore.Step step : oneMore.steps()) {
            double times = oneMore.stiffer(step).orElseThrow();
            assertTrue(times > 1, step.words() + " " + times);
            assertTrue(step.addedMass() > 0, step.words());
        }
    }
}
