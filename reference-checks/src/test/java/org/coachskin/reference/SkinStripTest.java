package org.coachskin.reference;

import org.coachskin.Source;
import org.coachskin.harmonic.Theory;
import org.coachskin.harmonic.WaveSystem;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Ply;
import org.coachskin.material.Foam;

class SkinStripTest extends FailureTable {

    private static final double BED = 75.0 / 20;
    private static final double BENDING = 2000;
    private static final double LINE = 10;

    SkinStripTest() {
        super("skin-strip");
        // N, mm. The foam is springs: no shear, no stiffness in its plane; its far side is held,
        // though by no more than
        // rounding bears: the deflection of one skin is reckoned from the other.
        Laminate laminate = Laminate.of(skin(1e7), springs(), skin(1));
        WaveSystem system = WaveSystem.of(Theory.FULL_LAYERED, laminate, 0, 0, false);
        double length = Math.pow(4 * BENDING / BED, 0.25);
        double step = 0.02 / length;
        double last = 60 / length;
        // Beyond the last wave the skin alone counts.
        double dent = 1 / (3 * BENDING * last * last * last);
        double moment = 1 / last;
        for (double alpha = step / 2; alpha < last; alpha += step) {
            double[] x = PlateTable.wave(system, alpha, 0);
            // How far the outside surface lies beyond the inside one.
            double w = Math.abs(x[system.second + 1]);
            dent += w * step;
            moment += BENDING * alpha * alpha * w * step;
        }
        put("dent", LINE / Math.PI * dent);
        put("moment of the skin", LINE / Math.PI * moment);
        put("pressure on the foam", LINE / Math.PI * dent * BED);
    }

    private static Layer skin(double stiffer) {
        double e = 24000 * stiffer;
        double g = 1e9;
        Ply ply = StackTable.ply(e, e, 0, e / 2, g, g, 1, 0, 0);
        return new Layer.Laid(ply, 0);
    }

    private static Layer springs() {
        return new Layer.Core(
                new Foam(
                        "springs",
                        Foam.Kind.OTHER,
                        1,
                        1e-6,
                        75,
                        1e-6,
                        0,
                        strength(1),
                        strength(1),
                        strength(1),
                        0,
                        0,
                        0,
                        Source.YOURS),
                20);
    }

    @Override
    String title() {
        return "A line load on a skin on foam that acts as springs: each skin a plate, summed over waves";
    }
}
