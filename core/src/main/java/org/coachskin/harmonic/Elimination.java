package org.coachskin.harmonic;

/** Small linear systems by elimination with row exchange, in place. */
final class Elimination {

    private Elimination() {}

    /**
     * Solves {@code matrix} X = {@code rhs} in place.
     *
     * @param matrix k by k by rows; overwritten
     * @param rhs k by columns by rows; overwritten by X
     * @throws ArithmeticException when the matrix is singular
     */
    static void solve(double[] matrix, int k, double[] rhs, int columns) {
        for (int c = 0; c < k; c++) {
            int pivot = c;
            for (int i = c + 1; i < k; i++) {
                if (Math.abs(matrix[i * k + c]) > Math.abs(matrix[pivot * k + c])) {
                    pivot = i;
                }
            }
            double p = matrix[pivot * k + c];
            if (p == 0 || Double.isNaN(p)) {
                throw new ArithmeticException("singular in column " + c);
            }
            exchange(matrix, k, c, pivot);
            exchange(rhs, columns, c, pivot);
            for (int i = c + 1; i < k; i++) {
                double f = matrix[i * k + c] / p;
                if (f != 0) {
                    subtract(matrix, k, i, c, f, c + 1);
                    subtract(rhs, columns, i, c, f, 0);
                }
            }
        }
        for (int i = k - 1; i >= 0; i--) {
            for (int j = i + 1; j < k; j++) {
                subtract(rhs, columns, i, j, matrix[i * k + j], 0);
            }
            for (int c = 0; c < columns; c++) {
                rhs[i * columns + c] /= matrix[i * k + i];
            }
        }
    }

    private static void exchange(double[] a, int columns, int i, int j) {
        for (int c = 0; i != j && c < columns; c++) {
            double keep = a[i * columns + c];
            a[i * columns + c] = a[j * columns + c];
            a[j * columns + c] = keep;
        }
    }

    private static void subtract(double[] a, int columns, int i, int j, double f, int from) {
        for (int c = from; c < columns; c++) {
            a[i * columns + c] -= f * a[j * columns + c];
        }
    }
}
