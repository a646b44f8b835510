package org.coachskin.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.coachskin.TestSchedules;
import org.coachskin.laminate.Laminate;
import org.coachskin.panel.Load;
import org.coachskin.panel.Opening;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Region;
import org.coachskin.panel.Shape;
import org.coachskin.panel.Zone;
import org.coachskin.series.SeriesAnalysis;
import org.coachskin.shell.ShellAnalysis;
import org.junit.jupiter.api.Test;

/** What is drawn of a movement covers the panel and is what the solver answers. */
class FieldTest {

    private static final List<Load> LOADS = List.of(new Load.Pressure(500));

    private static final Laminate STACK = TestSchedules.sandwich(2, 0.012, 1).laminate();

    private static final Panel PLAIN = Panel.flat("lid", 0.9, 0.6, STACK);

    private static final double ROUND = 0.03;

    private static final Panel CUT =
            PLAIN.withOpenings(
                            List.of(
                                    new Opening(
                                            "vent",
                                            new Shape.Rectangle(0.2, 0.1, ROUND),
                                            0.3,
                                            0.3)))
                    .withZones(
                            List.of(new Zone("ring", new Region.Around("vent", 0.05), STACK, 0)));

    @Test
    void everyNodeHasTheDeflectionOfItsPlace() {
        for (Analysis solver : List.of(new SeriesAnalysis(), new ShellAnalysis())) {
            Response response = solver.statics(PLAIN, LOADS);
            Field field = response.movement();

            for (Field.Node node : field.nodes()) {
                assertEquals(response.deflection(node.x(), node.y()), node.value(), 1e-9);
            }
            assertEquals(PLAIN.area(), area(field, t -> true), 1e-9);
        }
    }

    @Test
    void trianglesLieOnThePanelAloneAndKnowTheirZone() {
        Field field = new ShellAnalysis().statics(CUT, LOADS).movement();

        // Chords of the round corners.
        assertEquals(CUT.area(), area(field, t -> true), 1e-4 * CUT.area());
        double inner = 2 * (0.2 + 0.1 - 4 * ROUND) + 2 * Math.PI * ROUND;
        double ring = 0.05 * inner + Math.PI * 0.05 * 0.05;
        assertEquals(ring, area(field, t -> t.zone() == 0), 1e-3 * ring);
        assertTrue(field.triangles().stream().anyMatch(t -> t.zone() == Field.Triangle.NONE));
    }

    @Test
    void aSideIsSharedByTwoTrianglesOrOnARim() {
        Field field = new ShellAnalysis().statics(CUT, LOADS).movement();
        Map<List<Integer>, Integer> sides = new HashMap<>();
        for (Field.Triangle t : field.triangles()) {
            sides.merge(List.of(t.a(), t.b()), 1, Integer::sum);
            sides.merge(List.of(t.b(), t.c()), 1, Integer::sum);
            sides.merge(List.of(t.c(), t.a()), 1, Integer::sum);
        }
        double rim = 0;
        for (Map.Entry<List<Integer>, Integer> side : sides.entrySet()) {
            int a = side.getKey().get(0);
            int b = side.getKey().get(1);
            assertEquals(1, side.getValue());
            if (!sides.containsKey(List.of(b, a))) {
                Field.Node p = field.nodes().get(a);
                Field.Node q = field.nodes().get(b);
                rim += Math.hypot(p.x() - q.x(), p.y() - q.y());
            }
        }
        double around = 3.0 + 2 * (0.2 + 0.1 - 4 * ROUND) + 2 * Math.PI * ROUND;
        assertEquals(around, rim, 1e-3 * around);
    }

    @Test
    void aLoadTurnedRoundMovesItTheOtherWay() {
        Response response = new SeriesAnalysis().statics(PLAIN, LOADS);
        Field field = response.movement();
        Field turned = new Reversed(response).movement();

        assertEquals(field.triangles(), turned.triangles());
        for (int i = 0; i < field.nodes().size(); i++) {
            assertEquals(-field.nodes().get(i).value(), turned.nodes().get(i).value());
        }
        assertTrue(field.nodes().stream().mapToDouble(Field.Node::value).max().orElse(0) > 1e-4);
    }

    private static double area(Field field, Predicate<Field.Triangle> which) {
        double twice = 0;
        for (Field.Triangle t : field.triangles()) {
            Field.Node a = field.nodes().get(t.a());
            Field.Node b = field.nodes().get(t.b());
            Field.Node c = field.nodes().get(t.c());
            double more = (b.x() - a.x()) * (c.y() - a.y()) - (c.x() - a.x()) * (b.y() - a.y());
            assertTrue(more > 0);
            twice += which.test(t) ? more : 0;
        }
        return twice / 2;
    }
}
