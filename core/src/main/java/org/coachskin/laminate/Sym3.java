package org.coachskin.laminate;

/**
 * A symmetric 3 x 3 matrix in the order x, y, xy of plane stress.
 *
 * @param m11 row 1, column 1
 * @param m12 row 1, column 2
 * @param m22 row 2, column 2
 * @param m16 row 1, column 3
 * @param m26 row 2, column 3
 * @param m66 row 3, column 3
 */
public record Sym3(double m11, double m12, double m22, double m16, double m26, double m66) {

    /** All zeros. */
    public static final Sym3 ZERO = new Sym3(0, 0, 0, 0, 0, 0);

    /** Reads six entries in the order of the components, from {@code start} on. */
    static Sym3 from(double[] values, int start) {
        return new Sym3(
                values[start],
                values[start + 1],
                values[start + 2],
                values[start + 3],
                values[start + 4],
                values[start + 5]);
    }

    /** Writes the six entries in the order of the components, from {@code start} on. */
    void copyTo(double[] values, int start) {
        values[start] = m11;
        values[start + 1] = m12;
        values[start + 2] = m22;
        values[start + 3] = m16;
        values[start + 4] = m26;
        values[start + 5] = m66;
    }

    /** Returns this matrix plus {@code factor} times {@code other}. */
    public Sym3 plus(Sym3 other, double factor) {
        return new Sym3(
                m11 + factor * other.m11,
                m12 + factor * other.m12,
                m22 + factor * other.m22,
                m16 + factor * other.m16,
                m26 + factor * other.m26,
                m66 + factor * other.m66);
    }

    /** Returns this matrix times {@code factor}. */
    public Sym3 times(double factor) {
        return ZERO.plus(this, factor);
    }

    /** Returns this matrix times the column (x, y, xy). */
    public Triple times(Triple e) {
        return new Triple(
                m11 * e.x() + m12 * e.y() + m16 * e.xy(),
                m12 * e.x() + m22 * e.y() + m26 * e.xy(),
                m16 * e.x() + m26 * e.y() + m66 * e.xy());
    }

    /** Returns the determinant. */
    public double determinant() {
        return m11 * (m22 * m66 - m26 * m26)
                - m12 * (m12 * m66 - m26 * m16)
                + m16 * (m12 * m26 - m22 * m16);
    }

    /**
     * Returns the inverse.
     *
     * @throws ArithmeticException when the matrix is singular
     */
    public Sym3 inverse() {
        double det = determinant();
        if (det == 0 || !Double.isFinite(det)) {
            throw new ArithmeticException("a matrix without inverse: determinant " + det);
        }
        return new Sym3(
                (m22 * m66 - m26 * m26) / det,
                (m16 * m26 - m12 * m66) / det,
                (m11 * m66 - m16 * m16) / det,
                (m12 * m26 - m16 * m22) / det,
                (m12 * m16 - m11 * m26) / det,
                (m11 * m22 - m12 * m12) / det);
    }
}
