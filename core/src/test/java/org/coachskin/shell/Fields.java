package org.coachskin.shell;

import java.util.Arrays;
import java.util.List;
import org.coachskin.panel.Panel;
import org.coachskin.sparse.Factor;
import org.coachskin.sparse.FactorPlan;
import org.coachskin.sparse.Pattern;
import org.coachskin.sparse.SymmetricMatrix;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/** A panel that nothing holds, its stiffness, and given fields in its basis. */
final class Fields {

    final Model model;
    final SymmetricMatrix matrix;

    Fields(Panel panel, Grid grid, int order) {
        Basis basis = new Basis(order);
        Section[] sections = Sections.of(panel, grid, false);
        Unknowns unknowns = Holding.unknowns(grid, basis, sections, Rim.of(grid), List.of());
        model = new Model(grid, new ReferenceTriangle(basis, 2), sections, unknowns);
        matrix = room();
        model.addStiffness(matrix);
    }

    /** A field: its FIELDS values at a place. */
    interface Given {
        double[] at(double x, double y);
    }

    /** Returns the unknowns of a field, fitted triangle by triangle. */
    double[] of(Given field) {
        Basis basis = model.reference.basis;
        int p = basis.order;
        DMatrixRMaj values = new DMatrixRMaj(basis.size, basis.size);
        double[] n = new double[basis.size];
        double[] x = new double[model.unknowns.count];
        for (int t = 0; t < model.grid.triangles(); t++) {
            DMatrixRMaj right = new DMatrixRMaj(basis.size, Section.FIELDS);
            int row = 0;
            for (int a = 0; a <= p; a++) {
                for (int b = 0; a + b <= p; b++, row++) {
                    double xi = (double) a / p;
                    double eta = (double) b / p;
                    basis.at(xi, eta, n, new double[basis.size], new double[basis.size]);
                    double[] place = model.grid.elements[t].map(xi, eta);
                    double[] f = field.at(place[0], place[1]);
                    for (int k = 0; k < basis.size; k++) {
                        values.set(row, k, n[k]);
                    }
                    for (int k = 0; k < Section.FIELDS; k++) {
                        right.set(row, k, f[k]);
                    }
                }
            }
            DMatrixRMaj c = new DMatrixRMaj(basis.size, Section.FIELDS);
            CommonOps_DDRM.solve(values, right, c);
            int[] functions = model.unknowns.functions(model.grid, t);
            for (int m = 0; m < basis.size; m++) {
                for (int k = 0; k < model.unknowns.width(functions[m]); k++) {
                    double sum = 0;
                    for (int f = 0; f < Section.FIELDS; f++) {
                        sum += model.unknowns.share(functions[m], k, f) * c.get(m, f);
                    }
                    x[model.unknowns.start(functions[m]) + k] = sum;
                }
            }
        }
        return x;
    }

    /** Returns K x. */
    double[] forces(double[] x) {
        return times(matrix, x);
    }

    /** Returns a matrix of noughts with room for what triangles add. */
    SymmetricMatrix room() {
        Pattern.Builder builder = Pattern.of(model.unknowns.count);
        model.enter(builder);
        return new SymmetricMatrix(builder.build());
    }

    /** Returns a matrix of noughts with room for what a wall adds. */
    SymmetricMatrix roomFor(EndWall wall) {
        Pattern.Builder builder = Pattern.of(model.unknowns.count);
        wall.enter(builder);
        return new SymmetricMatrix(builder.build());
    }

    static double[] times(SymmetricMatrix matrix, double[] x) {
        double[] out = new double[x.length];
        matrix.multiply(x, out);
        return out;
    }

    static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < b.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    /** Returns the forces that rounding alone may leave: |K| |x|. */
    double scale(double[] x) {
        double most = 0;
        for (double v : x) {
            most = Math.max(most, Math.abs(v));
        }
        return matrix.norm() * most;
    }

    /** Returns which unknowns stand on the rim. */
    boolean[] onRim() {
        boolean[] rim = new boolean[model.unknowns.count];
        Grid grid = model.grid;
        for (int e = 0; e < grid.edges(); e++) {
            if (grid.onRim(e)) {
                mark(rim, grid.ends[2 * e]);
                mark(rim, grid.ends[2 * e + 1]);
                for (int k = 0; k < model.reference.basis.perEdge; k++) {
                    mark(rim, model.unknowns.ofEdge(e, k));
                }
            }
        }
        return rim;
    }

    private void mark(boolean[] rim, int function) {
        int start = model.unknowns.start(function);
        Arrays.fill(rim, start, start + model.unknowns.width(function), true);
    }

    Factor factor() {
        return FactorPlan.of(matrix.pattern()).factor(matrix);
    }
}
