package org.coachskin.panel;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Places where plate theory has no limit: the nearer one looks, the larger stress and shear grow.
 * They are sharp corners of openings, corners of the outline that point inward, corners of zones,
 * and places where the hold of an edge begins or ends.
 */
final class SharpPlaces {

    /** A corner of a polygon counts where its rim turns by more than this [rad]. */
    private static final double SHARP = Math.PI / 6;

    private final Panel panel;
    private final Set<Shape.Point> found = new LinkedHashSet<>();

    private SharpPlaces(Panel panel) {
        this.panel = panel;
    }

    static List<Shape.Point> of(Panel panel) {
        SharpPlaces places = new SharpPlaces(panel);
        if (panel.outline() instanceof Shape.Polygon polygon) {
            places.addCorners(polygon, 0, 0, -1);
        }
        for (Opening opening : panel.openings()) {
            places.addOpening(opening);
        }
        for (Zone zone : panel.zones()) {
            places.addZone(zone.region());
        }
        for (Fitting fitting : panel.support().fittings()) {
            if (fitting instanceof Fitting.HeldEdge held) {
                places.addEnds(held.stretch());
            }
        }
        return places.found.stream().filter(places::isOn).toList();
    }

    private boolean isOn(Shape.Point p) {
        return p.x() >= 0 && p.x() <= panel.width() && p.y() >= 0 && p.y() <= panel.length();
    }

    private void addOpening(Opening opening) {
        if (opening.shape() instanceof Shape.Polygon polygon) {
            addCorners(polygon, opening.x(), opening.y(), 1);
        } else if (opening.shape() instanceof Shape.Rectangle r && r.cornerRadius() == 0) {
            double hx = r.x() / 2;
            double hy = r.y() / 2;
            addBox(opening.x() - hx, opening.x() + hx, opening.y() - hy, opening.y() + hy);
        }
    }

    /**
     * Adds corners of a polygon.
     *
     * @param bend 1 for those that point outward, -1 for those that point inward
     */
    private void addCorners(Shape.Polygon polygon, double x, double y, int bend) {
        List<Shape.Point> corners = polygon.corners();
        int n = corners.size();
        double area = 0;
        double[] turns = new double[n];
        for (int i = 0; i < n; i++) {
            Shape.Point p = corners.get((i + n - 1) % n);
            Shape.Point q = corners.get(i);
            Shape.Point r = corners.get((i + 1) % n);
            double ax = q.x() - p.x();
            double ay = q.y() - p.y();
            double bx = r.x() - q.x();
            double by = r.y() - q.y();
            area += q.x() * r.y() - r.x() * q.y();
            turns[i] = StrictMath.atan2(ax * by - ay * bx, ax * bx + ay * by);
        }
        for (int i = 0; i < n; i++) {
            if (bend * turns[i] * Math.signum(area) > SHARP) {
                add(x + corners.get(i).x(), y + corners.get(i).y());
            }
        }
    }

    private void addZone(Region region) {
        double a = panel.width();
        double b = panel.length();
        if (region instanceof Region.Box box) {
            addBox(box.x1(), box.x2(), box.y1(), box.y2());
        } else if (region instanceof Region.AlongEdges band) {
            double w = band.width();
            for (Edge across : List.of(Edge.LEFT, Edge.RIGHT)) {
                for (Edge along : List.of(Edge.FRONT, Edge.REAR)) {
                    if (band.edges().contains(across) && band.edges().contains(along)) {
                        add(across == Edge.LEFT ? w : a - w, along == Edge.FRONT ? w : b - w);
                    }
                }
            }
        }
    }

    private void addEnds(Stretch stretch) {
        double whole = stretch.edge().length(panel);
        double at = stretch.edge().position(panel);
        for (double end : new double[] {stretch.from(), stretch.to()}) {
            if (end > 0 && end < whole) {
                add(stretch.edge().alongX() ? end : at, stretch.edge().alongX() ? at : end);
            }
        }
    }

    private void addBox(double x1, double x2, double y1, double y2) {
        add(x1, y1);
        add(x2, y1);
        add(x1, y2);
        add(x2, y2);
    }

    private void add(double x, double y) {
        found.add(new Shape.Point(x, y));
    }
}
