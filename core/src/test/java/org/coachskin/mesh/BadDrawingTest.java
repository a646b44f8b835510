package org.coachskin.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.coachskin.NoAnswerException;
import org.coachskin.Problem;
import org.junit.jupiter.api.Test;

/** Drawings that leave no panel, each with what is said. */
class BadDrawingTest {

    private static final Loop PLATE = Loop.rectangle(0, 0, 0.9, 0.6);

    private static void refused(Drawing.Builder drawing, String place, String what) {
        Drawing built = drawing.wishes(Wishes.edgesUpTo(0.2)).build();
        Problem problem = assertThrows(NoAnswerException.class, () -> Mesher.mesh(built)).problem();
        assertEquals(what, problem.what());
        assertEquals(place, problem.place());
    }

    @Test
    void holeThatCutsThePanelInTwo() {
        refused(
                Drawing.outline(PLATE).hole(Loop.rectangle(0.4, -0.1, 0.5, 0.7)),
                "500 mm from the left, 0 mm from the front",
                "hole 1 cuts the panel in two; it meets the outline here");
    }

    @Test
    void holeOverTheEdge() {
        refused(
                Drawing.outline(PLATE).hole(Loop.circle(0.9, 0.3, 0.05)),
                "900 mm from the left, 250 mm from the front",
                "hole 1 touches or runs over the edge of the panel here");
    }

    @Test
    void holeOffThePanel() {
        refused(
                Drawing.outline(PLATE).hole(Loop.rectangle(1.4, 0.2, 1.5, 0.3)),
                "1450 mm from the left, 200 mm from the front",
                "hole 1 lies off the panel");
    }

    @Test
    void holeAroundThePanel() {
        refused(
                Drawing.outline(PLATE).hole(Loop.rectangle(-1, -1, 2, 2)),
                "500 mm from the left, -1000 mm from the front",
                "hole 1 is larger than the panel; nothing is left");
    }

    @Test
    void holesThatOverlap() {
        refused(
                Drawing.outline(PLATE)
                        .hole(Loop.rectangle(0.2, 0.2, 0.4, 0.4))
                        .hole(Loop.rectangle(0.3, 0.3, 0.5, 0.5)),
                "400 mm from the left, 300 mm from the front",
                "hole 1 and hole 2 overlap or touch here");
    }

    @Test
    void holeWithinAHole() {
        refused(
                Drawing.outline(PLATE)
                        .hole(Loop.rectangle(0.2, 0.2, 0.4, 0.4))
                        .hole(Loop.circle(0.3, 0.3, 0.05)),
                "300 mm from the left, 200 mm from the front",
                "hole 1 and hole 2 overlap or touch here");
    }

    @Test
    void stripTooThinBetweenHoles() {
        refused(
                Drawing.outline(PLATE)
                        .hole(Loop.circle(0.3, 0.3, 0.1))
                        .hole(Loop.circle(0.502, 0.3, 0.1)),
                "400 mm from the left, 300 mm from the front",
                "only 2.0 mm of panel is left between hole 1 and hole 2; less than 3.0 mm is too"
                        + " thin");
    }

    @Test
    void stripTooThinAtTheEdge() {
        refused(
                Drawing.outline(PLATE).hole(Loop.circle(0.3, 0.101, 0.1)),
                "300 mm from the left, 1 mm from the front",
                "only 1.0 mm of panel is left between hole 1 and the edge of the panel; less than"
                        + " 3.0 mm is too thin");
    }

    @Test
    void outlineThatCrossesItself() {
        refused(
                Drawing.outline(
                        Loop.polygon(
                                List.of(
                                        new Point(0, 0),
                                        new Point(1, 1),
                                        new Point(1, 0),
                                        new Point(0, 1)))),
                "500 mm from the left, 500 mm from the front",
                "the outline crosses itself here");
    }

    @Test
    void outlineLikeANeedle() {
        refused(
                Drawing.outline(
                        Loop.polygon(
                                List.of(new Point(0, 0), new Point(1, 0), new Point(0, 0.05)))),
                "1000 mm from the left, 0 mm from the front",
                "the outline has a corner sharper than 5 degrees here");
    }

    @Test
    void outlineWithANeck() {
        refused(
                Drawing.outline(
                        Loop.polygon(
                                List.of(
                                        new Point(0, 0),
                                        new Point(1, 0),
                                        new Point(1, 1),
                                        new Point(0.6, 1),
                                        new Point(0.5, 0.002),
                                        new Point(0.4, 1),
                                        new Point(0, 1)))),
                "500 mm from the left, 0 mm from the front",
                "the outline comes within 2.0 mm of itself here; less than 3.0 mm is too thin");
    }

    @Test
    void moreTrianglesThanCanBeSolved() {
        Drawing drawing = Drawing.outline(PLATE).wishes(Wishes.edgesUpTo(0.002)).build();
        Problem problem =
                assertThrows(NoAnswerException.class, () -> Mesher.mesh(drawing)).problem();
        assertEquals("the drawing asks for too many triangles, most of them here", problem.what());
    }

    @Test
    void openLoop() {
        List<Curve> open = List.of(new Curve.Line(0, 0, 1, 0), new Curve.Line(1, 0, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> new Loop(open));
    }
}
