package org.coachskin.shell;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.panel.Panel;
import org.coachskin.panel.TurnedEdge;
import org.coachskin.sparse.Pattern;
import org.coachskin.sparse.SymmetricMatrix;

/**
 * Skin over the end of foam: where it comes down to bare laminate that goes on, and where it is
 * turned round a raw edge. Sheared in its own plane it keeps one skin from sliding over the other
 * along the line: per length k (&psi;t + dw/dt)<sup>2</sup> / 2, with t along the line and k the
 * in-plane shear stiffness of that skin times the thickness of the foam. The foam's rotation &psi;
 * is by how much the skins slide over one another, per thickness of the foam; at bare laminate it
 * is that of the skins. What the skin over the end adds along the line when it is stretched is left
 * out: it is stretched no more than the skins are, over a narrow strip. It has its mass.
 *
 * <p>Without it the foam beside a lip slides along it, against nothing but the shear of skin and
 * bare laminate through their own thickness within a millimetre: no panel does so, and no elements
 * of a usual size can follow it.
 */
final class EndWall {

    private static final int U = 0;
    private static final int W = 2;
    private static final int SKIN = 3;
    private static final int FOAM = 5;

    /** Of one edge: its unknowns, and over them by rows their stiffness and mass. */
    private static final class Piece {
        final int[] unknowns;
        final double[] stiffness;
        final double[] mass;

        /** What a unit of gravity inward does to each unknown. */
        final double[] weight;

        Piece(List<Integer> unknowns) {
            int n = unknowns.size();
            this.unknowns = unknowns.stream().mapToInt(i -> i).toArray();
            stiffness = new double[n * n];
            mass = new double[n * n];
            weight = new double[n];
        }
    }

    private final List<Piece> pieces = new ArrayList<>();

    EndWall(Model model, Panel panel) {
        Grid grid = model.grid;
        GaussIntegrator gauss = ReferenceTriangle.line(model.reference.basis.order + 1);
        for (FoamEnds.Piece end : FoamEnds.of(grid, t -> placed(model.section(t)))) {
            Laminate stack = model.section(end.triangle()).laminate;
            List<Layer> skin = end.skin().skin(stack);
            double mass = 0;
            for (Layer layer : skin) {
                mass += stack.foamThickness() * layer.thickness() * layer.density();
            }
            pieces.add(piece(model, end.edge(), end.triangle(), skin, mass, gauss));
        }
        for (Turned.Piece turned :
                Turned.of(panel, grid, triangle -> model.section(triangle).laminate)) {
            Laminate stack = model.section(turned.triangle()).laminate;
            List<Layer> layers = turned.turned().layers(stack);
            double mass = 0;
            for (Layer layer : layers) {
                mass += TurnedEdge.reach(stack, layer) * layer.thickness() * layer.density();
            }
            pieces.add(piece(model, turned.edge(), turned.triangle(), layers, mass, gauss));
        }
    }

    private static FoamEnds.Placed placed(Section section) {
        return new FoamEnds.Placed(section.laminate, section.depth);
    }

    /** Returns what layers resist when they are sheared along and across a way [N/m]. */
    private static double stiffness(List<Layer> layers, double[] way) {
        double angle = StrictMath.atan2(way[3], way[2]);
        double sum = 0;
        for (Layer layer : layers) {
            Layer turned =
                    layer instanceof Layer.Laid laid
                            ? new Layer.Laid(laid.ply(), laid.angle() - angle)
                            : layer;
            sum += layer.thickness() * turned.stiffness().m66();
        }
        return sum;
    }

    /**
     * Returns an edge of a triangle with foam whose end a skin closes.
     *
     * @param mass of that skin, what laps over the other one counted [kg/m]
     */
    private static Piece piece(
            Model model,
            int edge,
            int triangle,
            List<Layer> skin,
            double mass,
            GaussIntegrator gauss) {
        Section section = model.section(triangle);
        double thickness = section.laminate.foamThickness();
        double k = thickness * stiffness(skin, model.grid.onEdge(edge, 0.5));
        Piece piece = piece(model, edge, k, gauss);
        addMass(model, edge, section, mass, piece, gauss);
        return piece;
    }

