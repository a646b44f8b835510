package org.coachskin.mesh;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

/** Refines a mesh where triangles are marked, from its own vertices and lines. */
final class Remeshing {

    private Remeshing() {}

    static Mesh of(Mesh mesh, IntPredicate marked) {
        SizeField sizes = mesh.origin().sizes();
        for (int t = 0; t < mesh.triangles(); t++) {
            if (marked.test(t)) {
                double longest = 0;
                for (int i = 0; i < 3; i++) {
                    longest = Math.max(longest, mesh.length(mesh.side(t, i)));
                }
                sizes =
                        sizes.within(
                                mesh.point(mesh.corner(t, 0)),
                                mesh.point(mesh.corner(t, 1)),
                                mesh.point(mesh.corner(t, 2)),
                                longest / 2);
            }
        }
        int[] number = new int[mesh.vertices()];
        java.util.Arrays.fill(number, -1);
        List<Point> onLines = new ArrayList<>();
        List<Piece> pieces = new ArrayList<>();
        for (int e = 0; e < mesh.edges(); e++) {
            if (mesh.curves(e).isEmpty()) {
                continue;
            }
            int a = mesh.start(e);
            int b = mesh.end(e);
            for (int v : new int[] {a, b}) {
                if (number[v] < 0) {
                    number[v] = onLines.size();
                    onLines.add(mesh.point(v));
                }
            }
            Curve.Arc arc = mesh.arc(e);
            Curve curve =
                    arc == null ? new Curve.Line(mesh.x(a), mesh.y(a), mesh.x(b), mesh.y(b)) : arc;
            pieces.add(new Piece(number[a], number[b], curve, mesh.curves(e), mesh.rim(e)));
        }
        List<Point> free = new ArrayList<>();
        for (int v = 0; v < mesh.vertices(); v++) {
            if (number[v] < 0) {
                free.add(mesh.point(v));
            }
        }
        Mesh.Origin old = mesh.origin();
        Arrangement arrangement = new Arrangement(onLines, pieces, old.largestShift());
        return Mesher.refine(
                arrangement,
                free,
                new Mesh.Origin(
                        sizes,
                        old.smallestAngle(),
                        old.sharpCorners(),
                        old.largestShift(),
                        old.leftFront()));
    }
}
