package org.coachskin.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The polynomials on the reference triangle. */
class BasisTest {

    /** Coefficients of xi^i eta^j, from its values at a lattice of places. */
    private static double[] monomial(Basis basis, int i, int j) {
        int p = basis.order;
        DMatrixRMaj values = new DMatrixRMaj(basis.size, basis.size);
        DMatrixRMaj right = new DMatrixRMaj(basis.size, 1);
        double[] n = new double[basis.size];
        int row = 0;
        for (int a = 0; a <= p; a++) {
            for (int b = 0; a + b <= p; b++, row++) {
                double xi = (double) a / p;
                double eta = (double) b / p;
                basis.at(xi, eta, n, new double[basis.size], new double[basis.size]);
                for (int k = 0; k < basis.size; k++) {
                    values.set(row, k, n[k]);
                }
                right.set(row, 0, power(xi, i) * power(eta, j));
            }
        }
        assertEquals(basis.size, row);
        DMatrixRMaj c = new DMatrixRMaj(basis.size, 1);
        CommonOps_DDRM.solve(values, right, c);
        return c.data;
    }

    private static double power(double x, int n) {
        double p = 1;
        for (int k = 0; k < n; k++) {
            p *= x;
        }
        return p;
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 4, 5, 8})
    void everyPolynomialOfTheOrderIsInTheBasisWithItsDerivatives(int order) {
        Basis basis = new Basis(order);
        double[] n = new double[basis.size];
        double[] dXi = new double[basis.size];
        double[] dEta = new double[basis.size];
        for (int i = 0; i <= order; i++) {
            for (int j = 0; i + j <= order; j++) {
                double[] c = monomial(basis, i, j);
                for (double[] at : new double[][] {{0.21, 0.34}, {0.77, 0.11}, {0, 0.6}, {0, 0}}) {
                    basis.at(at[0], at[1], n, dXi, dEta);
                    assertEquals(power(at[0], i) * power(at[1], j), Fields.dot(n, c), 1e-11);
                    double x = i == 0 ? 0 : i * power(at[0], i - 1) * power(at[1], j);
                    double y = j == 0 ? 0 : j * power(at[0], i) * power(at[1], j - 1);
                    assertEquals(x, Fields.dot(dXi, c), 1e-9);
                    assertEquals(y, Fields.dot(dEta, c), 1e-9);
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 4, 5})
    void integralsOfProductsAreExact(int order) {
        Basis basis = new Basis(order);
        ReferenceTriangle reference = new ReferenceTriangle(basis, 0);
        double[] a = monomial(basis, order, 0);
        double[] b = monomial(basis, 1, order - 1);
        double[][] expected = {
            {integral(order + 1, order - 1), integral(order, order - 1), 0},
            {order * integral(order, order - 1), order * integral(order - 1, order - 1), 0},
            {0, 0, 0}
        };
        expected[0][2] = (order - 1) * integral(order + 1, order - 2);
        expected[1][2] = order * (order - 1) * integral(order, order - 2);
        for (int p = 0; p < 3; p++) {
            for (int q = 0; q < 3; q++) {
                double sum = 0;
                for (int m = 0; m < basis.size; m++) {
                    for (int n = 0; n < basis.size; n++) {
                        sum += a[m] * b[n] * reference.products[p][q][m * basis.size + n];
                    }
                }
                assertEquals(expected[p][q], sum, 1e-12, p + " " + q);
            }
        }
    }

    /** Integral of xi^i eta^j over the triangle, i! j! / (i + j + 2)!. */
    private static double integral(int i, int j) {
        double value = 1;
        for (int k = 1; k <= j; k++) {
            value *= (double) k / (i + k);
        }
        return value / ((i + j + 1.0) * (i + j + 2.0));
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 4, 5})
    void onlyAnEdgesOwnFunctionsAreLeftOnIt(int order) {
        Basis basis = new Basis(order);
        double[] n = new double[basis.size];
        double[] none = new double[basis.size];
        double[] own = basis.onEdge(0.3);
        double[][] places = {{0.3, 0}, {0.7, 0.3}, {0, 0.3}};
        int[][] ends = {{0, 1}, {1, 2}, {0, 2}};
        for (int edge = 0; edge < 3; edge++) {
            basis.at(places[edge][0], places[edge][1], n, none, none.clone());
            double[] expected = new double[basis.size];
            expected[ends[edge][0]] = own[0];
            expected[ends[edge][1]] = own[1];
            System.arraycopy(own, 2, expected, 3 + edge * basis.perEdge, basis.perEdge);
            for (int k = 0; k < basis.size; k++) {
                assertEquals(expected[k], n[k], 1e-14);
            }
        }
    }
}
