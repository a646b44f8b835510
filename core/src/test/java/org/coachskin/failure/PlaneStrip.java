package org.coachskin.failure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.coachskin.sparse.FactorPlan;
import org.coachskin.sparse.Order;
import org.coachskin.sparse.Pattern;
import org.coachskin.sparse.SymmetricMatrix;

/**
 * A cut across the edge of a foam strip in plane strain, by eight-node quadrilaterals: two skins
 * and foam of isotropic stuff, thin on the left, thick on the right, a bevel between, bent by a
 * unit force in each skin at the right end. x = 0 where the bevel begins; z outward from the foam's
 * outside face. Shares nothing with the library but its solver of equations.
 */
final class PlaneStrip {

    private static final double SIDE = 0.25;
    private static final double COARSEST = 0.01;
    private static final int SKIN_ROWS = 4;
    private static final int OUTSIDE_ROWS = 2;
    private static final double[] GAUSS = {-StrictMath.sqrt(0.6), 0, StrictMath.sqrt(0.6)};
    private static final double[] WEIGHT = {5 / 9.0, 8 / 9.0, 5 / 9.0};
    private static final int[][] NODES = {
        {0, 0}, {2, 0}, {2, 2}, {0, 2}, {1, 0}, {2, 1}, {1, 2}, {0, 1}
    };

    private final double foam;
    private final double rise;
    private final double run;
    private final double skin;
    private final double[] columns;
    private final double[] heights;
    private final int rows;
    private final List<double[]> places = new ArrayList<>();
    private final Map<List<Integer>, Integer> numbers = new HashMap<>();
    private final List<int[]> elements = new ArrayList<>();
    private final double[][] stiffness;
    private final double[] moved;

    /**
     * @param foam thickness on the left [m]
     * @param rise how much thicker it is on the right [m]
     * @param run length of the bevel [m]
     * @param skin thickness of each skin [m]
     * @param skins modulus and Poisson's ratio of the skins
     * @param core of the foam
     * @param finest size of elements by the corners [m]
     */
    PlaneStrip(
            double foam,
            double rise,
            double run,
            double skin,
            double[] skins,
            double[] core,
            double finest) {
        this.foam = foam;
        this.rise = rise;
        this.run = run;
        this.skin = skin;
        columns = columns(finest);
        heights = heights(finest / foam);
        rows = SKIN_ROWS + heights.length - 1 + OUTSIDE_ROWS;
        stiffness = new double[][] {planeStrain(skins), planeStrain(core)};
        for (int i = 0; i < columns.length - 1; i++) {
            for (int j = 0; j < rows; j++) {
                elements.add(element(i, j));
            }
        }
        moved = solve();
    }

    /** Growing from both ends of the bevel. */
    private double[] columns(double finest) {
        List<Double> left = growing(SIDE, finest, COARSEST);
        List<Double> half = growing(run / 2, finest, COARSEST);
        List<Double> all = new ArrayList<>();
        for (int i = left.size() - 1; i > 0; i--) {
            all.add(-left.get(i));
        }
        all.addAll(half);
        for (int i = half.size() - 2; i >= 0; i--) {
            all.add(run - half.get(i));
        }
        left.stream().skip(1).forEach(x -> all.add(run + x));
        return all.stream().mapToDouble(x -> x).toArray();
    }

    private static double[] heights(double finest) {
        return growing(1, finest, 0.08).stream().mapToDouble(x -> x).toArray();
    }

    private static List<Double> growing(double to, double first, double most) {
        List<Double> out = new ArrayList<>(List.of(0.0));
        double x = 0;
        double step = first;
        while (x + 1.5 * step < to) {
            x += step;
            out.add(x);
            step = Math.min(most, 1.25 * step);
        }
        out.add(to);
        return out;
    }

    private double slope() {
        return rise / run;
    }

    private double bottomOfFoam(double x) {
        return -foam - Math.min(rise, Math.max(0, x * slope()));
    }

    /** The inside face of the inside skin runs parallel to its outside. */
    private double insideFace(double x) {
        double back = skin * StrictMath.tan(StrictMath.atan(slope()) / 2);
        return -foam - skin - Math.min(rise, Math.max(0, (x + back) * slope()));
    }

    private double height(double x, int row) {
        double bottom = bottomOfFoam(x);
        if (row <= SKIN_ROWS) {
            double face = insideFace(x);
            return face + (bottom - face) * row / SKIN_ROWS;
        }
        int inFoam = row - SKIN_ROWS;
        return inFoam < heights.length
                ? bottom * (1 - heights[inFoam])
                : skin * (inFoam - heights.length + 1) / OUTSIDE_ROWS;
    }

