package org.coachskin.reference;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.analysis.Response;
import org.coachskin.panel.Crown;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Fitting.Direction;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Support;

class OtherEdgesPlateTest extends ShellTable {

    /** Side of the pad that stands for a corner; what it does grows evenly with it. */
    private static final double CORNER = 1e-3 * SIDE;

    OtherEdgesPlateTest() {
        super("timoshenko-other-edges");
        RitzPlate free = new RitzPlate("SSFS", 1, 1, 0.3, 16, false);
        differs(
                "one edge free: w middle of it",
                free.at(free.even(), 0.5, 1),
                "Ritz with 16 x 16 polynomials gives ours; the print is a unit high.");
        RitzPlate corners = new RitzPlate("FFFF", 1, 1, 0.25, 16, true).pin(1, 1);
        double[] even = corners.even();
        String ritz =
                "Ritz with 16 x 16 polynomials and a held corner gives ours; the print, or our memory of it, is high.";
        differs("four corners nu=0.25: M middle", corners.momentX(even, 0.5, 0.5), ritz);
        differs("four corners nu=0.25: M edge", corners.momentX(even, 0.5, 0), ritz);
    }

    @Override
    void solve() {
        double a = SIDE;
        double m = a / 2;
        double square = a * a;
        double unit = bending(0.3, THIN) / (square * square);
        Response free = pressed("SFSF");
        put("two edges free: w middle", free.deflection(m, m) * unit);
        put("one edge free: w middle of it", pressed("SSFS").deflection(m, a) * unit);
        Response clamped = pressed("CSCS");
        put("two edges clamped: w middle", clamped.deflection(m, m) * unit);
        put("two edges clamped: M between them", -clamped.forces(m, m).m().y() / square);
        put("two edges clamped: M between the others", -clamped.forces(m, m).m().x() / square);
        Response cantilever = pressed("CFFF");
        put("cantilever: w middle of free edge", cantilever.deflection(m, a) * unit);
        put("cantilever: w corner", cantilever.deflection(a, a) * unit);
        for (double nu : new double[] {0.25, 0.3}) {
            List<Double> small = onCorners(nu, CORNER);
            List<Double> large = onCorners(nu, 2 * CORNER);
            String name = "four corners nu=" + nu + ": ";
            put(name + "w middle", 2 * small.get(0) - large.get(0));
            put(name + "M middle", 2 * small.get(1) - large.get(1));
            put(name + "M edge", 2 * small.get(2) - large.get(2));
        }
    }

    private static Response pressed(String edges) {
        return solve(plate(edges, SIDE, SIDE, thin(0.3)), ORDER, even()).get(0);
    }

    /** Returns deflection and moment in the middle and moment in the middle of an edge. */
    private static List<Double> onCorners(double nu, double size) {
        List<Fitting> corners = new ArrayList<>();
        for (double x : new double[] {size / 2, SIDE - size / 2}) {
            for (double y : new double[] {size / 2, SIDE - size / 2}) {
                corners.add(pad(x, y, size, Direction.values()));
            }
        }
        Support support = new Support.Fittings(corners);
        Panel panel = new Panel("plate", SIDE, SIDE, Crown.FLAT, thin(nu), support);
        Response pressed = solve(panel, 5, even()).get(0);
        double m = SIDE / 2;
        double square = SIDE * SIDE;
        return List.of(
                pressed.deflection(m, m) * bending(nu, THIN) / (square * square),
                -pressed.forces(m, m).m().x() / square,
                -pressed.forces(m, 0).m().x() / square);
    }

    @Override
    String title() {
        return "Thin square plates with free, clamped and supported edges, cantilevered, and on their corners";
    }

    @Override
    String remark() {
        return "A corner stands on a pad; what its size does grows evenly with it and is taken off by a second pad twice as wide.";
    }
}
