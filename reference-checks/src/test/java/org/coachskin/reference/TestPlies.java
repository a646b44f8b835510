package org.coachskin.reference;

import org.coachskin.Source;
import org.coachskin.Standing;
import org.coachskin.laminate.Ply;
import org.coachskin.laminate.PlyStrength;
import org.coachskin.material.Foam;
import org.coachskin.material.Strength;

/** The ply and the foams of the sweep against 3-D elasticity, as plates and as solids. */
final class TestPlies {

    private static final Source TYPICAL =
            new Source("typical of hand lay-up", "", Standing.COMMON_PRACTICE);

    private static final double E = 14.5e9;
    private static final double NU = 0.13;
    private static final double G = 3.1e9;
    private static final double G3 = 3.0e9;
    private static final double THICKNESS = 0.414e-3;

    private TestPlies() {}

    static Ply ply() {
        Strength s = strength(150e6);
        return new Ply(
                "10 oz cloth, half glass",
                E,
                E,
                NU,
                G,
                G3,
                G3,
                THICKNESS,
                1635,
                16e-6,
                16e-6,
                new PlyStrength(s, s, s, s, s),
                TYPICAL);
    }

    private static Strength strength(double value) {
        return new Strength(value, Strength.Level.MEAN, Strength.Event.BREAKING, TYPICAL);
    }

    static Foam foam(double e, double g, double nu) {
        return new Foam(
                "foam",
                Foam.Kind.POLYURETHANE,
                64,
                e,
                e,
                g,
                nu,
                strength(0.3e6),
                strength(0.4e6),
                strength(0.4e6),
                60e-6,
                0.08,
                0.09,
                TYPICAL);
    }

    /**
     * The ply as a solid: through the thickness as the resin-rich direction, which a thin ply does
     * not feel.
     */
    static Elasticity3d.Solid solid(Ply ply, int plies) {
        return Elasticity3d.Solid.of(
                plies * ply.thickness(),
                ply.e1(),
                ply.e2(),
                7e9,
                ply.nu12(),
                0.13,
                0.13,
                ply.g12(),
                ply.g13(),
                ply.g23());
    }

    static Elasticity3d.Solid solid(double e, double g, double nu, double thickness) {
        return Elasticity3d.Solid.of(thickness, e, e, e, nu, nu, nu, e / (2 * (1 + nu)), g, g);
    }
}
