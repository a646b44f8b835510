package org.coachskin.reference;

import org.coachskin.failure.PlyCriterion;
import org.coachskin.laminate.Ply;
import org.coachskin.laminate.PlyStress;
import org.coachskin.laminate.Triple;

class PlyFailureTest extends FailureTable {

    PlyFailureTest() {
        super("kaw-2006");
        Ply plain = StackTable.ply(181e9, 10.3e9, 0.28, 7.17e9, 5e-3);
        Ply ply = plain.withStrength(strength(1500e6, 1500e6, 40e6, 246e6, 68e6));
        double angle = StrictMath.toRadians(60);
        // 1 MPa times 2, -3 and 4, so that a reserve is in MPa.
        Triple strain = ply.stiffness(angle).inverse().times(new Triple(2e6, -3e6, 4e6));
        PlyStress load = PlyStress.of(ply, angle, strain);
        put("maximum stress", reserve(new PlyCriterion.MaxStress(), load, ply));
        put("maximum strain", reserve(new PlyCriterion.MaxStrain(), load, ply));
        PlyCriterion tsaiHill = new PlyCriterion.TsaiHill();
        put("Tsai-Hill with strengths by sign", reserve(tsaiHill, load, ply));
        Ply tensile = plain.withStrength(strength(1500e6, 1500e6, 40e6, 40e6, 68e6));
        put("Tsai-Hill with tensile strengths only", reserve(tsaiHill, load, tensile));
        PlyCriterion.TsaiWu tsaiWu = new PlyCriterion.TsaiWu(-0.5);
        put("Tsai-Wu with interaction -0.5", reserve(tsaiWu, load, ply));
        put("F12 with interaction -0.5", tsaiWu.quadric(ply.strength()).f12());
    }

    private static double reserve(PlyCriterion criterion, PlyStress load, Ply ply) {
        return criterion.reserve(load, PlyStress.ZERO, ply);
    }

    @Override
    String title() {
        return "A ply at 60 degrees under 2, -3 and 4 times S: four criteria";
    }
}
