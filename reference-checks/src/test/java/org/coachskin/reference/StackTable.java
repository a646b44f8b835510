package org.coachskin.reference;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.Source;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Ply;
import org.coachskin.laminate.PlyStrength;
import org.coachskin.laminate.Sym3;
import org.coachskin.material.Foam;
import org.coachskin.material.Strength;

/** A published table about stacks; our values are worked out when it is made. */
abstract class StackTable extends WorkedOutTable {

    StackTable(String work) {
        super("Laminate", "laminate/" + work + ".csv");
    }

    /** Puts the six entries of {@code m} times {@code scale} under {@code name} and their index. */
    final void put(String name, Sym3 m, double scale) {
        put(name + "11", m.m11() * scale);
        put(name + "12", m.m12() * scale);
        put(name + "22", m.m22() * scale);
        put(name + "16", m.m16() * scale);
        put(name + "26", m.m26() * scale);
        put(name + "66", m.m66() * scale);
    }

    /** Returns a ply in whatever consistent units the table is printed in. */
    static Ply ply(double e1, double e2, double nu12, double g12, double thickness) {
        return ply(e1, e2, nu12, g12, g12, g12, thickness, 0, 0);
    }

    /** Returns a ply in whatever consistent units the table is printed in. */
    static Ply ply(
            double e1,
            double e2,
            double nu12,
            double g12,
            double g13,
            double g23,
            double thickness,
            double alpha1,
            double alpha2) {
        Strength any = new Strength(1, Strength.Level.MEAN, Strength.Event.BREAKING, Source.YOURS);
        PlyStrength strength = new PlyStrength(any, any, any, any, any);
        return new Ply(
                "ply",
                e1,
                e2,
                nu12,
                g12,
                g13,
                g23,
                thickness,
                1,
                alpha1,
                alpha2,
                strength,
                Source.YOURS);
    }

    /** Returns a foam that only shears: its modulus in plane is {@code e}. */
    static Layer foam(double e, double g, double thickness) {
        Strength any = new Strength(1, Strength.Level.MEAN, Strength.Event.BREAKING, Source.YOURS);
        return new Layer.Core(
                new Foam(
                        "foam",
                        Foam.Kind.OTHER,
                        1,
                        e,
                        e,
                        g,
                        0,
                        any,
                        any,
                        any,
                        0,
                        0,
                        0,
                        Source.YOURS),
                thickness);
    }

    /** Returns the stack of one ply at these angles [deg], first one lowest. */
    static Laminate stack(Ply ply, double... degrees) {
        List<Layer> layers = new ArrayList<>();
        for (double angle : degrees) {
            layers.add(new Layer.Laid(ply, StrictMath.toRadians(angle)));
        }
        return new Laminate(layers);
    }
}
