package org.coachskin.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

/** What must hold in any mesh of any drawing. */
final class MeshChecks {

    static final double DEGREE = Math.PI / 180;

    private static final double FOLLOWED = 1e-9;

    private MeshChecks() {}

    static void sound(Drawing drawing, Mesh mesh) {
        assertEquals(drawing.area(), mesh.area(), 1e-9 * drawing.area(), "area");
        assertEquals(
                1 - drawing.holes().size(),
                mesh.vertices() - mesh.edges() + mesh.triangles(),
                "Euler's number");
        neighbours(mesh);
        corners(drawing, mesh);
        arcs(mesh);
        lengths(drawing, mesh);
    }

    private static void neighbours(Mesh mesh) {
        int sides = 0;
        for (int e = 0; e < mesh.edges(); e++) {
            sides += mesh.rim(e) ? 1 : 2;
            for (int t : new int[] {mesh.left(e), mesh.right(e)}) {
                if (t >= 0) {
                    boolean left = t == mesh.left(e);
                    int at = -1;
                    for (int i = 0; i < 3; i++) {
                        at = mesh.side(t, i) == e ? i : at;
                    }
                    assertTrue(at >= 0, "an edge's triangle has the edge");
                    int from = left ? mesh.start(e) : mesh.end(e);
                    int to = left ? mesh.end(e) : mesh.start(e);
                    assertEquals(from, mesh.corner(t, at));
                    assertEquals(to, mesh.corner(t, (at + 1) % 3));
                    assertEquals(left, mesh.forward(t, at));
                }
            }
            assertTrue(!mesh.rim(e) || !mesh.curves(e).isEmpty(), "a rim is a line of the drawing");
        }
        assertEquals(3 * mesh.triangles(), sides, "each side has its edge");
    }

    private static void corners(Drawing drawing, Mesh mesh) {
        for (int t = 0; t < mesh.triangles(); t++) {
            assertTrue(mesh.area(t) > 0, "counter-clockwise");
        }
        onlySharpBesideSharpCorners(drawing, mesh);
        assertTrue(mesh.smallestCurvedAngle() > 0, "sharpest corner between arcs");
        assertTrue(mesh.largestCurvedAngle() < Math.PI, "bluntest corner between arcs");
    }

    /**
     * A triangle sharper than wished lies where the lines of a sharp corner are near to one
     * another.
     */
    private static void onlySharpBesideSharpCorners(Drawing drawing, Mesh mesh) {
        double wish = drawing.wishes().smallestAngle();
        for (int t = 0; t < mesh.triangles(); t++) {
            for (int i = 0; i < 3; i++) {
                if (mesh.cornerAngle(t, i) < wish - 1e-9) {
                    Point p = mesh.point(mesh.corner(t, i));
                    double reach =
                            3 * mesh.length(mesh.side(t, i))
                                    + 3 * mesh.length(mesh.side(t, (i + 1) % 3));
                    boolean beside =
                            mesh.sharpCorners().stream()
                                    .anyMatch(
                                            c ->
                                                    c.place().distance(p)
                                                                    * StrictMath.sin(c.angle())
                                                            < reach);
                    assertTrue(beside, "sharp triangle at " + p);
                }
            }
        }
    }

    private static void arcs(Mesh mesh) {
        for (int e = 0; e < mesh.edges(); e++) {
            Curve.Arc arc = mesh.arc(e);
            if (arc != null) {
                assertTrue(Math.abs(arc.sweep()) <= 45 * DEGREE + 1e-9);
                assertEquals(0, arc.start().distance(mesh.point(mesh.start(e))), FOLLOWED);
                assertEquals(0, arc.end().distance(mesh.point(mesh.end(e))), FOLLOWED);
            }
        }
    }

    private static void lengths(Drawing drawing, Mesh mesh) {
        for (int e = 0; e < mesh.edges(); e++) {
            Point a = mesh.point(mesh.start(e));
            Point b = mesh.point(mesh.end(e));
            double wish = SizeField.of(drawing).at((a.x() + b.x()) / 2, (a.y() + b.y()) / 2);
            assertTrue(a.distance(b) <= wish * (1 + 1e-8), "edge " + a.distance(b) + ">" + wish);
        }
    }

    /**
     * Every curve, where it lies on the panel, is covered by edges that lie on it to a distance.
     */
    static void followed(Drawing drawing, Mesh mesh, double distance) {
        List<Curve> curves = drawing.curves();
        for (int i = 0; i < curves.size(); i++) {
            Curve curve = curves.get(i);
            double length = 0;
            for (int e : mesh.edgesOn(i)) {
                Curve.Arc arc = mesh.arc(e);
                Point p = mesh.point(mesh.start(e));
                Point q = mesh.point(mesh.end(e));
                Curve part = arc != null ? arc : new Curve.Line(p.x(), p.y(), q.x(), q.y());
                for (int k = 0; k <= 4; k++) {
                    Point at = part.at(k / 4.0);
                    assertEquals(0, curve.distance(at.x(), at.y()), distance, "off curve " + i);
                }
                length += part.length();
            }
            double slack = 2e-3 * curve.length() + 20 * drawing.wishes().together();
            assertTrue(length >= onPanel(drawing, curve, FOLLOWED) - slack, "curve " + i);
            double together = 1.1 * drawing.wishes().together();
            assertTrue(length <= onPanel(drawing, curve, together) + slack, "curve " + i);
        }
    }

    /** Length of the curve that lies on the panel or its rim, by sampling. */
    private static double onPanel(Drawing drawing, Curve curve, double margin) {
        int samples = 2_000;
        int inside = 0;
        for (int k = 0; k < samples; k++) {
            Point p = curve.at((k + 0.5) / samples);
            boolean on = drawing.contains(p.x(), p.y());
            for (int i = 0; i < drawing.rimCurves() && !on; i++) {
                on = drawing.curves().get(i).distance(p.x(), p.y()) < margin;
            }
            inside += on ? 1 : 0;
        }
        return curve.length() * inside / samples;
    }

    static String told(String name, Mesh mesh) {
        return String.format(
                java.util.Locale.ROOT,
                "%-28s %5d triangles, smallest angle %4.1f, between arcs %4.1f to %5.1f,"
                        + " edges %5.1f to %5.1f mm, shift %.2f mm",
                name,
                mesh.triangles(),
                mesh.smallestAngle() / DEGREE,
                mesh.smallestCurvedAngle() / DEGREE,
                mesh.largestCurvedAngle() / DEGREE,
                1000 * mesh.shortestEdge(),
                1000 * mesh.longestEdge(),
                1000 * mesh.largestShift());
    }
}
