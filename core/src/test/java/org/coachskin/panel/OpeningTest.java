package org.coachskin.panel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class OpeningTest {

    private static void runsRound(Shape shape, double length, double radius) {
        Opening there = new Opening("vent", shape, 0.4, 0.3);
        List<Shape.Point> rim = there.rim();
        double sum = 0;
        for (int i = 0; i < rim.size(); i++) {
            Shape.Point p = rim.get(i);
            Shape.Point q = rim.get((i + 1) % rim.size());
            double step = Math.hypot(q.x() - p.x(), q.y() - p.y());
            sum += step;
            assertTrue(step < 0.0055);
            // Round corners by chords of an eighth of a right angle and less.
            assertEquals(0, there.distance(p.x(), p.y()), 0.0022 * radius + 1e-12);
        }
        assertEquals(length, sum, 1e-3 * length);
    }

    @Test
    void placesRunRoundTheRim() {
        runsRound(new Shape.Circle(0.2), 0.2 * Math.PI, 0.1);
        runsRound(new Shape.Rectangle(0.3, 0.2, 0), 1, 0);
        runsRound(new Shape.Rectangle(0.3, 0.2, 0.05), 0.6 + 0.1 * Math.PI, 0.05);
        Shape.Polygon triangle =
                new Shape.Polygon(
                        List.of(
                                new Shape.Point(-0.1, -0.1),
                                new Shape.Point(0.2, -0.1),
                                new Shape.Point(-0.1, 0.3)));
        runsRound(triangle, 1.2, 0);
        assertTrue(
                new Opening("vent", triangle, 0.4, 0.3)
                        .rim()
                        .contains(new Shape.Point(0.4 + 0.2, 0.3 - 0.1)));
    }
}
