package org.coachskin.cli.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.coachskin.analysis.Field;
import org.coachskin.laminate.Layer;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Opening;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Shape;

/** The panel seen from outside, with the sizes that a tape takes. */
public final class PlanDrawing {

    private static final double WIDE = 300;
    private static final double HIGH = 330;

    /** One chain of dimensions beside the other. */
    private static final double LANE = 20;

    private static final double BORDER = 6;

    /** Where along an edge its name is tried. */
    private static final List<Double> EDGE = List.of(0.33, 0.67, 0.5, 0.22, 0.78);

    private static final double COMPASS = 15;

    private PlanDrawing() {}

    /**
     * Draws a panel.
     *
     * @param field any figure on the triangles of the panel
     * @param loads whose patches are shown
     * @param letters of the zones, one a zone
     */
    public static Drawing of(
            Panel panel, Field field, List<LoadCase> loads, List<String> letters, Units units) {
        List<Double> openX = new ArrayList<>();
        List<Double> openY = new ArrayList<>();
        for (Opening opening : panel.openings()) {
            reach(opening, openX, openY);
        }
        Taped taped =
                new Taped(
                        pads(panel, Edge.FRONT),
                        pads(panel, Edge.REAR),
                        pads(panel, Edge.LEFT),
                        pads(panel, Edge.RIGHT),
                        openX,
                        openY);
        double above = BORDER + LANE * (1 + count(taped.rear()) + count(openX));
        double beside = 3 * BORDER + LANE * (1 + count(taped.left()));
        double after = BORDER + LANE * (1 + count(taped.right()) + count(openY));
        Frame frame = Frame.fitting(beside, above, panel.width(), panel.length(), WIDE, HIGH);
        double bottom = frame.y(0);
        double rightSide = frame.x(panel.width());
        double width = Math.max(rightSide + after, 250);
        double height = bottom + BORDER + LANE * (1 + count(taped.front())) + 2 * COMPASS;

        Sketch sketch = new Sketch();
        Labels labels = new Labels(frame.left(), frame.top(), rightSide, bottom);
        Outline outline = new Outline(panel, field, frame);
        outline.surface(sketch);
        outline.panel(sketch);
        outline.fittings(sketch);
        sizes(sketch, frame, panel, units, taped);
        for (Opening opening : panel.openings()) {
            double x = frame.x(opening.x());
            double y = frame.y(opening.y());
            labels.write(sketch, "name", opening.name(), List.of(new Point(x, y)));
        }
        outline.fittingNames(sketch, labels);
        outline.loads(sketch, labels, loads);
        letters(sketch, labels, outline.contours(), frame, field, letters);
        compass(sketch, panel, width, height);
        edge(sketch, labels, frame, panel, "rear edge", above + 12);
        edge(sketch, labels, frame, panel, "front edge", bottom - 12);
        return sketch.drawing(
                "plan",
                width,
                height,
                "Plan of the panel, seen from outside",
                "The panel from outside, its rear edge on top, "
                        + units.size(panel.width())
                        + " wide and "
                        + units.size(panel.length())
                        + " long, with what holds it and what presses on it.");
    }

    /** What a tape takes beside the whole: fittings along each edge, sides of openings [m]. */
    private record Taped(
            List<Double> front,
            List<Double> rear,
            List<Double> left,
            List<Double> right,
            List<Double> openX,
            List<Double> openY) {}

    /** Names an edge where there is room along it. */
    private static void edge(
            Sketch sketch, Labels labels, Frame frame, Panel panel, String name, double y) {
        List<Point> places = new ArrayList<>();
        for (double share : EDGE) {
            places.add(new Point(frame.x(share * panel.width()), y));
        }
        labels.write(sketch, "edge", name, places);
    }

    private static int count(List<Double> marks) {
        return marks.isEmpty() ? 0 : 1;
    }

    private static List<Double> pads(Panel panel, Edge edge) {
        List<Double> places = new ArrayList<>();
        for (Fitting.Pad pad : panel.support().pads()) {
            if (nearest(panel, pad) == edge) {
                places.add(edge.alongX() ? pad.x() : pad.y());
            }
        }
        return places;
    }

    private static Edge nearest(Panel panel, Fitting.Pad pad) {
        return List.of(Edge.values()).stream()
                .min(
                        Comparator.comparingDouble(
                                edge ->
                                        Math.abs(
                                                (edge.alongX() ? pad.y() : pad.x())
                                                        - edge.position(panel))))
                .orElseThrow();
    }

