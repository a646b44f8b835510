package org.coachskin.failure;

import org.apache.commons.math3.complex.Complex;
import org.coachskin.Require;
import org.coachskin.laminate.Sym3;
import org.coachskin.laminate.Triple;
import org.ejml.data.Complex_F64;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/**
 * An elliptic hole, its axes along x and y, in an endless sheet under forces in its plane: closed
 * form by complex potentials (Lekhnitskii, <i>Anisotropic Plates</i>, 1968, sections 10 and 38;
 * from memory).
 *
 * <p>With S the compliance of the sheet, &mu;<sub>1</sub> and &mu;<sub>2</sub> are the roots above
 * the real axis of
 *
 * <pre>
 *   S11 m^4 - 2 S16 m^3 + (2 S12 + S66) m^2 - 2 S26 m + S22 = 0,
 * </pre>
 *
 * <p>z<sub>k</sub> = x + &mu;<sub>k</sub> y, and what the hole adds are two potentials in
 * 1/&zeta;<sub>k</sub>, where z<sub>k</sub> over the rim is a circle &zeta;<sub>k</sub> of radius
 * 1. The textbook divides by &mu;<sub>1</sub> - &mu;<sub>2</sub>, which is nought in an isotropic
 * sheet; here that quotient is a divided difference worked out by the rules of products and roots,
 * so equal roots are no special case.
 *
 * <p><b>Limits.</b> One sheet in plane stress, free rim, no edge and no other hole near. In a bent
 * sandwich the foam ties the skins and the concentration is less. Immutable.
 */
public final class EllipticHole {

    /** Places round the rim between which the largest stress is looked for. */
    private static final int PLACES = 180;

    private static final int HALVINGS = 40;

    private final double halfX;
    private final double halfY;
    private final Complex mu1;
    private final Complex mu2;

    /**
     * Creates the hole.
     *
     * @param stiffness of the sheet, force per width from strain [N/m]; a ply's [Pa] will do, all
     *     that counts is ratios
     * @param halfX half axis along x [m]
     * @param halfY half axis along y [m]
     */
    public EllipticHole(Sym3 stiffness, double halfX, double halfY) {
        this.halfX = Require.positive("half axis along x", halfX, "m");
        this.halfY = Require.positive("half axis along y", halfY, "m");
        Sym3 s = stiffness.inverse();
        // Sum and product of the two roots are exact to rounding even where they coincide.
        Complex[] pair = above(s);
        Complex half = pair[0].add(pair[1]).multiply(0.5);
        Complex split = half.multiply(half).subtract(pair[0].multiply(pair[1])).sqrt();
        mu1 = half.add(split);
        mu2 = half.subtract(split);
    }

    /** Returns the two roots above the real axis, as eigenvalues of the companion matrix. */
    private static Complex[] above(Sym3 s) {
        double[] c = {
            s.m22() / s.m11(),
            -2 * s.m26() / s.m11(),
            (2 * s.m12() + s.m66()) / s.m11(),
            -2 * s.m16() / s.m11()
        };
        DMatrixRMaj companion = new DMatrixRMaj(4, 4);
        for (int i = 0; i < 4; i++) {
            companion.set(0, i, -c[3 - i]);
            if (i > 0) {
                companion.set(i, i - 1, 1);
            }
        }
        EigenDecomposition_F64<DMatrixRMaj> roots = DecompositionFactory_DDRM.eig(4, false, false);
        if (!roots.decompose(companion)) {
            throw new ArithmeticException("no roots for a sheet of compliance " + s);
        }
        Complex[] found = new Complex[2];
        int count = 0;
        for (int i = 0; i < 4; i++) {
            Complex_F64 root = roots.getEigenvalue(i);
            if (root.getImaginary() > 0 && count < 2) {
                found[count++] = new Complex(root.getReal(), root.getImaginary());
            }
        }
        if (count < 2) {
            throw new ArithmeticException("no sheet has a compliance of " + s);
        }
        return found;
    }

