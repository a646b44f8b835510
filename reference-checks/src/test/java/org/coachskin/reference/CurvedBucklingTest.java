package org.coachskin.reference;

import org.coachskin.laminate.Triple;
import org.coachskin.panel.Crown;
import org.coachskin.panel.Panel;
import org.coachskin.shell.Pushed;

class CurvedBucklingTest extends BucklingTable {

    private static final double RADIUS = 1000 * THIN;

    /** Half waves along each side. */
    private static final int WAVES = 2;

    CurvedBucklingTest() {
        super("curved-buckling");
    }

    @Override
    void solve() {
        // Sides on which a wave of the least force fits a whole number of times.
        double wave = Math.PI * Math.sqrt(RADIUS * THIN) / Math.pow(12 * (1 - 0.09), 0.25);
        double unit = THIN * THIN / RADIUS;
        put(
                "cylinder sigma R/(E t)",
                factor(2 * WAVES * wave, new Crown(1 / RADIUS, 0), new Triple(0, -unit, 0)));
        put(
                "sphere p R^2/(E t^2)",
                factor(
                        Math.sqrt(2) * WAVES * wave,
                        new Crown(1 / RADIUS, 1 / RADIUS),
                        new Triple(-unit / 2, -unit / 2, 0)));
    }

    private static double factor(double side, Crown crown, Triple n) {
        Panel panel = Panel.flat("piece", side, side, thin(0.3)).withCrown(crown);
        return Pushed.evenly(panel, ORDER, n, 1).get(0);
    }

    @Override
    String title() {
        return "Pieces of thin cylinders and spheres under compression";
    }

    @Override
    String remark() {
        return "A shallow piece, carried along its rim, whose sides the waves of the least force fit; under even membrane forces. Upper limits: real shells buckle far below them.";
    }
}
