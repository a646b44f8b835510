package org.coachskin.cli.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.coachskin.analysis.Field;
import org.coachskin.analysis.Held;
import org.coachskin.panel.Panel;

/** How a rubber seal is squeezed all along the rim, or where the panel lifts off it. */
public final class SealDrawing {

    private static final double LEFT = 38;
    private static final double TOP = 18;
    private static final double WIDE = 246;
    private static final double HIGH = 110;
    private static final double APART = 0.1;
    private static final int TICKS = 4;

    private final Panel panel;
    private final Frame frame;
    private final Units units;
    private final double allowed;
    private final List<Point> rim;
    private final double around;
    private final Sketch sketch = new Sketch();

    private SealDrawing(Panel panel, Field field, double allowed, Units units) {
        this.panel = panel;
        this.units = units;
        this.allowed = allowed / units.length();
        // A millimetre a pixel, so that distances in it are right.
        frame = new Frame(0, 0, 1000, panel.length());
        List<Point> outer = new Outline(panel, field, frame).outer();
        Point start = frame.at(0, 0);
        int from = 0;
        for (int i = 0; i + 1 < outer.size(); i++) {
            if (outer.get(i).distance(start) < outer.get(from).distance(start)) {
                from = i;
            }
        }
        List<Point> turned = new ArrayList<>(outer.subList(from, outer.size() - 1));
        turned.addAll(outer.subList(0, from + 1));
        rim = turned;
        around = Point.length(rim);
    }

    /**
     * Draws one state.
     *
     * @param field any figure on the triangles of the panel
     * @param allowed widest gap [m]
     */
    public static Drawing of(
            Panel panel,
            Field field,
            List<Held.SealPlace> atRest,
            List<Held.SealPlace> under,
            String load,
            double allowed,
            Units units) {
        return new SealDrawing(panel, field, allowed, units).drawing(atRest, under, load);
    }

    /** One place along the rim: how far along, as a share, and how wide the gap is. */
    private record Along(double share, double gap) {}

    private List<Along> along(List<Held.SealPlace> places) {
        List<Along> along = new ArrayList<>();
        for (Held.SealPlace place : places) {
            double share = share(frame.at(place.x(), place.y()));
            along.add(new Along(share, -place.squeeze() / units.length()));
        }
        along.sort(Comparator.comparingDouble(Along::share));
        return along;
    }

    /** Returns how far along the rim its point nearest to a place lies. */
    private double share(Point at) {
        double best = Double.POSITIVE_INFINITY;
        double where = 0;
        double gone = 0;
        for (int i = 1; i < rim.size(); i++) {
            Point p = rim.get(i - 1);
            Point q = rim.get(i);
            double length = p.distance(q);
            if (length > 0) {
                double along =
                        ((at.x() - p.x()) * (q.x() - p.x()) + (at.y() - p.y()) * (q.y() - p.y()))
                                / length;
                double on = Math.max(0, Math.min(length, along));
                Point near =
                        new Point(
                                p.x() + on / length * (q.x() - p.x()),
                                p.y() + on / length * (q.y() - p.y()));
                if (near.distance(at) < best) {
                    best = near.distance(at);
                    where = gone + on;
                }
            }
            gone += length;
        }
        return where / around;
    }

    private Drawing drawing(List<Held.SealPlace> atRest, List<Held.SealPlace> under, String load) {
        List<Along> rest = along(atRest);
        List<Along> now = along(under);
        double least = -0.1;
        double most = 1.3 * allowed;
        for (List<Along> line : List.of(rest, now)) {
            for (Along at : line) {
                least = Math.min(least, at.gap());
                most = Math.max(most, 1.1 * at.gap());
            }
        }
        Axis axis = new Axis(TOP + HIGH * most / (most - least), -HIGH / (most - least));
        double step = Levels.step(most - least, TICKS);
        for (int k = (int) Math.ceil(least / step); k * step <= most; k++) {
            double y = axis.at(k * step);
            sketch.line(k == 0 ? "axis zero" : "grid", LEFT, y, LEFT + WIDE, y);
            sketch.text("small end", LEFT - 5, y + 4, Levels.words(Math.abs(k * step), step));
        }
        sketch.upright("small mid", 10, (TOP + axis.zero()) / 2, "gap");
        sketch.upright("small mid", 10, (axis.zero() + TOP + HIGH) / 2, "squeezed");
        sketch.text("small", 2, 10, units.lengthName());
        corners();
        double limit = axis.at(allowed);
        sketch.line("limit", LEFT, limit, LEFT + WIDE, limit);
        sketch.text("small end", LEFT + WIDE, limit - 4, Levels.words(allowed, 0.1) + " allowed");
        curve("curve rest", rest, axis, false);
        curve("curve", now, axis, false);
        curve("curve fails", now, axis, true);
        widest(now, axis);
        return sketch.drawing(
                "seal",
                LEFT + WIDE + 6,
                TOP + HIGH + 34,
                "Gap at the rubber seal under the " + load,
                "Along the rim, from the front left corner along the front, right, rear and left edge: above the"
                        + " nought line the panel stands off its seal, below it the rubber is squeezed.");
    }

    private void corners() {
        double[] share = {
            0,
            share(frame.at(panel.width(), 0)),
            share(frame.at(panel.width(), panel.length())),
            share(frame.at(0, panel.length())),
            1
        };
        List<String> names = List.of("front", "right", "rear", "left");
        for (int i = 0; i <= 4; i++) {
            double x = LEFT + WIDE * share[i];
            sketch.line("axis", x, TOP, x, TOP + HIGH + 5);
            if (i < 4) {
                double middle = LEFT + WIDE * (share[i] + share[i + 1]) / 2;
                sketch.text("small mid", middle, TOP + HIGH + 16, names.get(i));
            }
        }
        sketch.text("small mid", LEFT + WIDE / 2, TOP + HIGH + 30, "round the rim, edge by edge");
    }

    private void curve(String kind, List<Along> places, Axis axis, boolean tooWide) {
        Pen pen = new Pen();
        double before = 0;
        for (Along at : places) {
            boolean drawn = !tooWide || at.gap() >= allowed;
            if (!drawn || at.share() - before > APART) {
                pen.lift();
            }
            if (drawn) {
                pen.to(new Point(LEFT + WIDE * at.share(), axis.at(at.gap())));
            }
            before = at.share();
        }
        sketch.lines(kind, pen.lines(), false);
    }

    private void widest(List<Along> places, Axis axis) {
        Along widest = places.get(0);
        for (Along at : places) {
            if (at.gap() > widest.gap()) {
                widest = at;
            }
        }
        if (widest.gap() > 0) {
            double x = LEFT + WIDE * widest.share();
            boolean fails = widest.gap() > allowed;
            String said =
                    Levels.words(widest.gap(), 0.1)
                            + " "
                            + units.lengthName()
                            + (fails ? ", too wide" : "");
            boolean right = widest.share() > 0.5;
            sketch.dot(fails ? "place fails" : "place", x, axis.at(widest.gap()), 2.6);
            sketch.text(
                    "value" + (fails ? " fails" : "") + (right ? " end" : ""),
                    x + (right ? -6 : 6),
                    axis.at(widest.gap()) + 3,
                    said);
        }
    }
}
