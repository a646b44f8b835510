package org.coachskin.panel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import org.coachskin.laminate.LayUp;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.Foam;
import org.coachskin.material.Inserts;
import org.coachskin.material.MaterialLibrary;
import org.junit.jupiter.api.Test;

class ZoneRecipeTest {

    private static final MaterialLibrary TABLES = MaterialLibrary.standard();
    private static final Schedule.Item HEAVY = wet("twill glass 300 g/m^2");
    private static final Schedule.Item LIGHT = wet("plain glass 80 g/m^2");
    private static final Schedule.Item MIDDLE = wet("plain glass 160 g/m^2");
    private static final Region REAR = new Region.AlongEdges(List.of(Edge.REAR), 0.05);

    private static final Schedule SANDWICH =
            new Schedule(
                    List.of(HEAVY, MIDDLE),
                    List.of(HEAVY, LIGHT),
                    new Schedule.Board(
                            TABLES.foam(Foam.Kind.POLYURETHANE, 64).orElseThrow(), 0.012, 7e-4),
                    TABLES.resin("epoxy").orElseThrow(),
                    LayUp.USUAL,
                    Schedule.SealCoatMass.USUAL,
                    false);

    private static final Schedule BARE = SANDWICH.withBoard(null).withInside(List.of());

    private static Schedule.Item wet(String cloth) {
        return new Schedule.Wet(TABLES.cloth(cloth).orElseThrow(), 0);
    }

    private static Zone zone(ZoneRecipe.Build build, Schedule schedule) {
        return new ZoneRecipe("band", REAR, build).zone(schedule);
    }

    /** Masses of the cloths, inside to outside, in g/m^2; 0 for the foam. */
    private static List<Long> stack(Zone zone) {
        return zone.laminate().layers().stream()
                .filter(layer -> !(layer instanceof Layer.SealCoat))
                .map(
                        layer ->
                                layer instanceof Layer.Laid laid
                                        ? Long.parseLong(
                                                laid.ply()
                                                        .name()
                                                        .replaceAll(".* (\\d+) g/m.*", "$1"))
                                        : 0)
                .toList();
    }

    private static double foam(Zone zone) {
        return zone.laminate().layers().stream()
                .filter(Layer.Core.class::isInstance)
                .mapToDouble(Layer::thickness)
                .sum();
    }

    @Test
    void morePliesLieOnTheSkinsAndRiseAboveTheOutsideByTheirThickness() {
        Zone zone = zone(new ZoneRecipe.MorePlies(List.of(LIGHT), List.of(MIDDLE)), SANDWICH);

        assertEquals(List.of(160L, 80L, 300L, 0L, 300L, 160L, 80L), stack(zone));
        assertEquals(
                -SANDWICH.withOutside(List.of(HEAVY, MIDDLE, LIGHT)).laminate().thickness()
                        + SANDWICH.laminate().thickness(),
                zone.depth(),
                1e-15);
    }

    @Test
    void withoutFoamMorePliesInsideAreNotLost() {
        Zone zone = zone(new ZoneRecipe.MorePlies(List.of(LIGHT), List.of(MIDDLE, HEAVY)), BARE);

        assertEquals(List.of(300L, 160L, 300L, 160L, 80L), stack(zone));
    }

    @Test
    void aFoamStripIsBesideWhateverFoamThePanelHas() {
        ZoneRecipe.Build strip = new ZoneRecipe.FoamStrip(0.015, List.of(MIDDLE));
        Schedule.Board board = Optional.ofNullable(SANDWICH.board()).orElseThrow();
        Schedule thicker =
                SANDWICH.withBoard(new Schedule.Board(board.foam(), 0.02, board.thicknessSpread()));

        assertEquals(List.of(160L, 80L, 300L, 0L, 300L, 160L), stack(zone(strip, SANDWICH)));
        assertEquals(0.027, foam(zone(strip, SANDWICH)), 1e-15);
        assertEquals(0.035, foam(zone(strip, thicker)), 1e-15);
        assertEquals(0, zone(strip, SANDWICH).depth());
        assertThrows(IllegalArgumentException.class, () -> zone(strip, BARE));
    }

    @Test
    void anInsertTakesThePlaceOfTheFoam() {
        Foam plywood = Inserts.named("Plywood").orElseThrow();
        Zone zone =
                zone(new ZoneRecipe.OtherFoam(Optional.of(plywood), 0.009, List.of()), SANDWICH);

        assertEquals(0.009, foam(zone), 1e-15);
        assertEquals(
                List.of(plywood),
                zone.laminate().layers().stream()
                        .filter(Layer.Core.class::isInstance)
                        .map(layer -> ((Layer.Core) layer).foam())
                        .toList());
    }

    @Test
    void aLipHasBothSkinsInTheirOrderAndLiesFlush() {
        Zone outside = zone(new ZoneRecipe.NoFoam(List.of(MIDDLE), Height.OUTSIDE), SANDWICH);
        Zone inside = zone(new ZoneRecipe.NoFoam(List.of(), Height.INSIDE), SANDWICH);

        assertEquals(List.of(80L, 300L, 160L, 300L, 160L), stack(outside));
        assertEquals(0, outside.depth());
        assertEquals(
                SANDWICH.laminate().thickness() - inside.laminate().thickness(),
                inside.depth(),
                1e-15);
    }
}