    private static void reach(Opening opening, List<Double> x, List<Double> y) {
        double x1 = 0;
        double x2 = 0;
        double y1 = 0;
        double y2 = 0;
        if (opening.shape() instanceof Shape.Rectangle r) {
            x2 = r.x() / 2;
            y2 = r.y() / 2;
            x1 = -x2;
            y1 = -y2;
        } else if (opening.shape() instanceof Shape.Circle c) {
            x2 = c.diameter() / 2;
            y2 = x2;
            x1 = -x2;
            y1 = -x2;
        } else if (opening.shape() instanceof Shape.Polygon p) {
            for (Shape.Point corner : p.corners()) {
                x1 = Math.min(x1, corner.x());
                x2 = Math.max(x2, corner.x());
                y1 = Math.min(y1, corner.y());
                y2 = Math.max(y2, corner.y());
            }
        }
        x.addAll(List.of(opening.x() + x1, opening.x() + x2));
        y.addAll(List.of(opening.y() + y1, opening.y() + y2));
    }

    private static void sizes(Sketch sketch, Frame frame, Panel panel, Units units, Taped taped) {
        Chain chain = new Chain(sketch, units::bare);
        double bottom = frame.y(0);
        double top = frame.top();
        double left = frame.left();
        double right = frame.x(panel.width());
        double lane = LANE;
        if (!taped.front().isEmpty()) {
            chain.level(frame, Chain.marks(taped.front(), panel.width()), bottom, bottom + lane);
            lane += LANE;
        }
        chain.level(frame, List.of(0.0, panel.width()), bottom, bottom + lane);
        lane = LANE;
        for (List<Double> marks : List.of(taped.openX(), taped.rear())) {
            if (!marks.isEmpty()) {
                chain.level(frame, Chain.marks(marks, panel.width()), top, top - lane);
                lane += LANE;
            }
        }
        lane = LANE;
        if (!taped.left().isEmpty()) {
            chain.upright(frame, Chain.marks(taped.left(), panel.length()), left, left - lane);
            lane += LANE;
        }
        chain.upright(frame, List.of(0.0, panel.length()), left, left - lane);
        lane = LANE;
        for (List<Double> marks : List.of(taped.openY(), taped.right())) {
            if (!marks.isEmpty()) {
                chain.upright(frame, Chain.marks(marks, panel.length()), right, right + lane);
                lane += LANE;
            }
        }
    }

    /** Writes each zone's letter where it has most room. */
    private static void letters(
            Sketch sketch,
            Labels labels,
            Contours contours,
            Frame frame,
            Field field,
            List<String> letters) {
        List<Point> ends = new ArrayList<>();
        contours.zones().forEach(ends::addAll);
        contours.rims().forEach(ends::addAll);
        for (int zone = 0; zone < letters.size(); zone++) {
            Map<Point, Double> room = new LinkedHashMap<>();
            for (Field.Triangle t : field.triangles()) {
                if (t.zone() == zone) {
                    Point middle = middle(frame, field, t);
                    double least = Double.POSITIVE_INFINITY;
                    for (Point end : ends) {
                        least = Math.min(least, end.distance(middle));
                    }
                    room.put(middle, -Math.rint(least));
                }
            }
            List<Point> places = new ArrayList<>(room.keySet());
            places.sort(Comparator.comparingDouble(place -> room.getOrDefault(place, 0.0)));
            labels.write(sketch, "letter", letters.get(zone), places);
        }
    }

    private static Point middle(Frame frame, Field field, Field.Triangle t) {
        Field.Node a = field.nodes().get(t.a());
        Field.Node b = field.nodes().get(t.b());
        Field.Node c = field.nodes().get(t.c());
        return frame.at((a.x() + b.x() + c.x()) / 3, (a.y() + b.y() + c.y()) / 3);
    }

    /** Draws the directions of the weave of every cloth. */
    private static void compass(Sketch sketch, Panel panel, double width, double height) {
        TreeSet<Double> angles = new TreeSet<>();
        for (Layer layer : panel.laminate().layers()) {
            if (layer instanceof Layer.Laid laid) {
                angles.add(StrictMath.toDegrees(laid.angle()));
            }
        }
        double x = width - COMPASS - BORDER;
        double y = height - COMPASS - 2;
        for (double angle : angles) {
            double a = StrictMath.toRadians(angle);
            for (int turn = 0; turn < 2; turn++) {
                double dx = COMPASS * StrictMath.cos(a + turn * StrictMath.PI / 2);
                double dy = COMPASS * StrictMath.sin(a + turn * StrictMath.PI / 2);
                sketch.line("weave", x - dx, y + dy, x + dx, y - dy);
            }
        }
        if (!angles.isEmpty()) {
            sketch.text("small end", x - COMPASS - 5, y + 4, "warp and weft run so");
        }
    }
}
