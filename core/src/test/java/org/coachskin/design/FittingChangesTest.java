package org.coachskin.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.coachskin.check.Job;
import org.coachskin.failure.Mode;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Support;
import org.junit.jupiter.api.Test;

class FittingChangesTest {

    private static final String SECOND = "a second latch: 225 mm from each corner";

    private static Job job(double radius) {
        return FittingLid.job(0.012, radius, FittingLid.fittings(), FittingLid.WIND);
    }

    private static List<Fitting.Pad> pads(Map<String, Support> changes, String words) {
        return Objects.requireNonNull(changes.get(words), changes.keySet().toString())
                .fittings()
                .stream()
                .filter(Fitting.Pad.class::isInstance)
                .map(Fitting.Pad.class::cast)
                .toList();
    }

    @Test
    void aGapByTheLatchAsksForASecondOneAtTheQuarters() {
        var changes =
                FittingChanges.of(
                        FittingLid.verdict(
                                job(0), FittingLid.half(Mode.SEAL_GAP, "wind", 0, 0.595)));
        assertEquals(Set.of(SECOND), changes.keySet());
        List<Fitting.Pad> pads = pads(changes, SECOND);
        assertEquals(4, pads.size());
        assertEquals("left latch", pads.get(2).name());
        assertEquals("right latch", pads.get(3).name());
        assertEquals(0.225, pads.get(2).x(), 1e-12);
        assertEquals(0.675, pads.get(3).x(), 1e-12);
        assertEquals(0.58, pads.get(2).y(), 1e-12);
        assertEquals(Set.of(Fitting.Direction.Z), pads.get(2).held());
    }

    @Test
    void aGapByTheHingesMovesThemOutward() {
        var gap = FittingLid.half(Mode.SEAL_GAP, "wind", 0, 0.01);
        String sharp = "hinges further apart: 75 mm from each corner";
        var changes = FittingChanges.of(FittingLid.verdict(job(0), gap));
        assertEquals(Set.of(sharp), changes.keySet());
        assertEquals(0.075, pads(changes, sharp).get(0).x(), 1e-12);
        assertEquals(0.825, pads(changes, sharp).get(1).x(), 1e-12);
        // A round corner would cut the pad's own: it stays where all of it lies on the panel.
        var round = FittingChanges.of(FittingLid.verdict(job(0.08), gap));
        assertEquals(Set.of("hinges further apart: 100 mm from each corner"), round.keySet());
    }

    @Test
    void aLatchThatIsNotInTheMiddleGetsItsMirrorImage() {
        List<Fitting> fittings = new ArrayList<>(FittingLid.fittings());
        fittings.set(2, Fitting.Pad.latch("right latch", 0.7, 0.58));
        var changes =
                FittingChanges.of(
                        FittingLid.verdict(
                                FittingLid.job(0.012, 0, fittings, FittingLid.WIND),
                                FittingLid.half(Mode.SAG, "wind", 0, 0.6)));
        List<Fitting.Pad> pads = pads(changes, "a second latch: 200 mm from each corner");
        assertEquals(0.2, pads.get(2).x(), 1e-12);
        assertEquals(0.7, pads.get(3).x(), 1e-12);
    }

    @Test
    void whatIsThereTwiceIsNotAskedForAgain() {
        List<Fitting> fittings = new ArrayList<>(FittingLid.fittings());
        fittings.add(Fitting.Pad.latch("right latch", 0.7, 0.58));
        var changes =
                FittingChanges.of(
                        FittingLid.verdict(
                                FittingLid.job(0.012, 0, fittings, FittingLid.WIND),
                                FittingLid.half(Mode.SAG, "wind", 0, 0.6)));
        assertTrue(changes.isEmpty(), changes.keySet().toString());
    }

    @Test
    void aChangeBearsOnEverythingThatDoesNotHold() {
        var punching = FittingLid.half(Mode.PUNCHING, "wind", 0.45, 0.58);
        String plate = "a stiff plate 80 mm x 80 mm under the latch";
        var alone = FittingChanges.of(FittingLid.verdict(job(0), punching));
        assertEquals(Set.of(SECOND, plate), alone.keySet());
        Fitting.Pad wide = pads(alone, plate).get(2);
        assertEquals(0.08, wide.sizeX(), 1e-12);
        assertEquals(0.56, wide.y(), 1e-12);
        var both =
                FittingChanges.of(
                        FittingLid.verdict(
                                job(0),
                                punching,
                                FittingLid.half(Mode.SEAL_GAP, "wind", 0, 0.595)));
        assertEquals(Set.of(SECOND), both.keySet());
        var apart =
                FittingChanges.of(
                        FittingLid.verdict(
                                job(0), punching, FittingLid.half(Mode.SEAL_GAP, "wind", 0, 0.01)));
        assertTrue(apart.isEmpty(), apart.keySet().toString());
    }

    @Test
    void aPalmOnASoftSealAsksForAStifferOne() {
        var changes =
                FittingChanges.of(
                        FittingLid.verdict(
                                FittingLid.job(0.012, 0, FittingLid.fittings(), FittingLid.PALM),
                                FittingLid.half(Mode.FELT_STIFFNESS, "palm", 0.45, 0.3)));
        String stiffer = "a stiffer rubber seal: 100 N per m instead of 50";
        assertEquals(Set.of(SECOND, stiffer), changes.keySet());
        Fitting.RubberSeal seal =
                (Fitting.RubberSeal) Objects.requireNonNull(changes.get(stiffer)).fittings().get(3);
        assertEquals(100, seal.force(), 1e-12);
        assertEquals(0.006, seal.squeeze(), 1e-12);
    }

    @Test
    void aRimThatIsCarriedHasNoFittingsToChange() {
        Job whole = job(0).withSupport(new Support.WholeRim());
        assertTrue(
                FittingChanges.of(
                                FittingLid.verdict(
                                        whole,
                                        FittingLid.half(Mode.FELT_STIFFNESS, "wind", 0.4, 0.3)))
                        .isEmpty());
        assertFalse(whole.panel().support() instanceof Support.Fittings);
    }
}
