package org.coachskin.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.coachskin.laminate.Patch;
import org.coachskin.mesh.Curve;
import org.coachskin.mesh.Drawing;
import org.coachskin.mesh.Loop;
import org.coachskin.mesh.Mesh;
import org.coachskin.mesh.Mesher;
import org.coachskin.mesh.Point;
import org.coachskin.mesh.Wishes;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Load;
import org.coachskin.panel.Opening;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Region;
import org.coachskin.panel.Shape;
import org.coachskin.panel.Stretch;
import org.coachskin.panel.Zone;

/**
 * A panel as a drawing to be meshed: outline, openings, and every line where something changes:
 * zones, pads, load patches, ends of held stretches.
 */
final class Drawn {

    /** Longest edge as a share of the shorter side of the panel. */
    private static final double COARSE = 0.2;

    /** Longest edge along a loaded line, as a share of the others: 0.1 % off right under it. */
    private static final double BY_LINE = 1.0 / 3;

    /** A line nearer to a rim runs along it [m]. */
    private static final double RIM = 1e-4;

    private final Panel panel;

    private final double share;

    private Drawn(Panel panel, double share) {
        this.panel = panel;
        this.share = share;
    }

    /**
     * Returns the mesh of a panel.
     *
     * @param loads whose patches and strips are followed
     */
    static Mesh mesh(Panel panel, List<Load> loads) {
        return mesh(panel, loads, 1);
    }

    /**
     * Returns a mesh of a panel.
     *
     * @param loads whose patches and strips are followed
     * @param share of the usual length of all edges: 1 for the usual mesh, less for a finer one
     */
    static Mesh mesh(Panel panel, List<Load> loads, double share) {
        return Mesher.mesh(new Drawn(panel, share).drawing(loads));
    }

    /** Returns a mesh as a grid for polynomials of one order. */
    static Grid grid(Mesh mesh, int order) {
        return Net.of(mesh).grid(order);
    }

    /** Returns the grid of a panel: its mesh, made small towards sharp places. */
    static Grid grid(Panel panel, Mesh mesh, int order) {
        Net net = Net.of(mesh);
        Graded.towards(net, panel.sharpPlaces());
        return net.grid(order);
    }

    private Drawing drawing(List<Load> loads) {
        double edge = share * COARSE * Math.min(panel.width(), panel.length());
        Drawing.Builder drawing = Drawing.outline(outline());
        drawing.wishes(Wishes.edgesUpTo(edge));
        for (Opening opening : panel.openings()) {
            drawing.hole(loop(opening.shape(), opening.x(), opening.y(), 0));
        }
        for (Load load : loads) {
            if (load instanceof Load.Press press) {
                follow(drawing, press, edge);
            } else if (load instanceof Load.StripPressure strip) {
                followAcross(drawing, strip.from());
                followAcross(drawing, strip.to());
            } else if (load instanceof Load.Line line && runsWithin(line)) {
                drawing.follow(
                        new Curve.Line(line.x1(), line.y1(), line.x2(), line.y2()), BY_LINE * edge);
            }
        }
        for (Fitting.Pad pad : panel.support().pads()) {
            Loop rim =
                    box(
                            pad.x() - pad.sizeX() / 2,
                            pad.y() - pad.sizeY() / 2,
                            pad.x() + pad.sizeX() / 2,
                            pad.y() + pad.sizeY() / 2);
            drawing.follow(rim, Math.min(edge, share * Math.min(pad.sizeX(), pad.sizeY())));
        }
        for (Zone zone : panel.zones()) {
            follow(drawing, zone.region(), edge);
        }
        return drawing.build();
    }

    private void follow(Drawing.Builder drawing, Load.Press press, double edge) {
        Patch patch = press.patch();
        double size = 2 * Math.min(patch.halfX(), patch.halfY());
        Loop rim =
                patch instanceof Patch.Disc disc
                        ? Loop.circle(press.x(), press.y(), disc.diameter() / 2)
                        : box(
                                press.x() - patch.halfX(),
                                press.y() - patch.halfY(),
                                press.x() + patch.halfX(),
                                press.y() + patch.halfY());
        drawing.follow(rim, Math.min(edge, share * size));
    }

    /** Returns whether a line has panel on both sides; along a rim the mesh follows it anyway. */
    private boolean runsWithin(Load.Line line) {
        double acrossX = RIM * (line.y1() - line.y2()) / line.length();
        double acrossY = RIM * (line.x2() - line.x1()) / line.length();
        double x = (line.x1() + line.x2()) / 2;
        double y = (line.y1() + line.y2()) / 2;
        return panel.hasMaterialAt(x + acrossX, y + acrossY)
                && panel.hasMaterialAt(x - acrossX, y - acrossY);
    }

