package org.coachskin.sparse;

import java.util.Arrays;

/**
 * A real symmetric matrix on a {@link Pattern}: values may be cleared and added anew as often as
 * wanted. Not safe for use by several threads while one of them changes values.
 */
public final class SymmetricMatrix {

    private final Pattern pattern;
    private final double[] value;

    /** Creates a matrix of zeros. */
    public SymmetricMatrix(Pattern pattern) {
        this.pattern = pattern;
        value = new double[pattern.entries()];
    }

    /** Returns the pattern. */
    public Pattern pattern() {
        return pattern;
    }

    /** Returns the number of rows, which is that of columns. */
    public int size() {
        return pattern.size();
    }

    /** Sets every entry to zero. */
    public void clear() {
        Arrays.fill(value, 0);
    }

    /**
     * Adds an element's matrix.
     *
     * @param element its number in the pattern
     * @param matrix k by k by rows, in the order in which the element named its k unknowns; only
     *     the lower triangle is read
     * @throws IllegalArgumentException when {@code matrix} is not of that length
     */
    public void add(int element, double[] matrix) {
        int k = pattern.sizeOf(element);
        if (matrix.length != k * k) {
            throw new IllegalArgumentException(
                    "element " + element + " wants " + k * k + " values, not " + matrix.length);
        }
        int[] target = pattern.targets(element);
        int at = 0;
        for (int i = 0; i < k; i++) {
            for (int j = 0; j <= i; j++) {
                value[target[at++]] += matrix[i * k + j];
            }
        }
    }

    /**
     * Adds to entry (i, j), and thereby to (j, i).
     *
     * @throws IllegalArgumentException when no element has both unknowns
     */
    public void add(int i, int j, double amount) {
        int at = pattern.find(i, j);
        if (at < 0) {
            throw new IllegalArgumentException("no element has unknowns " + i + " and " + j);
        }
        value[at] += amount;
    }

    /** Returns entry (i, j); zero where no element has both unknowns. */
    public double get(int i, int j) {
        int at = pattern.find(i, j);
        return at < 0 ? 0 : value[at];
    }

    /**
     * Sets this matrix to a A + b B.
     *
     * @throws IllegalArgumentException when one of them has another pattern
     */
    public void setSum(double a, SymmetricMatrix first, double b, SymmetricMatrix second) {
        if (first.pattern != pattern || second.pattern != pattern) {
            throw new IllegalArgumentException("a sum needs three matrices of one pattern");
        }
        for (int i = 0; i < value.length; i++) {
            value[i] = a * first.value[i] + b * second.value[i];
        }
    }

    /**
     * Writes A x into {@code y}; allocates nothing.
     *
     * @param x n values
     * @param y n values, overwritten; another array than {@code x}
     */
    public void multiply(double[] x, double[] y) {
        int n = size();
        check(x, n);
        check(y, n);
        int[] start = pattern.starts();
        int[] row = pattern.rows();
        Arrays.fill(y, 0);
        for (int j = 0; j < n; j++) {
            double xj = x[j];
            int at = start[j];
            double sum = value[at++] * xj;
            for (int end = start[j + 1]; at < end; at++) {
                int i = row[at];
                double v = value[at];
                y[i] += v * xj;
                sum += v * x[i];
            }
            y[j] += sum;
        }
    }

    /** Returns the largest sum of absolute values in a column, which is that in a row. */
    public double norm() {
        int[] start = pattern.starts();
        int[] row = pattern.rows();
        double[] sum = new double[size()];
        for (int j = 0; j < sum.length; j++) {
            sum[j] += Math.abs(value[start[j]]);
            for (int at = start[j] + 1; at < start[j + 1]; at++) {
                double v = Math.abs(value[at]);
                sum[j] += v;
                sum[row[at]] += v;
            }
        }
        double largest = 0;
        for (double s : sum) {
            largest = Math.max(largest, s);
        }
        return largest;
    }

    /** Values in the order of the pattern. Not to be changed. */
    double[] values() {
        return value;
    }

    static void check(double[] vector, int n) {
        if (vector.length != n) {
            throw new IllegalArgumentException(
                    "a vector has " + vector.length + " values; it must have " + n);
        }
    }
}
