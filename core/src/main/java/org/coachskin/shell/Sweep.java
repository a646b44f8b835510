package org.coachskin.shell;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.analysis.Response;
import org.coachskin.laminate.Patch;
import org.coachskin.panel.Load;
import org.jspecify.annotations.Nullable;

/** A press moved over a factored panel: one pair of triangular solutions a place. */
final class Sweep {

    private static final int W = 2;

    /** Points of a patch along each of its sides, each with its share of the force. */
    private static final int POINTS = 6;

    /** Places worked out side by side. */
    private static final int ABREAST = 16;

    private Sweep() {}

    /** Returns how far the middle of the patch goes in at each place. */
    static List<Double> of(
            ShellPanel shell, Load.Press press, List<Load> standing, List<Response.Spot> places) {
        double[] @Nullable [] free = new double[shell.model.grid.triangles()][];
        double[] still = shell.even(standing, free);
        double[] rest = shell.settled(still);
        List<Double> out = new ArrayList<>();
        for (int from = 0; from < places.size(); from += ABREAST) {
            List<Response.Spot> some =
                    places.subList(from, Math.min(places.size(), from + ABREAST));
            List<double[]> loads = some.stream().map(at -> load(shell, press, at)).toList();
            List<double[]> more = shell.linearAll(loads);
            for (int i = 0; i < some.size(); i++) {
                double[] pressed = shell.settled(ShellPanel.sum(still, more.get(i), 1));
                Response.Spot at = some.get(i);
                out.add(outward(shell, rest, at) - outward(shell, pressed, at));
            }
        }
        return out;
    }

    private static double[] load(ShellPanel shell, Load.Press press, Response.Spot at) {
        double hx = press.patch().halfX();
        double hy = press.patch().halfY();
        List<double[]> points = new ArrayList<>();
        for (int i = 0; i < POINTS; i++) {
            for (int j = 0; j < POINTS; j++) {
                double s = (2 * i + 1.0) / POINTS - 1;
                double t = (2 * j + 1.0) / POINTS - 1;
                if (press.patch() instanceof Patch.Rectangle || s * s + t * t <= 1) {
                    points.add(new double[] {at.x() + s * hx, at.y() + t * hy});
                }
            }
        }
        double[] load = new double[shell.model.unknowns.count];
        double[] field = new double[Section.FIELDS];
        field[W] = -press.force() / points.size();
        double[] local = new double[2];
        for (double[] point : points) {
            int t = shell.model.grid.locate(point[0], point[1], local);
            if (t < 0) {
                throw new IllegalArgumentException(
                        "a press at " + at.x() + ", " + at.y() + " m hangs over the panel");
            }
            shell.model.addPoint(t, local, field, load);
        }
        return load;
    }

    private static double outward(ShellPanel shell, double[] solution, Response.Spot at) {
        double[] local = new double[2];
        int t = shell.model.grid.locate(at.x(), at.y(), local);
        return shell.model.gradients(solution, t, local)[3 * W];
    }
}
