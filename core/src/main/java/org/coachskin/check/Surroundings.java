package org.coachskin.check;

import java.util.List;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Opening;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Shape;

/** What is near a place: fittings and openings, in words and as distances. */
final class Surroundings {

    /** As near as this a place is told by what it is beside [m]. */
    private static final double BESIDE = 0.03;

    private final Panel panel;
    private final List<Fitting.Pad> pads;
    private final List<Shape.Point> sharp;

    Surroundings(Panel panel) {
        this.panel = panel;
        sharp = panel.sharpPlaces();
        pads = panel.support().pads();
    }

    /** Returns a place as a tape measures it. */
    static String tape(double x, double y) {
        return Math.round(1000 * x) + " mm from left, " + Math.round(1000 * y) + " mm from front";
    }

    /** Returns a place as a tape measures it; at the rim by the edge or corner it is at. */
    static String atRim(Panel panel, double x, double y) {
        boolean left = x < BESIDE;
        boolean front = y < BESIDE;
        boolean side = left || x > panel.width() - BESIDE;
        boolean end = front || y > panel.length() - BESIDE;
        String sides = left ? "left" : "right";
        String ends = front ? "front" : "rear";
        if (side && end) {
            return "in the " + ends + " " + sides + " corner";
        }
        if (side) {
            return "at the " + sides + " edge, " + Math.round(1000 * y) + " mm from front";
        }
        return end
                ? "at the " + ends + " edge, " + Math.round(1000 * x) + " mm from left"
                : tape(x, y);
    }

    /** Returns where a place is, by the nearest fitting or opening or else by the tape. */
    String words(double x, double y) {
        String zone = panel.zoneAt(x, y).map(z -> "in the " + z.name() + ", ").orElse("");
        for (Fitting.Pad pad : pads) {
            double off = distance(pad, x, y);
            if (off < BESIDE) {
                return zone + (off <= 0 ? "at the " : "beside the ") + pad.name();
            }
        }
        for (Opening opening : panel.openings()) {
            if (opening.distance(x, y) < BESIDE) {
                return zone + "beside the " + opening.name() + ", " + tape(x, y);
            }
        }
        return zone + tape(x, y);
    }

    /** Returns the distance from a pad's rim [m]; 0 within it. */
    static double distance(Fitting.Pad pad, double x, double y) {
        double dx = Math.max(0, Math.abs(x - pad.x()) - pad.sizeX() / 2);
        double dy = Math.max(0, Math.abs(y - pad.y()) - pad.sizeY() / 2);
        return Math.hypot(dx, dy);
    }

    /** Returns how near the next pad's rim is [m]; 0 within it. */
    double toPad(double x, double y) {
        double nearest = Double.POSITIVE_INFINITY;
        for (Fitting.Pad pad : pads) {
            nearest = Math.min(nearest, distance(pad, x, y));
        }
        return nearest;
    }

    /** Returns how near the next sharp place is [m]. */
    double toSharp(double x, double y) {
        double nearest = Double.POSITIVE_INFINITY;
        for (Shape.Point p : sharp) {
            nearest = Math.min(nearest, Math.hypot(x - p.x(), y - p.y()));
        }
        return nearest;
    }
}