    private static Piece piece(Model model, int edge, double k, GaussIntegrator gauss) {
        Unknowns unknowns = model.unknowns;
        Basis basis = model.reference.basis;
        int[] functions = unknowns.ofEdge(model.grid, edge);
        Piece out = new Piece(own(unknowns, functions));
        double[] sheared = new double[out.unknowns.length];
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
                            unknowns.share(functions[f], i, FOAM) * way[2]
                                    + unknowns.share(functions[f], i, FOAM + 1) * way[3];
                    double risen = unknowns.share(functions[f], i, W);
                    sheared[at++] = (value[f] * turned + slope[f] * risen) / length;
                }
            }
            addSquare(out.stiffness, sheared, k * gauss.getWeight(q) * length);
        }
        return out;
    }

    private static List<Integer> own(Unknowns unknowns, int[] functions) {
        List<Integer> own = new ArrayList<>();
        for (int f : functions) {
            for (int i = 0; i < unknowns.width(f); i++) {
                own.add(unknowns.start(f) + i);
            }
        }
        return own;
    }

    private static void addSquare(double[] matrix, double[] row, double by) {
        int n = row.length;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                matrix[i * n + j] += by * row[i] * row[j];
            }
        }
    }

    /** Adds the skin over the end as a line of mass at the middle of the foam, overlap and all. */
    private static void addMass(
            Model model,
            int edge,
            Section section,
            double mass,
            Piece piece,
            GaussIntegrator gauss) {
        Unknowns unknowns = model.unknowns;
        Basis basis = model.reference.basis;
        int[] functions = unknowns.ofEdge(model.grid, edge);
        Laminate stack = section.laminate;
        double[] turn =
                section.turn(stack.bottom(stack.innermostCore()) + stack.foamThickness() / 2);
        double[][] moved = new double[3][piece.unknowns.length];
        for (int q = 0; q <= basis.order; q++) {
            double s = gauss.getPoint(q);
            double[] way = model.grid.onEdge(edge, s);
            double[] value = basis.onEdge(s);
            int at = 0;
            for (int f = 0; f < functions.length; f++) {
                for (int i = 0; i < unknowns.width(functions[f]); i++) {
                    int of = functions[f];
                    for (int axis = 0; axis < 2; axis++) {
                        moved[axis][at] =
                                value[f]
                                        * (unknowns.share(of, i, U + axis)
                                                + turn[0] * unknowns.share(of, i, SKIN + axis)
                                                + turn[1] * unknowns.share(of, i, FOAM + axis));
                    }
                    moved[W][at] = value[f] * unknowns.share(of, i, W);
                    at++;
                }
            }
            double by = mass * gauss.getWeight(q) * Math.hypot(way[2], way[3]);
            for (double[] one : moved) {
                addSquare(piece.mass, one, by);
            }
            for (int i = 0; i < at; i++) {
                piece.weight[i] -= by * moved[W][i];
            }
        }
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

    /**
     * Adds the mass.
     *
     * @param first number of the first edge among the elements of the pattern
     */
    void addMass(SymmetricMatrix matrix, int first) {
        for (int i = 0; i < pieces.size(); i++) {
            matrix.add(first + i, pieces.get(i).mass);
        }
    }

    /**
     * Adds the weight.
     *
     * @param inward component of gravity along the inward normal [m/s^2]
     */
    void addWeight(double inward, double[] load) {
        for (Piece piece : pieces) {
            for (int i = 0; i < piece.unknowns.length; i++) {
                load[piece.unknowns[i]] += inward * piece.weight[i];
            }
        }
    }

    /** Adds K x. */
    void addForces(double[] x, double[] forces) {
        for (Piece piece : pieces) {
            int n = piece.unknowns.length;
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    double stiff = piece.stiffness[Math.max(i, j) * n + Math.min(i, j)];
                    forces[piece.unknowns[i]] += stiff * x[piece.unknowns[j]];
                }
            }
        }
    }
}
