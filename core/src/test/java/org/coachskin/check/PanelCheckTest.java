package org.coachskin.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.coachskin.TestSchedules;
import org.coachskin.design.Change;
import org.coachskin.design.Cures;
import org.coachskin.failure.Mode;
import org.coachskin.laminate.PrimaryInput;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.Foam;
import org.coachskin.panel.Crown;
import org.coachskin.panel.EverydayLoads;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Support;
import org.coachskin.prove.StripTest;
import org.junit.jupiter.api.Test;

class PanelCheckTest {

    private static Job lid(Schedule schedule) {
        List<LoadCase> loads =
                List.of(
                        EverydayLoads.named("palm").orElseThrow().at(0.45, 0.3),
                        EverydayLoads.named("thumb").orElseThrow().at(0.45, 0.3));
        return Job.of(
                "lid",
                0.9,
                0.6,
                Crown.FLAT,
                new Support.WholeRim(),
                schedule,
                loads,
                Limits.STANDARD);
    }

    @Test
    void foamThatTheResinDissolvesMakesNoJob() {
        Schedule good = TestSchedules.sandwich(2, 0.012, 1);
        Foam beads = TestSchedules.TABLES.foam(Foam.Kind.EPS, 24).orElseThrow();
        Schedule melting =
                new Schedule(
                        good.outside(),
                        good.inside(),
                        new Schedule.Board(beads, 0.012, 0.7e-3),
                        TestSchedules.TABLES.resin("polyester").orElseThrow(),
                        good.layUp(),
                        good.sealCoat(),
                        false);
        Throwable thrown = assertThrows(IllegalArgumentException.class, () -> lid(melting));
        assertEquals(
                "lid cannot be laid so: The styrene in wet polyester dissolves polystyrene foam, through any paint.",
                thrown.getMessage());
    }

    @Test
    void thePartsOfTheMovementAddUp() {
        Verdict verdict = new PanelCheck().check(lid(TestSchedules.sandwich(2, 0.012, 1)));
        Movement palm = verdict.movements().get(0);
        assertEquals(palm.total(), palm.bending() + palm.sliding() + palm.dent(), 1e-12);
        assertTrue(palm.bending() > 0 && palm.sliding() > 0 && palm.dent() > 0, palm.toString());
        assertEquals(250 / palm.total(), palm.stiffness(), 1e-6);
    }

    @Test
    void aLidThatHoldsSaysYesAndAFlimsyOneNo() {
        Verdict good = new PanelCheck().check(lid(TestSchedules.sandwich(2, 0.012, 1)));
        assertEquals(Answer.YES, good.stiff());
        assertEquals(Answer.YES, good.strong());
        assertEquals(Answer.YES, good.unmarked());
        assertTrue(good.holds());
        Verdict flimsy = new PanelCheck().check(lid(TestSchedules.sandwich(1, 0.006, 1)));
        assertEquals(Answer.NO, flimsy.stiff());
        assertFalse(flimsy.holds());
    }

    @Test
    void scatterThatStraddlesTheLimitMakesItBarely() {
        Job job = lid(TestSchedules.sandwich(2, 0.012, 1));
        double k = new PanelCheck().check(job).felt().orElseThrow().nominal();
        Limits close =
                new Limits(
                        0.98 * k,
                        0.01,
                        2e-3,
                        1e-4,
                        false,
                        job.limits().factors(),
                        job.limits().criterion());
        Job near = job.withLimits(close);
        Verdict verdict = new PanelCheck().check(near);
        assertEquals(Answer.BARELY, verdict.stiff());
        assertTrue(verdict.holds());
    }

    @Test
    void everyModeIsNamedWithItsLoadAndItsPlace() {
        Verdict verdict = new PanelCheck().check(lid(TestSchedules.sandwich(2, 0.012, 1)));
        for (Mode mode :
                List.of(
                        Mode.FELT_STIFFNESS,
                        Mode.CORE_SHEAR,
                        Mode.WRINKLING,
                        Mode.CRUSHING,
                        Mode.LASTING_MARK)) {
            Margin margin =
                    verdict.margins().stream()
                            .filter(m -> m.mode() == mode)
                            .findFirst()
                            .orElseThrow();
            assertFalse(margin.place().words().isBlank(), mode.words());
            assertTrue(margin.reserve() > 0, mode.words());
        }
    }

    @Test
    void besideHeatTwiceTheLoadFitsHalfAsOften() {
        Verdict once = new PanelCheck().check(heated(0.5e3));
        Verdict twice = new PanelCheck().check(heated(1e3));
        Verdict cool = new PanelCheck().check(crowned(List.of(), 0.5e3));
        for (Mode mode : List.of(Mode.WRINKLING, Mode.CORE_TENSION, Mode.BOND, Mode.PLY_CRUSHED)) {
            double fits = margin(once, mode).multiplier();
            assertEquals(fits / 2, margin(twice, mode).multiplier(), 1e-6 * fits, mode.words());
            double alone = margin(cool, mode).multiplier();
            assertTrue(Math.abs(fits - alone) > 1e-3 * alone, mode.words());
        }
    }

