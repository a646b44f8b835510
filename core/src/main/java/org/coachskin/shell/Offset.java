package org.coachskin.shell;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.coachskin.mesh.Curve;
import org.coachskin.mesh.Loop;
import org.coachskin.mesh.Point;
import org.coachskin.panel.Shape;

/** The rim of a polygonal opening, moved outward by a width, with round corners. */
final class Offset {

    private Offset() {}

    /** Returns the rim of a convex polygon about (x, y), moved outward by {@code out}. */
    static Loop of(Shape.Polygon polygon, double x, double y, double out) {
        List<Shape.Point> corners = new ArrayList<>(polygon.corners());
        double twice = 0;
        for (int i = 0; i < corners.size(); i++) {
            Shape.Point p = corners.get(i);
            Shape.Point q = corners.get((i + 1) % corners.size());
            twice += p.x() * q.y() - q.x() * p.y();
        }
        if (twice < 0) {
            Collections.reverse(corners);
        }
        if (out == 0) {
            return Loop.polygon(
                    corners.stream().map(p -> new Point(x + p.x(), y + p.y())).toList());
        }
        int n = corners.size();
        List<Curve> curves = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Shape.Point p = corners.get(i);
            Shape.Point q = corners.get((i + 1) % n);
            Shape.Point r = corners.get((i + 2) % n);
            double here = StrictMath.atan2(q.y() - p.y(), q.x() - p.x()) - Math.PI / 2;
            double next = StrictMath.atan2(r.y() - q.y(), r.x() - q.x()) - Math.PI / 2;
            double turn = next - here;
            turn -= 2 * Math.PI * Math.floor(turn / (2 * Math.PI));
            if (turn > Math.PI) {
                throw new IllegalArgumentException(
                        "a ring around an opening with a corner that points inward is not drawn");
            }
            double dx = out * StrictMath.cos(here);
            double dy = out * StrictMath.sin(here);
            curves.add(
                    new Curve.Line(x + p.x() + dx, y + p.y() + dy, x + q.x() + dx, y + q.y() + dy));
            curves.add(new Curve.Arc(x + q.x(), y + q.y(), out, here, turn));
        }
        return new Loop(curves);
    }
}
