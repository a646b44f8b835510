package org.coachskin.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.coachskin.laminate.Laminate;
import org.coachskin.panel.Crown;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Fitting.Direction;
import org.coachskin.panel.Fitting.Motion;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Region;
import org.coachskin.panel.Stretch;
import org.coachskin.panel.Support;
import org.coachskin.panel.Zone;

class FreeFrequenciesTest extends ShellTable {

    private static final double ROOT = Math.sqrt(12);

    FreeFrequenciesTest() {
        super("frequencies");
        String bound =
                "Ritz with 14 x 14 polynomials gives ours; an early Ritz sum is an upper bound.";
        double[] cantilever = new RitzPlate("CFFF", 1, 1, 0.3, 14, false).omegas(6);
        double[] free = new RitzPlate("FFFF", 1, 1, 0.3, 14, false).omegas(7);
        double[] clamped = new RitzPlate("CCCC", 1, 1, 0.3, 14, false).omegas(6);
        String low =
                "Ritz with 14 x 14 polynomials gives ours for the stated data; the print is 0.6 to 1.1 per cent low.";
        for (int i = 0; i < 6; i++) {
            differs("cantilever " + (i + 1) + ": Barton", cantilever[i], bound);
            differs("clamped " + (i + 1) + ": Birger", clamped[i] * birger(), low);
        }
        for (int i = 0; i < 4; i++) {
            differs("free " + (i + 1) + ": Barton", free[3 + i], bound);
        }
        for (int i = 0; i < 5; i++) {
            // Leissa gives each frequency once.
            differs("clamped " + (i + 1) + ": Leissa", clamped[once(i)], bound);
        }
        harris(clamped, cantilever);
    }

    private void harris(double[] clamped, double[] cantilever) {
        String high = "Ritz with 14 x 14 polynomials gives ours; the print is high.";
        double[] two = new RitzPlate("CSCS", 1, 1, 0.3, 14, false).omegas(3);
        double[] one = new RitzPlate("CSSS", 1, 1, 0.3, 14, false).omegas(3);
        double[] free = new RitzPlate("FFFF", 1, 1, 0.225, 14, false).omegas(6);
        for (int i = 0; i < 3; i++) {
            differs("clamped B" + (i + 1) + ": Harris", clamped[once(i)] / ROOT, high);
            differs("cantilever B" + (i + 1) + ": Harris", cantilever[i] / ROOT, high);
            if (i == 0) {
                continue;
            }
            differs(
                    "free B" + (i + 1) + " nu=0.225: Harris",
                    free[3 + i] / ROOT,
                    "a row of Ritz's own of 1909, of nu 0.225; Ritz with 14 x 14 polynomials gives ours.");
        }
        for (int i = 0; i < 2; i++) {
            differs("two clamped B" + (i + 1) + ": Harris", two[i] / ROOT, high);
        }
        differs("one clamped B2: Harris", one[1] / ROOT, high);
    }

    private static int once(int i) {
        return i < 2 ? i : i + 1;
    }

    /** Circular frequency of the handbook's plate over omega a^2 sqrt(rho h/D). */
    private static double birger() {
        return Math.sqrt(2.1e11 * 1e-4 / (12 * 0.91 * 7800));
    }

    @Override
    void solve() {
        double[] clamped = lowest(plate("CCCC", SIDE, SIDE, thin(0.3)), 0.3, 6);
        double[] cantilever = lowest(cantilever(), 0.3, 6);
        double[] two = lowest(plate("CSCS", SIDE, SIDE, thin(0.3)), 0.3, 2);
        double[] one = lowest(plate("CSSS", SIDE, SIDE, thin(0.3)), 0.3, 2);
        double[] free = lowest(adrift(0.3), 0.3, 7);
        double[] old = lowest(adrift(0.225), 0.225, 6);
        for (int i = 0; i < 6; i++) {
            put("cantilever " + (i + 1) + ": Barton", cantilever[i]);
            put("cantilever " + (i + 1) + ": converged", cantilever[i]);
            put("cantilever B" + (i + 1) + ": Harris", cantilever[i] / ROOT);
            put("clamped " + (i + 1) + ": Birger", clamped[i] * birger());
        }
        for (int i = 0; i < 5; i++) {
            put("clamped " + (i + 1) + ": Leissa", clamped[once(i)]);
            put("clamped B" + (i + 1) + ": Harris", clamped[once(i)] / ROOT);
        }
        for (int i = 0; i < 4; i++) {
            put("free " + (i + 1) + ": Barton", free[3 + i]);
        }
        for (int i = 0; i < 3; i++) {
            put("free B" + (i + 1) + " nu=0.225: Harris", old[3 + i] / ROOT);
        }
        for (int i = 0; i < 2; i++) {
            put("two clamped B" + (i + 1) + ": Harris", two[i] / ROOT);
            put("one clamped B" + (i + 1) + ": Harris", one[i] / ROOT);
        }
    }

    private static double[] lowest(Panel panel, double nu, int count) {
        double t = panel.laminate().thickness();
        double unit = SIDE * SIDE * Math.sqrt(t / bending(nu, t));
        return omegas(panel, ORDER, count).stream().mapToDouble(omega -> omega * unit).toArray();
    }

    /** A cantilever drawn finer at its clamped corners, where moments rise without end. */
    private static Panel cantilever() {
        Laminate laminate = isotropic(0.3, THIN / 4, RIGID);
        List<Zone> same = new ArrayList<>();
        for (double size : new double[] {0.1, 0.02}) {
            double box = size * SIDE;
            same.add(new Zone("left", new Region.Box(0, box, 0, box), laminate, 0));
            same.add(new Zone("right", new Region.Box(SIDE - box, SIDE, 0, box), laminate, 0));
        }
        return plate("CFFF", SIDE, SIDE, laminate).withZones(same);
    }

    /** A free plate: still in its plane, afloat on four pads of next to no stiffness. */
    private static Panel adrift(double nu) {
        double soft = 1e-2 * bending(nu, THIN) / (SIDE * SIDE);
        List<Fitting> fittings =
                new ArrayList<>(
                        Stretch.rim().stream()
                                .map(s -> held(s, Set.of(Motion.ALONG, Motion.ACROSS)))
                                .toList());
        // In the middle of the edges, where the lowest shape stands still.
        for (double[] at : new double[][] {{0.1, 0.5}, {0.9, 0.5}, {0.5, 0.1}, {0.5, 0.9}}) {
            fittings.add(pad(at[0] * SIDE, at[1] * SIDE, 0.1 * SIDE, soft, Direction.Z));
        }
        return new Panel(
                "plate",
                SIDE,
                SIDE,
                Crown.FLAT,
                isotropic(nu, THIN),
                new Support.Fittings(fittings));
    }

    @Override
    String title() {
        return "Natural frequencies of clamped, cantilevered and free thin square plates";
    }

    @Override
    String remark() {
        return "The free plate floats on four pads so soft that they move no figure.";
    }
}