    private void followAcross(Drawing.Builder drawing, double y) {
        if (y > 0 && y < panel.length()) {
            drawing.follow(new Curve.Line(0, y, panel.width(), y));
        }
    }

    private void follow(Drawing.Builder drawing, Region region, double edge) {
        double a = panel.width();
        double b = panel.length();
        if (region instanceof Region.Box box) {
            drawing.follow(box(box.x1(), box.y1(), box.x2(), box.y2()));
        } else if (region instanceof Region.AlongEdges band) {
            double w = band.width();
            double fine = Math.min(edge, 4 * share * w);
            for (Edge side : band.edges()) {
                drawing.follow(
                        switch (side) {
                            case FRONT -> new Curve.Line(0, w, a, w);
                            case REAR -> new Curve.Line(0, b - w, a, b - w);
                            case LEFT -> new Curve.Line(w, 0, w, b);
                            case RIGHT -> new Curve.Line(a - w, 0, a - w, b);
                        },
                        fine);
            }
        } else if (region instanceof Region.Around ring) {
            Opening opening = panel.opening(ring.opening());
            drawing.follow(
                    loop(opening.shape(), opening.x(), opening.y(), ring.width()),
                    Math.min(edge, 4 * share * ring.width()));
        }
    }

    private static Loop box(double x1, double y1, double x2, double y2) {
        return Loop.rectangle(x1, y1, x2, y2);
    }

    private Loop outline() {
        Loop whole;
        if (panel.outline() instanceof Shape.Polygon polygon) {
            whole =
                    Loop.polygon(
                            polygon.corners().stream().map(p -> new Point(p.x(), p.y())).toList());
        } else {
            Shape.Rectangle r = (Shape.Rectangle) panel.outline();
            whole = Loop.rectangle(0, 0, r.x(), r.y(), r.cornerRadius());
        }
        List<Curve> pieces = new ArrayList<>();
        for (Curve curve : whole.curves()) {
            if (curve instanceof Curve.Line line) {
                cut(line, pieces);
            } else {
                pieces.add(curve);
            }
        }
        return new Loop(pieces);
    }

    /** Cuts a straight side of the outline where a held stretch or a seal begins or ends. */
    private void cut(Curve.Line line, List<Curve> pieces) {
        TreeSet<Double> cuts = new TreeSet<>();
        for (Fitting fitting : panel.support().fittings()) {
            for (Stretch stretch : stretches(fitting)) {
                boolean along = stretch.edge().alongX();
                if (isOn(line, stretch.edge())) {
                    double start = along ? line.x1() : line.y1();
                    double span = (along ? line.x2() : line.y2()) - start;
                    for (double end : new double[] {stretch.from(), stretch.to()}) {
                        double t = (end - start) / span;
                        if (t > 1e-6 && t < 1 - 1e-6) {
                            cuts.add(t);
                        }
                    }
                }
            }
        }
        double from = 0;
        for (double t : cuts) {
            pieces.add(line.part(from, t));
            from = t;
        }
        pieces.add(line.part(from, 1));
    }

    /**
     * Returns whether a side of the outline lies along an edge, or may be an oblique part of it.
     */
    private boolean isOn(Curve.Line line, Edge edge) {
        double at = edge.position(panel);
        double dx = Math.abs(line.x2() - line.x1());
        double dy = Math.abs(line.y2() - line.y1());
        if (dx > 0 && dy > 0) {
            return edge.alongX() == dx >= dy || dx == dy;
        }
        return edge.alongX() ? dy == 0 && line.y1() == at : dx == 0 && line.x1() == at;
    }

    private static List<Stretch> stretches(Fitting fitting) {
        if (fitting instanceof Fitting.HeldEdge held) {
            return List.of(held.stretch());
        }
        return fitting instanceof Fitting.RubberSeal seal ? seal.stretches() : List.of();
    }

    /** Returns the rim of a shape, moved outward by {@code out}. */
    private static Loop loop(Shape shape, double x, double y, double out) {
        if (shape instanceof Shape.Circle circle) {
            return Loop.circle(x, y, circle.diameter() / 2 + out);
        }
        if (shape instanceof Shape.Rectangle r) {
            double hx = r.x() / 2 + out;
            double hy = r.y() / 2 + out;
            double radius = out > 0 ? r.cornerRadius() + out : r.cornerRadius();
            return Loop.rectangle(x - hx, y - hy, x + hx, y + hy, radius);
        }
        Shape.Polygon polygon = (Shape.Polygon) shape;
        return Offset.of(polygon, x, y, out);
    }
}
