package org.coachskin.harmonic;

/** Small symmetric positive definite systems, in place. */
public final class Cholesky {

    private Cholesky() {}

    /**
     * Solves {@code matrix} x = {@code x} in place.
     *
     * @param matrix k by k by rows; overwritten by its factor
     * @param x right-hand side, overwritten by the solution
     * @throws ArithmeticException when the matrix is not positive definite
     */
    public static void solve(double[] matrix, int k, double[] x) {
        factor(matrix, k);
        substitute(matrix, k, x);
    }

    /**
     * Writes the factor into the lower half of {@code matrix}.
     *
     * @param matrix k by k by rows
     * @throws ArithmeticException when the matrix is not positive definite
     */
    public static void factor(double[] matrix, int k) {
        for (int j = 0; j < k; j++) {
            for (int i = j; i < k; i++) {
                double sum = matrix[i * k + j];
                for (int l = 0; l < j; l++) {
                    sum -= matrix[i * k + l] * matrix[j * k + l];
                }
                if (i == j) {
                    if (!(sum > 0)) {
                        throw new ArithmeticException("not positive definite in row " + j);
                    }
                    matrix[j * k + j] = Math.sqrt(sum);
                } else {
                    matrix[i * k + j] = sum / matrix[j * k + j];
                }
            }
        }
    }

    /**
     * Solves with a factor in place.
     *
     * @param matrix as left by {@link #factor}
     * @param x right-hand side, overwritten by the solution
     */
    public static void substitute(double[] matrix, int k, double[] x) {
        for (int i = 0; i < k; i++) {
            for (int l = 0; l < i; l++) {
                x[i] -= matrix[i * k + l] * x[l];
            }
            x[i] /= matrix[i * k + i];
        }
        for (int i = k - 1; i >= 0; i--) {
            for (int l = i + 1; l < k; l++) {
                x[i] -= matrix[l * k + i] * x[l];
            }
            x[i] /= matrix[i * k + i];
        }
    }
}
