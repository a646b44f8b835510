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
        return "Ours: moments with the other moment zero, shear forces as bending into a cylinder. Qy at mid-height is 21/8 = 2.625 from the section; 2.62625 looks like a misprint of 2.62500.";
    }
}
