package org.coachskin.reference;

import org.coachskin.failure.EllipticHole;
import org.coachskin.failure.OpenHole;
import org.coachskin.laminate.Sym3;
import org.coachskin.laminate.Triple;

class OpenHoleTest extends FailureTable {

    OpenHoleTest() {
        super("open-hole");
        Sym3 sheet = new Sym3(1, -0.3, 1, 0, 0, 2.6).inverse();
        OpenHole hole = OpenHole.STANDARD;
        for (String wide : new String[] {"2.54", "6.35", "12.70", "25.40", "50.80"}) {
            double radius = Double.parseDouble(wide) / 2000;
            EllipticHole rim = new EllipticHole(sheet, radius, radius);
            put("point: hole of " + wide + " mm", 1 / beside(rim, radius + hole.point()));
            double mean = 0;
            for (OpenHole.Sample sample : hole.samples()) {
                mean += sample.weight() * beside(rim, radius + sample.distance());
            }
            put("mean: hole of " + wide + " mm", 1 / mean);
        }
    }

    private static double beside(EllipticHole hole, double at) {
        return hole.at(0, at, new Triple(1, 0, 0)).x();
    }

    @Override
    String title() {
        return "Strength beside a round hole by point and mean stress";
    }

    @Override
    String remark() {
        return "Ours are read from the stress beside the hole at the places at which the verdict reads it.";
    }
}
