package org.coachskin.shell;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Which unknowns the panel has. Every function of the basis (a corner, an edge's, a bubble) carries
 * the seven fields; what is held ties some of them together, and what is left free is numbered.
 *
 * <p>A tie is a row of seven numbers whose product with the fields vanishes. The fields of a
 * function are then columns of an orthonormal matrix times its unknowns. Immutable once made.
 */
final class Unknowns {

    private static final double DEPENDENT = 1e-10;

    private final int vertices;
    private final int edges;
    private final Basis basis;

    /** First unknown of each function. */
    private final int[] first;

    /** Columns of each function that is tied: FIELDS numbers a column; null where it is free. */
    private final double[] @Nullable [] columns;

    /** How many unknowns. */
    final int count;

    Unknowns(Grid grid, Basis basis, Ties ties) {
        this.basis = basis;
        vertices = grid.vertices;
        edges = grid.edges();
        int functions = vertices + edges * basis.perEdge + grid.triangles() * basis.bubbles;
        first = new int[functions + 1];
        columns = new double[functions][];
        for (int i = 0; i < functions; i++) {
            List<double[]> rows = ties.rows.get(i);
            columns[i] = rows == null ? null : free(rows);
            double[] c = columns[i];
            first[i + 1] = first[i] + (c == null ? Section.FIELDS : c.length / Section.FIELDS);
        }
        count = first[functions];
    }

    /** Rows of ties, by function. */
    static final class Ties {
        private final Map<Integer, List<double[]>> rows = new HashMap<>();

        void add(int function, double... row) {
            rows.computeIfAbsent(function, k -> new ArrayList<>()).add(row);
        }
    }

    /** Returns an orthonormal basis of what is at right angles to all rows. */
    private static double[] free(List<double[]> rows) {
        int fields = Section.FIELDS;
        List<double[]> spent = new ArrayList<>();
        for (double[] row : rows) {
            double[] r = row.clone();
            double before = norm(r);
            take(r, spent);
            take(r, spent);
            double after = norm(r);
            if (after > DEPENDENT * before) {
                scale(r, 1 / after);
                spent.add(r);
            }
        }
        int free = fields - spent.size();
        double[] out = new double[free * fields];
        for (int c = 0; c < free; c++) {
            double[] best = new double[fields];
            double longest = 0;
            for (int i = 0; i < fields; i++) {
                double[] r = new double[fields];
                r[i] = 1;
                take(r, spent);
                take(r, spent);
                double length = norm(r);
                if (length > longest + 1e-12) {
                    longest = length;
                    best = r;
                }
            }
            scale(best, 1 / longest);
            spent.add(best);
            System.arraycopy(best, 0, out, c * fields, fields);
        }
        return out;
    }

    private static void take(double[] r, List<double[]> units) {
        for (double[] unit : units) {
            double dot = 0;
            for (int i = 0; i < r.length; i++) {
                dot += r[i] * unit[i];
            }
            for (int i = 0; i < r.length; i++) {
                r[i] -= dot * unit[i];
            }
        }
    }

    private static double norm(double[] r) {
        double sum = 0;
        for (double v : r) {
            sum += v * v;
        }
        return Math.sqrt(sum);
    }

    private static void scale(double[] r, double by) {
        for (int i = 0; i < r.length; i++) {
            r[i] *= by;
        }
    }

    /** Returns the function number {@code k} of an edge. */
    int ofEdge(int edge, int k) {
        return vertices + edge * basis.perEdge + k;
    }

    /** Returns the functions that do not vanish on an edge, in the order of their trace. */
    int[] ofEdge(Grid grid, int edge) {
        int[] out = new int[2 + basis.perEdge];
        out[0] = grid.ends[2 * edge];
        out[1] = grid.ends[2 * edge + 1];
        for (int k = 0; k < basis.perEdge; k++) {
            out[2 + k] = ofEdge(edge, k);
        }
        return out;
    }

    /** Writes which functions the basis of a triangle belongs to. */
    int[] functions(Grid grid, int t) {
        int[] out = new int[basis.size];
        int at = 0;
        for (int i = 0; i < 3; i++) {
            out[at++] = grid.corners[3 * t + i];
        }
        for (int s = 0; s < 3; s++) {
            for (int k = 0; k < basis.perEdge; k++) {
                out[at++] = ofEdge(grid.sides[3 * t + s], k);
            }
        }
        for (int k = 0; k < basis.bubbles; k++) {
            out[at++] = vertices + edges * basis.perEdge + t * basis.bubbles + k;
        }
        return out;
    }

    /** Returns how many unknowns a function has. */
    int width(int function) {
        return first[function + 1] - first[function];
    }

    /** Returns whether the unknowns of a function are its fields. */
    boolean isFree(int function) {
        return columns[function] == null;
    }

    /** Returns the first unknown of a function. */
    int start(int function) {
        return first[function];
    }

    /** Returns the share of one unknown of a function in one field. */
    double share(int function, int unknown, int field) {
        double[] c = columns[function];
        return c == null ? (unknown == field ? 1 : 0) : c[unknown * Section.FIELDS + field];
    }

    /** Returns all fields of a function, from the values of all unknowns. */
    void fields(double[] solution, int function, double[] out, int at) {
        if (isFree(function)) {
            System.arraycopy(solution, first[function], out, at, Section.FIELDS);
            return;
        }
        int n = width(function);
        for (int f = 0; f < Section.FIELDS; f++) {
            double sum = 0;
            for (int k = 0; k < n; k++) {
                sum += share(function, k, f) * solution[first[function] + k];
            }
            out[at + f] = sum;
        }
    }
}
