package org.coachskin.cli.report;

import java.util.ArrayList;
import java.util.List;

/** A drawing in the making. Places are in pixels from its upper left corner, y downward. */
final class Sketch {

    /** Room that a letter of the usual size takes. */
    static final double LETTER = 6.1;

    /** Height of a line of words. */
    static final double LINE = 15;

    private static final double FLAT = 0.2;

    private final List<Mark> marks = new ArrayList<>();

    /** Returns a place to a tenth of a pixel. */
    static String at(double value) {
        long tenths = Math.round(10 * value);
        String whole = (tenths < 0 ? "-" : "") + Math.abs(tenths) / 10;
        return tenths % 10 == 0 ? (tenths == 0 ? "0" : whole) : whole + "." + Math.abs(tenths) % 10;
    }

    Sketch line(String kind, double x1, double y1, double x2, double y2) {
        marks.add(new Mark.Line(kind, at(x1), at(y1), at(x2), at(y2)));
        return this;
    }

    Sketch box(String kind, double x, double y, double width, double height) {
        return box(kind, x, y, width, height, "");
    }

    Sketch box(String kind, double x, double y, double width, double height, String fill) {
        marks.add(new Mark.Box(kind, at(x), at(y), at(width), at(height), fill));
        return this;
    }

    Sketch dot(String kind, double x, double y, double radius) {
        marks.add(new Mark.Dot(kind, at(x), at(y), at(radius)));
        return this;
    }

    /** Words that start at a place, or with kind {@code ... mid} or {@code ... end} lie there. */
    Sketch text(String kind, double x, double y, String words) {
        marks.add(new Mark.Text(kind, at(x), at(y), "", Typing.set(words)));
        return this;
    }

    /** Words that run upward. */
    Sketch upright(String kind, double x, double y, String words) {
        String turn = "rotate(-90 " + at(x) + " " + at(y) + ")";
        marks.add(new Mark.Text(kind, at(x), at(y), turn, Typing.set(words)));
        return this;
    }

    Sketch weave(String id, double degrees) {
        marks.add(new Mark.Weave("", id, "rotate(" + at(-degrees) + ")"));
        return this;
    }

    Sketch path(String kind, String d) {
        if (!d.isEmpty()) {
            marks.add(new Mark.Path(kind, d));
        }
        return this;
    }

    Sketch lines(String kind, List<List<Point>> lines, boolean closed) {
        StringBuilder d = new StringBuilder();
        lines.forEach(line -> d.append(line(line, closed)));
        return path(kind, d.toString());
    }

    static String line(List<Point> points, boolean closed) {
        StringBuilder d = new StringBuilder();
        String before = "";
        for (Point point : straightened(points, closed)) {
            String here = at(point.x()) + " " + at(point.y());
            if (!here.equals(before)) {
                d.append(d.isEmpty() ? "M" : "L").append(here);
                before = here;
            }
        }
        return closed ? d.append("Z").toString() : d.toString();
    }

    /** Leaves out points that hardly lie beside the line through the others. */
    private static List<Point> straightened(List<Point> points, boolean closed) {
        if (points.size() < 4) {
            return points;
        }
        boolean[] kept = new boolean[points.size()];
        kept[0] = true;
        kept[points.size() - 1] = true;
        if (closed) {
            int far = farthest(points, 0);
            kept[far] = true;
            keep(points, 0, far, kept);
            keep(points, far, points.size() - 1, kept);
        } else {
            keep(points, 0, points.size() - 1, kept);
        }
        List<Point> out = new ArrayList<>();
        for (int i = 0; i < kept.length; i++) {
            if (kept[i]) {
                out.add(points.get(i));
            }
        }
        return out;
    }

    private static int farthest(List<Point> points, int from) {
        int best = from;
        for (int i = 0; i < points.size(); i++) {
            if (points.get(i).distance(points.get(from))
                    > points.get(best).distance(points.get(from))) {
                best = i;
            }
        }
        return best;
    }

    private static void keep(List<Point> points, int from, int to, boolean[] kept) {
        Point a = points.get(from);
        Point b = points.get(to);
        double length = a.distance(b);
        double most = 0;
        int where = from;
        for (int i = from + 1; i < to; i++) {
            Point p = points.get(i);
            double off =
                    length == 0
                            ? p.distance(a)
                            : Math.abs(
                                            (b.x() - a.x()) * (p.y() - a.y())
                                                    - (b.y() - a.y()) * (p.x() - a.x()))
                                    / length;
            if (off > most) {
                most = off;
                where = i;
            }
        }
        if (most > FLAT) {
            kept[where] = true;
            keep(points, from, where, kept);
            keep(points, where, to, kept);
        }
    }

    Drawing drawing(String id, double width, double height, String title, String words) {
        return new Drawing(id, up(width), up(height), false, title, words, marks);
    }

    /** Returns a drawing that is true to scale on paper. */
    Drawing trueToScale(String id, double width, double height, String title, String words) {
        return new Drawing(id, up(width), up(height), true, title, words, marks);
    }

    private static int up(double value) {
        return (int) Math.ceil(value);
    }
}
