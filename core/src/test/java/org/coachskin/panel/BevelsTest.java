package org.coachskin.panel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coachskin.TestSchedules;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.Inserts;
import org.junit.jupiter.api.Test;

/** A strip 15 mm thick, bevelled over 45 mm, on a panel of 800 x 500 mm: sums by hand. */
class BevelsTest {

    private static final double THICK = 0.015;
    private static final double REACH = 0.045;

    /** Length on the slope over length on the flat, less 1. */
    private static final double LONGER = Math.sqrt(10) / 3 - 1;

    private static final Schedule LAID = TestSchedules.sandwich(2, 0.012, 1);

    private static final ZoneRecipe.FoamStrip STRIP = new ZoneRecipe.FoamStrip(THICK, List.of());

    private static final Opening VENT = new Opening("vent", new Shape.Circle(0.1), 0.4, 0.25);

    private static Panel panel(List<Opening> openings, ZoneRecipe... zones) {
        return Panel.flat("lid", 0.8, 0.5, LAID.laminate())
                .withOpenings(openings)
                .withZones(List.of(zones).stream().map(zone -> zone.zone(LAID)).toList());
    }

    private static ZoneRecipe strip(Region region) {
        return new ZoneRecipe("strip", region, STRIP);
    }

    /** Sums foam [m^3] and skin on the slope beyond the flat [m^2], each layer of it once. */
    private static void assertMore(double foam, double skin, Panel panel, double within) {
        Map<Layer, Double> areas = new LinkedHashMap<>();
        Bevels.addAreas(panel, areas);
        double volume = 0;
        int layers = 0;
        for (Map.Entry<Layer, Double> more : areas.entrySet()) {
            if (more.getKey() instanceof Layer.Core core) {
                volume += more.getValue() * core.thickness();
            } else {
                layers++;
                assertEquals(skin, more.getValue(), within * Math.abs(skin), "skin");
            }
        }
        assertEquals(foam, volume, within * Math.abs(foam), "foam");
        // One ply and the seal coat under it.
        assertEquals(skin == 0 ? 0 : 2, layers);
    }

    @Test
    void aRectangleIsAPrismAlongItsSidesAndAConeRoundItsCorners() {
        double rim = 2 * (0.2 + 0.1);
        assertMore(
                THICK * REACH / 2 * rim + Math.PI * REACH * REACH * THICK / 3,
                LONGER * (rim * REACH + Math.PI * REACH * REACH),
                panel(List.of(), strip(new Region.Box(0.3, 0.5, 0.2, 0.3))),
                1e-9);
    }

    /** By Pappus, the triangle's middle a third of the bevel out; none at the opening. */
    @Test
    void aRingHasItOnItsOutsideAlone() {
        double radius = 0.05 + 0.06;
        assertMore(
                THICK * REACH / 2 * 2 * Math.PI * (radius + REACH / 3),
                LONGER * 2 * Math.PI * (radius * REACH + REACH * REACH / 2),
                panel(List.of(VENT), strip(new Region.Around("vent", 0.06))),
                1e-9);
    }

    @Test
    void thereIsNoneWhereAStripEndsAtTheRimOrAtAnOpening() {
        double rim = 0.2 + 0.1;
        assertMore(
                THICK * REACH / 2 * rim + Math.PI * REACH * REACH * THICK / 12,
                LONGER * (rim * REACH + Math.PI * REACH * REACH / 4),
                panel(List.of(), strip(new Region.Box(0, 0.2, 0, 0.1))),
                1e-9);
        Opening hatch = new Opening("hatch", new Shape.Rectangle(0.2, 0.1, 0), 0.4, 0.25);
        assertMore(0, 0, panel(List.of(hatch), strip(new Region.Box(0.3, 0.5, 0.2, 0.3))), 0);
        Region all = new Region.AlongEdges(List.of(Edge.FRONT), 0.5);
        assertMore(0, 0, panel(List.of(), strip(all)), 0);
    }

    /** Where the bevels of two sides meet in a corner, the higher one stands. */
    @Test
    void inACornerThatPointsInwardBothMeetHalfway() {
        double rim = 2 * (0.7 + 0.4);
        assertMore(
                THICK * REACH / 2 * rim - 4 * THICK * REACH * REACH / 3,
                LONGER * (rim * REACH - 4 * REACH * REACH),
                panel(List.of(), strip(new Region.AlongEdges(List.of(Edge.values()), 0.05))),
                2e-4);
    }

