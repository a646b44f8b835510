package org.coachskin.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicInteger;
import org.coachskin.NoAnswerException;
import org.coachskin.Problem;
import org.coachskin.TestSchedules;
import org.coachskin.check.Job;
import org.coachskin.check.PanelCheck;
import org.coachskin.failure.Mode;
import org.coachskin.laminate.Schedule;
import org.coachskin.panel.EverydayLoads;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Support;
import org.junit.jupiter.api.Test;

/** The hinged lid in variants. */
class ComparisonTest {

    private static final LoadCase THUMB = thumb(0.45);

    private static LoadCase thumb(double x) {
        return EverydayLoads.named("thumb").orElseThrow().at(x, 0.3);
    }

    private static final Job DRAWN =
            FittingLid.job(0.012, 0, FittingLid.fittings(), FittingLid.PALM, THUMB);

    private static Job laid(int outside, int inside) {
        Schedule schedule = TestSchedules.sandwich(outside, 0.012, inside);
        return DRAWN.withSchedule(schedule);
    }

    private static final Map<String, Job> JOBS = new LinkedHashMap<>();

    private static final AtomicInteger JUDGED = new AtomicInteger();

    static {
        JOBS.put("as drawn", DRAWN);
        JOBS.put("ply inside", laid(2, 2));
        JOBS.put("the same", laid(2, 1));
        JOBS.put("only the thumb", DRAWN.withLoads(List.of(THUMB)));
        JOBS.put("elsewhere", DRAWN.withLoads(List.of(FittingLid.PALM, thumb(0.3))));
    }

    private static final Comparison ALL = Comparison.of(JOBS, JUDGED::incrementAndGet);

    private static Comparison.Column column(String name) {
        return ALL.columns().stream().filter(c -> c.name().equals(name)).findFirst().orElseThrow();
    }

    @Test
    void sideBySideItSaysWhatOneAfterTheOtherSays() {
        assertEquals(JOBS.size(), JUDGED.get());
        assertEquals(
                List.copyOf(JOBS.keySet()),
                ALL.columns().stream().map(Comparison.Column::name).toList());
        for (String name : List.of("as drawn", "ply inside")) {
            Job job = Objects.requireNonNull(JOBS.get(name));
            assertEquals(new PanelCheck().check(job), column(name).verdict());
        }
        for (Comparison.Column each : ALL.columns()) {
            assertEquals(each.mass(), each.weights().total(), 1e-9 * each.mass());
        }
    }

    @Test
    void tellsOnlyDifferencesThatAreMoreThanErrors() {
        Comparison.Column more = column("ply inside");
        Comparison.Column same = column("the same");
        Comparison.Difference stiffer = ALL.stiffness(more).orElseThrow();
        assertTrue(stiffer.tells());
        assertTrue(stiffer.numericalError() > 0 && stiffer.numericalError() < 0.02);
        assertEquals(
                more.verdict().felt().orElseThrow().nominal()
                        / column("as drawn").verdict().felt().orElseThrow().nominal(),
                1 + stiffer.share(),
                1e-12);
        assertFalse(ALL.stiffness(same).orElseThrow().tells());
        assertFalse(ALL.reserve(same, Mode.Question.STRONG).orElseThrow().tells());
        // A ply inside does nothing for a thumb outside.
        assertFalse(ALL.reserve(more, Mode.Question.UNMARKED).orElseThrow().tells());
        assertFalse(new Comparison.Difference(0.03, 0.04).tells());
        assertTrue(new Comparison.Difference(-0.05, 0.04).tells());
        assertFalse(new Comparison.Difference(0.004, 0).tells());
    }

    @Test
    void knowsWhetherTheSameLoadsBear() {
        assertTrue(ALL.isLoadedAlike(column("ply inside")));
        assertFalse(ALL.isLoadedAlike(column("only the thumb")));
        assertFalse(ALL.isLoadedAlike(column("elsewhere")));
        assertTrue(ALL.stiffness(column("only the thumb")).isEmpty());
    }

    @Test
    void ofSeveralThatCannotBeAnsweredTheFirstIsTold() {
        Map<String, Job> jobs = new LinkedHashMap<>();
        List<Fitting> all = FittingLid.fittings();
        Job onALatch = DRAWN.withSupport(new Support.Fittings(all.subList(2, 3)));
        jobs.put("on a latch", onALatch);
        jobs.put("on a hinge", DRAWN.withSupport(new Support.Fittings(all.subList(0, 1))));
        Problem first =
                assertThrows(NoAnswerException.class, () -> new PanelCheck().check(onALatch))
                        .problem();
        for (int time = 0; time < 2; time++) {
            NoAnswerException e = assertThrows(NoAnswerException.class, () -> Comparison.of(jobs));
            assertEquals(first, e.problem());
        }
    }
}
