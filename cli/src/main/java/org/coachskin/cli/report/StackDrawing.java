package org.coachskin.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;

/** A cut through the panel: at true scale, and beside it with its skins magnified. */
public final class StackDrawing {

    private static final double WIDTH = 278;
    private static final double TRUE_LEFT = 4;
    private static final double STRIP = 44;
    private static final double LEFT = 70;
    private static final double WORDS = 126;
    private static final double TOP = 22;
    private static final double LABEL = 29;

    /** As many letters as stand beside the cut. */
    private static final int LETTERS = 24;

    private StackDrawing() {}

    /**
     * Words beside a layer.
     *
     * @param name what it is, with its number in the order of laying
     * @param note how thick and heavy it is
     */
    public record Label(String name, String note) {}

    /** Returns how many times thicker skins are drawn than they are. */
    public static int times(Laminate laminate) {
        return new Heights(laminate).times();
    }

    /**
     * Draws a stack.
     *
     * @param labels one a layer, inside to outside
     */
    public static Drawing of(Laminate laminate, List<Label> labels) {
        Heights heights = new Heights(laminate);
        List<Layer> layers = laminate.layers();
        double whole = heights.whole();
        double real = laminate.thickness() * Heights.TRUE;
        double high = Math.max(Math.max(whole, real), layers.size() * LABEL);
        double top = TOP + (high - whole) / 2;
        double trueTop = TOP + (high - real) / 2;
        Sketch sketch = new Sketch();
        weaves(sketch, "cut", laminate);
        sketch.text("small", TRUE_LEFT, 12, "outside");
        for (int i = layers.size() - 1; i >= 0; i--) {
            Layer layer = layers.get(i);
            double y = top + heights.top(i);
            layer(sketch, "cut", layer, LEFT, y, STRIP, heights.height(layer));
            double outer = laminate.bottom(i) + layer.thickness() + laminate.thickness() / 2;
            double trueY = trueTop + real - outer * Heights.TRUE;
            String kind = Heights.isFoam(layer) ? "foam" : "skin";
            sketch.box(kind, TRUE_LEFT, trueY, STRIP, layer.thickness() * Heights.TRUE);
        }
        sketch.line("reach", TRUE_LEFT + STRIP, trueTop, LEFT, top);
        sketch.line("reach", TRUE_LEFT + STRIP, trueTop + real, LEFT, top + whole);
        labels(sketch, heights, layers, labels, top, high);
        double foot = TOP + high + 16;
        sketch.text("small", TRUE_LEFT, foot, "1 : 1");
        sketch.text("small", LEFT, foot, heights.times() + " : 1");
        sketch.text("small end", WIDTH - 4, foot, "inside below");
        return sketch.trueToScale(
                "cut",
                WIDTH,
                foot + 8,
                "Cut through the panel",
                "The layers from the outside, on top, to the inside: "
                        + String.join("; ", reversed(labels))
                        + ".");
    }

    private static List<String> reversed(List<Label> labels) {
        List<String> words = new ArrayList<>();
        labels.forEach(label -> words.add(0, label.name() + ", " + label.note()));
        return words;
    }

    private static String weave(String prefix, Layer.Laid laid) {
        return prefix + "-" + Sketch.at(StrictMath.toDegrees(laid.angle())).replace('.', '_');
    }

    static void weaves(Sketch sketch, String prefix, Laminate laminate) {
        TreeSet<String> known = new TreeSet<>();
        for (Layer layer : laminate.layers()) {
            if (layer instanceof Layer.Laid laid && known.add(weave(prefix, laid))) {
                sketch.weave(weave(prefix, laid), StrictMath.toDegrees(laid.angle()));
            }
        }
    }

    static void layer(
            Sketch sketch,
            String prefix,
            Layer layer,
            double x,
            double y,
            double width,
            double height) {
        if (layer instanceof Layer.Laid laid) {
            sketch.box("ply", x, y, width, height, weave(prefix, laid));
        } else if (Heights.isFoam(layer)) {
            sketch.box("foam", x, y, width, height);
            broken(sketch, x, y + height / 2, width);
        } else {
            sketch.box("coat", x, y, width, height);
        }
    }

    /** Draws where foam is cut short. */
    private static void broken(Sketch sketch, double x, double y, double width) {
        for (int i = -1; i <= 1; i += 2) {
            double at = y + 2.5 * i;
            String d =
                    Sketch.line(
                            List.of(
                                    new Point(x - 4, at + 3),
                                    new Point(x + width * 0.45, at + 3),
                                    new Point(x + width * 0.5, at - 6),
                                    new Point(x + width * 0.55, at + 8),
                                    new Point(x + width * 0.6, at + 3),
                                    new Point(x + width + 4, at + 3)),
                            false);
            sketch.path("break", d);
        }
    }

    private static void labels(
            Sketch sketch,
            Heights heights,
            List<Layer> layers,
            List<Label> labels,
            double top,
            double high) {
        int n = layers.size();
        double[] middle = new double[n];
        double[] y = new double[n];
        for (int k = 0; k < n; k++) {
            int layer = n - 1 - k;
            middle[k] = top + heights.top(layer) + heights.height(layers.get(layer)) / 2;
            y[k] = Math.max(middle[k], k == 0 ? TOP + LABEL / 2 : y[k - 1] + LABEL);
        }
        double least = TOP + high - LABEL / 2;
        for (int k = n - 1; k >= 0; k--) {
            y[k] = Math.min(y[k], least);
            least = y[k] - LABEL;
        }
        for (int k = 0; k < n; k++) {
            Label label = labels.get(n - 1 - k);
            sketch.line("reach", LEFT + STRIP, middle[k], WORDS - 5, y[k]);
            sketch.text("layer", WORDS, y[k] - 1, Labels.shortened(label.name(), LETTERS));
            sketch.text("small", WORDS, y[k] + 11, label.note());
        }
    }
}