    /**
     * Returns the force per width at a place in the sheet.
     *
     * @param x y from the centre of the hole [m]
     * @param far force per width far away; whatever its unit, the answer has the same
     * @throws IllegalArgumentException when the place lies in the hole
     */
    public Triple at(double x, double y, Triple far) {
        double across = x / halfX;
        double along = y / halfY;
        if (!(across * across + along * along >= 1 - 1e-9)) {
            throw new IllegalArgumentException(x + ", " + y + " m lies in the hole");
        }
        Complex z1 = mu1.multiply(y).add(x);
        Complex z2 = mu2.multiply(y).add(x);
        Complex s1 = root(z1, mu1);
        Complex s2 = root(z2, mu2);
        Complex sum = mu1.add(mu2);
        Complex product = mu1.multiply(mu2);
        // g = -n / (s (s + z)), n = halfX - i mu halfY, and its divided difference d.
        Complex n1 = mu1.multiply(new Complex(0, -halfY)).add(halfX);
        Complex n2 = mu2.multiply(new Complex(0, -halfY)).add(halfX);
        Complex h1 = s1.multiply(s1.add(z1));
        Complex h2 = s2.multiply(s2.add(z2));
        Complex ds = sum.multiply(y * y - halfY * halfY).add(2 * x * y).divide(s1.add(s2));
        Complex dh = ds.multiply(s1.add(z1)).add(s2.multiply(ds.add(y)));
        Complex g1 = n1.divide(h1).negate();
        Complex dn = new Complex(0, halfY);
        Complex d = dn.divide(h1).add(n2.multiply(dh).divide(h1.multiply(h2)));
        // Potentials that take the traction of the far forces off the rim.
        Complex a = new Complex(-halfX * far.y() / 2, halfY * far.xy() / 2);
        Complex b = new Complex(halfX * far.xy() / 2, -halfY * far.x() / 2);
        Complex mixed = g1.add(mu2.multiply(d));
        Complex nx =
                b.multiply(sum.multiply(g1).add(mu2.multiply(mu2).multiply(d)))
                        .subtract(a.multiply(product).multiply(mixed));
        Complex ny = b.multiply(d).add(a.multiply(g1.subtract(mu1.multiply(d))));
        Complex nxy = b.multiply(mixed).subtract(a.multiply(product).multiply(d));
        return far.plus(new Triple(2 * nx.getReal(), 2 * ny.getReal(), -2 * nxy.getReal()), 1);
    }

    /** Returns the root of z^2 - halfX^2 - mu^2 halfY^2 that goes with z. */
    private Complex root(Complex z, Complex mu) {
        Complex s =
                z.multiply(z)
                        .subtract(mu.multiply(mu).multiply(halfY * halfY))
                        .subtract(halfX * halfX)
                        .sqrt();
        boolean along = z.getReal() * s.getReal() + z.getImaginary() * s.getImaginary() >= 0;
        return along ? s : s.negate();
    }

    /**
     * Returns the force per width along the rim, tension positive.
     *
     * @param turn place on the rim: x is halfX cos, y is halfY sin of it [rad]
     */
    public double hoop(double turn, Triple far) {
        double c = StrictMath.cos(turn);
        double s = StrictMath.sin(turn);
        Triple n = at(halfX * c, halfY * s, far);
        double tx = -halfX * s;
        double ty = halfY * c;
        return (n.x() * tx * tx + n.y() * ty * ty + 2 * n.xy() * tx * ty) / (tx * tx + ty * ty);
    }

    /**
     * Returns the force per width along the rim where it is largest, tension or compression, with
     * its sign.
     */
    public double largestHoop(Triple far) {
        double step = 2 * Math.PI / PLACES;
        int best = 0;
        for (int i = 1; i < PLACES; i++) {
            if (Math.abs(hoop(i * step, far)) > Math.abs(hoop(best * step, far))) {
                best = i;
            }
        }
        double middle = best * step;
        for (int i = 0; i < HALVINGS; i++) {
            step /= 2;
            for (double turn : new double[] {middle - step, middle + step}) {
                if (Math.abs(hoop(turn, far)) > Math.abs(hoop(middle, far))) {
                    middle = turn;
                }
            }
        }
        return hoop(middle, far);
    }
}
