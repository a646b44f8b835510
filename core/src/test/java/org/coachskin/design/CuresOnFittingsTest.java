package org.coachskin.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.coachskin.TestSchedules;
import org.coachskin.check.Job;
import org.coachskin.check.PanelCheck;
import org.coachskin.check.Verdict;
import org.coachskin.laminate.Schedule;
import org.junit.jupiter.api.Test;

/** A lid in the wind: 12 mm of foam, one latch. */
class CuresOnFittingsTest {

    private static final PanelCheck CHECK = PanelCheck.brief();

    @Test
    void theForecastLiesWithinATenthOfWhatTheChangeComesTo() {
        Job job = FittingLid.job(0.012, 0, FittingLid.fittings(), FittingLid.WIND);
        Verdict before = CHECK.check(job);
        Forecast forecast = new Forecast(before);
        Map<String, Schedule> changes =
                new StackChanges(TestSchedules.TABLES).stronger(job.schedule());
        for (String words :
                List.of(
                        "one more 300 g ply inside",
                        "foam 20 mm instead of 12 mm",
                        "foam 96 kg/m^3 instead of 64")) {
            Job changed = job.withSchedule(Objects.requireNonNull(changes.get(words)));
            double is = CHECK.check(changed).governing().reserve();
            assertEquals(is, forecast.reserve(changed.panel()), 0.1 * is, words);
        }
    }

    @Test
    void aSecondLatchCuresALidThatTheWindLiftsAtItsCorners() {
        Job job = FittingLid.job(0.015, 0, FittingLid.fittings(), FittingLid.WIND);
        Verdict before = CHECK.check(job);
        assertFalse(before.holds());
        List<Change> cures = new Cures(TestSchedules.TABLES).toCure(before);
        Change first = cures.get(0);
        assertEquals("a second latch: 225 mm from each corner", first.words());
        assertEquals(0, first.addedMass());
        assertTrue(first.verdict().holds());
        assertEquals(
                first.verdict().governing().reserve(),
                CHECK.check(first.verdict().job()).governing().reserve());
        boolean held = true;
        for (Change cure : cures) {
            assertTrue(held || !cure.verdict().holds(), cure.words());
            held = cure.verdict().holds();
        }
    }
}
