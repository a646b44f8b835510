package org.coachskin.harmonic;

import java.util.Arrays;
import org.coachskin.laminate.Laminate;

/**
 * How a theory lets the section move: displacement along x (or y) at height z is the sum of
 * N<sub>i</sub>(z) times its fields u<sub>i</sub> (or v<sub>i</sub>), the deflection the sum of
 * M<sub>k</sub>(z) times w<sub>k</sub>.
 *
 * <p>Heights are from mid-height of the stack. Skins do not change in thickness; the foam of the
 * full layered theory does, with displacements linear plus a quadratic and a cubic bubble.
 */
public abstract sealed class Kinematics {

    /** Number of fields along x; there are as many along y. */
    public final int inPlane;

    /** Number of deflection fields. */
    public final int deflections;

    private Kinematics(int inPlane, int deflections) {
        this.inPlane = inPlane;
        this.deflections = deflections;
    }

    /** Returns how {@code theory} lets {@code laminate} move. */
    public static Kinematics of(Theory theory, Laminate laminate) {
        if (theory == Theory.FIRST_ORDER || laminate.isBare()) {
            return new FirstOrder();
        }
        int first = laminate.innermostCore();
        int last = laminate.outermostCore();
        double foamBottom = laminate.bottom(first);
        double foamTop = laminate.bottom(last) + laminate.layers().get(last).thickness();
        double half = laminate.thickness() / 2;
        // A skin that is not there must not come out as thick as rounding.
        double outsideSkin = laminate.hasNoOutsideSkin() ? 0 : half - foamTop;
        double insideSkin = laminate.hasNoInsideSkin() ? 0 : foamBottom + half;
        return theory == Theory.LAYERED
                ? new Layered(foamBottom, foamTop)
                : new FullLayered(foamBottom, foamTop, outsideSkin, insideSkin);
    }

    /**
     * Writes N at height {@code z}.
     *
     * @param n overwritten; length {@link #inPlane}
     */
    public abstract void displacement(double z, double[] n);

    /**
     * Writes the derivative of N with respect to z, at height {@code z}, where that is the rotation
     * of the layer there.
     *
     * @param dn overwritten; length {@link #inPlane}
     */
    public abstract void rotation(double z, double[] dn);

    /**
     * Writes M at height {@code z}.
     *
     * @param m overwritten; length {@link #deflections}
     */
    public abstract void deflection(double z, double[] m);

    /**
     * Writes the derivative of M with respect to z at height {@code z}.
     *
     * @param dm overwritten; length {@link #deflections}
     */
    public abstract void stretch(double z, double[] dm);

    /**
     * Returns the share of deflection field {@code k} in the slope that rotation {@code i} makes a
     * shear strain with; 0 throughout where field {@code i} is no rotation.
     */
    abstract double turnsWith(int i, int k);

    /**
     * Writes the share of each deflection's slope that is left in the shear strain when rotations
     * are counted from the slope.
     *
     * @param dn as by {@link #rotation}
     * @param m as by {@link #deflection}
     * @param rest overwritten; length {@link #deflections}
     */
    public final void slopeLeft(double[] dn, double[] m, double[] rest) {
        System.arraycopy(m, 0, rest, 0, deflections);
        for (int i = 0; i < inPlane; i++) {
            for (int k = 0; k < deflections; k++) {
                rest[k] -= dn[i] * turnsWith(i, k);
            }
        }
    }

    /** Fields u, phi: u(z) = u + z phi. */
    static final class FirstOrder extends Kinematics {
        FirstOrder() {
            super(2, 1);
        }

        @Override
        double turnsWith(int i, int k) {
            return i > 0 ? 1 : 0;
        }

        @Override
        public void displacement(double z, double[] n) {
            n[0] = 1;
            n[1] = z;
        }

        @Override
        public void rotation(double z, double[] dn) {
            dn[0] = 0;
            dn[1] = 1;
        }

        @Override
        public void deflection(double z, double[] m) {
            m[0] = 1;
        }

        @Override
        public void stretch(double z, double[] dm) {
            dm[0] = 0;
        }
    }

    /**
     * Fields u, phi (skins), psi (foam): u(z) = u + f(z) psi + g(z) phi, as in LayeredStiffness.
     */
    static final class Layered extends Kinematics {
        private final double bottom;
        private final double top;
        private final double reference;

        Layered(double bottom, double top) {
            super(3, 1);
            this.bottom = bottom;
            this.top = top;
            this.reference = clamp(0);
        }

        @Override
        double turnsWith(int i, int k) {
            return i > 0 ? 1 : 0;
        }

