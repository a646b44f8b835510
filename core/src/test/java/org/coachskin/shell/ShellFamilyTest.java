package org.coachskin.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.coachskin.TestSchedules;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Patch;
import org.coachskin.laminate.Schedule;
import org.coachskin.panel.Crown;
import org.coachskin.panel.EverydayLoads;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Height;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Opening;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Region;
import org.coachskin.panel.Shape;
import org.coachskin.panel.Support;
import org.coachskin.panel.TurnedEdge;
import org.coachskin.panel.Zone;
import org.coachskin.panel.ZoneRecipe;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.junit.jupiter.api.Test;

/** A hatch with a vent, told from a few that are solved. */
class ShellFamilyTest {

    private static final int ORDER = 2;

    private static final Schedule SCHEDULE = TestSchedules.sandwich(2, 0.01, 1);

    private static final Schedule.Item PLY = SCHEDULE.inside().get(0);

    private static final Opening VENT =
            new Opening("vent", new Shape.Rectangle(0.16, 0.12, 0.03), 0.25, 0.24);

    private static final Load.Press PALM =
            new Load.Press(250, new Patch.Rectangle(0.1, 0.08), 0.25, 0.12);

    private static final LoadCase LOAD =
            EverydayLoads.named("palm").orElseThrow().at(PALM.x(), PALM.y());

    private static final Panel BARE =
            new Panel(
                            "hatch",
                            0.5,
                            0.4,
                            Crown.FLAT,
                            SCHEDULE.laminate(),
                            new Support.Fittings(
                                    List.<Fitting>of(
                                            Fitting.Pad.hinge("left hinge", 0.05, 0.03),
                                            Fitting.Pad.hinge("right hinge", 0.45, 0.03),
                                            Fitting.Pad.latch("latch", 0.25, 0.375),
                                            Fitting.RubberSeal.allRound())))
                    .withOpenings(List.of(VENT));

    private static final List<Region> REGIONS =
            List.of(new Region.Around("vent", 0.06), new Region.Around("vent", 0.03));

    private static Panel plies(double width, int count) {
        return with(
                new ZoneRecipe(
                        "ring",
                        new Region.Around("vent", width),
                        new ZoneRecipe.MorePlies(List.of(), Collections.nCopies(count, PLY))));
    }

    private static Panel strip(double width, double thickness) {
        return with(
                new ZoneRecipe(
                        "ring",
                        new Region.Around("vent", width),
                        new ZoneRecipe.FoamStrip(thickness, List.of(PLY))));
    }

    private static Panel with(ZoneRecipe recipe) {
        return BARE.withZones(List.of(recipe.zone(SCHEDULE)));
    }

    private static Panel turned(Panel panel) {
        return panel.withTurned(List.of(new TurnedEdge.Round("vent", Height.INSIDE)));
    }

    /** As solved on the same triangles, alone. */
    private static double solved(Panel panel) {
        return new ShellFamily(BARE, REGIONS, LOAD, ORDER, List.of(panel))
                .deflection(panel, PALM.x(), PALM.y());
    }

    @Test
    void thoseSolvedComeOutAsTheyWere() {
        List<Panel> some = List.of(BARE, plies(0.03, 1), turned(strip(0.06, 0.01)));
        ShellFamily family = new ShellFamily(BARE, REGIONS, LOAD, ORDER, some);
        for (Panel panel : some) {
            double alone = solved(panel);
            assertEquals(alone, family.deflection(panel, PALM.x(), PALM.y()), 1e-7 * alone);
        }
    }

    /** With seals as even springs by another way: the whole analysis, the seal's own push away. */
    @Test
    void oneSolvedAloneIsTheAnalysis() {
        Panel panel = turned(plies(0.03, 2));
        Panel onSameTriangles =
                panel.withZones(
                        List.of(
                                new Zone("on offer", REGIONS.get(0), BARE.laminate(), 0),
                                panel.zones().get(0)));
        ShellAnalysis analysis = new ShellAnalysis(ORDER, false);
        double small = 1e-3;
        Load.Press light = new Load.Press(small * PALM.force(), PALM.patch(), PALM.x(), PALM.y());
        double whole =
                analysis.cases(onSameTriangles, List.of(List.of(light), List.of())).stream()
                        .mapToDouble(r -> r.deflection(PALM.x(), PALM.y()))
                        .reduce((loaded, rest) -> loaded - rest)
                        .orElseThrow();

        assertEquals(whole / small, solved(panel), 1e-5 * solved(panel));
    }

