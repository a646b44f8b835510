package org.coachskin.reference;

import java.util.List;
import org.coachskin.analysis.Response;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Ply;
import org.coachskin.panel.Crown;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Load;
import org.coachskin.panel.Opening;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Region;
import org.coachskin.panel.Shape;
import org.coachskin.panel.Stretch;
import org.coachskin.panel.Support;
import org.coachskin.panel.Zone;

class HoleTest extends ShellTable {

    static final double HOLE = SIDE;

    private static final double WIDTH = 40 * HOLE;

    private static final int FINE = 5;

    /** Shear so soft that every layer stands in plane stress by itself. */
    static final double SLACK = 1e-12;

    HoleTest() {
        super("holes");
        for (int wide : new int[] {1, 2, 4}) {
            differs("bent d/h=" + wide, HoleByHand.bending(wide, 0.3), fit());
        }
        differs("bent d/h=0.5", HoleByHand.bending(0.5, 0.3), fit());
    }

    private static String fit() {
        return "the closed form with Bessel functions gives ours; the print is a fitted curve, low by 0.7 to 2.1 per cent.";
    }

    @Override
    void solve() {
        Response sheet = bent(isotropic(0.3, THIN, SLACK));
        put("sheet: beside the hole", beside(sheet));
        double front = sheet.forces(WIDTH / 2, (5 * WIDTH - HOLE) / 2).m().x();
        put("sheet: before the hole", front / moment(5 * WIDTH));
        put("woven 0/90", beside(bent(woven(24, 0.12, 4))));
        put("woven +-45", beside(bent(woven(12.371, 0.546392, 10.714))));
        for (String wide : new String[] {"0.5", "1", "2", "4"}) {
            double h = HOLE / Double.parseDouble(wide);
            put("bent d/h=" + wide, beside(bent(isotropic(0.3, h))));
        }
    }

    private static Laminate woven(double e, double nu, double g) {
        Ply ply = StackTable.ply(e, e, nu, g, SLACK, SLACK, THIN, 0, 0);
        return StackTable.stack(ply, 0);
    }

    private static double beside(Response response) {
        return beside(response, WIDTH);
    }

    static double beside(Response response, double width) {
        double length = 5 * width;
        return response.forces((width + HOLE) / 2, length / 2).m().y() / moment(length);
    }

    /** Moment between the two bands of pressure, positive where it pulls inside. */
    private static double moment(double length) {
        return -0.05 * length * 0.075 * length;
    }

    /** A strip on its ends, pressed in a band near each, with a hole in the middle. */
    private static Response bent(Laminate laminate) {
        return bent(laminate, WIDTH);
    }

    static Response bent(Laminate laminate, double width) {
        double length = 5 * width;
        List<Load> bands =
                List.of(
                        new Load.StripPressure(1, 0.05 * length, 0.1 * length),
                        new Load.StripPressure(1, 0.9 * length, 0.95 * length));
        Support ends =
                new Support.Fittings(
                        List.of(
                                held(Stretch.whole(Edge.FRONT), SOFT),
                                held(Stretch.whole(Edge.REAR), SOFT)));
        Opening hole = new Opening("hole", new Shape.Circle(HOLE), width / 2, length / 2);
        // A ring of the same stack asks for short edges along the hole.
        Zone ring = new Zone("ring", new Region.Around("hole", HOLE / 16), laminate, 0);
        Panel strip =
                new Panel("strip", width, length, Crown.FLAT, laminate, ends)
                        .withOpenings(List.of(hole))
                        .withZones(List.of(ring));
        return analysis(FINE).cases(strip, List.of(bands)).get(0);
    }

    @Override
    String title() {
        return "A round hole: stress at its rim";
    }

    @Override
    String remark() {
        return "A strip 40 holes wide in four-point bending; the sheets are the layers of a plate that gives in shear without end, each in plane stress.";
    }
}