        private double clamp(double z) {
            return Math.min(Math.max(z, bottom), top);
        }

        private boolean inFoam(double z) {
            return z > bottom && z < top;
        }

        @Override
        public void displacement(double z, double[] n) {
            double f = clamp(z) - reference;
            n[0] = 1;
            n[1] = z - f;
            n[2] = f;
        }

        @Override
        public void rotation(double z, double[] dn) {
            dn[0] = 0;
            dn[1] = inFoam(z) ? 0 : 1;
            dn[2] = inFoam(z) ? 1 : 0;
        }

        @Override
        public void deflection(double z, double[] m) {
            m[0] = 1;
        }

        @Override
        public void stretch(double z, double[] dm) {
            dm[0] = 0;
        }
    }

    /**
     * Fields, in this order: along x the outside face of the foam's surroundings (skin mid-plane
     * and rotation, or the free face alone), the same on the inside, the bubble; deflection of the
     * outside, how far it lies further out than that of the inside, bubble. The difference is a
     * field of its own because foam is so stiff through its thickness that the two deflections
     * agree to four digits or more, which the foam's stress would lack.
     */
    static final class FullLayered extends Kinematics {
        private final double bottom;
        private final double top;
        private final double outsideSkin;
        private final double insideSkin;
        private final int inside;
        private final int bubble;

        FullLayered(double bottom, double top, double outsideSkin, double insideSkin) {
            super((outsideSkin > 0 ? 2 : 1) + (insideSkin > 0 ? 2 : 1) + 2, 4);
            this.bottom = bottom;
            this.top = top;
            this.outsideSkin = outsideSkin;
            this.insideSkin = insideSkin;
            this.inside = outsideSkin > 0 ? 2 : 1;
            this.bubble = inPlane - 2;
        }

        @Override
        double turnsWith(int i, int k) {
            if (outsideSkin > 0 && i == 1) {
                return k == 0 ? 1 : 0;
            }
            boolean turns = insideSkin > 0 && i == inside + 1;
            return !turns || k > 1 ? 0 : k == 0 ? 1 : -1;
        }

        /** Returns -1 at the inside face of the foam, 1 at its outside face. */
        private double zeta(double z) {
            return (2 * z - top - bottom) / (top - bottom);
        }

        @Override
        public void displacement(double z, double[] n) {
            Arrays.fill(n, 0, inPlane, 0);
            double zeta = zeta(z);
            if (zeta > 1) {
                n[0] = 1;
                n[1] = z - top - outsideSkin / 2;
            } else if (zeta < -1) {
                n[inside] = 1;
                n[inside + 1] = z - bottom + insideSkin / 2;
            } else {
                spread(
                        n,
                        (1 + zeta) / 2,
                        (1 - zeta) / 2,
                        1 - zeta * zeta,
                        zeta * (1 - zeta * zeta));
            }
        }

        @Override
        public void rotation(double z, double[] dn) {
            Arrays.fill(dn, 0, inPlane, 0);
            double zeta = zeta(z);
            double slope = 1 / (top - bottom);
            if (zeta > 1) {
                dn[1] = 1;
            } else if (zeta < -1) {
                dn[inside + 1] = 1;
            } else {
                spread(dn, slope, -slope, -4 * zeta * slope, (2 - 6 * zeta * zeta) * slope);
            }
        }

        private void spread(
                double[] n, double outer, double inner, double quadratic, double cubic) {
            n[0] = outer;
            if (outsideSkin > 0) {
                n[1] = -outer * outsideSkin / 2;
            }
            n[inside] = inner;
            if (insideSkin > 0) {
                n[inside + 1] = inner * insideSkin / 2;
            }
            n[bubble] = quadratic;
            n[bubble + 1] = cubic;
        }

        @Override
        public void deflection(double z, double[] m) {
            double zeta = Math.min(Math.max(zeta(z), -1), 1);
            m[0] = 1;
            m[1] = (zeta - 1) / 2;
            m[2] = 1 - zeta * zeta;
            m[3] = zeta * (1 - zeta * zeta);
        }

        @Override
        public void stretch(double z, double[] dm) {
            double zeta = zeta(z);
            boolean foam = zeta >= -1 && zeta <= 1;
            double slope = foam ? 1 / (top - bottom) : 0;
            dm[0] = 0;
            dm[1] = slope;
            dm[2] = foam ? -4 * zeta * slope : 0;
            dm[3] = foam ? (2 - 6 * zeta * zeta) * slope : 0;
        }
    }
}
