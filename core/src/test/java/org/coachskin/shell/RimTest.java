package org.coachskin.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.coachskin.TestStacks;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Shape;
import org.junit.jupiter.api.Test;

class RimTest {

    private static Map<Edge, Double> lengths(double... corners) {
        List<Shape.Point> points = new ArrayList<>();
        double width = 0;
        double length = 0;
        for (int i = 0; i < corners.length; i += 2) {
            points.add(new Shape.Point(corners[i], corners[i + 1]));
            width = Math.max(width, corners[i]);
            length = Math.max(length, corners[i + 1]);
        }
        Panel whole = Panel.flat("panel", width, length, TestStacks.sandwich(1, 0.01, 1, 1e7, 4e6));
        Panel panel =
                new Panel(
                        "panel",
                        width,
                        length,
                        whole.crown(),
                        whole.laminate(),
                        whole.support(),
                        new Shape.Polygon(points),
                        List.of(),
                        List.of());
        Map<Edge, Double> sums = new EnumMap<>(Edge.class);
        for (Rim.Piece piece : Rim.of(Drawn.grid(Drawn.mesh(panel, List.of()), 2))) {
            sums.merge(piece.side(), piece.length(), Double::sum);
        }
        return sums;
    }

    private static void assertSides(Map<Edge, Double> wanted, Map<Edge, Double> found) {
        assertEquals(wanted.keySet(), found.keySet());
        wanted.forEach(
                (edge, length) ->
                        assertEquals(length, found.getOrDefault(edge, 0.0), 1e-12, edge::name));
    }

    private static final double SLANT = Math.sqrt(2);

    @Test
    void slantedSidesOfALeaningOutlineAreItsLeftAndRight() {
        Map<Edge, Double> wanted =
                Map.of(Edge.FRONT, 1.0, Edge.REAR, 1.0, Edge.LEFT, SLANT, Edge.RIGHT, SLANT);
        assertSides(wanted, lengths(0, 0, 1, 0, 2, 1, 1, 1));
        // And mirrored.
        assertSides(wanted, lengths(0, 1, 1, 0, 2, 0, 1, 1));
    }

    @Test
    void slantedFrontAndRearStayFrontAndRear() {
        Map<Edge, Double> wanted =
                Map.of(Edge.FRONT, SLANT, Edge.REAR, SLANT, Edge.LEFT, 1.0, Edge.RIGHT, 1.0);
        assertSides(wanted, lengths(0, 0, 1, 1, 1, 2, 0, 1));
    }

    /** Whatever the rounding of its corners. */
    @Test
    void aCornerCutOffAtFortyFiveDegreesBelongsToFrontOrRear() {
        double cut = 0.1 * SLANT;
        assertSides(
                Map.of(Edge.FRONT, 1 + cut, Edge.REAR, 1 + cut, Edge.LEFT, 0.8, Edge.RIGHT, 0.8),
                lengths(0, 0.1, 0.1, 0, 1.1, 0, 1.1, 0.8, 1.0, 0.9, 0, 0.9));
    }
}
