package org.coachskin.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Panels of the workshop: size, angles, and lines that all but lie on one another. */
class TypicalPanelTest {

    private static Mesh sound(Drawing drawing) {
        Mesh mesh = Mesher.mesh(drawing);
        MeshChecks.sound(drawing, mesh);
        MeshChecks.followed(drawing, mesh, 1e-9 + mesh.largestShift());
        return mesh;
    }

    private static void fewAndRegular(Drawing drawing) {
        Mesh mesh = sound(drawing);
        assertEquals(0, mesh.largestShift(), 1e-12);
        assertTrue(mesh.smallestAngle() >= 25 * MeshChecks.DEGREE);
        assertTrue(mesh.smallestCurvedAngle() >= 15 * MeshChecks.DEGREE);
        assertTrue(mesh.triangles() > 300 && mesh.triangles() < 1500, "" + mesh.triangles());
    }

    @Test
    void lidWithHingesLatchLipPalmAndThumb() {
        fewAndRegular(Panels.lid().build());
    }

    @Test
    void lidWithAWindowInItsBand() {
        fewAndRegular(Panels.window().build());
    }

    @Test
    void patchThatAllButReachesTheLipIsLaidOnIt() {
        Drawing drawing =
                Drawing.outline(Loop.rectangle(0, 0, 0.9, 0.6))
                        .follow(Loop.rectangle(0.03, 0.03, 0.87, 0.57))
                        .follow(Loop.rectangle(0.0303, 0.2, 0.11, 0.28))
                        .wishes(Wishes.edgesUpTo(0.15))
                        .build();
        Mesh mesh = sound(drawing);
        assertEquals(0.3e-3, mesh.largestShift(), 1e-9);
        assertTrue(mesh.shortestEdge() > 0.01, "no edge of the gap's size");
        assertEquals(2, mesh.curves(mesh.edgesOn(11).get(0)).size(), "the side lies on both lines");
    }

    @Test
    void thumbThatTouchesTheRimIsParted() {
        Drawing drawing =
                Drawing.outline(Loop.rectangle(0, 0, 0.9, 0.6))
                        .follow(Loop.circle(0.4, 0.01, 0.01))
                        .wishes(Wishes.edgesUpTo(0.15))
                        .build();
        Mesh mesh = sound(drawing);
        assertTrue(mesh.smallestCurvedAngle() > 10 * MeshChecks.DEGREE);
        assertTrue(mesh.largestShift() <= 1e-3);
        assertEquals(2, mesh.sharpCorners().size());
    }

    @Test
    void lineOffThePanelIsCutOff() {
        Drawing drawing =
                Drawing.outline(Loop.rectangle(0, 0, 0.9, 0.6))
                        .follow(new Curve.Line(-1, 0.3, 2, 0.3))
                        .follow(Loop.circle(0.9, 0.6, 0.1))
                        .follow(Loop.circle(3, 3, 0.1))
                        .wishes(Wishes.edgesUpTo(0.15))
                        .build();
        Mesh mesh = sound(drawing);
        double length = mesh.edgesOn(4).stream().mapToDouble(mesh::length).sum();
        assertEquals(0.9, length, 1e-12);
        assertEquals(0, mesh.edgesOn(6).size());
    }

    @Test
    void circleThatRunsTwoMillimetresOffThePanelIsCutOffThere() {
        Drawing drawing =
                Drawing.outline(Loop.rectangle(0, 0, 0.9, 0.6))
                        .follow(Loop.circle(0.4, 0.098, 0.1))
                        .wishes(Wishes.edgesUpTo(0.15))
                        .build();
        Mesh mesh = sound(drawing);
        assertTrue(mesh.largestShift() <= drawing.wishes().together());
        double inside = 0.1 * (2 * Math.PI - 2 * StrictMath.acos(0.98));
        double length = mesh.edgesOn(4).stream().mapToDouble(mesh::length).sum();
        assertEquals(inside, length, 0.02, "the rim beside it is not the circle's");
    }

    @Test
    void finerWishAlongALineGrowsAwayFromIt() {
        Wishes wishes = Wishes.edgesUpTo(0.2);
        Loop outline = Loop.rectangle(0, 0, 1.8, 1.2);
        Curve line = new Curve.Line(0.4, 0.6, 0.5, 0.6);
        Mesh coarse = sound(Drawing.outline(outline).follow(line).wishes(wishes).build());
        Mesh fine = sound(Drawing.outline(outline).follow(line, 0.01).wishes(wishes).build());
        assertTrue(fine.edgesOn(4).size() >= 10);
        assertTrue(fine.triangles() > coarse.triangles());
        assertTrue(fine.triangles() < 10 * coarse.triangles());
    }

    @Test
    void sharpCornerOfLinesIsReported() {
        Drawing drawing =
                Drawing.outline(Loop.rectangle(0, 0, 0.9, 0.6))
                        .follow(new Curve.Line(0, 0.3, 0.9, 0.3))
                        .follow(new Curve.Line(0.2, 0.3, 0.8, 0.4))
                        .wishes(Wishes.edgesUpTo(0.15))
                        .build();
        Mesh mesh = sound(drawing);
        double angle = StrictMath.atan2(0.1, 0.6);
        assertEquals(1, mesh.sharpCorners().size());
        assertEquals(angle, mesh.sharpCorners().get(0).angle(), 1e-9);
        assertTrue(mesh.smallestAngle() > 0.9 * angle);
    }
}
