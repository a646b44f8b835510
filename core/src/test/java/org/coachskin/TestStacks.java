package org.coachskin;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Ply;
import org.coachskin.laminate.PlyStrength;
import org.coachskin.material.Foam;
import org.coachskin.material.Strength;

/** Stacks that many tests share: hand-laid plies of 10 oz cloth on rigid urethane. */
public final class TestStacks {

    private static final Source TRADE =
            new Source("typical of hand lay-up", "", Standing.COMMON_PRACTICE);

    private TestStacks() {}

    public static Strength strength(double value) {
        return new Strength(value, Strength.Level.MEAN, Strength.Event.BREAKING, TRADE);
    }

    /** A cured ply of 10 oz cloth at half glass by weight. */
    public static Ply ply() {
        return ply(14.5e9, 14.5e9, 0.13, 3.1e9, 3.0e9, 0.414e-3);
    }

    public static Ply ply(
            double e1, double e2, double nu12, double g12, double g13, double thickness) {
        PlyStrength strength =
                new PlyStrength(
                        strength(190e6),
                        strength(147e6),
                        strength(190e6),
                        strength(147e6),
                        strength(78e6));
        return new Ply(
                "test ply",
                e1,
                e2,
                nu12,
                g12,
                g13,
                g13,
                thickness,
                1635,
                16e-6,
                16e-6,
                strength,
                TRADE);
    }

    /** A ply whose warp is three times as stiff as its weft. */
    public static Ply unequal() {
        return ply(30e9, 9e9, 0.25, 4e9, 3.5e9, 0.5e-3);
    }

    public static Ply isotropic(double e, double nu, double thickness) {
        double g = e / (2 * (1 + nu));
        return ply(e, e, nu, g, g, thickness);
    }

    public static Foam foam(double e, double g) {
        return foam(e, g, 0.3);
    }

    public static Foam foam(double e, double g, double nu) {
        return new Foam(
                "test foam",
                Foam.Kind.POLYURETHANE,
                64,
                e,
                e,
                g,
                nu,
                strength(0.32e6),
                strength(0.45e6),
                strength(0.48e6),
                60e-6,
                0.08,
                0.09,
                TRADE);
    }

    /** An unequal ply inside, 10 mm of foam, two usual plies outside. */
    public static Laminate uneven() {
        Layer.Laid usual = new Layer.Laid(ply(), 0);
        return Laminate.of(
                new Layer.Laid(unequal(), 0),
                new Layer.Core(foam(12e6, 4.2e6), 0.01),
                usual,
                usual);
    }

    /** {@code inside} plies, foam, {@code outside} plies. */
    public static Laminate sandwich(int outside, double thickness, int inside, double e, double g) {
        List<Layer> layers = new ArrayList<>();
        for (int i = 0; i < inside; i++) {
            layers.add(new Layer.Laid(ply(), 0));
        }
        layers.add(
                new Layer.Core(
                        foam(e, g, Math.min(0.45, Math.max(0, e / (2 * g) - 1))), thickness));
        for (int i = 0; i < outside; i++) {
            layers.add(new Layer.Laid(ply(), 0));
        }
        return new Laminate(layers);
    }
}
