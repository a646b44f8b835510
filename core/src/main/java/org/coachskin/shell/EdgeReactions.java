package org.coachskin.shell;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Load;
import org.coachskin.sparse.FactorPlan;
import org.coachskin.sparse.Pattern;
import org.coachskin.sparse.SymmetricMatrix;

/**
 * What held edges do to a panel: the forces that a panel which nothing holds would need to follow
 * the same fields, turned into forces per length that do the same work on every function of the
 * basis. So they balance the loads as the solution does, to rounding.
 */
final class EdgeReactions {

    private final ShellPanel shell;
    private final Model free;
    private final List<Rim.Piece> held = new ArrayList<>();

    /** Functions along held edges, numbered as they are met. */
    private final Map<Integer, Integer> numbers = new LinkedHashMap<>();

    EdgeReactions(ShellPanel shell) {
        this.shell = shell;
        Model model = shell.model;
        Basis basis = model.reference.basis;
        Unknowns all = new Unknowns(model.grid, basis, new Unknowns.Ties());
        Section[] sections = new Section[model.grid.triangles()];
        Arrays.setAll(sections, model::section);
        free = new Model(model.grid, model.reference, sections, all);
        for (Rim.Piece piece : shell.rim) {
            if (isHeld(piece)) {
                held.add(piece);
                for (int f : functions(piece)) {
                    numbers.putIfAbsent(f, numbers.size());
                }
            }
        }
    }

    private boolean isHeld(Rim.Piece piece) {
        return shell.panel.support().fittings().stream()
                .anyMatch(f -> f instanceof Fitting.HeldEdge edge && piece.isOn(edge.stretch()));
    }

    private int[] functions(Rim.Piece piece) {
        return free.unknowns.ofEdge(free.grid, piece.edge());
    }

    /** Returns the reactions in an answer to these loads. */
    List<EdgeReaction> of(List<Load> loads, ShellResponse response) {
        if (held.isEmpty()) {
            return List.of();
        }
        double[] force = forces(loads, response);
        int n = numbers.size();
        double[] right = new double[Section.FIELDS * n];
        numbers.forEach(
                (function, number) -> {
                    for (int f = 0; f < Section.FIELDS; f++) {
                        right[f * n + number] = force[free.unknowns.start(function) + f];
                    }
                });
        SymmetricMatrix traces = traces();
        FactorPlan.of(traces.pattern()).factor(traces).solver().solve(right, right, Section.FIELDS);
        List<EdgeReaction> out = new ArrayList<>();
        for (Rim.Piece piece : held) {
            add(piece, right, out);
        }
        return out;
    }

    /** Returns K x less all forces but those of held edges, seven fields a function. */
    private double[] forces(List<Load> loads, ShellResponse response) {
        Grid grid = free.grid;
        double[] x = new double[free.unknowns.count];
        double[] load = new double[x.length];
        double[] fields = new double[Section.FIELDS];
        for (int f = 0; f * Section.FIELDS < x.length; f++) {
            shell.model.unknowns.fields(response.solution(), f, fields, 0);
            System.arraycopy(fields, 0, x, free.unknowns.start(f), Section.FIELDS);
        }
        EndWall wall = new EndWall(free, shell.panel);
        Loading loading = new Loading(free, wall);
        double[][] bows = new double[grid.triangles()][];
        loads.forEach(part -> loading.add(part, load, bows));
        List<Fitting> fittings = shell.panel.support().fittings();
        double[] grips = shell.forces(response.solution());
        List<Pads.Hold> holds = Pads.of(free, fittings);
        for (int i = 0; i < grips.length; i++) {
            for (int u = 0; u < load.length; u++) {
                load[u] += grips[i] * holds.get(i).mean[u];
            }
        }
        SealLine seal = new SealLine(free, shell.rim, fittings);
        for (int i = 0; i < seal.points.size(); i++) {
            Fitting.RubberSeal rubber = seal.points.get(i).seal;
            double w = seal.deflection(i, x);
            seal.addForce(i, rubber.forceAt(rubber.squeeze() - w), load);
        }
        double[] out = new double[x.length];
        free.addForces(x, out);
        wall.addForces(x, out);
        for (int u = 0; u < out.length; u++) {
            out[u] -= load[u];
        }
        return out;
    }

    /** Returns the integrals along the held rim of products of two functions. */
    private SymmetricMatrix traces() {
        Pattern.Builder builder = Pattern.of(numbers.size());
        List<double[]> products = new ArrayList<>();
        for (Rim.Piece piece : held) {
            builder.element(own(piece));
            int size = free.reference.basis.order + 1;
            double[] product = new double[size * size];
            places(
                    piece,
                    (place, length, trace) -> {
                        for (int i = 0; i < size; i++) {
                            for (int j = 0; j <= i; j++) {
                                product[i * size + j] += length * trace[i] * trace[j];
                            }
                        }
                    });
            products.add(product);
        }
        SymmetricMatrix out = new SymmetricMatrix(builder.build());
        for (int i = 0; i < products.size(); i++) {
            out.add(i, products.get(i));
        }
        return out;
    }

    private int[] own(Rim.Piece piece) {
        int[] out = functions(piece);
        for (int i = 0; i < out.length; i++) {
            out[i] = Objects.requireNonNull(numbers.get(out[i]));
        }
        return out;
    }

    private interface Visit {
        void at(double[] place, double length, double[] trace);
    }

    private void places(Rim.Piece piece, Visit visit) {
        int points = free.reference.basis.order + 1;
        GaussIntegrator gauss = ReferenceTriangle.line(points);
        for (int q = 0; q < points; q++) {
            double s = gauss.getPoint(q);
            double[] place = free.grid.onEdge(piece.edge(), s);
            double length = gauss.getWeight(q) * Math.hypot(place[2], place[3]);
            visit.at(place, length, free.reference.basis.onEdge(s));
        }
    }

    private void add(Rim.Piece piece, double[] perLength, List<EdgeReaction> out) {
        int n = numbers.size();
        int[] own = own(piece);
        double reference = free.section(piece.triangle()).reference;
        places(
                piece,
                (place, length, trace) -> {
                    double[] f = new double[Section.FIELDS];
                    for (int i = 0; i < own.length; i++) {
                        for (int k = 0; k < f.length; k++) {
                            f[k] += trace[i] * perLength[k * n + own[i]];
                        }
                    }
                    double size = Math.hypot(place[2], place[3]);
                    double sign =
                            place[3] * piece.normalX() - place[2] * piece.normalY() < 0 ? -1 : 1;
                    double nx = sign * place[3] / size;
                    double ny = -sign * place[2] / size;
                    double mx = f[3] + f[5] + reference * f[0];
                    double my = f[4] + f[6] + reference * f[1];
                    out.add(
                            new EdgeReaction(
                                    piece.side(),
                                    place[0],
                                    place[1],
                                    nx,
                                    ny,
                                    length,
                                    f[0],
                                    f[1],
                                    f[2],
                                    mx * nx + my * ny,
                                    my * nx - mx * ny));
                });
    }
}
