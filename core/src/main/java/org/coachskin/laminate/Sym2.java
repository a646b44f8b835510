package org.coachskin.laminate;

/**
 * A symmetric 2 x 2 matrix in the order xz, yz of transverse shear.
 *
 * @param m11 row 1, column 1
 * @param m12 row 1, column 2
 * @param m22 row 2, column 2
 */
public record Sym2(double m11, double m12, double m22) {

    /** All zeros. */
    public static final Sym2 ZERO = new Sym2(0, 0, 0);

    /** Reads three entries in the order of the components, from {@code start} on. */
    static Sym2 from(double[] values, int start) {
        return new Sym2(values[start], values[start + 1], values[start + 2]);
    }

    /** Writes the three entries in the order of the components, from {@code start} on. */
    void copyTo(double[] values, int start) {
        values[start] = m11;
        values[start + 1] = m12;
        values[start + 2] = m22;
    }

    /** Returns this matrix plus {@code factor} times {@code other}. */
    public Sym2 plus(Sym2 other, double factor) {
        return new Sym2(
                m11 + factor * other.m11, m12 + factor * other.m12, m22 + factor * other.m22);
    }

    /** Returns this matrix times the column (xz, yz), a force per width when both are such. */
    TransverseShear times(double xz, double yz) {
        return new TransverseShear(m11 * xz + m12 * yz, m12 * xz + m22 * yz);
    }

    /**
     * Returns the inverse.
     *
     * @throws ArithmeticException when the matrix is singular
     */
    public Sym2 inverse() {
        double det = m11 * m22 - m12 * m12;
        if (det == 0 || !Double.isFinite(det)) {
            throw new ArithmeticException("a matrix without inverse: determinant " + det);
        }
        return new Sym2(m22 / det, -m12 / det, m11 / det);
    }
}
