package org.coachskin.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.coachskin.TestFittings;
import org.coachskin.TestSchedules;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.Foam;
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

class WeightsTest {

    private static final Schedule LAID = TestSchedules.sandwich(2, 0.015, 1);

    private static final Schedule.Item PLY = LAID.inside().get(0);

    private static Job job(List<ZoneRecipe> recipes, List<Opening> openings, boolean turned) {
        Panel panel =
                new Panel(
                                "door",
                                0.6,
                                0.9,
                                Crown.FLAT,
                                LAID.laminate(),
                                new Support.Fittings(TestFittings.hinged(0.6, 0.9, 0.02)))
                        .withOpenings(openings);
        return Job.of(
                turned
                        ? panel.withTurned(List.of(new TurnedEdge.Round("window", Height.INSIDE)))
                        : panel,
                LAID,
                recipes,
                List.of(EverydayLoads.named("palm").orElseThrow().at(0.3, 0.2)),
                Limits.STANDARD);
    }

    private static ZoneRecipe patch(ZoneRecipe.Build build) {
        return new ZoneRecipe("patch", new Region.Box(0.2, 0.4, 0.15, 0.25), build);
    }

    @Test
    void aPlainPanelWeighsItsAreaOfEachKind() {
        Weights weights = Weights.of(job(List.of(), List.of(), false));
        Schedule.Masses each = LAID.masses();
        double area = 0.54;
        assertEquals(area * each.glass(), weights.glass(), 1e-9);
        assertEquals(area * each.resin(), weights.resin(), 1e-9);
        assertEquals(area * each.sealCoat(), weights.sealCoat(), 1e-9);
        assertEquals(area * each.foam(), weights.foam(), 1e-9);
        assertEquals(0, weights.inserts());
        assertEquals(0, weights.given());
    }

    @Test
    void aZoneAddsItsOwnClothFoamAndInsert() {
        Weights plain = Weights.of(job(List.of(), List.of(), false));
        double area = 0.02;
        Weights more =
                Weights.of(
                        job(
                                List.of(
                                        patch(
                                                new ZoneRecipe.MorePlies(
                                                        List.of(), List.of(PLY, PLY)))),
                                List.of(),
                                false));
        assertEquals(plain.glass() + area * 0.6, more.glass(), 1e-9);
        assertEquals(plain.foam(), more.foam(), 1e-9);
        Foam ply = TestSchedules.TABLES.foam(Foam.Kind.POLYURETHANE, 200).orElseThrow();
        Weights insert =
                Weights.of(
                        job(
                                List.of(
                                        patch(
                                                new ZoneRecipe.OtherFoam(
                                                        Optional.of(ply), 0.015, List.of()))),
                                List.of(),
                                false));
        assertEquals(area * 0.015 * ply.density(), insert.inserts(), 1e-9);
        assertEquals(plain.foam() - area * 0.015 * 64, insert.foam(), 1e-9);
        assertEquals(plain.glass(), insert.glass(), 1e-9);
    }

    @Test
    void kindsAddUpToWhatTheVerdictSays() {
        Opening window = new Opening("window", new Shape.Rectangle(0.3, 0.25, 0.05), 0.3, 0.6);
        Job job =
                job(
                        List.of(patch(new ZoneRecipe.FoamStrip(0.01, List.of(PLY)))),
                        List.of(window),
                        true);
        Weights weights = Weights.of(job);
        assertEquals(PanelCheck.brief().check(job).mass(), weights.total(), 1e-9 * weights.total());
        // The inside skin is turned in over 15 mm of foam and 20 mm of the other skin, all round
        // the
        // window; its seal coat stays on the foam.
        double rim = 2 * (0.2 + 0.15) + 2 * Math.PI * 0.05;
        Weights open = Weights.of(job(job.recipes(), List.of(window), false));
        assertEquals(rim * 0.035 * 0.3, weights.glass() - open.glass(), 1e-4 * weights.glass());
        assertEquals(
                rim * 0.015 * 0.3, weights.sealCoat() - open.sealCoat(), 1e-4 * weights.sealCoat());
    }

