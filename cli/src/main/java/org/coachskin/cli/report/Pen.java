package org.coachskin.cli.report;

import java.util.ArrayList;
import java.util.List;

/** Draws lines from place to place and is lifted between one and the next. */
final class Pen {

    private final List<List<Point>> lines = new ArrayList<>();
    private List<Point> line = new ArrayList<>();

    void to(Point place) {
        line.add(place);
    }

    boolean isUp() {
        return line.isEmpty();
    }

    /** Ends a line; a place alone is none. */
    void lift() {
        if (line.size() > 1) {
            lines.add(line);
        }
        line = new ArrayList<>();
    }

    /** Lifts the pen and returns all lines. */
    List<List<Point>> lines() {
        lift();
        return lines;
    }
}
