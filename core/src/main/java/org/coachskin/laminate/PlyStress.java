package org.coachskin.laminate;

/**
 * Stress in a ply, in its own axes [Pa].
 *
 * @param s1 along 1 (the warp), tension positive
 * @param s2 along 2 (the weft), tension positive
 * @param t12 shear in the plane
 */
public record PlyStress(double s1, double s2, double t12) {

    /** No stress. */
    public static final PlyStress ZERO = new PlyStress(0, 0, 0);

    /**
     * Returns the stress of {@code ply} turned by {@code angle}, strained by {@code strain} in
     * panel axes.
     */
    public static PlyStress of(Ply ply, double angle, Triple strain) {
        double c = StrictMath.cos(angle);
        double s = StrictMath.sin(angle);
        double e1 = strain.x() * c * c + strain.y() * s * s + strain.xy() * c * s;
        double e2 = strain.x() * s * s + strain.y() * c * c - strain.xy() * c * s;
        double g12 = 2 * (strain.y() - strain.x()) * c * s + strain.xy() * (c * c - s * s);
        Triple stress = ply.stiffness(0).times(new Triple(e1, e2, g12));
        return new PlyStress(stress.x(), stress.y(), stress.xy());
    }

    /** Returns this stress plus {@code factor} times {@code other}. */
    public PlyStress plus(PlyStress other, double factor) {
        return new PlyStress(
                s1 + factor * other.s1, s2 + factor * other.s2, t12 + factor * other.t12);
    }
}
