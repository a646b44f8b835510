package org.coachskin.reference;

import org.coachskin.laminate.Compliance;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.LayerStress;
import org.coachskin.laminate.SectionState;
import org.coachskin.laminate.ShearThroughThickness;
import org.coachskin.laminate.Stiffness;
import org.coachskin.laminate.Triple;

class SandwichCouponsTest extends StackTable {

    SandwichCouponsTest() {
        super("sandwich-coupons");
        // N, mm; the coupon carries 1000 N over 150 mm on a width of 75 mm.
        Layer face = face(24000, 1);
        Laminate coupon = Laminate.of(face, foam(75, 30, 20), face);
        double q = 1000 / 2.0 / 75;
        put("core shear stress", ShearThroughThickness.of(coupon, q, 0).at(0).xz());
        Triple k =
                Compliance.of(Stiffness.of(coupon))
                        .curvature(Triple.ZERO, new Triple(q * 150 / 2, 0, 0));
        LayerStress outer =
                LayerStress.of(coupon, new SectionState(Triple.ZERO, k, k, 0, 0, 0, 0)).get(2);
        put("facing stress", (outer.panelInner().x() + outer.panelOuter().x()) / 2);
        // 1 N on a bar of 1 x 1 mm.
        put(
                "short-beam strength times b h / P",
                ShearThroughThickness.of(Laminate.of(face(1000, 1)), 0.5, 0).at(0).xz());
        put("d/t where faces bend by themselves for 1 %", onePercent());
    }

    private static Layer face(double e, double t) {
        return new Layer.Laid(ply(e, e, 0, e / 2, t), 0);
    }

    /** Halves the range of d/t until the faces' own bending is a hundredth of the rest. */
    private static double onePercent() {
        double low = 2;
        double high = 20;
        double own = 2 * Stiffness.of(Laminate.of(face(1000, 1))).d().m11();
        for (int i = 0; i < 60; i++) {
            double d = (low + high) / 2;
            Layer face = face(1000, 1);
            double whole = Stiffness.of(Laminate.of(face, foam(1e-9, 1, d - 1), face)).d().m11();
            if (own > 0.01 * (whole - own)) {
                low = d;
            } else {
                high = d;
            }
        }
        return low;
    }

    @Override
    String title() {
        return "Coupon formulas for sandwich and short beams: layer stress and equilibrium";
    }
}
