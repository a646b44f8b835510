package org.coachskin.shell;

import java.util.ArrayList;
import java.util.List;

/** Says in words how a panel that is not held can move. */
final class Mechanism {

    private static final int RIGID = 6;

    /** Share of a free movement in what can move that counts as all of it. */
    private static final double WHOLE = 0.99;

    private Mechanism() {}

    /**
     * Returns the words.
     *
     * @param moves independent movements without force
     */
    static String words(Model model, List<double[]> moves) {
        double[] share = shares(model, moves);
        List<String> ways = new ArrayList<>();
        double turning = share[2];
        for (int axis = 0; axis < 2; axis++) {
            if (share[axis] > WHOLE) {
                ways.add(axis == 0 ? "sliding left and right" : "sliding to front and rear");
            } else {
                turning += share[axis];
            }
        }
        // A turn about any place but the middle slides as well.
        if (turning > 0.5) {
            ways.add("turning in its own plane");
        }
        if (share[3] + share[4] + share[5] > 0.5) {
            ways.add("lifting or tipping");
        }
        if (ways.isEmpty()) {
            return "nothing keeps a part of it from moving";
        }
        int last = ways.size() - 1;
        String all = String.join(", ", ways.subList(0, last));
        return "nothing keeps it from " + (last == 0 ? "" : all + " or ") + ways.get(last);
    }

    /**
     * Returns how much of each unit movement as a rigid body (slide along x, along y, turn, lift,
     * tip along x, along y) can be made of {@code moves}: 0 none, 1 all of it.
     */
    private static double[] shares(Model model, List<double[]> moves) {
        double[] share = new double[RIGID];
        List<double[]> known = new ArrayList<>();
        for (double[] move : moves) {
            double[] c = rigid(model, move);
            double before = norm(c);
            for (double[] k : known) {
                double dot = 0;
                for (int i = 0; i < RIGID; i++) {
                    dot += k[i] * c[i];
                }
                for (int i = 0; i < RIGID; i++) {
                    c[i] -= dot * k[i];
                }
            }
            double length = norm(c);
            if (length > 1e-6 * before) {
                for (int i = 0; i < RIGID; i++) {
                    c[i] /= length;
                    share[i] += c[i] * c[i];
                }
                known.add(c);
            }
        }
        return share;
    }

    private static double norm(double[] c) {
        double sum = 0;
        for (double v : c) {
            sum += v * v;
        }
        return Math.sqrt(sum);
    }

    /** Returns the movement as a rigid body at the vertices, about their middle. */
    private static double[] rigid(Model model, double[] move) {
        Grid grid = model.grid;
        int n = grid.vertices;
        double cx = 0;
        double cy = 0;
        for (int v = 0; v < n; v++) {
            cx += grid.x[v] / n;
            cy += grid.y[v] / n;
        }
        double[] out = new double[RIGID];
        double xx = 0;
        double yy = 0;
        double[] f = new double[Section.FIELDS];
        for (int v = 0; v < n; v++) {
            double x = grid.x[v] - cx;
            double y = grid.y[v] - cy;
            model.unknowns.fields(move, v, f, 0);
            xx += x * x;
            yy += y * y;
            double[] terms = {f[0], f[1], x * f[1] - y * f[0], f[2], x * f[2], y * f[2]};
            for (int i = 0; i < RIGID; i++) {
                out[i] += terms[i];
            }
        }
        double[] sizes = {n, n, xx + yy, n, xx, yy};
        for (int i = 0; i < RIGID; i++) {
            out[i] /= Math.sqrt(sizes[i]);
        }
        return out;
    }
}
