package org.coachskin.laminate;

/**
 * A column of plane stress in panel axes: strains, curvatures, stresses, forces or moments per
 * width.
 *
 * @param x along x
 * @param y along y
 * @param xy in shear; an engineering value where it is a strain or a curvature
 */
public record Triple(double x, double y, double xy) {

    /** All zeros. */
    public static final Triple ZERO = new Triple(0, 0, 0);

    /** Returns this column plus {@code factor} times {@code other}. */
    public Triple plus(Triple other, double factor) {
        return new Triple(x + factor * other.x, y + factor * other.y, xy + factor * other.xy);
    }

    /** Returns this column times {@code factor}. */
    public Triple times(double factor) {
        return new Triple(factor * x, factor * y, factor * xy);
    }

    /** Returns the product with {@code other}, entry by entry and summed. */
    double dot(Triple other) {
        return x * other.x + y * other.y + xy * other.xy;
    }
}
