package org.coachskin.shell;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.sparse.Pattern;
import org.coachskin.sparse.SymmetricMatrix;

/**
 * The skin that comes down over the end of foam, where bare laminate goes on. Sheared in its own
 * plane it keeps one skin from sliding over the other along the line: per length k (&phi;t +
 * dw/dt)<sup>2</sup> / 2, with t along the line and k the in-plane shear stiffness of the lighter
 * skin times the thickness of the foam.
 *
 * <p>Without it the foam beside the line slides along it, against nothing but the shear of skin and
 * bare laminate through their own thickness within a millimetre: no panel does so, and no elements
 * of a usual size can follow it.
 */
final class EndWall {

    private static final int W = 2;

    /** Of one edge: its unknowns and their stiffness by rows. */
    private static final class Piece {
        final int[] unknowns;
        final double[] stiffness;

        Piece(int[] unknowns, double[] stiffness) {
            this.unknowns = unknowns;
            this.stiffness = stiffness;
        }
    }

    private final List<Piece> pieces = new ArrayList<>();

    EndWall(Model model) {
        Grid grid = model.grid;
        GaussIntegrator gauss = ReferenceTriangle.line(model.reference.basis.order + 1);
        for (int e = 0; e < grid.edges(); e++) {
            if (grid.onRim(e)) {
                continue;
            }
            Laminate one = model.section(grid.neighbours[2 * e]).laminate;
            Laminate other = model.section(grid.neighbours[2 * e + 1]).laminate;
            if (one.isBare() != other.isBare()) {
                pieces.add(piece(model, e, stiffness(one.isBare() ? other : one), gauss));
            }
        }
    }

    /** Returns the shear stiffness of the wall [N]. */
    private static double stiffness(Laminate foamed) {
        List<Layer> layers = foamed.layers();
        double inside = 0;
        double foam = 0;
        double outside = 0;
        for (int i = 0; i < layers.size(); i++) {
            double t = layers.get(i).thickness();
            double shear = t * layers.get(i).stiffness().m66();
            if (i < foamed.innermostCore()) {
                inside += shear;
            } else if (i > foamed.outermostCore()) {
                outside += shear;
            } else {
                foam += t;
            }
        }
        return foam * (inside == 0 || outside == 0 ? inside + outside : Math.min(inside, outside));
    }

    private static Piece piece(Model model, int edge, double k, GaussIntegrator gauss) {
        Unknowns unknowns = model.unknowns;
        Basis basis = model.reference.basis;
        int[] functions = unknowns.ofEdge(model.grid, edge);
        List<Integer> own = new ArrayList<>();
        for (int f : functions) {
            for (int i = 0; i < unknowns.width(f); i++) {
                own.add(unknowns.start(f) + i);
            }
        }
        int n = own.size();
        double[] stiffness = new double[n * n];
        double[] sheared = new double[n];
        for (int q = 0; q <= basis.order; q++) {
            double s = gauss.getPoint(q);
            double[] way = model.grid.onEdge(edge, s);
            double length = Math.hypot(way[2], way[3]);
            double[] value = basis.onEdge(s);
            double[] slope = basis.slopeOnEdge(s);
            int at = 0;
            for (int f = 0; f < functions.length; f++) {
                for (int i = 0; i < unknowns.width(functions[f]); i++) {
                    double turned =
                            unknowns.share(functions[f], i, 3) * way[2]
                                    + unknowns.share(functions[f], i, 4) * way[3];
                    double risen = unknowns.share(functions[f], i, W);
                    sheared[at++] = (value[f] * turned + slope[f] * risen) / length;
                }
            }
            double by = k * gauss.getWeight(q) * length;
            for (int i = 0; i < n; i++) {
                for (int j = 0; j <= i; j++) {
                    stiffness[i * n + j] += by * sheared[i] * sheared[j];
                }
            }
        }
        return new Piece(own.stream().mapToInt(i -> i).toArray(), stiffness);
    }

    /** Enters the edges in a pattern. */
    void enter(Pattern.Builder pattern) {
        pieces.forEach(piece -> pattern.element(piece.unknowns));
    }

    /** Returns how many elements it enters in a pattern. */
    int count() {
        return pieces.size();
    }

    /**
     * Adds the stiffness.
     *
     * @param first number of the first edge among the elements of the pattern
     */
    void addStiffness(SymmetricMatrix matrix, int first) {
        for (int i = 0; i < pieces.size(); i++) {
            matrix.add(first + i, pieces.get(i).stiffness);
        }
    }
}
