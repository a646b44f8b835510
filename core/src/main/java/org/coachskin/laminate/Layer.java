package org.coachskin.laminate;

import org.coachskin.Require;
import org.coachskin.material.Foam;

/**
 * One layer of a stack: cloth at an angle, the seal coat on the foam, or the foam. There is no
 * other kind.
 */
public sealed interface Layer {

    /** Returns the thickness [m]. */
    double thickness();

    /** Returns the density [kg/m^3]. */
    double density();

    /** Returns the plane-stress stiffness in panel axes; entries in Pa. */
    Sym3 stiffness();

    /** Returns the transverse shear stiffness in panel axes; entries in Pa. */
    Sym2 shearStiffness();

    /** Returns the free thermal strain per kelvin in panel axes [1/K]. */
    Triple expansion();

    /** Returns whether this layer belongs to a skin; a seal coat does. */
    default boolean inSkin() {
        return !(this instanceof Core);
    }

    /**
     * A cured ply, laid at an angle.
     *
     * @param ply the ply in its own axes
     * @param angle from x toward y [rad]
     */
    record Laid(Ply ply, double angle) implements Layer {
        /** Checks the angle. */
        public Laid {
            Require.finite("angle of " + ply.name(), angle, "rad");
        }

        @Override
        public double thickness() {
            return ply.thickness();
        }

        @Override
        public double density() {
            return ply.density();
        }

        @Override
        public Sym3 stiffness() {
            return ply.stiffness(angle);
        }

        @Override
        public Sym2 shearStiffness() {
            return ply.shearStiffness(angle);
        }

        @Override
        public Triple expansion() {
            double c = StrictMath.cos(angle);
            double s = StrictMath.sin(angle);
            double difference = ply.alpha1() - ply.alpha2();
            return new Triple(
                    ply.alpha1() * c * c + ply.alpha2() * s * s,
                    ply.alpha1() * s * s + ply.alpha2() * c * c,
                    2 * difference * c * s);
        }
    }

    /**
     * The resin coat that seals the cut foam; it belongs to the skin that is laid on it.
     *
     * @param resin the coat as a ply with equal constants in every direction
     */
    record SealCoat(Ply resin) implements Layer {
        @Override
        public double thickness() {
            return resin.thickness();
        }

        @Override
        public double density() {
            return resin.density();
        }

        @Override
        public Sym3 stiffness() {
            return resin.stiffness(0);
        }

        @Override
        public Sym2 shearStiffness() {
            return resin.shearStiffness(0);
        }

        @Override
        public Triple expansion() {
            return new Triple(resin.alpha1(), resin.alpha2(), 0);
        }
    }

    /**
     * The foam.
     *
     * @param foam the foam
     * @param thickness [m]
     */
    record Core(Foam foam, double thickness) implements Layer {
        /** Checks that the thickness is above zero. */
        public Core {
            Require.positive("foam thickness", thickness, "m");
        }

        @Override
        public double density() {
            return foam.density();
        }

        /**
         * Plane stress, with nu as contraction in the plane and the in-plane shear modulus equal to
         * E/(2(1+nu)).
         */
        @Override
        public Sym3 stiffness() {
            double q = foam.eInPlane() / (1 - foam.nu() * foam.nu());
            return new Sym3(q, foam.nu() * q, q, 0, 0, foam.eInPlane() / (2 * (1 + foam.nu())));
        }

        @Override
        public Sym2 shearStiffness() {
            return new Sym2(foam.g(), 0, foam.g());
        }

        @Override
        public Triple expansion() {
            return new Triple(foam.expansion(), foam.expansion(), 0);
        }
    }
}
