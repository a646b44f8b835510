package org.coachskin.cli.report;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.check.Picture;

/** What a gauge should read, weight by weight, with room for what it does read. */
public final class ReadingDrawing {

    private static final double LEFT = 40;
    private static final double TOP = 16;
    private static final double WIDE = 284;
    private static final double HIGH = 128;
    private static final int TICKS = 6;

    private ReadingDrawing() {}

    /**
     * Draws the readings.
     *
     * @param weights in words, one a reading
     */
    public static Drawing of(List<Picture.Reading> readings, List<String> weights, Units units) {
        Sketch sketch = new Sketch();
        double most = 0;
        double heaviest = 0;
        for (Picture.Reading reading : readings) {
            most = Math.max(most, reading.high() / units.length());
            heaviest = Math.max(heaviest, reading.mass());
        }
        Axis x = new Axis(LEFT, WIDE / (heaviest * 1.04));
        Axis y = new Axis(TOP + HIGH, -HIGH / (most * 1.08));
        double step = Levels.step(most, TICKS);
        for (int k = 0; k * step <= most * 1.08; k++) {
            for (int tenth = 1; k > 0 && tenth <= 4; tenth++) {
                double fine = y.at((k - 1 + tenth / 5.0) * step);
                sketch.line("grid fine", LEFT, fine, LEFT + WIDE, fine);
            }
            sketch.line("grid", LEFT, y.at(k * step), LEFT + WIDE, y.at(k * step));
            sketch.text("small end", LEFT - 5, y.at(k * step) + 4, Levels.words(k * step, step));
        }
        List<Point> band = new ArrayList<>();
        band.add(new Point(LEFT, TOP + HIGH));
        List<Point> line = new ArrayList<>(band);
        for (Picture.Reading reading : readings) {
            band.add(new Point(x.at(reading.mass()), y.at(reading.high() / units.length())));
        }
        for (int i = readings.size() - 1; i >= 0; i--) {
            Picture.Reading reading = readings.get(i);
            band.add(new Point(x.at(reading.mass()), y.at(reading.low() / units.length())));
        }
        sketch.path("tint", Sketch.line(band, true));
        for (int i = 0; i < readings.size(); i++) {
            Picture.Reading reading = readings.get(i);
            double at = x.at(reading.mass());
            sketch.line("grid", at, TOP, at, TOP + HIGH);
            sketch.text("small mid", at, TOP + HIGH + 15, weights.get(i));
            line.add(new Point(at, y.at(reading.movement() / units.length())));
        }
        sketch.path("curve", Sketch.line(line, false));
        for (Point point : line.subList(1, line.size())) {
            sketch.dot("place", point.x(), point.y(), 2.4);
        }
        sketch.line("axis zero", LEFT, TOP, LEFT, TOP + HIGH);
        sketch.line("axis zero", LEFT, TOP + HIGH, LEFT + WIDE, TOP + HIGH);
        sketch.text("small", 2, 10, units.lengthName());
        return sketch.drawing(
                "readings",
                LEFT + WIDE + 8,
                TOP + HIGH + 22,
                "Readings to expect on the finished panel",
                "A line of expected readings over the weight set down, with the band in which eight panels of ten lie.");
    }
}
