package org.coachskin.cli.report;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.check.Through;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Triple;

/** Stress through the thickness beside a cut: pull and push in the layers, shear in the foam. */
public final class StressDrawing {

    private static final double WIDTH = 356;
    private static final double TOP = 34;
    private static final double STRIP = 50;
    private static final double LEFT = 6;

    /** Half the width of the scale of pull and push. */
    private static final double HALF = 72;

    private static final double MIDDLE = 150;
    private static final double SHEAR = 252;
    private static final double SHEAR_WIDE = 84;
    private static final double FOOT = 30;
    private static final int TICKS = 2;

    private final Through through;
    private final Units units;
    private final Heights heights;
    private final boolean along;
    private final Sketch sketch = new Sketch();
    private final double bottom;

    private StressDrawing(Through through, Units units) {
        this.through = through;
        this.units = units;
        heights = new Heights(through.laminate());
        bottom = TOP + heights.whole();
        double x = 0;
        double y = 0;
        for (Through.InPlane at : through.inPlane()) {
            x = Math.max(x, Math.abs(at.stress().x()));
            y = Math.max(y, Math.abs(at.stress().y()));
        }
        along = y > x;
    }

    /** Draws the stress at one place. */
    public static Drawing of(Through through, Units units) {
        return new StressDrawing(through, units).drawing();
    }

    /** Returns in words which way pull and push are drawn. */
    public static String way(Through through, Units units) {
        return new StressDrawing(through, units).along ? "front to rear" : "left to right";
    }

    private double value(Triple stress) {
        return (along ? stress.y() : stress.x()) / units.stress();
    }

    private Drawing drawing() {
        Laminate laminate = through.laminate();
        StackDrawing.weaves(sketch, "stress", laminate);
        sketch.text("small", LEFT, 12, "outside");
        for (int i = laminate.layers().size() - 1; i >= 0; i--) {
            Layer layer = laminate.layers().get(i);
            double y = TOP + heights.top(i);
            StackDrawing.layer(sketch, "stress", layer, LEFT, y, STRIP, heights.height(layer));
            sketch.line("reach", LEFT + STRIP, y, WIDTH - 4, y);
        }
        sketch.line("reach", LEFT + STRIP, bottom, WIDTH - 4, bottom);
        inPlane();
        if (!through.foam().isEmpty()) {
            shear();
        }
        return sketch.drawing(
                "stress",
                WIDTH,
                bottom + FOOT,
                "Stress through the thickness",
                "Pull and push in each layer from the outside, on top, to the inside"
                        + (through.foam().isEmpty() ? "." : ", and shear in the foam."));
    }

    private void inPlane() {
        double most = 0;
        for (Through.InPlane at : through.inPlane()) {
            most = Math.max(most, Math.abs(value(at.stress())));
        }
        Axis axis = new Axis(MIDDLE, most == 0 ? 1 : (HALF - 8) / most);
        sketch.text("small mid", MIDDLE - HALF / 2, TOP - 20, "push");
        sketch.text("small mid", MIDDLE + HALF / 2, TOP - 20, "pull");
        grid(axis, most, MIDDLE - HALF, MIDDLE + HALF);
        sketch.text("small mid", MIDDLE, bottom + 28, units.stressName());
        for (int i = 0; i + 1 < through.inPlane().size(); i += 2) {
            Through.InPlane inner = through.inPlane().get(i);
            Through.InPlane outer = through.inPlane().get(i + 1);
            double y1 = TOP + heights.below(inner.layer(), inner.z());
            double y2 = TOP + heights.below(outer.layer(), outer.z());
            List<Point> area =
                    List.of(
                            new Point(MIDDLE, y1),
                            new Point(axis.at(value(inner.stress())), y1),
                            new Point(axis.at(value(outer.stress())), y2),
                            new Point(MIDDLE, y2));
            sketch.path("stress", Sketch.line(area, true));
        }
        extreme(axis, 1);
        extreme(axis, -1);
    }

    /** Draws lines at round numbers up to {@code most} either way, as far as there is room. */
    private void grid(Axis axis, double most, double left, double right) {
        double step = Levels.step(most, TICKS);
        for (int k = -TICKS; k <= TICKS; k++) {
            double at = axis.at(k * step);
            if (at >= left && at <= right) {
                sketch.line(k == 0 ? "axis zero" : "grid", at, TOP, at, bottom + 4);
                sketch.text("small mid", at, bottom + 16, Levels.words(Math.abs(k * step), step));
            }
        }
    }

    /** Writes the largest pull or push where it is. */
    private void extreme(Axis axis, int sign) {
        Through.InPlane most = through.inPlane().get(0);
        for (Through.InPlane at : through.inPlane()) {
            if (sign * value(at.stress()) > sign * value(most.stress())) {
                most = at;
            }
        }
        double value = value(most.stress());
        if (sign * value > 0) {
            double y = TOP + heights.below(most.layer(), most.z());
            double place = axis.at(value);
            sketch.dot("place", place, y, 2.4);
            double down = y > (TOP + bottom) / 2 ? -6 : 14;
            sketch.text(
                    "value " + (sign > 0 ? "end" : ""),
                    place - sign * 5,
                    y + (y - TOP < 3 || bottom - y < 3 ? down : 4),
                    significant(Math.abs(value)));
        }
    }

    private static String significant(double value) {
        return Levels.words(value, Levels.step(value, 20));
    }

    private void shear() {
        double most = 0;
        for (Through.Shear at : through.foam()) {
            most = Math.max(most, at.amount() / units.stress());
        }
        Axis axis = new Axis(SHEAR, most == 0 ? 1 : (SHEAR_WIDE - 20) / most);
        sketch.text("small", SHEAR, TOP - 20, "shear in the foam");
        grid(axis, most, SHEAR, SHEAR + SHEAR_WIDE);
        sketch.text("small mid", SHEAR + SHEAR_WIDE / 2 - 8, bottom + 28, units.stressName());
        List<Point> area = new ArrayList<>();
        double last = 0;
        for (Through.Shear at : through.foam()) {
            int layer = layerAt(at.z());
            double y = TOP + heights.below(layer, at.z());
            if (area.isEmpty()) {
                area.add(new Point(SHEAR, y));
            }
            area.add(new Point(axis.at(at.amount() / units.stress()), y));
            last = y;
        }
        area.add(new Point(SHEAR, last));
        sketch.path("stress", Sketch.line(area, true));
        for (Through.Shear at : through.foam()) {
            if (at.amount() / units.stress() == most) {
                double y = TOP + heights.below(layerAt(at.z()), at.z());
                sketch.dot("place", axis.at(most), y, 2.4);
                sketch.text("value end", axis.at(most) - 5, y + 4, significant(most));
                return;
            }
        }
    }

    /** Returns the core whose foam is at a height. */
    private int layerAt(double z) {
        Laminate laminate = through.laminate();
        int layer = laminate.innermostCore();
        while (layer < laminate.outermostCore()
                && z > laminate.bottom(layer) + laminate.layers().get(layer).thickness()) {
            layer++;
        }
        return layer;
    }
}