    private int[] element(int i, int j) {
        int[] nodes = new int[8];
        for (int k = 0; k < 8; k++) {
            nodes[k] = node(2 * i + NODES[k][0], 2 * j + NODES[k][1]);
        }
        return nodes;
    }

    private int node(int column, int row) {
        return numbers.computeIfAbsent(
                List.of(column, row),
                key -> {
                    double x1 = columns[column / 2];
                    double x2 = columns[(column + 1) / 2];
                    double sum = 0;
                    for (double x : new double[] {x1, x2}) {
                        sum += height(x, row / 2) + height(x, (row + 1) / 2);
                    }
                    places.add(new double[] {(x1 + x2) / 2, sum / 4});
                    return places.size() - 1;
                });
    }

    /** xx, xz and shear. */
    private static double[] planeStrain(double[] material) {
        double nu = material[1];
        double f = material[0] / ((1 + nu) * (1 - 2 * nu));
        return new double[] {f * (1 - nu), f * nu, f * (1 - 2 * nu) / 2};
    }

    private boolean isFoam(int element) {
        int row = element % rows;
        return row >= SKIN_ROWS && row < rows - OUTSIDE_ROWS;
    }

    private double[] solve() {
        int n = 2 * places.size();
        Pattern.Builder builder = Pattern.of(n);
        elements.forEach(element -> builder.element(unknowns(element)));
        SymmetricMatrix matrix = new SymmetricMatrix(builder.build());
        boolean[] fixed = fixed();
        for (int e = 0; e < elements.size(); e++) {
            matrix.add(e, matrix(e, fixed));
        }
        double[] spread = new double[3 * n];
        for (int i = 0; i < n; i++) {
            System.arraycopy(places.get(i / 2), 0, spread, 3 * i, 2);
        }
        return FactorPlan.of(matrix.pattern(), Order.dissection(matrix.pattern(), spread))
                .factor(matrix)
                .solve(load());
    }

    /** The left end keeps its plane. */
    private boolean[] fixed() {
        boolean[] fixed = new boolean[2 * places.size()];
        for (int row = 0; row <= 2 * rows; row++) {
            fixed[2 * node(0, row)] = true;
        }
        fixed[2 * node(0, 2 * rows) + 1] = true;
        return fixed;
    }

    private double[] load() {
        double[] load = new double[2 * places.size()];
        int end = 2 * (columns.length - 1);
        for (int j = 0; j < rows; j++) {
            double force = j < SKIN_ROWS ? 1.0 / SKIN_ROWS : -1.0 / OUTSIDE_ROWS;
            if (j < SKIN_ROWS || j >= rows - OUTSIDE_ROWS) {
                load[2 * node(end, 2 * j)] += force / 6;
                load[2 * node(end, 2 * j + 1)] += 4 * force / 6;
                load[2 * node(end, 2 * j + 2)] += force / 6;
            }
        }
        return load;
    }

    private static int[] unknowns(int[] element) {
        int[] out = new int[16];
        for (int i = 0; i < 16; i++) {
            out[i] = 2 * element[i / 2] + i % 2;
        }
        return out;
    }

    private double[] matrix(int e, boolean[] fixed) {
        double[] d = stiffness[isFoam(e) ? 1 : 0];
        double[] k = new double[256];
        for (int a = 0; a < 3; a++) {
            for (int b = 0; b < 3; b++) {
                double[][] g = gradients(elements.get(e), GAUSS[a], GAUSS[b]);
                double area = WEIGHT[a] * WEIGHT[b] * g[2][0];
                for (int i = 0; i < 8; i++) {
                    for (int j = 0; j < 8; j++) {
                        double xx = g[0][i] * g[0][j];
                        double zz = g[1][i] * g[1][j];
                        double xz = g[0][i] * g[1][j];
                        double zx = g[1][i] * g[0][j];
                        k[32 * i + 2 * j] += area * (d[0] * xx + d[2] * zz);
                        k[32 * i + 2 * j + 1] += area * (d[1] * xz + d[2] * zx);
                        k[32 * i + 16 + 2 * j] += area * (d[1] * zx + d[2] * xz);
                        k[32 * i + 17 + 2 * j] += area * (d[0] * zz + d[2] * xx);
                    }
                }
            }
        }
        int[] unknowns = unknowns(elements.get(e));
        for (int i = 0; i < 16; i++) {
            if (fixed[unknowns[i]]) {
                for (int j = 0; j < 16; j++) {
                    k[16 * i + j] = 0;
                    k[16 * j + i] = 0;
                }
                k[17 * i] = stiffness[0][0];
            }
        }
        return k;
    }

