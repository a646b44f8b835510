package org.coachskin.shell;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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

    /**
     * Radius of the ring of small triangles round a sharp corner of an opening, where stress is
     * read at 1 mm and as mean over 4 mm [m].
     */
    private static final double RING = 0.002;

    /** A corner counts as sharp where an opening's rim turns by more than this [rad]. */
    private static final double SHARP = Math.PI / 6;

    private final Panel panel;

    private Drawn(Panel panel) {
        this.panel = panel;
    }

    /**
     * Returns the mesh of a panel.
     *
     * @param loads whose patches and strips are followed
     */
    static Mesh mesh(Panel panel, List<Load> loads) {
        return Mesher.mesh(new Drawn(panel).drawing(loads));
    }

    /** Returns a mesh as a grid for polynomials of one order. */
    static Grid grid(Mesh mesh, int order) {
        double[] x = new double[mesh.vertices()];
        double[] y = new double[mesh.vertices()];
        for (int v = 0; v < x.length; v++) {
            x[v] = mesh.x(v);
            y[v] = mesh.y(v);
        }
        int[] triangles = new int[3 * mesh.triangles()];
        for (int i = 0; i < triangles.length; i++) {
            triangles[i] = mesh.corner(i / 3, i % 3);
        }
        Map<Long, Element.Arc> arcs = new HashMap<>();
        for (int e = 0; e < mesh.edges(); e++) {
            Curve.Arc arc = mesh.arc(e);
            if (arc != null) {
                double end = arc.startAngle() + arc.sweep();
                boolean up = mesh.start(e) < mesh.end(e);
                arcs.put(
                        Grid.key(mesh.start(e), mesh.end(e)),
                        new Element.Arc(
                                arc.centreX(),
                                arc.centreY(),
                                arc.radius(),
                                up ? arc.startAngle() : end,
                                up ? end : arc.startAngle()));
            }
        }
        return new Grid(x, y, triangles, arcs, order);
    }

    private Drawing drawing(List<Load> loads) {
        double edge = COARSE * Math.min(panel.width(), panel.length());
        Drawing.Builder drawing = Drawing.outline(outline());
        drawing.wishes(Wishes.edgesUpTo(edge));
        for (Opening opening : panel.openings()) {
            Loop rim = loop(opening.shape(), opening.x(), opening.y(), 0);
            drawing.hole(rim);
            sharpCorners(rim).forEach(p -> drawing.follow(Loop.circle(p.x(), p.y(), RING)));
        }
        for (Load load : loads) {
            if (load instanceof Load.Press press) {
                follow(drawing, press, edge);
            } else if (load instanceof Load.StripPressure strip) {
                followAcross(drawing, strip.from());
                followAcross(drawing, strip.to());
            }
        }
        for (Fitting fitting : panel.support().fittings()) {
            if (fitting instanceof Fitting.Pad pad) {
                Loop rim =
                        box(
                                pad.x() - pad.sizeX() / 2,
                                pad.y() - pad.sizeY() / 2,
                                pad.x() + pad.sizeX() / 2,
                                pad.y() + pad.sizeY() / 2);
                drawing.follow(rim, Math.min(edge, Math.min(pad.sizeX(), pad.sizeY())));
            }
        }
        for (Zone zone : panel.zones()) {
            follow(drawing, zone.region(), edge);
        }
        return drawing.build();
    }

    /** Returns the corners of an opening at which stress grows without end. */
    private static List<Point> sharpCorners(Loop rim) {
        List<Point> corners = new ArrayList<>();
        List<Curve> sides = rim.curves();
        double way = Math.signum(rim.signedArea());
        for (int i = 0; i < sides.size(); i++) {
            if (sides.get(i) instanceof Curve.Line side
                    && sides.get((i + 1) % sides.size()) instanceof Curve.Line next) {
                double ax = side.x2() - side.x1();
                double ay = side.y2() - side.y1();
                double bx = next.x2() - next.x1();
                double by = next.y2() - next.y1();
                double turn = way * StrictMath.atan2(ax * by - ay * bx, ax * bx + ay * by);
                double shorter = Math.min(Math.hypot(ax, ay), Math.hypot(bx, by));
                if (turn > SHARP && shorter > 3 * RING) {
                    corners.add(new Point(next.x1(), next.y1()));
                }
            }
        }
        return corners;
    }

    private static void follow(Drawing.Builder drawing, Load.Press press, double edge) {
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
        drawing.follow(rim, Math.min(edge, size));
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
            double fine = Math.min(edge, 4 * w);
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
                    Math.min(edge, 4 * ring.width()));
        }
    }

    private static Loop box(double x1, double y1, double x2, double y2) {
        return Loop.rectangle(x1, y1, x2, y2);
    }

    private Loop outline() {
        if (panel.outline() instanceof Shape.Polygon polygon) {
            return Loop.polygon(
                    polygon.corners().stream().map(p -> new Point(p.x(), p.y())).toList());
        }
        Shape.Rectangle r = (Shape.Rectangle) panel.outline();
        Loop whole = Loop.rectangle(0, 0, r.x(), r.y(), r.cornerRadius());
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
                double at = stretch.edge().position(panel);
                boolean same =
                        along
                                ? line.y1() == at && line.y2() == at
                                : line.x1() == at && line.x2() == at;
                if (same) {
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
