package org.coachskin.reference;

import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.ThermalState;

class BimetalTest extends StackTable {

    BimetalTest() {
        super("timoshenko-1925");
        put("equal layers", bow(1, 1));
        put("modulus ratio 2", bow(1, 2));
        put("modulus ratio 1/2", bow(1, 0.5));
        put("thickness ratio 1/2 and modulus ratio 3", bow(0.5, 3));
    }

    /** Curvature times thickness over the difference of the free strains. */
    private static double bow(double thicknessRatio, double modulusRatio) {
        Layer lower = layer(modulusRatio * 70e9, thicknessRatio * 1e-3, 0);
        Layer upper = layer(70e9, 1e-3, 12e-6);
        Laminate strip = Laminate.of(lower, upper);
        return ThermalState.of(strip, 50, 50).curvature().x() * strip.thickness() / (12e-6 * 50);
    }

    private static Layer layer(double e, double thickness, double alpha) {
        double g = e / 2.6;
        return new Layer.Laid(ply(e, e, 0.3, g, g, g, thickness, alpha, alpha), 0);
    }

    @Override
    String title() {
        return "Bow of a warmed strip of two metals: free thermal bow of classical laminate theory";
    }
}
