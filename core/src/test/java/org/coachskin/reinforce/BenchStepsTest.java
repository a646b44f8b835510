package org.coachskin.reinforce;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.coachskin.TestSchedules;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.Foam;
import org.coachskin.panel.Opening;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Shape;
import org.junit.jupiter.api.Test;

/** What stands in the steps for openings of every shape, and for a panel of one skin or no foam. */
class BenchStepsTest {

    private static final Schedule TWO = TestSchedules.sandwich(2, 0.02, 1);

    private static final Schedule.Item PLY = TWO.inside().get(0);

    private static final Shape ROUND = new Shape.Circle(0.228);

    private static final Shape CORNER =
            new Shape.Polygon(
                    List.of(
                            new Shape.Point(-0.1, 0),
                            new Shape.Point(0.1, 0),
                            new Shape.Point(0, 0.1)));

    private static List<String> steps(Schedule schedule, Shape shape, Build build, double width) {
        Opening opening = new Opening("porthole", shape, 0.5, 0.4);
        Panel panel =
                Panel.flat("hatch", 1, 0.8, schedule.laminate()).withOpenings(List.of(opening));
        return BenchSteps.of(panel, new Target.Hole(opening), new Measure(build, width, false, 0));
    }

    private static final Build STRIP = new Build.Strip(0.02, List.of(PLY), 0.05);

    @Test
    void roundARoundOpeningEverythingIsCutRound() {
        List<String> steps = steps(TWO, ROUND, STRIP, 0.1);
        assertEquals("Cut the porthole.", steps.get(0));
        assertEquals(
                "Outside skin first. Inside, foam 20 mm thick: a ring 150 mm wide, 528 mm across, in"
                        + " four pieces or more; bevel the outer 50 mm down to nothing. Glue, seal"
                        + " coat, let it go tacky.",
                steps.get(1));
        assertEquals(
                "Inside skin over panel and strip, then one 300 g ply more, round, 588 mm across,"
                        + " with the porthole cut out: past the bevel 30 mm.",
                steps.get(2));
    }

    @Test
    void roundAPolygonClothIsARing() {
        assertEquals(
                "On the inside skin, wet on wet, two 300 g plies more: a ring 60 mm wide, from a"
                        + " piece 320 mm x 220 mm, then a ring 40 mm wide, from a piece 280 mm x 180"
                        + " mm; each ends 20 mm before the one under it.",
                steps(TWO, CORNER, new Build.Plies(PLY, 2, 0), 0.06).get(1));
        assertEquals(
                "Outside skin first. Inside, foam 20 mm thick: a ring 150 mm wide, 500 mm x 400 mm"
                        + " over all, in four pieces or more; bevel the outer 50 mm down to nothing."
                        + " Glue, seal coat, let it go tacky.",
                steps(TWO, CORNER, STRIP, 0.1).get(1));
    }

    @Test
    void aSkinThatIsNotThereIsNotLaid() {
        Foam dense = TestSchedules.TABLES.foam(Foam.Kind.POLYURETHANE, 96).orElseThrow();
        Build insert = new Build.Insert(dense, List.of());
        String ring = "a ring 40 mm wide, 308 mm across, in four pieces or more. Glue in foam of ";
        assertEquals(
                List.of(
                        "Cut the porthole.",
                        "Take the foam out, the outside skin stays whole: "
                                + ring
                                + "96 kg/m^3, 20 mm thick, flush."),
                steps(TWO.withInside(List.of()), ROUND, insert, 0.04));
        assertEquals(
                List.of(
                        "Cut the porthole.",
                        "Before the inside skin is laid take the foam out, the outside skin stays"
                                + " whole: "
                                + ring
                                + "96 kg/m^3, 20 mm thick, flush.",
                        "Inside skin over all."),
                steps(TWO, ROUND, insert, 0.04));
    }

    @Test
    void aTurnedSkinLapsOntoTheOther() {
        Opening opening = new Opening("porthole", ROUND, 0.5, 0.4);
        Panel panel = Panel.flat("hatch", 1, 0.8, TWO.laminate()).withOpenings(List.of(opening));
        assertEquals(
                "Round the raw edge, turn the inside skin with all its plies over it and 20 mm onto"
                        + " the outside skin: no bare foam.",
                BenchSteps.of(
                                panel,
                                new Target.Hole(opening),
                                new Measure(new Build.Nothing(), 0, true, 0))
                        .get(1));
    }

    @Test
    void aBareSheetHasNoSkins() {
        assertEquals(
                "On the outside, wet on wet, one 300 g ply more: round, 308 mm across, with the"
                        + " porthole cut out.",
                steps(
                                TWO.withBoard(null).withInside(List.of()),
                                ROUND,
                                new Build.Plies(PLY, 0, 1),
                                0.04)
                        .get(1));
    }
}
