package org.coachskin.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.coachskin.analysis.Response;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Patch;
import org.coachskin.laminate.Ply;
import org.coachskin.panel.Crown;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Fitting.Direction;
import org.coachskin.panel.Fitting.Motion;
import org.coachskin.panel.Height;
import org.coachskin.panel.Load;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Shape;
import org.coachskin.panel.Stretch;
import org.coachskin.panel.Support;
import org.coachskin.shell.ShellAnalysis;

/**
 * A published table about panels on supports of their own, answered by finite elements in
 * first-order theory. Worked out when first asked for, once for all tests.
 */
abstract class ShellTable extends WorkedOutTable {

    /** Side of the plates; far above what the mesher takes for one and the same place [m]. */
    static final double SIDE = 100;

    /** Thickness of the thin ones [m]. */
    static final double THIN = 1e-3 * SIDE;

    /** Shear stiffness of plates that do not shear, over that of a plate of the usual factor. */
    static final double RIGID = 100;

    static final int ORDER = 6;

    /** Held in the deflection and against turning along the edge. */
    static final Set<Motion> HARD =
            Set.of(Motion.DEFLECTION, Motion.TWIST, Motion.ALONG, Motion.ACROSS);

    /** Held in the deflection only; where it does not matter, in its plane too. */
    static final Set<Motion> SOFT = Set.of(Motion.DEFLECTION, Motion.ALONG, Motion.ACROSS);

    private static final Map<Class<?>, Map<String, Double>> KNOWN = new ConcurrentHashMap<>();

    private static final Map<Integer, ShellAnalysis> ANALYSES = new ConcurrentHashMap<>();

    ShellTable(String work) {
        super("Panels on their own supports, by finite elements", "shell/" + work + ".csv");
    }

    /** Works all rows out and puts them. */
    abstract void solve();

    @Override
    final Map<String, Double> worked() {
        return KNOWN.computeIfAbsent(
                getClass(),
                key -> {
                    solve();
                    return super.worked();
                });
    }

    /** Returns an isotropic plate with modulus 1, its shear stiffness by the factor 5/6. */
    static Laminate isotropic(double nu, double t) {
        return isotropic(nu, t, 1);
    }

    /** Returns one whose shear stiffness is {@code factor} times that of the factor 5/6. */
    static Laminate isotropic(double nu, double t, double factor) {
        double g = 1 / (2 * (1 + nu));
        Ply ply = StackTable.ply(1, 1, nu, g, factor * g, factor * g, t, 0, 0);
        return new Laminate(List.of(new Layer.Laid(ply, 0)));
    }

    /** Returns a thin plate that does not shear. */
    static Laminate thin(double nu) {
        return isotropic(nu, THIN, RIGID);
    }

    static double bending(double nu, double t) {
        return t * t * t / (12 * (1 - nu * nu));
    }

    /**
     * Returns a rectangle.
     *
     * @param edges how front, right, rear and left edge are held: S, C or F
     */
    static Panel plate(String edges, double a, double b, Laminate laminate) {
        Edge[] order = {Edge.FRONT, Edge.RIGHT, Edge.REAR, Edge.LEFT};
        List<Fitting> fittings = new ArrayList<>();
        for (int i = 0; i < order.length; i++) {
            if (edges.charAt(i) == 'C') {
                fittings.add(Fitting.HeldEdge.clamped(order[i]));
            } else if (edges.charAt(i) == 'S') {
                fittings.add(held(Stretch.whole(order[i]), HARD));
            }
        }
        return new Panel("plate", a, b, Crown.FLAT, laminate, new Support.Fittings(fittings));
    }

    static Fitting held(Stretch stretch, Set<Motion> held) {
        return new Fitting.HeldEdge(stretch, held, Height.MIDDLE);
    }

    /** Returns a square pad that gives nowhere. */
    static Fitting pad(double x, double y, double size, Direction... held) {
        return pad(x, y, size, Double.POSITIVE_INFINITY, held);
    }

    static Fitting pad(double x, double y, double size, double stiffness, Direction... held) {
        return new Fitting.Pad("pad", x, y, size, size, Set.of(held), stiffness, Height.MIDDLE);
    }

    /** Returns a support that holds the whole rim in one way. */
    static Support rim(Set<Motion> held) {
        return new Support.Fittings(Stretch.rim().stream().map(s -> held(s, held)).toList());
    }

    static Panel circle(double diameter, Laminate laminate, Set<Motion> held) {
        return new Panel(
                "disc",
                diameter,
                diameter,
                Crown.FLAT,
                laminate,
                rim(held),
                new Shape.Rectangle(diameter, diameter, diameter / 2),
                List.of(),
                List.of());
    }

    static Load even() {
        return new Load.Pressure(1);
    }

    /** Returns a force of 1 on a square of side {@code size}. */
    static Load point(double x, double y, double size) {
        return new Load.Press(1, new Patch.Rectangle(size, size), x, y);
    }

    static List<Response> solve(Panel panel, int order, Load... loads) {
        List<List<Load>> cases = new ArrayList<>();
        for (Load load : loads) {
            cases.add(List.of(load));
        }
        return analysis(order).cases(panel, cases);
    }

    /** Returns first-order theory by elements of one order, with the meshes it has made. */
    static ShellAnalysis analysis(int order) {
        return ANALYSES.computeIfAbsent(order, key -> new ShellAnalysis(key, true));
    }

    /** Returns the lowest circular frequencies. */
    static List<Double> omegas(Panel panel, int order, int count) {
        return analysis(order).vibrations(panel, count).stream()
                .map(one -> 2 * Math.PI * one.frequency())
                .toList();
    }
}
