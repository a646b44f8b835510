package org.coachskin.reinforce;

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

    static Room round(Job bare, Target target) {
        Panel panel = bare.panel();
        double plies = Double.POSITIVE_INFINITY;
        double clear = Double.POSITIVE_INFINITY;
        boolean sealed =
                panel.support().fittings().stream()
                        .anyMatch(fitting -> fitting instanceof Fitting.RubberSeal);
        if (target instanceof Target.Hole hole) {
            for (Shape.Point p : hole.opening().rim()) {
                double toRim = panel.toRim(p.x(), p.y());
                plies = Math.min(plies, toRim);
                clear = Math.min(clear, toRim - (sealed ? Fitting.RubberSeal.CLEAR : 0));
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
                for (Shape.Point p : other.rim()) {
                    double toEdge =
                            Math.abs((edge.alongX() ? p.y() : p.x()) - edge.position(panel));
                    plies = Math.min(plies, toEdge);
                }
            }
        } else if (target instanceof Target.Hardware hardware) {
            clear = 0;
            for (Opening other : panel.openings()) {
                for (Shape.Point p : other.rim()) {
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
}