    @Test
    void whatFindsNoRoomIsCutOff() {
        double room = 0.02;
        double foam = THICK * (room - room * room / (2 * REACH));
        ZoneRecipe near = strip(new Region.Box(0.78 - 0.2, 0.78, 0, 0.5));
        Panel atRim = panel(List.of(), near);
        assertMore((THICK * REACH / 2 + foam) * 0.5, LONGER * (REACH + room) * 0.5, atRim, 1e-4);
        assertEquals(List.of("", "the rim"), ends(atRim));

        ZoneRecipe lip =
                new ZoneRecipe(
                        "lip",
                        new Region.AlongEdges(List.of(Edge.RIGHT), 0.02),
                        new ZoneRecipe.NoFoam(List.of(), Height.OUTSIDE));
        Panel atLip = panel(List.of(), strip(new Region.Box(0.56, 0.76, 0, 0.5)), lip);
        assertMore((THICK * REACH / 2 + foam) * 0.5, LONGER * (REACH + room) * 0.5, atLip, 1e-4);
        assertEquals(List.of("", "the lip"), ends(atLip));

        assertTrue(
                ends(panel(List.of(VENT), strip(new Region.Box(0.1, 0.34, 0, 0.5))))
                        .contains("the vent"));
    }

    /** Only where the insert comes last; its own foam is as thick as the panel's. */
    @Test
    void aZoneNamedLaterEndsItOneNamedEarlierLiesUnderIt() {
        ZoneRecipe insert =
                new ZoneRecipe(
                        "insert",
                        new Region.AlongEdges(List.of(Edge.RIGHT), 0.1),
                        new ZoneRecipe.OtherFoam(Inserts.named("plywood"), 0.012, List.of()));
        ZoneRecipe plies =
                new ZoneRecipe(
                        "plies",
                        new Region.AlongEdges(List.of(Edge.RIGHT), 0.1),
                        new ZoneRecipe.MorePlies(LAID.inside(), List.of()));
        ZoneRecipe strip = strip(new Region.Box(0, 0.68, 0, 0.5));
        double room = 0.02;
        double cut = THICK * (room - room * room / (2 * REACH));
        double whole = THICK * REACH / 2;
        assertMore(0.5 * cut, 0.5 * LONGER * room, panel(List.of(), strip, insert), 1e-4);
        assertMore(0.5 * whole, 0.5 * LONGER * REACH, panel(List.of(), insert, strip), 1e-9);
        assertMore(0.5 * whole, 0.5 * LONGER * REACH, panel(List.of(), strip, plies), 1e-9);
        assertEquals(List.of(""), ends(panel(List.of(), strip, insert)));
    }

    /** A rim that leans, or a vent on its line, cuts strip and bevel alike. */
    @Test
    void whatCutsTheStripItselfIsNotInTheWayOfItsBevel() {
        Shape.Polygon leaning =
                new Shape.Polygon(
                        List.of(
                                new Shape.Point(0.1, 0),
                                new Shape.Point(0.7, 0),
                                new Shape.Point(0.8, 0.5),
                                new Shape.Point(0, 0.5)));
        Panel panel =
                new Panel(
                        "lid",
                        0.8,
                        0.5,
                        Crown.FLAT,
                        LAID.laminate(),
                        new Support.WholeRim(),
                        leaning,
                        List.of(),
                        List.of(strip(new Region.AlongEdges(List.of(Edge.REAR), 0.1)).zone(LAID)));
        assertEquals(List.of(""), ends(panel));
        assertTrue(
                Bevels.of(panel, 0.01).stream()
                        .anyMatch(bevel -> bevel.room(panel).length() < 0.9 * REACH));
        ZoneRecipe across = strip(new Region.AlongEdges(List.of(Edge.FRONT), 0.24));
        assertEquals(List.of(""), ends(panel(List.of(VENT), across)));
    }

    private static List<String> ends(Panel panel) {
        return Bevels.of(panel, 0.01).stream()
                .map(bevel -> bevel.room(panel).before())
                .distinct()
                .toList();
    }

    /** Foam that is thinner in the zone is cut away beside it. */
    @Test
    void aThinnerZoneIsCutIntoWhatLiesBesideIt() {
        ZoneRecipe thin =
                new ZoneRecipe(
                        "thin",
                        new Region.AlongEdges(List.of(Edge.FRONT), 0.1),
                        new ZoneRecipe.OtherFoam(Optional.empty(), 0.006, List.of()));
        double reach = 3 * 0.006;
        assertMore(-0.006 * reach / 2 * 0.8, LONGER * reach * 0.8, panel(List.of(), thin), 1e-9);
    }

    /** The bevel of one strip against another: only what stands above it. */
    @Test
    void twoStripsSideBySideMakeAValley() {
        double gap = 0.03;
        Panel panel =
                panel(
                        List.of(),
                        strip(new Region.Box(0, 0.3, 0, 0.5)),
                        strip(new Region.Box(0.3 + gap, 0.8, 0, 0.5)));
        double each = THICK * (gap - gap * gap / (2 * REACH));
        Map<Layer, Double> areas = new LinkedHashMap<>();
        Bevels.addAreas(panel, areas);
        double volume =
                areas.entrySet().stream()
                        .filter(more -> more.getKey() instanceof Layer.Core)
                        .mapToDouble(more -> more.getValue() * more.getKey().thickness())
                        .sum();
        // Both counted, as far as the other strip.
        assertEquals(2 * each * 0.5, volume, 1e-3 * volume);
    }
}
