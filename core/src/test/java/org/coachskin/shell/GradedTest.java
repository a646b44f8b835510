package org.coachskin.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.mesh.Drawing;
import org.coachskin.mesh.Loop;
import org.coachskin.mesh.Mesh;
import org.coachskin.mesh.Mesher;
import org.coachskin.mesh.Wishes;
import org.coachskin.panel.Shape;
import org.junit.jupiter.api.Test;

/** Triangles that are cut towards sharp places still cover the panel, each place once. */
class GradedTest {

    private static final ReferenceTriangle REFERENCE = new ReferenceTriangle(new Basis(8), 2);

    private static Mesh disc() {
        return Mesher.mesh(
                Drawing.outline(Loop.circle(0.5, 0.5, 0.5)).wishes(Wishes.edgesUpTo(0.4)).build());
    }

    private static Grid towards(List<Integer> vertices) {
        Mesh mesh = disc();
        Net net = Net.of(mesh);
        List<Shape.Point> places = new ArrayList<>();
        vertices.forEach(v -> places.add(new Shape.Point(mesh.x(v), mesh.y(v))));
        Graded.towards(net, places);
        return net.grid(8);
    }

    private static void covers(Grid grid) {
        double area = 0;
        double rim = 0;
        for (Element element : grid.elements) {
            area += element.area(REFERENCE);
        }
        for (int e = 0; e < grid.edges(); e++) {
            if (grid.onRim(e)) {
                assertTrue(grid.arcs[e] != null, "a straight piece of rim");
                rim += grid.arcs[e].radius() * Math.abs(grid.arcs[e].end() - grid.arcs[e].start());
            }
        }
        assertEquals(Math.PI / 4, area, 1e-10);
        assertEquals(Math.PI, rim, 1e-12);
        assertEquals(1, grid.vertices - grid.edges() + grid.triangles());
    }

    @Test
    void oneOnTheRimIsCutAlongTheArc() {
        Mesh mesh = disc();
        int onRim = 0;
        while (Math.abs(Math.hypot(mesh.x(onRim) - 0.5, mesh.y(onRim) - 0.5) - 0.5) > 1e-9) {
            onRim++;
        }
        Grid grid = towards(List.of(onRim));
        covers(grid);
        assertTrue(grid.triangles() > mesh.triangles());
    }

    @Test
    void soAreAllAtOnceWhereTrianglesHaveTwoAndThreeOfThem() {
        List<Integer> all = new ArrayList<>();
        for (int v = 0; v < disc().vertices(); v++) {
            all.add(v);
        }
        covers(towards(all));
    }

    @Test
    void trianglesAtThePlaceAreATwentyFifthAsLong() {
        Mesh mesh = disc();
        Grid grid = towards(List.of(0));
        double longest = 0;
        double before = 0;
        for (int e = 0; e < grid.edges(); e++) {
            if (grid.ends[2 * e] == 0 || grid.ends[2 * e + 1] == 0) {
                double[] way = grid.onEdge(e, 0.5);
                longest = Math.max(longest, Math.hypot(way[2], way[3]));
            }
        }
        for (int e = 0; e < mesh.edges(); e++) {
            if (mesh.start(e) == 0 || mesh.end(e) == 0) {
                before = Math.max(before, mesh.length(e));
            }
        }
        assertEquals(before / 25, longest, 0.05 * longest);
    }
}
