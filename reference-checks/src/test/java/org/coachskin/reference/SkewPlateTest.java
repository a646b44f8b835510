package org.coachskin.reference;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.analysis.Response;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Triple;
import org.coachskin.panel.Crown;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Region;
import org.coachskin.panel.Shape;
import org.coachskin.panel.Support;
import org.coachskin.panel.Zone;

class SkewPlateTest extends ShellTable {

    /** Ten times the usual, since blunt corners ask for triangles of a millionth of it. */
    private static final double WIDE = 10 * SIDE;

    private static final int FINE = 5;

    SkewPlateTest() {
        super("skew");
        for (int lean : new int[] {15, 30, 45}) {
            double[] byHand = new RitzPlate("CFFF", 1, 1, 0.3, 14, Math.toRadians(lean)).omegas(2);
            for (int i = 0; i < 2; i++) {
                differs(
                        "cantilever " + lean + " deg " + (i + 1) + ": Barton",
                        byHand[i],
                        "Ritz with 14 x 14 polynomials gives ours; an early Ritz sum is an upper bound.");
            }
        }
    }

    @Override
    void solve() {
        Panel acute = rhombus(60, thin(0.3, 10 * THIN), rim(HARD), false);
        Response pressed = solve(acute, FINE, even()).get(0);
        double x = acute.width() / 2;
        double y = acute.length() / 2;
        double square = WIDE * WIDE;
        put("supported: w", pressed.deflection(x, y) * bending(0.3, 10 * THIN) / (square * square));
        Triple m = pressed.forces(x, y).m();
        double mean = -(m.x() + m.y()) / 2;
        double turn = Math.hypot((m.x() - m.y()) / 2, m.xy());
        put("supported: larger moment", (mean + turn) / square);
        put("supported: smaller moment", (mean - turn) / square);
        for (int lean : new int[] {15, 30, 45}) {
            double t = 2.5 * THIN;
            Support clamped = new Support.Fittings(List.of(Fitting.HeldEdge.clamped(Edge.FRONT)));
            List<Double> omegas = omegas(rhombus(lean, thin(0.3, t), clamped, true), FINE, 2);
            double unit = square * Math.sqrt(t / bending(0.3, t));
            for (int i = 0; i < 2; i++) {
                String name = "cantilever " + lean + " deg " + (i + 1) + ": Barton";
                put(name, omegas.get(i) * unit);
            }
        }
    }

    private static Laminate thin(double nu, double t) {
        return isotropic(nu, t, RIGID);
    }

    /** A rhombus whose sides lean by some degrees, drawn finer towards two of its corners. */
    private static Panel rhombus(double lean, Laminate laminate, Support support, boolean front) {
        double d = WIDE * Math.sin(Math.toRadians(lean));
        double b = WIDE * Math.cos(Math.toRadians(lean));
        List<Shape.Point> corners =
                List.of(
                        new Shape.Point(0, 0),
                        new Shape.Point(WIDE, 0),
                        new Shape.Point(WIDE + d, b),
                        new Shape.Point(d, b));
        Shape.Point right = corners.get(1);
        Shape.Point other = corners.get(front ? 0 : 3);
        List<Zone> same = new ArrayList<>();
        for (double size = 0.3; size > (front ? 1e-2 : 2e-6); size /= Math.sqrt(10)) {
            for (Shape.Point corner : List.of(right, other)) {
                double box = size * WIDE;
                same.add(
                        new Zone(
                                "corner",
                                new Region.Box(
                                        corner.x() - box,
                                        corner.x() + box,
                                        corner.y() - box,
                                        corner.y() + box),
                                laminate,
                                0));
            }
        }
        return new Panel(
                "rhombus",
                WIDE + d,
                b,
                Crown.FLAT,
                laminate,
                support,
                new Shape.Polygon(corners),
                List.of(),
                same);
    }

    @Override
    String title() {
        return "Skew thin plates: supported all round under even pressure, and cantilevers";
    }

    @Override
    String remark() {
        return "At the blunt corners moments rise without end; triangles shrink towards them to a millionth of the side.";
    }
}
