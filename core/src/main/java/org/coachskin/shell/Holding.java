package org.coachskin.shell;

import java.util.List;
import java.util.Set;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Height;
import org.coachskin.panel.Stretch;

/** Turns held edges, and places without foam, into ties between unknowns. */
final class Holding {

    private static final int W = 2;

    private static final Set<Fitting.Motion> IN_PLANE =
            Set.of(Fitting.Motion.ALONG, Fitting.Motion.ACROSS);

    private static final Set<Fitting.Motion> ROTATIONS =
            Set.of(Fitting.Motion.TURN, Fitting.Motion.TWIST);

    private final Grid grid;
    private final Basis basis;
    private final Unknowns.Ties ties = new Unknowns.Ties();

    private Holding(Grid grid, Basis basis) {
        this.grid = grid;
        this.basis = basis;
    }

    /** Returns the unknowns of a panel held by {@code fittings}. */
    static Unknowns unknowns(
            Grid grid,
            Basis basis,
            Section[] sections,
            List<Rim.Piece> rim,
            List<Fitting> fittings) {
        Holding holding = new Holding(grid, basis);
        for (Fitting fitting : fittings) {
            if (fitting instanceof Fitting.HeldEdge edge) {
                for (Rim.Piece piece : rim) {
                    if (piece.isOn(edge.stretch())) {
                        holding.hold(piece, edge, sections[piece.triangle()]);
                    }
                }
            }
        }
        holding.turnTogether(sections);
        return new Unknowns(grid, basis, holding.ties);
    }

    private void hold(Rim.Piece piece, Fitting.HeldEdge edge, Section section) {
        // Held both ways it is held in every direction, so the axes will do for a normal.
        Set<Fitting.Motion> held = edge.held();
        boolean curved = grid.arcs[piece.edge()] != null;
        boolean slid = curved && !held.containsAll(IN_PLANE);
        boolean turned = curved && !held.containsAll(ROTATIONS);
        double nx = curved ? 1 : piece.normalX();
        double ny = curved ? 0 : piece.normalY();
        double[] turn = section.turn(height(section, edge.height()));
        for (Fitting.Motion motion : held) {
            switch (motion) {
                case DEFLECTION -> tie(piece.edge(), row(W, 1));
                case ALONG -> tieUnless(slid, piece, displacement(-ny, nx, turn));
                case ACROSS -> tieUnless(slid, piece, displacement(nx, ny, turn));
                case TURN -> {
                    tieUnless(turned, piece, pair(3, nx, ny));
                    tieUnless(turned, piece, pair(5, nx, ny));
                }
                case TWIST -> {
                    tieUnless(turned, piece, pair(3, -ny, nx));
                    tieUnless(turned, piece, pair(5, -ny, nx));
                }
            }
        }
    }

    /** A round corner cannot be held one way only: its direction changes along the way. */
    private void tieUnless(boolean oneWay, Rim.Piece piece, double[] row) {
        if (!oneWay) {
            tie(piece.edge(), row);
        }
    }

    private static double[] row(int field, double value) {
        double[] row = new double[Section.FIELDS];
        row[field] = value;
        return row;
    }

    private static double[] pair(int field, double x, double y) {
        double[] row = new double[Section.FIELDS];
        row[field] = x;
        row[field + 1] = y;
        return row;
    }

    private static double[] displacement(double x, double y, double[] turn) {
        return new double[] {x, y, 0, turn[0] * x, turn[0] * y, turn[1] * x, turn[1] * y};
    }

    /** Returns a height of a stack, from its mid-height [m]. */
    static double height(Section section, Height height) {
        double half = section.laminate.thickness() / 2;
        return switch (height) {
            case OUTSIDE -> half;
            case MIDDLE -> 0;
            case INSIDE -> -half;
        };
    }

    private void tie(int edge, double[] row) {
        ties.add(grid.ends[2 * edge], row);
        ties.add(grid.ends[2 * edge + 1], row);
        for (int k = 0; k < basis.perEdge; k++) {
            ties.add(grid.vertices + edge * basis.perEdge + k, row);
        }
    }

    /** Ties the foam's rotation to the skins' wherever a triangle without foam has a share. */
    private void turnTogether(Section[] sections) {
        boolean[] corner = new boolean[grid.vertices];
        boolean[] side = new boolean[grid.edges()];
        for (int t = 0; t < grid.triangles(); t++) {
            if (sections[t].together) {
                for (int i = 0; i < 3; i++) {
                    corner[grid.corners[3 * t + i]] = true;
                    side[grid.sides[3 * t + i]] = true;
                }
                int bubbles = grid.vertices + grid.edges() * basis.perEdge + t * basis.bubbles;
                for (int k = 0; k < basis.bubbles; k++) {
                    together(bubbles + k);
                }
            }
        }
        for (int v = 0; v < grid.vertices; v++) {
            if (corner[v]) {
                together(v);
            }
        }
        for (int e = 0; e < grid.edges(); e++) {
            for (int k = 0; side[e] && k < basis.perEdge; k++) {
                together(grid.vertices + e * basis.perEdge + k);
            }
        }
    }

    private void together(int function) {
        ties.add(function, 0, 0, 0, 1, 0, -1, 0);
        ties.add(function, 0, 0, 0, 0, 1, 0, -1);
    }

    /** Returns whether a rubber seal or another stretch list has this piece. */
    static boolean isOn(Rim.Piece piece, List<Stretch> stretches) {
        return stretches.stream().anyMatch(piece::isOn);
    }
}
