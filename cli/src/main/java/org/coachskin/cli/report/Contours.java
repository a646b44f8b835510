package org.coachskin.cli.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.coachskin.analysis.Field;

/**
 * Lines of equal value over triangles, rims and zones' ends among them. Places on a side of a
 * triangle are known by the numbers of its ends, so that neighbours meet exactly.
 */
final class Contours {

    private final Field field;
    private final Frame frame;

    /** Triangle on the left of each side, from its first end to its second. */
    private final Map<Long, Field.Triangle> sides = new LinkedHashMap<>();

    Contours(Field field, Frame frame) {
        this.field = field;
        this.frame = frame;
        for (Field.Triangle t : field.triangles()) {
            sides.put(key(t.a(), t.b()), t);
            sides.put(key(t.b(), t.c()), t);
            sides.put(key(t.c(), t.a()), t);
        }
    }

    private static long key(int from, int to) {
        return ((long) from << 32) | to;
    }

    private static int from(long side) {
        return (int) (side >> 32);
    }

    private static int to(long side) {
        return (int) side;
    }

    /** Pieces of line, each from one place to the next, by the keys of those. */
    private static final class Pieces {
        private final Map<Long, Long> next = new TreeMap<>();
        private final Map<Long, Long> before = new HashMap<>();
        private final Map<Long, Point> places = new HashMap<>();

        void add(long start, Point first, long end, Point last) {
            next.put(start, end);
            before.put(end, start);
            places.put(start, first);
            places.put(end, last);
        }

        /** Returns whole lines: those with two ends first, then closed ones. */
        List<List<Point>> joined() {
            List<List<Point>> lines = new ArrayList<>();
            for (Long start : List.copyOf(next.keySet())) {
                if (!before.containsKey(start)) {
                    lines.add(from(start));
                }
            }
            for (Long start : List.copyOf(next.keySet())) {
                if (next.containsKey(start)) {
                    lines.add(from(start));
                }
            }
            return lines;
        }

        private List<Point> from(Long start) {
            List<Point> line = new ArrayList<>();
            Long at = start;
            while (at != null) {
                Point place = places.get(at);
                if (place != null) {
                    line.add(place);
                }
                at = next.remove(at);
            }
            return line;
        }
    }

    private Point place(int node) {
        Field.Node n = field.nodes().get(node);
        return frame.at(n.x(), n.y());
    }

    private boolean isIn(int node, double level, double sign) {
        return sign * field.nodes().get(node).value() >= level;
    }

    /** Returns the key of where a level crosses a side, the same from both of its triangles. */
    private static long crossing(int a, int b) {
        return key(Math.min(a, b), Math.max(a, b));
    }

    private Point crossed(int a, int b, double level, double sign) {
        Field.Node p = field.nodes().get(Math.min(a, b));
        Field.Node q = field.nodes().get(Math.max(a, b));
        double share = (level - sign * p.value()) / (sign * q.value() - sign * p.value());
        return frame.at(p.x() + share * (q.x() - p.x()), p.y() + share * (q.y() - p.y()));
    }

    /** Adds the line between what is in and what is out within one triangle. */
    private void across(Field.Triangle t, double level, double sign, Pieces pieces) {
        int[] corner = {t.a(), t.b(), t.c()};
        long start = 0;
        long end = 0;
        Point first = null;
        Point last = null;
        for (int i = 0; i < 3; i++) {
            int a = corner[i];
            int b = corner[(i + 1) % 3];
            if (isIn(a, level, sign) && !isIn(b, level, sign)) {
                start = crossing(a, b);
                first = crossed(a, b, level, sign);
            } else if (!isIn(a, level, sign) && isIn(b, level, sign)) {
                end = crossing(a, b);
                last = crossed(a, b, level, sign);
            }
        }
        if (first != null && last != null) {
            pieces.add(start, first, end, last);
        }
    }

    /**
     * Returns the outline of what reaches a level.
     *
     * @param sign 1, or -1 for the field turned round
     */
    List<List<Point>> area(double level, double sign) {
        Pieces pieces = new Pieces();
        field.triangles().forEach(t -> across(t, level, sign, pieces));
        for (long side : sides.keySet()) {
            int a = from(side);
            int b = to(side);
            if (!sides.containsKey(key(b, a))) {
                boolean in = isIn(a, level, sign);
                boolean inNext = isIn(b, level, sign);
                long cross = crossing(a, b);
                if (in && inNext) {
                    pieces.add(key(a, a), place(a), key(b, b), place(b));
                } else if (in) {
                    pieces.add(key(a, a), place(a), cross, crossed(a, b, level, sign));
                } else if (inNext) {
                    pieces.add(cross, crossed(a, b, level, sign), key(b, b), place(b));
                }
            }
        }
        return pieces.joined();
    }

    /** Returns the lines along which a level is met; one that comes back ends where it began. */
    List<List<Point>> lines(double level, double sign) {
        Pieces pieces = new Pieces();
        field.triangles().forEach(t -> across(t, level, sign, pieces));
        return pieces.joined();
    }

    /** Returns the rim and those of openings, closed. */
    List<List<Point>> rims() {
        Pieces pieces = new Pieces();
        for (long side : sides.keySet()) {
            int a = from(side);
            int b = to(side);
            if (!sides.containsKey(key(b, a))) {
                pieces.add(a, place(a), b, place(b));
            }
        }
        return pieces.joined();
    }

    /** Returns where zones end within the panel. */
    List<List<Point>> zones() {
        Map<Integer, Pieces> ends = new TreeMap<>();
        sides.forEach(
                (side, t) -> {
                    int a = from(side);
                    int b = to(side);
                    Field.Triangle other = sides.get(key(b, a));
                    if (other != null && t.zone() > other.zone()) {
                        ends.computeIfAbsent(t.zone(), z -> new Pieces())
                                .add(a, place(a), b, place(b));
                    }
                });
        List<List<Point>> lines = new ArrayList<>();
        ends.values().forEach(pieces -> lines.addAll(pieces.joined()));
        return lines;
    }
}
