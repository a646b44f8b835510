package org.coachskin.cli.report;

import java.util.ArrayList;
import java.util.List;

/** Words put into a drawing where they stand on no others. */
final class Labels {

    private static final double GAP = 2;

    /** Letters of a name on a plan. */
    private static final int LONGEST = 26;

    /** Where words are tried beside a place: x and y in widths and heights from its middle. */
    private static final double[][] BESIDE = {
        {1, 0}, {-1, 0}, {0, -1}, {0, 1}, {1, -1}, {-1, -1}, {1, 1}, {-1, 1}
    };

    private final Room all;
    private final List<Room> taken = new ArrayList<>();

    /** Keeps words within a box. */
    Labels(double left, double top, double right, double bottom) {
        all = new Room(left, top, right, bottom);
    }

    private record Room(double x1, double y1, double x2, double y2) {
        boolean meets(Room other) {
            return x1 < other.x2 && other.x1 < x2 && y1 < other.y2 && other.y1 < y2;
        }
    }

    /** Returns as much of a name as a plan has room for. */
    static String shortened(String name) {
        return shortened(name, LONGEST);
    }

    /** Returns as many letters of a name as there is room for. */
    static String shortened(String name, int most) {
        int end = name.offsetByCodePoints(0, Math.min(most, name.codePointCount(0, name.length())));
        return end == name.length() ? name : name.substring(0, end) + "...";
    }

    private static Room room(String words, double x, double y) {
        double half = words.length() * Sketch.LETTER / 2 + GAP;
        return new Room(x - half, y - Sketch.LINE / 2, x + half, y + Sketch.LINE / 2);
    }

    /** Keeps words out of a box. */
    void keepClear(double x, double y, double halfX, double halfY) {
        taken.add(new Room(x - halfX, y - halfY, x + halfX, y + halfY));
    }

    private boolean isFree(Room room) {
        return room.x1 >= all.x1
                && room.y1 >= all.y1
                && room.x2 <= all.x2
                && room.y2 <= all.y2
                && taken.stream().noneMatch(room::meets);
    }

    /** Writes words with their middle at the first of some places that is free, if any is. */
    boolean write(Sketch sketch, String kind, String words, List<Point> places) {
        for (Point place : places) {
            Room room = room(words, place.x(), place.y());
            if (isFree(room)) {
                taken.add(room);
                sketch.text(kind + " mid", place.x(), place.y() + 4, words);
                return true;
            }
        }
        return false;
    }

    /** Writes words beside a thing; over it where there is no room beside it. */
    void beside(
            Sketch sketch,
            String kind,
            String words,
            double x,
            double y,
            double halfX,
            double halfY) {
        double half = words.length() * Sketch.LETTER / 2 + GAP;
        List<Point> places = new ArrayList<>();
        for (double away : new double[] {1, 8, 20}) {
            for (double[] way : BESIDE) {
                places.add(
                        new Point(
                                x + way[0] * (halfX + half + away),
                                y + way[1] * (halfY + Sketch.LINE / 2 + away)));
            }
        }
        places.add(new Point(x, y));
        if (!write(sketch, kind, words, places)) {
            sketch.text(kind + " mid", x, y + 4, words);
        }
    }
}
