package org.coachskin.reference;

import java.util.function.ToDoubleFunction;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Ply;
import org.coachskin.laminate.Stiffness;
import org.coachskin.laminate.Sym2;

class WhitneyShearTest extends StackTable {

    private static final Ply PLY = ply(25, 1, 0.25, 0.5, 0.5, 0.2, 1, 0, 0);

    WhitneyShearTest() {
        super("whitney-1973");
        put("one material", factor(Sym2::m11, 0, 0));
        put("[0/90] x", factor(Sym2::m11, 0, 90));
        put("[0/90/90/0] x", factor(Sym2::m11, 0, 90, 90, 0));
        put("[0/90/90/0] y", factor(Sym2::m22, 0, 90, 90, 0));
    }

    private static double factor(ToDoubleFunction<Sym2> entry, double... degrees) {
        Laminate laminate = stack(PLY, degrees);
        double sum = 0;
        for (Layer layer : laminate.layers()) {
            sum += layer.thickness() * entry.applyAsDouble(layer.shearStiffness());
        }
        return entry.applyAsDouble(Stiffness.of(laminate).h()) / sum;
    }

    @Override
    String title() {
        return "Shear correction factors of cross-ply laminates: shear stiffness from equilibrium";
    }
}
