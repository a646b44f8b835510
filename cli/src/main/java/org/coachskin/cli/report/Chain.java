package org.coachskin.cli.report;

import java.util.List;
import java.util.function.DoubleFunction;

/** A chain of dimensions beside a plan, as on a workshop drawing. */
final class Chain {

    private static final double TICK = 3;

    private static final double REACH = 4;

    /** Places nearer than this are one [m]. */
    private static final double SAME = 1e-4;

    private final Sketch sketch;
    private final DoubleFunction<String> words;

    Chain(Sketch sketch, DoubleFunction<String> words) {
        this.sketch = sketch;
        this.words = words;
    }

    /**
     * Draws a level chain.
     *
     * @param marks rising [m]
     * @param from where lines from the panel start
     * @param y of the chain
     */
    void level(Frame frame, List<Double> marks, double from, double y) {
        double way = Math.signum(y - from);
        for (double mark : marks) {
            double x = frame.x(mark);
            sketch.line("reach", x, from + way * REACH, x, y + way * REACH);
            sketch.line("tick", x - TICK, y + TICK, x + TICK, y - TICK);
        }
        sketch.line("size", frame.x(marks.get(0)), y, frame.x(marks.get(marks.size() - 1)), y);
        for (int i = 0; i + 1 < marks.size(); i++) {
            double length = marks.get(i + 1) - marks.get(i);
            String said = words.apply(length);
            if (fits(said, frame.scale() * length)) {
                double middle = frame.x((marks.get(i) + marks.get(i + 1)) / 2);
                sketch.text("size mid", middle, y - 4, said);
            }
        }
    }

    /** Draws an upright chain; {@code x} is where it stands, {@code from} the panel's side. */
    void upright(Frame frame, List<Double> marks, double from, double x) {
        double way = Math.signum(x - from);
        for (double mark : marks) {
            double y = frame.y(mark);
            sketch.line("reach", from + way * REACH, y, x + way * REACH, y);
            sketch.line("tick", x - TICK, y + TICK, x + TICK, y - TICK);
        }
        sketch.line("size", x, frame.y(marks.get(0)), x, frame.y(marks.get(marks.size() - 1)));
        for (int i = 0; i + 1 < marks.size(); i++) {
            double length = marks.get(i + 1) - marks.get(i);
            String said = words.apply(length);
            if (fits(said, frame.scale() * length)) {
                double middle = frame.y((marks.get(i) + marks.get(i + 1)) / 2);
                sketch.upright("size mid", x - 4, middle, said);
            }
        }
    }

    private static boolean fits(String said, double room) {
        return said.length() * Sketch.LETTER + 2 < room;
    }

    /** Returns places in order, each once, with both ends of the side. */
    static List<Double> marks(List<Double> places, double length) {
        List<Double> all = new java.util.ArrayList<>(places);
        all.add(0.0);
        all.add(length);
        java.util.Collections.sort(all);
        List<Double> out = new java.util.ArrayList<>();
        for (double place : all) {
            boolean on = place > -SAME && place < length + SAME;
            if (on && (out.isEmpty() || place - out.get(out.size() - 1) > SAME)) {
                out.add(place);
            }
        }
        return out;
    }
}
