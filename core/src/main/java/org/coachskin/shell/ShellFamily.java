package org.coachskin.shell;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Region;
import org.coachskin.panel.Zone;
import org.coachskin.sparse.FactorPlan;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * Panels that differ in the stacks of some parts and in turned edges, forecast from a few of them
 * that are solved.
 *
 * <p>All are cut into the same triangles, which follow the rim of every part on offer. Any other
 * member's displacement is sought among the sums of the solved ones (Galerkin on their span), so
 * that it costs a system of as many unknowns as were solved. Of what it might be it finds the one
 * of least energy: a member comes out too stiff as a rule, and exact where it is one of those
 * solved.
 *
 * <p><b>Limits.</b> What rubber seals do that let go or go solid is taken in proportion from those
 * solved; no bound holds for it. The parts on offer reach no edge that is held and no pad, and none
 * of them loses its foam. Immutable; safe to share.
 */
public final class ShellFamily {

    private static final int W = 2;
    private static final int STRAINS = Section.STRAINS;

    private final Grid grid;
    private final Basis basis;
    private final ShellPanel first;
    private final List<double[]> solutions = new ArrayList<>();

    /** What the load adds to each member solved, with seals as they are. */
    private final List<double[]> settled = new ArrayList<>();

    /** Parts with one stack each: a triangle of it, and the integrals of products of strains. */
    private final List<Part> parts = new ArrayList<>();

    /** What seals and pads that yield do, and work of the load, solution by solution. */
    private final DMatrixRMaj fixed;

    private final DMatrixRMaj work;

    /** With seals as even springs, and what the load adds where they let go and go solid. */
    private static final class Solved {
        private final double[] linear;
        private final double[] settled;

        private Solved(double[] linear, double[] settled) {
            this.linear = linear;
            this.settled = settled;
        }

        static Solved of(ShellPanel shell, double[] forces, LoadCase load) {
            List<Load> all = new ArrayList<>(load.standing());
            all.addAll(load.loads());
            double[] rest = shell.solve(load.standing()).solution();
            double[] under = shell.solve(all).solution();
            return new Solved(shell.linear(forces), ShellPanel.sum(under, rest, -1));
        }
    }

    private record Part(int triangle, DMatrixRMaj integrals) {}

    /**
     * Solves some members.
     *
     * @param bare the panel without any of what is on offer
     * @param regions every part on offer, the widest first
     * @param load with what stands beside it
     * @param order of the polynomials, 2 to 8
     * @param solved members to solve; at least one
     */
    public ShellFamily(
            Panel bare, List<Region> regions, LoadCase load, int order, List<Panel> solved) {
        List<Load> loads = load.loads();
        List<Zone> zones = new ArrayList<>();
        regions.forEach(region -> zones.add(new Zone("on offer", region, bare.laminate(), 0)));
        zones.addAll(bare.zones());
        Panel template = bare.withZones(zones);
        grid = Drawn.grid(template, Drawn.mesh(template, loads), order);
        basis = new Basis(order);
        first = new ShellPanel(solved.get(0), grid, order, false);
        List<FactorPlan> plans = List.of(first.plan());
        double[] forces = first.load(loads);
        List<Solved> found = new ArrayList<>();
        found.add(Solved.of(first, forces, load));
        found.addAll(
                solved.subList(1, solved.size()).parallelStream()
                        .map(panel -> new ShellPanel(panel, grid, order, false, plans))
                        .map(shell -> Solved.of(shell, forces, load))
                        .toList());
        for (Solved one : found) {
            solutions.add(one.linear);
            settled.add(one.settled);
        }
        int m = solutions.size();
        work = new DMatrixRMaj(m, 1);
        fixed = new DMatrixRMaj(m, m);
        for (int i = 0; i < m; i++) {
            work.set(i, 0, Work.dot(forces, solutions.get(i)));
            for (int j = 0; j < m; j++) {
                fixed.set(i, j, yielding(solutions.get(i), solutions.get(j)));
            }
        }
        integrate(template);
    }

    private double yielding(double[] x, double[] y) {
        // Nothing has moved: rubber is an even spring all round.
        double sum = first.seal.energy(new double[x.length], x, y);
        for (Pads.Hold hold : first.holds) {
            sum += hold.isRigid() ? 0 : hold.stiffness * hold.of(x) * hold.of(y);
        }
        return sum;
    }

