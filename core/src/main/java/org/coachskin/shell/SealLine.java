package org.coachskin.shell;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.coachskin.panel.Fitting;
import org.coachskin.sparse.Pattern;
import org.coachskin.sparse.SymmetricMatrix;

/**
 * Rubber seals as points along the rim: where they are, how much rim each stands for, and which
 * unknowns make the deflection there.
 */
final class SealLine {

    private static final int W = 2;

    /** Points, edge by edge. */
    final List<Point> points = new ArrayList<>();

    /** Ends of the edges, where the seal is read but stands for no length of its own. */
    final List<Point> ends = new ArrayList<>();

    /** Unknowns of each edge that has a seal. */
    private final List<int[]> edges = new ArrayList<>();

    private final int perEdge;

    /** How many unknowns the panel has. */
    final int unknowns;

    /** One point of a seal. */
    static final class Point {
        final Fitting.RubberSeal seal;

        /** Number among the edges with a seal. */
        final int edge;

        /** From the left edge [m]. */
        final double x;

        /** From the front edge [m]. */
        final double y;

        /** Rim it stands for [m]. */
        final double length;

        /** Share of each unknown of the edge in the deflection there. */
        private final double[] shares;

        private Point(
                Fitting.RubberSeal seal,
                int edge,
                double x,
                double y,
                double length,
                double[] shares) {
            this.seal = seal;
            this.edge = edge;
            this.x = x;
            this.y = y;
            this.length = length;
            this.shares = shares;
        }

        /**
         * Returns the force per length beyond that of an even spring, at an outward deflection
         * [N/m].
         */
        double beyond(double w) {
            double squeezed = seal.squeeze() - w;
            return seal.forceAt(squeezed) - seal.stiffness() * squeezed;
        }

        /** Returns the derivative of {@link #beyond}, and on the kink that of the soft side. */
        double slope(double w) {
            double squeezed = seal.squeeze() - w;
            if (squeezed < 0) {
                return seal.stiffness();
            }
            return squeezed > seal.solid() ? -(seal.solidFactor() - 1) * seal.stiffness() : 0;
        }
    }

    SealLine(Model model, List<Rim.Piece> rim, List<Fitting> fittings) {
        Basis basis = model.reference.basis;
        unknowns = model.unknowns.count;
        perEdge = basis.order + 1;
        GaussIntegrator gauss = ReferenceTriangle.line(perEdge);
        for (Fitting fitting : fittings) {
            if (fitting instanceof Fitting.RubberSeal seal) {
                for (Rim.Piece piece : rim) {
                    if (Holding.isOn(piece, seal.stretches())) {
                        add(model, seal, piece, gauss);
                    }
                }
            }
        }
    }

    private void add(Model model, Fitting.RubberSeal seal, Rim.Piece piece, GaussIntegrator gauss) {
        Unknowns unknowns = model.unknowns;
        int[] functions = unknowns.ofEdge(model.grid, piece.edge());
        List<Integer> own = new ArrayList<>();
        List<double[]> parts = new ArrayList<>();
        for (int f = 0; f < functions.length; f++) {
            for (int k = 0; k < unknowns.width(functions[f]); k++) {
                double share = unknowns.share(functions[f], k, W);
                if (share != 0) {
                    own.add(unknowns.start(functions[f]) + k);
                    parts.add(new double[] {f, share});
                }
            }
        }
        if (own.isEmpty()) {
            return;
        }
        int number = edges.size();
        edges.add(own.stream().mapToInt(i -> i).toArray());
        for (int q = 0; q < perEdge; q++) {
            double s = gauss.getPoint(q);
            points.add(point(model, seal, piece, number, s, gauss.getWeight(q), parts));
        }
        ends.add(point(model, seal, piece, number, 0, 0, parts));
        ends.add(point(model, seal, piece, number, 1, 0, parts));
    }

    /**
     * @param s way along the edge, 0 to 1
     * @param weight share of the edge that the point stands for
     * @param parts number of the function and share of each unknown of the edge
     */
    private static Point point(
            Model model,
            Fitting.RubberSeal seal,
            Rim.Piece piece,
            int number,
            double s,
            double weight,
            List<double[]> parts) {
        double[] place = model.grid.onEdge(piece.edge(), s);
        double[] trace = model.reference.basis.onEdge(s);
        double[] shares = new double[parts.size()];
        for (int i = 0; i < shares.length; i++) {
            shares[i] = trace[(int) parts.get(i)[0]] * parts.get(i)[1];
        }
        double length = weight * Math.hypot(place[2], place[3]);
        return new Point(seal, number, place[0], place[1], length, shares);
    }

    /** Enters the edges in a pattern. */
    void enter(Pattern.Builder pattern) {
        edges.forEach(pattern::element);
    }

    /**
     * Adds the stiffness of even springs.
     *
     * @param first number of the first edge among the elements of the pattern
     */
    void addStiffness(SymmetricMatrix matrix, int first) {
        for (int e = 0; e < edges.size(); e++) {
            int n = edges.get(e).length;
            double[] k = new double[n * n];
            for (int q = 0; q < perEdge; q++) {
                Point p = points.get(e * perEdge + q);
                for (int i = 0; i < n; i++) {
                    for (int j = 0; j <= i; j++) {
                        k[i * n + j] += p.seal.stiffness() * p.length * p.shares[i] * p.shares[j];
                    }
                }
            }
            matrix.add(first + e, k);
        }
    }

    /** Returns the outward deflection at a point. */
    double deflection(int point, double[] solution) {
        return deflection(points.get(point), solution);
    }

    double deflection(Point p, double[] solution) {
        int[] own = edges.get(p.edge);
        double w = 0;
        for (int i = 0; i < own.length; i++) {
            w += p.shares[i] * solution[own[i]];
        }
        return w;
    }

    /** Returns whether the rubber is an even spring at every point of a solution. */
    boolean isEven(double[] solution) {
        for (Point p : points) {
            if (p.slope(deflection(p, solution)) != 0) {
                return false;
            }
        }
        return true;
    }

    /**
     * Returns the work of the rubber between two solutions: none where it is free, more where it is
     * solid.
     *
     * @param state the solution under which it is one or the other
     */
    double energy(double[] state, double[] one, double[] other) {
        double sum = 0;
        for (Point p : points) {
            double stiffness = p.seal.stiffness() - p.slope(deflection(p, state));
            sum += stiffness * p.length * deflection(p, one) * deflection(p, other);
        }
        return sum;
    }

    /** Adds an outward force per length at a point to a load. */
    void addForce(int point, double perLength, double[] load) {
        Point p = points.get(point);
        int[] own = edges.get(p.edge);
        for (int i = 0; i < own.length; i++) {
            load[own[i]] += perLength * p.length * p.shares[i];
        }
    }

    /** Adds the force of the seals at their working squeeze. */
    void addWorkingForce(double[] load) {
        for (int i = 0; i < points.size(); i++) {
            addForce(i, points.get(i).seal.force(), load);
        }
    }
}
