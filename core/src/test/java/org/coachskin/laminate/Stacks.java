package org.coachskin.laminate;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.coachskin.Source;
import org.coachskin.material.Foam;
import org.coachskin.material.Strength;

/** Plies, foams and stacks for the tests of this package. */
final class Stacks {

    private static final Strength ANY =
            new Strength(1e6, Strength.Level.MEAN, Strength.Event.BREAKING, Source.YOURS);
    private static final PlyStrength STRENGTH = new PlyStrength(ANY, ANY, ANY, ANY, ANY);

    private Stacks() {}

    static Ply ply(
            double e1, double e2, double nu12, double g12, double g13, double g23, double t) {
        return new Ply(
                "ply", e1, e2, nu12, g12, g13, g23, t, 1700, 14e-6, 22e-6, STRENGTH, Source.YOURS);
    }

    /** A woven ply like the one in the theory's table. */
    static Ply woven(double t) {
        return ply(14.5e9, 14.5e9, 0.13, 3.1e9, 3.0e9, 3.0e9, t);
    }

    /** A ply far from equal in its two directions. */
    static Ply unequal(double t) {
        return ply(30e9, 9e9, 0.25, 4e9, 3.5e9, 2.5e9, t);
    }

    static Ply isotropic(double e, double nu, double t) {
        double g = e / (2 * (1 + nu));
        return ply(e, e, nu, g, g, g, t);
    }

    static Layer.Laid laid(Ply ply, double degrees) {
        return new Layer.Laid(ply, StrictMath.toRadians(degrees));
    }

    static Layer.Core foam(double e, double g, double t) {
        Foam foam =
                new Foam(
                        "foam",
                        Foam.Kind.OTHER,
                        60,
                        e,
                        e,
                        g,
                        0.3,
                        ANY,
                        ANY,
                        ANY,
                        40e-6,
                        0.08,
                        0.09,
                        Source.YOURS);
        return new Layer.Core(foam, t);
    }

    /** The stack with every laid ply turned by {@code angle} [rad]. */
    static Laminate turned(Laminate laminate, double angle) {
        List<Layer> layers = new ArrayList<>();
        for (Layer layer : laminate.layers()) {
            layers.add(
                    layer instanceof Layer.Laid laid
                            ? new Layer.Laid(laid.ply(), laid.angle() + angle)
                            : layer);
        }
        return new Laminate(layers);
    }

    /** The stack with every layer cut into two of half the thickness. */
    static Laminate split(Laminate laminate) {
        List<Layer> layers = new ArrayList<>();
        for (Layer layer : laminate.layers()) {
            double t = layer.thickness() / 2;
            Layer half =
                    layer instanceof Layer.Laid laid
                            ? new Layer.Laid(laid.ply().withThickness(t), laid.angle())
                            : new Layer.Core(((Layer.Core) layer).foam(), t);
            layers.add(half);
            layers.add(half);
        }
        return new Laminate(layers);
    }

    /** One to five laid plies of either sort at any angle. */
    static Arbitrary<List<Layer>> skins(int atLeast) {
        Arbitrary<Layer> one =
                Combinators.combine(
                                Arbitraries.doubles().between(0.1, 1.5).map(mm -> mm / 1000),
                                Arbitraries.doubles().between(-90, 90),
                                Arbitraries.of(true, false))
                        .as((t, angle, even) -> laid(even ? woven(t) : unequal(t), angle));
        return one.list().ofMinSize(atLeast).ofMaxSize(5);
    }

    /** Any stack: bare, one skin only, two unlike skins. */
    static Arbitrary<Laminate> any() {
        Arbitrary<Laminate> bare = skins(1).map(Laminate::new);
        Arbitrary<Laminate> sandwich =
                Combinators.combine(
                                skins(0),
                                Arbitraries.doubles().between(3, 50).map(mm -> mm / 1000),
                                Arbitraries.doubles().between(3e6, 60e6),
                                skins(1),
                                Arbitraries.of(true, false))
                        .as(
                                (inside, c, e, outside, over) -> {
                                    List<Layer> layers = new ArrayList<>(over ? outside : inside);
                                    layers.add(foam(e, e / 2.7, c));
                                    layers.addAll(over ? inside : outside);
                                    return new Laminate(layers);
                                });
        return Arbitraries.oneOf(bare, sandwich);
    }

    /** Fails unless all entries agree within 1e-9 of the largest. */
    static void assertClose(Sym3 expected, Sym3 actual) {
        double[] e = new double[6];
        double[] a = new double[6];
        expected.copyTo(e, 0);
        actual.copyTo(a, 0);
        assertClose(e, a, 0);
    }

    /** Fails unless all entries agree within 1e-9 of the larger of {@code scale} and theirs. */
    static void assertClose(Sym3 expected, Sym3 actual, double scale) {
        double[] e = new double[6];
        double[] a = new double[6];
        expected.copyTo(e, 0);
        actual.copyTo(a, 0);
        assertClose(e, a, scale);
    }

    /** Fails unless all entries agree within 1e-9 of the largest. */
    static void assertClose(Sym2 expected, Sym2 actual) {
        double[] e = new double[3];
        double[] a = new double[3];
        expected.copyTo(e, 0);
        actual.copyTo(a, 0);
        assertClose(e, a, 0);
    }

    private static void assertClose(double[] expected, double[] actual, double scale) {
        double largest = scale;
        for (double value : expected) {
            largest = Math.max(largest, Math.abs(value));
        }
        assertArrayEquals(expected, actual, 1e-9 * largest);
    }
}
