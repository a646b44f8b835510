package org.coachskin.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.coachskin.TestSchedules;
import org.coachskin.laminate.Schedule;
import org.coachskin.panel.Crown;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Region;
import org.coachskin.panel.Stretch;
import org.coachskin.panel.Support;
import org.coachskin.panel.ZoneRecipe;
import org.junit.jupiter.api.Test;

/**
 * A strip 15 mm thick on a lid of 600 x 400 mm, hinges in front, a latch and a seal at the rear.
 */
class BevelRoomTest {

    private static final Schedule LAID = TestSchedules.sandwich(2, 0.012, 1);

    private static List<String> cautions(Region region) {
        ZoneRecipe strip =
                new ZoneRecipe("sill", region, new ZoneRecipe.FoamStrip(0.015, List.of()));
        Fitting.RubberSeal all = Fitting.RubberSeal.allRound();
        Fitting seal =
                new Fitting.RubberSeal(
                        List.of(Stretch.whole(Edge.REAR)),
                        all.force(),
                        all.squeeze(),
                        all.solid(),
                        all.solidFactor());
        Panel panel =
                new Panel(
                        "lid",
                        0.6,
                        0.4,
                        Crown.FLAT,
                        LAID.laminate(),
                        new Support.Fittings(
                                List.of(
                                        Fitting.Pad.hinge("left hinge", 0.15, 0.02),
                                        Fitting.Pad.hinge("right hinge", 0.45, 0.02),
                                        Fitting.Pad.latch("latch", 0.3, 0.38),
                                        seal)));
        return BevelRoom.cautions(panel.withZones(List.of(strip.zone(LAID))));
    }

    @Test
    void withRoomAllRoundThereIsNothingToSay() {
        assertEquals(List.of(), cautions(new Region.Box(0.2, 0.4, 0.1, 0.3)));
        // 45 mm of bevel end 30 mm before the rim.
        assertEquals(List.of(), cautions(new Region.Box(0.075, 0.2, 0.1, 0.3)));
    }

    @Test
    void whatIsCutOffIsSaidWithWhatIsLeftOfIt() {
        List<String> found = cautions(new Region.Box(0.03, 0.2, 0.1, 0.3));
        assertEquals(1, found.size());
        assertTrue(
                found.get(0)
                        .startsWith(
                                "The bevel of the sill, 45 mm long, has 30 mm before the rim. "
                                        + "It is counted as cut off there, 5 mm thick."),
                found.get(0));
    }

    @Test
    void whatLiesOnTheSlopeIsNamed() {
        String hinge = "The bevel of the sill runs under the left hinge: what bears";
        List<String> byHinge = cautions(new Region.Box(0.05, 0.3, 0.08, 0.2));
        assertEquals(1, byHinge.size());
        assertTrue(byHinge.get(0).startsWith(hinge), byHinge.get(0));

        // 45 mm of bevel end 20 mm before the rear edge; the left edge has no seal.
        String seal = "The bevel of the sill runs under the rubber seal: what";
        List<String> bySeal = cautions(new Region.Box(0.065, 0.2, 0.2, 0.335));
        assertEquals(1, bySeal.size());
        assertTrue(bySeal.get(0).startsWith(seal), bySeal.get(0));
        assertTrue(
                cautions(new Region.Box(0.2, 0.4, 0.2, 0.335))
                        .get(0)
                        .startsWith(
                                "The bevel of the sill runs under the latch and the rubber seal:"));
        assertEquals(List.of(), cautions(new Region.Box(0.065, 0.2, 0.2, 0.325)));
    }
}