    /** Derivatives of the eight functions by x and z, and the area per unit of the square. */
    private double[][] gradients(int[] element, double r, double s) {
        double[] dr = new double[8];
        double[] ds = new double[8];
        double[] j = new double[4];
        for (int i = 0; i < 8; i++) {
            double a = NODES[i][0] - 1.0;
            double b = NODES[i][1] - 1.0;
            if (i < 4) {
                dr[i] = a * (1 + s * b) * (2 * r * a + s * b) / 4;
                ds[i] = b * (1 + r * a) * (2 * s * b + r * a) / 4;
            } else if (a == 0) {
                dr[i] = -r * (1 + s * b);
                ds[i] = b * (1 - r * r) / 2;
            } else {
                dr[i] = a * (1 - s * s) / 2;
                ds[i] = -s * (1 + r * a);
            }
            double[] place = places.get(element[i]);
            j[0] += dr[i] * place[0];
            j[1] += ds[i] * place[0];
            j[2] += dr[i] * place[1];
            j[3] += ds[i] * place[1];
        }
        double det = j[0] * j[3] - j[1] * j[2];
        double[][] out = new double[3][8];
        for (int i = 0; i < 8; i++) {
            out[0][i] = (dr[i] * j[3] - ds[i] * j[2]) / det;
            out[1][i] = (ds[i] * j[0] - dr[i] * j[1]) / det;
        }
        out[2][0] = det;
        return out;
    }

    /** Direct stress at an angle to x, positive towards -z. */
    private double stress(int e, double r, double s, double angle) {
        double[][] g = gradients(elements.get(e), r, s);
        double x = 0;
        double z = 0;
        double shear = 0;
        for (int i = 0; i < 8; i++) {
            int node = elements.get(e)[i];
            x += g[0][i] * moved[2 * node];
            z += g[1][i] * moved[2 * node + 1];
            shear += g[1][i] * moved[2 * node] + g[0][i] * moved[2 * node + 1];
        }
        double[] d = stiffness[isFoam(e) ? 1 : 0];
        double c = StrictMath.cos(angle);
        double n = StrictMath.sin(angle);
        return (d[0] * x + d[1] * z) * c * c
                + (d[1] * x + d[0] * z) * n * n
                - 2 * d[2] * shear * c * n;
    }

    private double along(int column) {
        double middle = (columns[column] + columns[column + 1]) / 2;
        return middle < 0 || middle > run ? 0 : StrictMath.atan(slope());
    }

    /** Returns the largest stress along the inside skin, at its faces [Pa]. */
    double skinStress() {
        double largest = 0;
        for (int i = 0; i < columns.length - 1; i++) {
            double inside = stress(i * rows, 0, -1, along(i));
            double outside = stress(i * rows + SKIN_ROWS - 1, 0, 1, along(i));
            largest = Math.max(largest, Math.max(Math.abs(inside), Math.abs(outside)));
        }
        return largest;
    }

    /** Returns the largest pull of the foam on the inside skin [Pa]. */
    double pull() {
        double largest = 0;
        for (int i = 0; i < columns.length - 1; i++) {
            double across = along(i) - Math.PI / 2;
            largest = Math.max(largest, stress(i * rows + SKIN_ROWS, 0, -1, across));
        }
        return largest;
    }

    /** Returns by how much the right end turns [rad]. */
    double turn() {
        int end = 2 * (columns.length - 1);
        double bottom = moved[2 * node(end, 2 * SKIN_ROWS)];
        double top = moved[2 * node(end, 2 * (rows - OUTSIDE_ROWS))];
        return (bottom - top) / (foam + rise);
    }

    /** Returns by how much it would turn if sections stayed plane between skins alone [rad]. */
    double plainTurn(double[] skins) {
        double modulus = skins[0] / (1 - skins[1] * skins[1]);
        double moment = foam + rise + skin;
        int steps = 1000;
        double sum = SIDE / square(foam + skin) + SIDE / square(moment);
        for (int k = 0; k < steps; k++) {
            sum += run / steps / square(foam + skin + rise * (k + 0.5) / steps);
        }
        return 2 * moment * sum / (modulus * skin);
    }

    private static double square(double v) {
        return v * v;
    }
}
