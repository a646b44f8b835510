package org.coachskin.reference;

import org.coachskin.analysis.Response;
import org.coachskin.laminate.Triple;
import org.coachskin.panel.Panel;

class ClampedPlateTest extends ShellTable {

    ClampedPlateTest() {
        super("timoshenko-clamped");
        String ritz = "Ritz with 14 x 14 polynomials gives ours; the print is ";
        RitzPlate square = new RitzPlate("CCCC", 1, 1, 0.3, 14, true);
        double[] even = square.even();
        differs(
                "w even r=1",
                square.at(even, 0.5, 0.5),
                ritz + "cut off rather than rounded (0.001265).");
        differs("Mx middle r=1", square.momentX(even, 0.5, 0.5), ritz + "0.9 per cent high.");
        RitzPlate two = new RitzPlate("CCCC", 1, 2, 0.3, 14, true);
        even = two.even();
        differs("w even r=2", two.at(even, 0.5, 1), ritz + "a unit high.");
        differs("M short edge r=2", two.momentY(even, 0.5, 0), ritz + "a unit high.");
        String waves =
                "a supported plate with waves of moment along its edges gives ours; the print is a sum broken off.";
        for (String r : new String[] {"1", "1.4", "2"}) {
            ClampedByHand hand = new ClampedByHand(Double.parseDouble(r));
            differs("w force r=" + r, hand.deflection(), waves);
            if (r.equals("1")) {
                differs("M edge force r=1", hand.edgeMoment(), waves);
            }
        }
    }

    @Override
    void solve() {
        double d = bending(0.3, THIN);
        for (String r : new String[] {"1", "1.2", "1.4", "1.6", "1.8", "2"}) {
            double b = Double.parseDouble(r) * SIDE;
            double x = SIDE / 2;
            double y = b / 2;
            Panel plate = plate("CCCC", SIDE, b, thin(0.3));
            Response even = solve(plate, ORDER, even()).get(0);
            // The moment at the edge asks for more than the deflection does.
            int order = r.equals("1") ? ORDER : 4;
            Response force = solve(plate, order, point(x, y, 0.004 * SIDE)).get(0);
            double square = SIDE * SIDE;
            put("w even r=" + r, even.deflection(x, y) * d / (square * square));
            put("M long edge r=" + r, -even.forces(0, y).m().x() / square);
            Triple middle = even.forces(x, y).m();
            put("M short edge r=" + r, -even.forces(x, 0).m().y() / square);
            put("Mx middle r=" + r, -middle.x() / square);
            put("My middle r=" + r, -middle.y() / square);
            put("w force r=" + r, force.deflection(x, y) * d / square);
            put("M edge force r=" + r, -force.forces(x, 0).m().y());
        }
    }

    @Override
    String title() {
        return "Clamped thin plate: deflections and moments under pressure and a force";
    }

    @Override
    String remark() {
        return "Moments are positive where they pull on the side away from the load.";
    }
}
