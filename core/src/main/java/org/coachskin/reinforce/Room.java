package org.coachskin.reinforce;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.check.Job;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Opening;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Shape;

/**
 * How wide a band there is room for.
 *
 * @param plies to the rim of the panel or the next opening [m]
 * @param raised for what stands up on the inside: it stays clear of fittings and rubber seals [m]
 */
record Room(double plies, double raised) {

    private static final int PLACES = 48;

    static Room round(Job bare, Target target) {
        Panel panel = bare.panel();
        double plies = Double.POSITIVE_INFINITY;
        double clear = Double.POSITIVE_INFINITY;
        boolean sealed =
                panel.support().fittings().stream()
                        .anyMatch(fitting -> fitting instanceof Fitting.RubberSeal);
        if (target instanceof Target.Hole hole) {
            for (Shape.Point p : rim(hole.opening())) {
                double toRim = panel.toRim(p.x(), p.y());
                plies = Math.min(plies, toRim);
                clear = Math.min(clear, toRim - (sealed ? Practice.SEAL : 0));
                for (Opening other : panel.openings()) {
                    if (!other.equals(hole.opening())) {
                        plies = Math.min(plies, other.distance(p.x(), p.y()));
                    }
                }
                for (Fitting.Pad pad : panel.support().pads()) {
                    clear = Math.min(clear, distance(pad, p));
                }
            }
        } else if (target instanceof Target.Along along) {
            Edge edge = along.edge();
            plies = (edge.alongX() ? panel.length() : panel.width()) / 2;
            // A strip or an insert under a rubber seal or a fitting lies in the foam's depth.
            clear = sealed || !panel.support().pads().isEmpty() ? 0 : plies;
            for (Opening other : panel.openings()) {
                for (Shape.Point p : rim(other)) {
                    double toEdge =
                            Math.abs((edge.alongX() ? p.y() : p.x()) - edge.position(panel));
                    plies = Math.min(plies, toEdge);
                }
            }
        } else if (target instanceof Target.Hardware hardware) {
            clear = 0;
            for (Opening other : panel.openings()) {
                for (Shape.Point p : rim(other)) {
                    plies = Math.min(plies, distance(hardware.pad(), p));
                }
            }
        }
        return new Room(plies, Math.min(plies, clear));
    }

    private static double distance(Fitting.Pad pad, Shape.Point p) {
        double dx = Math.max(0, Math.abs(p.x() - pad.x()) - pad.sizeX() / 2);
        double dy = Math.max(0, Math.abs(p.y() - pad.y()) - pad.sizeY() / 2);
        return Math.max(dx, dy);
    }

    /** Returns places along the rim of an opening, its corners taken as sharp. */
    private static List<Shape.Point> rim(Opening opening) {
        List<Shape.Point> points = new ArrayList<>();
        if (opening.shape() instanceof Shape.Circle circle) {
            for (int k = 0; k < PLACES; k++) {
                double angle = 2 * Math.PI * k / PLACES;
                points.add(
                        new Shape.Point(
                                opening.x() + circle.diameter() / 2 * StrictMath.cos(angle),
                                opening.y() + circle.diameter() / 2 * StrictMath.sin(angle)));
            }
            return points;
        }
        List<Shape.Point> corners =
                opening.shape() instanceof Shape.Polygon polygon
                        ? polygon.corners()
                        : corners((Shape.Rectangle) opening.shape());
        for (int i = 0; i < corners.size(); i++) {
            Shape.Point p = corners.get(i);
            Shape.Point q = corners.get((i + 1) % corners.size());
            for (int k = 0; k < PLACES; k++) {
                double t = (double) k / PLACES;
                points.add(
                        new Shape.Point(
                                opening.x() + p.x() + t * (q.x() - p.x()),
                                opening.y() + p.y() + t * (q.y() - p.y())));
            }
        }
        return points;
    }

    private static List<Shape.Point> corners(Shape.Rectangle r) {
        double hx = r.x() / 2;
        double hy = r.y() / 2;
        return List.of(
                new Shape.Point(-hx, -hy),
                new Shape.Point(hx, -hy),
                new Shape.Point(hx, hy),
                new Shape.Point(-hx, hy));
    }
}
