package org.coachskin.reference;

import org.coachskin.laminate.Compliance;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.LayerStress;
import org.coachskin.laminate.Ply;
import org.coachskin.laminate.SectionState;
import org.coachskin.laminate.ShearThroughThickness;
import org.coachskin.laminate.Stiffness;
import org.coachskin.laminate.Triple;

class NafemsStripTest extends StackTable {

    NafemsStripTest() {
        super("nafems-r0031-1");
        // A beam: N, mm, and no contraction across the strip.
        Ply thin = ply(100e3, 5e3, 0, 3e3, 2e3, 2e3, 0.1, 0, 0);
        Layer along = new Layer.Laid(thin, 0);
        Layer across = new Layer.Laid(thin, Math.PI / 2);
        Layer middle = new Layer.Laid(thin.withThickness(0.4), Math.PI / 2);
        Laminate strip = Laminate.of(along, across, along, middle, along, across, along);
        double load = 10;
        double span = 30;
        Stiffness s = Stiffness.of(strip);
        Compliance c = Compliance.of(s);
        Triple k = c.curvature(Triple.ZERO, new Triple(load * span / 4, 0, 0));
        SectionState state = new SectionState(Triple.ZERO, k, k, 0, 0, 0, 0);
        put("fibre stress at E", -LayerStress.of(strip, state).get(0).inner().s1());
        ShearThroughThickness shear = ShearThroughThickness.of(strip, load / 2, 0);
        put("shear stress at D", shear.at(-0.4).xz());
        put(
                "deflection at E",
                load * span * span * span / 48 * c.d().m11()
                        + load * span / 4 * s.h().inverse().m11());
    }

    @Override
    String title() {
        return "A laminated strip in three-point bending: layered beam with shear stiffness from equilibrium";
    }
}