    /**
     * At a lip the foam is as thick less, and the skin that is not flush comes down over its end:
     * by hand, for a lip all round and for one along the left edge.
     */
    @Test
    void aSkinThatClosesTheFoamAtALipIsWeighed() {
        for (Height flush : List.of(Height.OUTSIDE, Height.INSIDE)) {
            int plies = flush == Height.OUTSIDE ? 1 : 2;
            assertLip(List.of(Edge.values()), flush, 0.54 * 0.84, 2 * (0.54 + 0.84) * 0.015, plies);
            assertLip(List.of(Edge.LEFT), flush, 0.57 * 0.9, 0.9 * 0.015, plies);
        }
    }

    /**
     * @param foamed area with foam [m^2]
     * @param down area of each ply that comes down [m^2]
     */
    private static void assertLip(
            List<Edge> edges, Height flush, double foamed, double down, int plies) {
        ZoneRecipe lip =
                new ZoneRecipe(
                        "lip",
                        new Region.AlongEdges(edges, 0.03),
                        new ZoneRecipe.NoFoam(List.of(PLY), flush));
        Job job = job(List.of(lip), List.of(), false);
        Weights weights = Weights.of(job);
        double glass = 0.3 * (3 * 0.54 + (0.54 - foamed) + plies * down);
        assertEquals(glass, weights.glass(), 1e-9);
        assertEquals(glass, weights.resin(), 1e-9);
        assertEquals(0.6 * foamed + 0.3 * down, weights.sealCoat(), 1e-9);
        assertEquals(64 * 0.015 * foamed, weights.foam(), 1e-9);
        assertEquals(new PanelCheck().mass(job), weights.total(), 1e-9);
    }

    /**
     * Zones that do not touch: each weighs its own area of what is laid there, a strip its bevel
     * besides, 1 in 3, round its corners as a cone.
     */
    @Property(tries = 15, seed = "20261127")
    void zonesWeighTheirOwnAreas(
            @ForAll @DoubleRange(min = 0.05, max = 0.25) double across,
            @ForAll @DoubleRange(min = 0.05, max = 0.3) double along,
            @ForAll @IntRange(min = 0, max = 3) int plies,
            @ForAll @IntRange(min = 5, max = 10) int strip) {
        List<ZoneRecipe> zones =
                List.of(
                        new ZoneRecipe(
                                "plies",
                                new Region.Box(0.02, 0.02 + across, 0.1, 0.1 + along),
                                new ZoneRecipe.MorePlies(
                                        Collections.nCopies(plies, PLY), List.of(PLY))),
                        new ZoneRecipe(
                                "strip",
                                new Region.Box(0.32, 0.32 + across, 0.5, 0.5 + along),
                                new ZoneRecipe.FoamStrip(strip / 1000.0, List.of())));
        Weights weights = Weights.of(job(zones, List.of(), false));
        double zone = across * along;
        double thick = strip / 1000.0;
        double bevel = 3 * thick;
        double rim = 2 * (across + along);
        double longer = (Math.sqrt(10) / 3 - 1) * (rim * bevel + Math.PI * bevel * bevel);
        double wedge = thick * bevel / 2 * (rim + 2 * Math.PI * bevel / 3);
        double glass = 0.54 * 0.9 + zone * 0.3 * (plies + 1) + 0.3 * longer;
        double foam = 64 * (0.54 * 0.015 + zone * thick + wedge);
        double coat = 0.54 * 0.6 + 0.3 * longer;
        assertEquals(glass, weights.glass(), 1e-9);
        assertEquals(glass, weights.resin(), 1e-9);
        assertEquals(foam, weights.foam(), 1e-9);
        assertEquals(coat, weights.sealCoat(), 1e-9);
        assertEquals(2 * glass + foam + coat, weights.total(), 1e-9);
    }
}
