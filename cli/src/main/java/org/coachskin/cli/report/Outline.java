package org.coachskin.cli.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.coachskin.analysis.Field;
import org.coachskin.laminate.Patch;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Stretch;

/** What every plan of a panel shows: rim, openings, zones, what holds it, what presses on it. */
final class Outline {

    /**
     * A seal is drawn this far inside the rim, as is usual for what cannot be seen from outside.
     */
    private static final double INSIDE = 4;

    private final Panel panel;
    private final Frame frame;
    private final Contours contours;

    Outline(Panel panel, Field field, Frame frame) {
        this.panel = panel;
        this.frame = frame;
        contours = new Contours(field, frame);
    }

    Contours contours() {
        return contours;
    }

    /** Draws rim, openings and ends of zones. */
    void panel(Sketch sketch) {
        sketch.lines("zone", contours.zones(), false);
        sketch.lines("rim", contours.rims(), true);
    }

    /** Draws the surface, to lie under everything. */
    void surface(Sketch sketch) {
        sketch.lines("surface", contours.rims(), true);
    }

    /** Draws hinges, latches, seals, held edges; with their names where labels are given. */
    void fittings(Sketch sketch) {
        for (Fitting fitting : panel.support().fittings()) {
            if (fitting instanceof Fitting.RubberSeal seal) {
                seal.stretches().forEach(stretch -> along(sketch, "seal", stretch, INSIDE));
            } else if (fitting instanceof Fitting.HeldEdge held) {
                boolean clamped = held.held().contains(Fitting.Motion.TURN);
                along(sketch, clamped ? "clamped" : "carried", held.stretch(), -INSIDE);
            }
        }
        for (Fitting.Pad pad : panel.support().pads()) {
            double x = frame.x(pad.x());
            double y = frame.y(pad.y());
            double halfX = Math.max(3, frame.scale() * pad.sizeX() / 2);
            double halfY = Math.max(3, frame.scale() * pad.sizeY() / 2);
            sketch.box("pad", x - halfX, y - halfY, 2 * halfX, 2 * halfY);
            sketch.line("pad", x - halfX, y - halfY, x + halfX, y + halfY);
            sketch.line("pad", x - halfX, y + halfY, x + halfX, y - halfY);
        }
    }

    void fittingNames(Sketch sketch, Labels labels) {
        for (Fitting.Pad pad : panel.support().pads()) {
            double half = frame.scale() * pad.sizeX() / 2;
            labels.keepClear(frame.x(pad.x()), frame.y(pad.y()), half, half);
        }
        for (Fitting.Pad pad : panel.support().pads()) {
            double half = frame.scale() * pad.sizeX() / 2;
            labels.beside(
                    sketch,
                    "name",
                    Labels.shortened(pad.name()),
                    frame.x(pad.x()),
                    frame.y(pad.y()),
                    half,
                    half);
        }
    }

    /** Draws a line beside the rim along part of one edge. */
    private void along(Sketch sketch, String kind, Stretch stretch, double inside) {
        Pen pen = new Pen();
        List<Point> rim = outer();
        for (int i = 0; i + 1 < rim.size(); i++) {
            Point p = rim.get(i);
            Point q = rim.get(i + 1);
            double dx = q.x() - p.x();
            double dy = q.y() - p.y();
            double length = Math.hypot(dx, dy);
            // Anticlockwise as seen, y downward: outward is to the right of the way.
            double outX = -dy / length;
            double outY = dx / length;
            boolean here =
                    length > 0
                            && Edge.facing(outX, -outY) == stretch.edge()
                            && stretch.holds(
                                    along(
                                            stretch.edge(),
                                            (p.x() + q.x()) / 2,
                                            (p.y() + q.y()) / 2));
            if (here) {
                Point from = new Point(p.x() - inside * outX, p.y() - inside * outY);
                Point to = new Point(q.x() - inside * outX, q.y() - inside * outY);
                if (pen.isUp()) {
                    pen.to(from);
                }
                pen.to(to);
            } else {
                pen.lift();
            }
        }
        sketch.lines(kind, pen.lines(), false);
    }

    /** Returns a place of the drawing as a tape along an edge measures it [m]. */
    private double along(Edge edge, double x, double y) {
        return edge.alongX()
                ? (x - frame.left()) / frame.scale()
                : frame.length() - (y - frame.top()) / frame.scale();
    }

    /** Returns the outer rim, ending where it begins. */
    List<Point> outer() {
        List<Point> best = List.of();
        double most = 0;
        for (List<Point> rim : contours.rims()) {
            double twice = 0;
            for (int i = 0; i + 1 < rim.size(); i++) {
                Point p = rim.get(i);
                Point q = rim.get(i + 1);
                twice += p.x() * q.y() - q.x() * p.y();
            }
            if (Math.abs(twice) > most) {
                most = Math.abs(twice);
                best = rim;
            }
        }
        return best;
    }

    /** Draws the patches that press, each place once with all that press there. */
    void loads(Sketch sketch, Labels labels, List<LoadCase> loads) {
        Map<Load.Press, String> names = new LinkedHashMap<>();
        for (LoadCase load : loads) {
            for (Load part : load.loads()) {
                if (part instanceof Load.Press press) {
                    names.merge(press, load.name(), (a, b) -> a + ", " + b);
                } else if (part instanceof Load.Line line) {
                    sketch.line(
                            "load",
                            frame.x(line.x1()),
                            frame.y(line.y1()),
                            frame.x(line.x2()),
                            frame.y(line.y2()));
                    labels.beside(
                            sketch,
                            "name",
                            Labels.shortened(load.name()),
                            frame.x((line.x1() + line.x2()) / 2),
                            frame.y((line.y1() + line.y2()) / 2),
                            0,
                            0);
                }
            }
        }
        names.keySet().forEach(press -> patch(sketch, press));
        names.forEach(
                (press, name) ->
                        labels.beside(
                                sketch,
                                "name",
                                Labels.shortened(name),
                                frame.x(press.x()),
                                frame.y(press.y()),
                                frame.scale() * press.patch().halfX(),
                                frame.scale() * press.patch().halfY()));
    }

    private void patch(Sketch sketch, Load.Press press) {
        double x = frame.x(press.x());
        double y = frame.y(press.y());
        double halfX = frame.scale() * press.patch().halfX();
        double halfY = frame.scale() * press.patch().halfY();
        if (press.patch() instanceof Patch.Rectangle) {
            sketch.box("load", x - halfX, y - halfY, 2 * halfX, 2 * halfY);
        } else {
            sketch.dot("load", x, y, halfX);
        }
    }
}
