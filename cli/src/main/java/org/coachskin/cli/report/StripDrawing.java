package org.coachskin.cli.report;

import java.util.List;

/** A strip on two rests with a weight hung from its middle and a gauge. */
public final class StripDrawing {

    private static final double LEFT = 40;
    private static final double RIGHT = 300;
    private static final double TOP = 46;
    private static final double THICK = 11;
    private static final double OVER = 22;

    private StripDrawing() {}

    /**
     * Draws the test.
     *
     * @param span between the rests, in words
     * @param width of the strip, in words
     * @param weight that is hung, in words
     * @param reading that is expected, in words
     */
    public static Drawing of(String span, String width, String weight, String reading) {
        Sketch sketch = new Sketch();
        double middle = (LEFT + RIGHT) / 2;
        double under = TOP + THICK;
        sketch.box("foam", LEFT - OVER, TOP, RIGHT - LEFT + 2 * OVER, THICK);
        sketch.line("skin", LEFT - OVER, TOP, RIGHT + OVER, TOP);
        sketch.line("skin", LEFT - OVER, under, RIGHT + OVER, under);
        for (double rest : new double[] {LEFT, RIGHT}) {
            sketch.path(
                    "thing",
                    Sketch.line(
                            List.of(
                                    new Point(rest, under),
                                    new Point(rest - 9, under + 34),
                                    new Point(rest + 9, under + 34)),
                            true));
        }
        sketch.line("axis", 6, under + 34, 334, under + 34);
        // A band over the strip carries the weight.
        sketch.line("thing", middle - 7, TOP - 3, middle + 7, TOP - 3);
        sketch.line("thing", middle - 7, TOP - 3, middle - 7, under + 12);
        sketch.line("thing", middle + 7, TOP - 3, middle + 7, under + 12);
        sketch.path(
                "thing",
                Sketch.line(
                        List.of(
                                new Point(middle - 7, under + 12),
                                new Point(middle - 4, under + 20),
                                new Point(middle - 15, under + 30),
                                new Point(middle - 15, under + 66),
                                new Point(middle + 15, under + 66),
                                new Point(middle + 15, under + 30),
                                new Point(middle + 4, under + 20),
                                new Point(middle + 7, under + 12)),
                        false));
        sketch.text("value", middle + 21, under + 54, weight + ", hung up");
        sketch.line("thing", middle, TOP - 3, middle, TOP - 12);
        sketch.dot("dial", middle, TOP - 24, 12);
        sketch.line("thing", middle, TOP - 24, middle + 6, TOP - 31);
        sketch.text("value", middle + 18, TOP - 22, "gauge: " + reading);
        double chain = under + 92;
        for (double rest : new double[] {LEFT, RIGHT}) {
            sketch.line("reach", rest, under + 38, rest, chain + 4);
            sketch.line("tick", rest - 3, chain + 3, rest + 3, chain - 3);
        }
        sketch.line("size", LEFT, chain, RIGHT, chain);
        sketch.text("size mid", middle, chain - 4, span);
        sketch.text("small", 6, 18, "strip " + width + " wide,");
        sketch.text("small", 6, 31, "laid like the panel");
        return sketch.drawing(
                "strip",
                340,
                chain + 10,
                "Bending test of a strip",
                "A strip lies on two rests, a weight hangs from its middle, a gauge reads how far it goes down.");
    }
}
