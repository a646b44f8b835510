package org.coachskin.panel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

class RimPlaceTest {

    private static final Shape.Rectangle SHARP = new Shape.Rectangle(0.12, 0.06, 0);

    private static List<Shape.Point> corners() {
        return List.of(
                new Shape.Point(-0.06, -0.03),
                new Shape.Point(0.06, -0.03),
                new Shape.Point(0.06, 0.03),
                new Shape.Point(-0.06, 0.03));
    }

    @Test
    void everyPlaceLiesOnTheRimAndLooksAwayFromIt() {
        List<Shape.Point> turned = new ArrayList<>(corners());
        Collections.reverse(turned);
        for (Shape shape :
                List.of(
                        new Shape.Circle(0.08),
                        new Shape.Rectangle(0.12, 0.06, 0.02),
                        new Shape.Rectangle(0.12, 0.06, 0.03),
                        SHARP,
                        new Shape.Polygon(corners()),
                        new Shape.Polygon(turned))) {
            Opening opening = new Opening("vent", shape, 0, 0);
            List<RimPlace> places = RimPlace.round(shape);
            assertTrue(places.size() > 48, shape.toString());
            for (RimPlace at : places) {
                assertEquals(0, opening.distance(at.x(), at.y()), 1e-12);
                double out =
                        opening.distance(at.x() + 0.003 * at.outX(), at.y() + 0.003 * at.outY());
                assertEquals(0.003, out, 1e-12, shape + " at " + at);
            }
        }
    }

    @Test
    void whereThePanelJutsIntoAnOpeningOnlyItsSidesAreRead() {
        Shape.Polygon notched =
                new Shape.Polygon(
                        List.of(
                                new Shape.Point(-0.06, -0.03),
                                new Shape.Point(0, 0),
                                new Shape.Point(0.06, -0.03),
                                new Shape.Point(0.06, 0.03),
                                new Shape.Point(-0.06, 0.03)));
        Predicate<RimPlace> tip = at -> Math.hypot(at.x(), at.y()) < 1e-9;
        assertTrue(RimPlace.round(notched).stream().noneMatch(tip));
    }
}
