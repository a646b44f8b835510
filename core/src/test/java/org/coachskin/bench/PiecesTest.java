package org.coachskin.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.coachskin.TestSchedules;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Opening;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Region;
import org.coachskin.panel.Shape;
import org.junit.jupiter.api.Test;

class PiecesTest {

    private static final Panel PANEL =
            Panel.flat("lid", 1, 0.5, TestSchedules.sandwich(1, 0.01, 1).laminate())
                    .withOpenings(
                            List.of(
                                    new Opening("vent", new Shape.Circle(0.125), 0.25, 0.25),
                                    new Opening(
                                            "corner",
                                            new Shape.Polygon(
                                                    List.of(
                                                            new Shape.Point(-0.125, 0),
                                                            new Shape.Point(0.125, 0),
                                                            new Shape.Point(0, 0.125))),
                                            0.75,
                                            0.25)));

    @Test
    void clothRoundAnOpeningIsOnePieceThatReachesAllRound() {
        assertEquals(
                List.of(new Piece(1, 0.25, 0.25, true)),
                Pieces.cloth(PANEL, new Region.Around("vent", 0.0625)));
        assertEquals(
                List.of(new Piece(1, 0.375, 0.25)),
                Pieces.cloth(PANEL, new Region.Around("corner", 0.0625)));
    }

    @Test
    void aRingThatIsNotStraightHasNoBoardsButASizeOverAll() {
        Region.Around round = new Region.Around("vent", 0.0625);
        assertEquals(List.of(), Pieces.boards(PANEL, round, 0));
        assertEquals(new Piece(1, 0.5, 0.5, true), Pieces.around(PANEL, round, 0.125));
        Region.Around corner = new Region.Around("corner", 0.0625);
        assertEquals(List.of(), Pieces.boards(PANEL, corner, 0.125));
        assertEquals(new Piece(1, 0.625, 0.5), Pieces.around(PANEL, corner, 0.125));
    }

    @Test
    void stripsAlongEdgesDoNotLieOverOneAnother() {
        Region twoAndOne = new Region.AlongEdges(List.of(Edge.FRONT, Edge.REAR, Edge.LEFT), 0.125);
        assertEquals(
                List.of(new Piece(2, 0.125, 1), new Piece(1, 0.125, 0.25)),
                Pieces.cloth(PANEL, twoAndOne));
        assertEquals(
                List.of(new Piece(2, 0.0625, 0.5)),
                Pieces.cloth(PANEL, new Region.AlongEdges(List.of(Edge.LEFT, Edge.RIGHT), 0.0625)));
    }

    @Test
    void aBevelComesOnTopWhereThereIsPanel() {
        assertEquals(
                List.of(new Piece(1, 0.25, 1)),
                Pieces.boards(PANEL, new Region.AlongEdges(List.of(Edge.FRONT), 0.125), 0.125));
        assertEquals(
                List.of(new Piece(1, 0.375, 0.375)),
                Pieces.boards(PANEL, new Region.Box(0, 0.25, 0.125, 0.25), 0.125));
    }
}