    /** Integrates the products of all strains of all solutions, part by part. */
    private void integrate(Panel template) {
        Map<List<Boolean>, List<Integer>> members = new HashMap<>();
        List<List<Integer>> ordered = new ArrayList<>();
        for (int t = 0; t < grid.triangles(); t++) {
            double[] c = grid.centre(t);
            List<Boolean> within =
                    template.zones().stream()
                            .map(zone -> zone.region().holds(template, c[0], c[1]))
                            .toList();
            List<Integer> part = members.get(within);
            if (part == null) {
                part = new ArrayList<>();
                members.put(within, part);
                ordered.add(part);
            }
            part.add(t);
        }
        ReferenceTriangle reference = first.model.reference;
        parts.addAll(
                ordered.parallelStream()
                        .map(part -> new Part(part.get(0), integrals(part, reference)))
                        .toList());
    }

    private DMatrixRMaj integrals(List<Integer> part, ReferenceTriangle reference) {
        int m = solutions.size();
        int n = m * STRAINS;
        double[] sum = new double[n * n];
        double[] g = new double[3 * basis.size];
        double[] gradients = new double[Section.GRADIENTS];
        double[] strains = new double[n];
        Section section = first.model.section(0);
        for (int t : part) {
            double[][] fields = new double[m][];
            for (int i = 0; i < m; i++) {
                fields[i] = first.model.fields(solutions.get(i), t);
            }
            for (int q = 0; q < reference.points; q++) {
                double area = grid.elements[t].gradients(reference, q, g);
                for (int i = 0; i < m; i++) {
                    Model.gradients(fields[i], g, gradients);
                    section.strains(gradients, strains, i * STRAINS);
                }
                for (int i = 0; i < n; i++) {
                    double by = area * strains[i];
                    for (int j = 0; j <= i; j++) {
                        sum[i * n + j] += by * strains[j];
                    }
                }
            }
        }
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++) {
                sum[j * n + i] = sum[i * n + j];
            }
        }
        return new DMatrixRMaj(n, n, true, sum);
    }

    /**
     * Returns the forecast deflection of a member at a place [m], positive inward, with seals as
     * even springs.
     */
    public double deflection(Panel member, double x, double y) {
        return deflection(solutions, member, x, y);
    }

    /**
     * Returns the same with seals that let go and go solid: what they make of each member solved,
     * in the shares they have in the one that is forecast.
     */
    public double settled(Panel member, double x, double y) {
        return deflection(settled, member, x, y);
    }

    private double deflection(List<double[]> all, Panel member, double x, double y) {
        double[] local = new double[2];
        int t = grid.locate(x, y, local);
        if (t < 0) {
            throw new IllegalArgumentException("there is no panel at " + x + ", " + y + " m");
        }
        double[] shares = shares(member);
        double sum = 0;
        for (int i = 0; i < shares.length; i++) {
            sum -= shares[i] * first.model.gradients(all.get(i), t, local)[3 * W];
        }
        return sum;
    }

    /** Returns the forecast work of the loads on a member, twice the energy it takes up [N m]. */
    public double work(Panel member) {
        return Work.dot(shares(member), work.data);
    }

    /** Returns how much of each solution there is in a member's. */
    private double[] shares(Panel member) {
        int m = solutions.size();
        Section[] sections = Sections.of(member, grid, false);
        DMatrixRMaj k = fixed.copy();
        for (Part part : parts) {
            add(part, sections[part.triangle()], k);
        }
        EndWall wall = new EndWall(first.model.with(sections), member);
        for (int j = 0; j < m && wall.count() > 0; j++) {
            double[] forces = new double[first.model.unknowns.count];
            wall.addForces(solutions.get(j), forces);
            for (int i = 0; i < m; i++) {
                k.add(i, j, Work.dot(forces, solutions.get(i)));
            }
        }
        DMatrixRMaj shares = new DMatrixRMaj(m, 1);
        if (!CommonOps_DDRM.solve(k, work, shares)) {
            throw new IllegalStateException("two of the solved panels are the same");
        }
        return shares.data;
    }

    /** Adds what a part resists with a stack. */
    private void add(Part part, Section section, DMatrixRMaj k) {
        int m = solutions.size();
        int n = m * STRAINS;
        double[] integrals = part.integrals().data;
        for (int i = 0; i < m; i++) {
            for (int j = 0; j < m; j++) {
                double sum = 0;
                for (int r = 0; r < STRAINS; r++) {
                    int row = (i * STRAINS + r) * n + j * STRAINS;
                    for (int s = 0; s < STRAINS; s++) {
                        sum += section.rigidity[r * STRAINS + s] * integrals[row + s];
                    }
                }
                k.add(i, j, sum);
            }
        }
    }
}
