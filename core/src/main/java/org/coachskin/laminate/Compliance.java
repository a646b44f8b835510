package org.coachskin.laminate;

/**
 * The inverse of A, B, D: strain and curvature from forces and moments.
 *
 * <p>e = a N + b M and k = b^T N + d M; b is not symmetric and is kept as -A^-1 B d.
 *
 * @param inverseA inverse of A [m/N]
 * @param b coupling of the stack [N]
 * @param d inverse of D* = D - B A^-1 B, the bending compliance with membrane forces free [1/(N m)]
 */
public record Compliance(Sym3 inverseA, Sym3 b, Sym3 d) {

    /** Returns the compliance of a stack. */
    public static Compliance of(Stiffness s) {
        Sym3 inverse = s.a().inverse();
        Triple[] column = new Triple[3];
        Triple[] unit = {new Triple(1, 0, 0), new Triple(0, 1, 0), new Triple(0, 0, 1)};
        for (int j = 0; j < 3; j++) {
            Triple through = inverse.times(s.b().times(unit[j]));
            column[j] = s.d().times(unit[j]).plus(s.b().times(through), -1);
        }
        Sym3 reduced =
                new Sym3(
                        column[0].x(),
                        column[1].x(),
                        column[1].y(),
                        column[2].x(),
                        column[2].y(),
                        column[2].xy());
        return new Compliance(inverse, s.b(), reduced.inverse());
    }

    /** Returns the curvature [1/m] under forces [N/m] and moments [N] per width. */
    public Triple curvature(Triple n, Triple m) {
        return d.times(m.plus(b.times(inverseA.times(n)), -1));
    }

    /** Returns the strain of the reference surface under forces [N/m] and moments [N] per width. */
    public Triple membrane(Triple n, Triple m) {
        return inverseA.times(n.plus(b.times(curvature(n, m)), -1));
    }

    /**
     * Returns Young's modulus times thickness along x with all else free [N/m]: 1/a11 of the whole
     * inverse.
     */
    public double stretchStiffnessX() {
        return 1 / membrane(new Triple(1, 0, 0), Triple.ZERO).x();
    }

    /** Returns the bending stiffness per width about y with all else free [N m]: 1/d11. */
    public double bendStiffnessX() {
        return 1 / d.m11();
    }

    /** Returns the bending stiffness per width about x with all else free [N m]: 1/d22. */
    public double bendStiffnessY() {
        return 1 / d.m22();
    }
}
