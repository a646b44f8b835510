package org.coachskin.reference;

import org.coachskin.failure.PlyCriterion;
import org.coachskin.laminate.PlyStrength;

class StrengthParametersTest extends FailureTable {

    StrengthParametersTest() {
        super("tsai-hahn-1980");
        // GPa, as the table prints.
        put("T300/5208 ", strength(1.5, 1.5, 0.040, 0.246, 0.068));
        put("Scotchply 1002 ", strength(1.062, 0.610, 0.031, 0.118, 0.072));
    }

    private void put(String material, PlyStrength strength) {
        PlyCriterion.Quadric quadric = new PlyCriterion.TsaiWu(-0.5).quadric(strength);
        put(material + "F11", quadric.f11());
        put(material + "F22", quadric.f22());
        put(material + "F66", quadric.f66());
        put(material + "F12", quadric.f12());
        put(material + "F1", quadric.f1());
        put(material + "F2", quadric.f2());
    }

    @Override
    String title() {
        return "Strength parameters of Tsai-Wu from five strengths";
    }
}
