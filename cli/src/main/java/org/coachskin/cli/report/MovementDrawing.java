package org.coachskin.cli.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.coachskin.analysis.Field;
import org.coachskin.check.Picture;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Panel;

/** How far a load moves every place: contour lines, and two cuts through where it moves most. */
public final class MovementDrawing {

    private static final double WIDE = 252;
    private static final double HIGH = 300;
    private static final double EDGE = 8;

    /** Depth of the curve of a cut. */
    private static final double CURVE = 56;

    private static final double GAP = 14;
    private static final int LINES = 8;

    private final Panel panel;
    private final Picture.Moved moved;
    private final Units units;
    private final Frame frame;
    private final Sketch sketch = new Sketch();
    private final double reach;
    private final double step;
    private final double inward;
    private final double outward;

    private MovementDrawing(Panel panel, Picture.Moved moved, double reach, Units units) {
        this.panel = panel;
        this.moved = moved;
        this.units = units;
        frame = Frame.fitting(EDGE, EDGE, panel.width(), panel.length(), WIDE, HIGH);
        double in = 0;
        double out = 0;
        for (Field.Node node : moved.field().nodes()) {
            in = Math.max(in, node.value());
            out = Math.max(out, -node.value());
        }
        inward = in / units.length();
        outward = out / units.length();
        this.reach = reach;
        step = step(reach, units.length());
    }

    /**
     * Draws the movement under one load case.
     *
     * @param reach the largest movement of all that are set side by side [m]
     * @param loads whose patches are shown
     */
    public static Drawing of(
            String id,
            Panel panel,
            Picture.Moved moved,
            double reach,
            List<LoadCase> loads,
            Units units) {
        return new MovementDrawing(panel, moved, reach, units).drawing(id, loads);
    }

    /** Returns how far the panel moves where it moves most, in or out [m]. */
    public static double reach(Picture.Moved moved) {
        return Math.abs(moved.most().value());
    }

    /** Returns the movement from one contour line to the next, in words. */
    public static String step(double reach, Units units) {
        double step = step(reach, units.length());
        return Levels.words(step, step) + " " + units.lengthName();
    }

    private static double step(double reach, double unit) {
        return Levels.step(reach / unit, LINES);
    }

    private Drawing drawing(String id, List<LoadCase> loads) {
        double right = frame.x(panel.width());
        double bottom = frame.y(0);
        double width = right + GAP + CURVE + 26;
        double height = bottom + GAP + CURVE + 22;
        Outline outline = new Outline(panel, moved.field(), frame);
        outline.surface(sketch);
        Labels labels = new Labels(frame.left(), frame.top(), right, bottom);
        areas(outline.contours(), 1, inward, "in");
        areas(outline.contours(), -1, outward, "out");
        outline.panel(sketch);
        outline.fittings(sketch);
        Point most = frame.at(moved.most().x(), moved.most().y());
        sketch.line("section", EDGE, most.y(), right, most.y());
        sketch.line("section", most.x(), frame.top(), most.x(), bottom);
        words(outline.contours(), labels, 1, inward);
        words(outline.contours(), labels, -1, outward);
        outline.loads(sketch, labels, loads);
        cuts(right, bottom);
        double worst = Math.abs(moved.most().value());
        return sketch.drawing(
                id,
                width,
                height,
                "Movement under the " + moved.load(),
                String.format(
                        Locale.ROOT,
                        "Contour lines of movement. It moves most, by %s %s, %s from left and %s from front.",
                        units.movement(worst),
                        moved.most().value() < 0 ? "outward" : "inward",
                        units.place(moved.most().x()),
                        units.place(moved.most().y())));
    }

    private void areas(Contours contours, double sign, double reach, String way) {
        for (double level : Levels.upTo(reach, step)) {
            double value = level * units.length();
            sketch.lines("tint", contours.area(value, sign), true);
        }
        for (double level : Levels.upTo(reach, step)) {
            double value = level * units.length();
            sketch.lines("contour " + way, contours.lines(value, sign), false);
        }
    }

    /** Writes each line's value on it, on every long piece once, away from other words. */
    private void words(Contours contours, Labels labels, double sign, double reach) {
        for (double level : Levels.upTo(reach, step)) {
            String said = Levels.words(level, step) + (sign < 0 ? " out" : "");
            List<List<Point>> lines = new ArrayList<>(contours.lines(level * units.length(), sign));
            lines.sort(Comparator.comparingInt((List<Point> line) -> line.size()).reversed());
            int written = 0;
            for (List<Point> line : lines) {
                if (written < 2 && Point.length(line) > 40) {
                    List<Point> places = new ArrayList<>();
                    for (int k = 0; k < 12; k++) {
                        // From the middle of the line to both sides by turns.
                        int way = k % 2 == 0 ? 1 : -1;
                        double share = 0.5 + way * 0.04 * (k + 1);
                        places.add(line.get((int) (share * (line.size() - 1))));
                    }
                    written += labels.write(sketch, "level", said, places) ? 1 : 0;
                }
            }
        }
    }

    /** Draws both cuts, inward downward and to the left. */
    private void cuts(double right, double bottom) {
        double least = -outward * units.length();
        double most = inward * units.length();
        double scale = CURVE / Math.max(most - least, reach);
        double zero = bottom + GAP - least * scale;
        double side = right + GAP + most * scale;
        sketch.line("axis", EDGE, zero, right, zero);
        sketch.line("axis", side, frame.top(), side, bottom);
        curve(moved.across(), cut -> new Point(frame.x(cut.at()), zero + cut.movement() * scale));
        curve(moved.along(), cut -> new Point(side - cut.movement() * scale, frame.y(cut.at())));
        double ends = bottom + GAP + CURVE;
        double worst = zero + moved.most().value() * scale;
        sketch.line("size", right + 8, zero, right + 8, worst);
        sketch.line("tick", right + 5, zero + 3, right + 11, zero - 3);
        sketch.line("tick", right + 5, worst + 3, right + 11, worst - 3);
        sketch.text(
                "size",
                right + 14,
                (zero + worst) / 2 + 4,
                units.movement(Math.abs(moved.most().value())));
        sketch.text("small", EDGE, ends + 14, "cut from left to right");
        sketch.upright(
                "small mid",
                right + GAP + CURVE + 16,
                (frame.top() + bottom) / 2,
                "cut from front to rear");
    }

    private void curve(List<Picture.Cut> cuts, Function<Picture.Cut, Point> place) {
        Pen pen = new Pen();
        for (Picture.Cut cut : cuts) {
            if (Double.isNaN(cut.movement())) {
                pen.lift();
            } else {
                pen.to(place.apply(cut));
            }
        }
        sketch.lines("curve", pen.lines(), false);
    }
}