    private static Job heated(double pressure) {
        return crowned(List.of(new Load.Heat(45, 10)), pressure);
    }

    private static Job crowned(List<Load> standing, double pressure) {
        LoadCase snow =
                new LoadCase(
                        "snow",
                        List.of(new Load.Pressure(pressure)),
                        standing,
                        LoadCase.Kind.SPREAD,
                        false,
                        false);
        return Job.of(
                "roof",
                0.9,
                0.6,
                Crown.ofRise(0.03, 0.9, 0.02, 0.6),
                new Support.WholeRim(),
                TestSchedules.sandwich(2, 0.012, 1),
                List.of(snow),
                Limits.STANDARD);
    }

    private static Margin margin(Verdict verdict, Mode mode) {
        return verdict.margins().stream().filter(m -> m.mode() == mode).findFirst().orElseThrow();
    }

    @Test
    void everyReserveScattersAndStrengthsMoveOnlyWhatBreaks() {
        Verdict verdict = new PanelCheck().check(lid(TestSchedules.sandwich(2, 0.012, 1)));
        Map<Mode, Spread> spreads = Reserves.of(verdict);
        for (Margin margin : verdict.margins()) {
            Spread spread = of(spreads, margin.mode());
            assertEquals(margin.reserve(), spread.nominal(), 1e-12 * margin.reserve());
            assertTrue(spread.low() < spread.nominal() && spread.nominal() < spread.high());
        }
        Spread shear = of(spreads, Mode.CORE_SHEAR);
        double deviation = (shear.high() - shear.nominal()) / Spread.TENTH;
        double byStrength = of(shear.shares(), PrimaryInput.STRENGTHS) * deviation * deviation;
        assertEquals(0.12 * shear.nominal(), Math.sqrt(byStrength), 1e-9 * shear.nominal());
        assertEquals(0, of(of(spreads, Mode.WRINKLING).shares(), PrimaryInput.STRENGTHS));
        assertEquals(
                verdict.felt().orElseThrow().low() / 40e3,
                of(spreads, Mode.FELT_STIFFNESS).low(),
                1e-12);
    }

    private static <K, V> V of(Map<K, V> map, K key) {
        return Objects.requireNonNull(map.get(key));
    }

    @Test
    void ofTwoPlacesThatAreEachOthersImageTheFirstIsNamed() {
        LoadCase load = EverydayLoads.named("thumb").orElseThrow().at(0.3, 0.3);
        Worst worst = new Worst(load, List.of());
        for (double reserve : new double[] {2, 2 * (1 - 1e-13), 2 * (1 - 1e-12)}) {
            worst.keep(
                    Mode.CORE_SHEAR,
                    1,
                    new Place("at " + reserve, 0, 0, 0),
                    1,
                    1,
                    reserve,
                    List.of(),
                    0);
        }
        assertEquals("at 2.0", worst.margins().get(0).place().words());
        worst.keep(Mode.CORE_SHEAR, 1, new Place("worse", 0, 0, 0), 1, 1, 1.99, List.of(), 0);
        assertEquals("worse", worst.margins().get(0).place().words());
    }

    @Test
    void aCureThatIsSaidToHoldHolds() {
        Verdict flimsy = new PanelCheck().check(lid(TestSchedules.sandwich(1, 0.010, 1)));
        List<Change> cures = new Cures(TestSchedules.TABLES).toCure(flimsy);
        assertFalse(cures.isEmpty());
        boolean held = true;
        for (Change cure : cures) {
            assertTrue(cure.addedMass() > 0, cure.words());
            // Those that hold stand first.
            assertTrue(held || !cure.verdict().holds(), cure.words());
            held = cure.verdict().holds();
        }
    }

    @Test
    void theSameQuestionHasTheSameAnswerToTheLastBit() {
        Verdict once = new PanelCheck().check(lid(TestSchedules.sandwich(2, 0.012, 1)));
        Verdict again = new PanelCheck().check(lid(TestSchedules.sandwich(2, 0.012, 1)));
        assertEquals(once.margins(), again.margins());
        assertEquals(once.movements(), again.movements());
    }

    @Test
    void aStripReadsMoreUnderMoreMassAndTheRangeHoldsTheReading() {
        StripTest strip = StripTest.of(TestSchedules.sandwich(2, 0.012, 1));
        assertTrue(strip.low() < strip.reading() && strip.reading() < strip.high());
        assertTrue(strip.reading() > 0.001 && strip.reading() < 0.010, strip.toString());
    }
}
