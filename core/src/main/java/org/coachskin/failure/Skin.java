package org.coachskin.failure;

import java.util.List;
import org.coachskin.laminate.Compliance;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Stiffness;
import org.coachskin.laminate.Sym3;
import org.jspecify.annotations.Nullable;

/**
 * One skin by itself.
 *
 * @param laminate its layers, seal coat included
 * @param bending bending stiffness with membrane forces free, x and y as in the panel [N m]
 */
record Skin(Laminate laminate, Sym3 bending) {

    /** Returns the skin on {@code face}, or null where there is none. */
    static @Nullable Skin of(Laminate whole, Face face) {
        List<Layer> layers = face == Face.OUTSIDE ? whole.outsideSkin() : whole.insideSkin();
        if (layers.isEmpty()) {
            return null;
        }
        Laminate skin = new Laminate(layers);
        return new Skin(skin, Compliance.of(Stiffness.of(skin)).d().inverse());
    }

    /** Bending stiffness of a wave whose crests run at right angles to {@code angle} [N m]. */
    double bending(double angle) {
        double c = StrictMath.cos(angle);
        double s = StrictMath.sin(angle);
        return bending.m11() * c * c * c * c
                + 2 * (bending.m12() + 2 * bending.m66()) * c * c * s * s
                + bending.m22() * s * s * s * s
                + 4 * bending.m16() * c * c * c * s
                + 4 * bending.m26() * c * s * s * s;
    }

    /** Mean bending stiffness over all directions [N m]. */
    double meanBending() {
        return (3 * bending.m11() + 3 * bending.m22() + 2 * bending.m12() + 4 * bending.m66()) / 8;
    }
}
