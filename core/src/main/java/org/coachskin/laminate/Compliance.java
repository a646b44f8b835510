package org.coachskin.laminate;

/**
 * The inverse of A, B, D: e = a N + b M and k = b^T N + d M, with
 *
 * <pre>
 *   d = (D - B A^-1 B)^-1,   b = -A^-1 B d,   a = A^-1 + A^-1 B d B A^-1.
 * </pre>
 *
 * <p>a and d are symmetric; b is not, unlike B, and is kept column by column (Jones, <i>Mechanics
 * of Composite Materials</i>, 2nd ed. 1999, section 4.4; from memory).
 *
 * @param a strain by force, moments free [m/N]
 * @param bX strain of the reference surface by a unit of Mx [1/N]
 * @param bY strain of the reference surface by a unit of My [1/N]
 * @param bXy strain of the reference surface by a unit of Mxy [1/N]
 * @param d curvature by moment, in-plane forces free [1/(N m)]
 * @param reference z of the surface that the strains and the forces refer to, from mid-height [m]
 */
public record Compliance(Sym3 a, Triple bX, Triple bY, Triple bXy, Sym3 d, double reference) {

    private static final Triple X = new Triple(1, 0, 0);
    private static final Triple Y = new Triple(0, 1, 0);
    private static final Triple XY = new Triple(0, 0, 1);

    /** Returns the inverse of {@code stiffness}, about the same surface. */
    public static Compliance of(Stiffness stiffness) {
        Sym3 inverse = stiffness.a().inverse();
        Sym3 coupling = stiffness.b();
        Sym3 d = bendingWithForcesFree(stiffness).inverse();
        Triple bX = inverse.times(coupling.times(d.times(X))).times(-1);
        Triple bY = inverse.times(coupling.times(d.times(Y))).times(-1);
        Triple bXy = inverse.times(coupling.times(d.times(XY))).times(-1);
        // a = A^-1 (1 - B b^T); b^T N is the curvature by N.
        Triple aX = force(inverse, coupling, bX, bY, bXy, X);
        Triple aY = force(inverse, coupling, bX, bY, bXy, Y);
        Triple aXy = force(inverse, coupling, bX, bY, bXy, XY);
        return new Compliance(
                new Sym3(aX.x(), aY.x(), aY.y(), aXy.x(), aXy.y(), aXy.xy()),
                bX,
                bY,
                bXy,
                d,
                stiffness.reference());
    }

    /** Returns D* = D - B A^-1 B, the bending stiffness with in-plane forces free [N m]. */
    static Sym3 bendingWithForcesFree(Stiffness s) {
        Sym3 inverse = s.a().inverse();
        Triple x = s.d().times(X).plus(s.b().times(inverse.times(s.b().times(X))), -1);
        Triple y = s.d().times(Y).plus(s.b().times(inverse.times(s.b().times(Y))), -1);
        Triple xy = s.d().times(XY).plus(s.b().times(inverse.times(s.b().times(XY))), -1);
        return new Sym3(x.x(), y.x(), y.y(), xy.x(), xy.y(), xy.xy());
    }

    private static Triple force(
            Sym3 inverse, Sym3 coupling, Triple bX, Triple bY, Triple bXy, Triple n) {
        Triple curvature = new Triple(bX.dot(n), bY.dot(n), bXy.dot(n));
        return inverse.times(n.plus(coupling.times(curvature), -1));
    }

    /** Returns the strain of the reference surface under forces [N/m] and moments [N] per width. */
    public Triple membrane(Triple n, Triple m) {
        return a.times(n).plus(bX, m.x()).plus(bY, m.y()).plus(bXy, m.xy());
    }

    /** Returns the curvature [1/m] under forces [N/m] and moments [N] per width. */
    public Triple curvature(Triple n, Triple m) {
        return new Triple(bX.dot(n), bY.dot(n), bXy.dot(n)).plus(d.times(m), 1);
    }

    /**
     * Returns z, from mid-height, of the surface that does not stretch along x under Mx alone [m].
     */
    public double neutralAxisX() {
        return reference - bX.x() / d.m11();
    }

    /**
     * Returns z, from mid-height, of the surface that does not stretch along y under My alone [m].
     */
    public double neutralAxisY() {
        return reference - bY.y() / d.m22();
    }
}
