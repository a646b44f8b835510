package org.coachskin.reference;

import java.util.List;
import org.coachskin.laminate.Compliance;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.LayerStress;
import org.coachskin.laminate.SectionState;
import org.coachskin.laminate.ShearThroughThickness;
import org.coachskin.laminate.Stiffness;
import org.coachskin.laminate.Triple;

class BatozDhattTest extends StackTable {

    BatozDhattTest() {
        super("batoz-dhatt");
        Layer thin = new Layer.Laid(ply(25, 1, 0.25, 0.5, 0.5, 0.2, 0.25, 0, 0), 0);
        Layer thick = new Layer.Laid(ply(25, 1, 0.25, 0.5, 0.5, 0.2, 0.5, 0, 0), Math.PI / 2);
        Laminate laminate = Laminate.of(thin, thick, thin);
        List<LayerStress> mx = bent(laminate, new Triple(1, 0, 0));
        put("Mxx layer 1 at -h/2", mx.get(0).panelInner().x());
        put("Mxx layer 2 at -h/4", mx.get(1).panelInner().x());
        List<LayerStress> my = bent(laminate, new Triple(0, 1, 0));
        put("Myy layer 1 at -h/2", my.get(0).panelInner().y());
        put("Myy layer 2 at -h/4", my.get(1).panelInner().y());
        ShearThroughThickness qx = ShearThroughThickness.of(laminate, 1, 0);
        put("Qx at -h/4", qx.at(-0.25).xz());
        put("Qx at 0", qx.at(0).xz());
        ShearThroughThickness qy = ShearThroughThickness.of(laminate, 0, 1);
        put("Qy at -h/4", qy.at(-0.25).yz());
        put("Qy at 0", qy.at(0).yz());
        // E dz^2/2 of the half below mid-height over E z^3/3 of the whole; E is 1, 25, 1.
        double first = (0.25 - 0.0625) / 2 + 25 * 0.0625 / 2;
        double second = (1 - 0.125 + 25 * 0.125) / 12;
        differs(
                "Qy at 0",
                first / second,
                "first moment of the section over its second, 21/8 = 2.625: a 2 too many in print.");
    }

    private static List<LayerStress> bent(Laminate laminate, Triple moment) {
        Triple k = Compliance.of(Stiffness.of(laminate)).curvature(Triple.ZERO, moment);
        return LayerStress.of(laminate, new SectionState(Triple.ZERO, k, k, 0, 0, 0, 0));
    }

    @Override
    String title() {
        return "Bending and shear stress through a cross-ply laminate: layer stress and equilibrium";
    }

    @Override
    String remark() {
        return "Ours: moments with the other moment zero, shear forces as bending into a cylinder.";
    }
}
