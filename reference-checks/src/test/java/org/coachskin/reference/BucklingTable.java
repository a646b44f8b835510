package org.coachskin.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Triple;
import org.coachskin.panel.Crown;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Fitting.Direction;
import org.coachskin.panel.Fitting.Motion;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Stretch;
import org.coachskin.panel.Support;
import org.coachskin.shell.Pushed;

/** A published table about plates pushed in their plane. */
abstract class BucklingTable extends ShellTable {

    BucklingTable(String work) {
        super(work);
    }

    /**
     * Returns a rectangle that nothing but two pads in its middle holds in its plane.
     *
     * @param edges how front, right, rear and left edge are held: S, C, F, or M for the middle line
     *     of a plate twice as long
     */
    static Panel loose(String edges, double a, double b, Laminate laminate) {
        Edge[] order = {Edge.FRONT, Edge.RIGHT, Edge.REAR, Edge.LEFT};
        List<Fitting> fittings = new ArrayList<>();
        for (int i = 0; i < order.length; i++) {
            Set<Motion> motions =
                    switch (edges.charAt(i)) {
                        case 'S' -> Set.of(Motion.DEFLECTION, Motion.TWIST);
                        case 'C' -> Set.of(Motion.DEFLECTION, Motion.TWIST, Motion.TURN);
                        case 'M' -> Set.of(Motion.TURN);
                        default -> Set.of();
                    };
            if (!motions.isEmpty()) {
                fittings.add(held(Stretch.whole(order[i]), motions));
            }
        }
        fittings.add(pad(0.5 * a, 0.5 * b, 0.1 * b, Direction.X, Direction.Y));
        fittings.add(pad(0.75 * a, 0.5 * b, 0.1 * b, Direction.Y));
        return new Panel("plate", a, b, Crown.FLAT, laminate, new Support.Fittings(fittings));
    }

    /** Returns how many times these forces per width on its rim a panel takes. */
    static double factor(Panel panel, int order, double nx, double ny, double nxy) {
        return Pushed.onItsRim(panel, order, new Triple(nx, ny, nxy), 1).get(0);
    }

    /** Returns Euler's pi^2 D / b^2 of a thin plate. */
    static double euler() {
        return Math.PI * Math.PI * bending(0.3, THIN) / (SIDE * SIDE);
    }
}