    @Test
    void thoseSolvedComeOutWithTheirSealsAsTheyAre() {
        List<Panel> some = List.of(BARE, turned(strip(0.06, 0.01)));
        ShellFamily family = new ShellFamily(BARE, REGIONS, LOAD, ORDER, some);
        ShellAnalysis analysis = new ShellAnalysis(ORDER, false);
        for (Panel panel : some) {
            // Lines in the same order, so that the triangles are the same.
            List<Zone> zones = new ArrayList<>();
            for (Region region : REGIONS) {
                Laminate stack =
                        panel.zones().isEmpty() ? BARE.laminate() : panel.zones().get(0).laminate();
                zones.add(new Zone("on offer", region, stack, 0));
            }
            double whole =
                    analysis.loadCases(panel.withZones(zones), List.of(LOAD))
                            .get(0)
                            .loaded()
                            .deflection(PALM.x(), PALM.y());

            assertEquals(whole, family.settled(panel, PALM.x(), PALM.y()), 1e-7 * whole);
        }
    }

    @Test
    void othersComeOutATouchTooStiff() {
        List<Panel> some = new ArrayList<>();
        for (Panel panel :
                List.of(
                        BARE,
                        plies(0.03, 1),
                        plies(0.06, 3),
                        strip(0.03, 0.006),
                        strip(0.06, 0.015))) {
            some.add(panel);
            some.add(turned(panel));
        }
        ShellFamily family = new ShellFamily(BARE, REGIONS, LOAD, ORDER, some);
        for (Panel panel :
                List.of(
                        plies(0.06, 1),
                        plies(0.03, 3),
                        strip(0.03, 0.01),
                        turned(plies(0.06, 2)),
                        turned(strip(0.06, 0.006)),
                        turned(strip(0.03, 0.015)))) {
            double truth = solved(panel);
            double told = family.deflection(panel, PALM.x(), PALM.y());
            assertTrue(told > 0.97 * truth && told < 1.001 * truth, told + " for " + truth);
        }
    }

    /** So much less may a stack resist somewhere and still count as none the softer [-]. */
    private static final double SLACK = 1e-5;

    /**
     * More plies, in a wider ring too, never let the panel yield more to the load that presses
     * where the stiffness rises in every strain: then so does that of the whole, on the same
     * triangles. Cloth on the inside takes a few millionths from the shear of the foam, by the
     * energy of which that counts.
     */
    @Property(tries = 20)
    void morePliesNeverMakeItSofter(
            @ForAll @IntRange(min = 0, max = 3) int plies,
            @ForAll @IntRange(min = 0, max = 2) int more,
            @ForAll @IntRange(min = 0, max = 3) int strip,
            @ForAll boolean wider) {
        Panel less = build(0.03, plies, strip);
        Panel richer = build(wider && strip == 0 ? 0.06 : 0.03, plies + more, strip);
        assertTrue(rises(less, richer));

        double before = work(less);
        double after = work(richer);
        assertTrue(after <= before / (1 - SLACK), after + " after " + before);
    }

    /**
     * Thicker foam moves the inside skin, so not every strain meets more stiffness; bending and
     * shear do.
     */
    @Property(tries = 20)
    void aThickerOrWiderStripNeverMakesItSofter(
            @ForAll @IntRange(min = 0, max = 2) int plies,
            @ForAll @IntRange(min = 0, max = 3) int strip,
            @ForAll @IntRange(min = 0, max = 3) int thicker,
            @ForAll boolean wider) {
        double before = work(build(0.03, plies, strip));
        double after = work(build(wider ? 0.06 : 0.03, plies, strip + thicker));

        assertTrue(after <= before * (1 + 1e-9), after + " after " + before);
    }

    private static Panel build(double width, int plies, int strip) {
        List<Schedule.Item> laid = Collections.nCopies(plies, PLY);
        ZoneRecipe.Build build =
                strip == 0
                        ? new ZoneRecipe.MorePlies(List.of(), laid)
                        : new ZoneRecipe.FoamStrip(0.005 * strip, laid);
        return with(new ZoneRecipe("ring", new Region.Around("vent", width), build));
    }

    private static boolean rises(Panel less, Panel more) {
        Section before = section(less);
        Section after = section(more);
        int n = Section.STRAINS;
        DMatrixRMaj gain = new DMatrixRMaj(n, n);
        double largest = 0;
        for (int i = 0; i < n * n; i++) {
            gain.data[i] = after.rigidity[i] - (1 - SLACK) * before.rigidity[i];
            largest = Math.max(largest, Math.abs(after.rigidity[i]));
        }
        var eigen = DecompositionFactory_DDRM.eig(n, false, true);
        eigen.decompose(gain);
        for (int i = 0; i < n; i++) {
            if (eigen.getEigenvalue(i).getReal() < -1e-12 * largest) {
                return false;
            }
        }
        return true;
    }

    private static Section section(Panel panel) {
        return new Section(
                panel.zones().get(0).laminate(), panel.zones().get(0).depth(), Crown.FLAT, false);
    }

    private static double work(Panel panel) {
        return new ShellFamily(BARE, REGIONS, LOAD, ORDER, List.of(panel)).work(panel);
    }
}
