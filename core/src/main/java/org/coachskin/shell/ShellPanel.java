package org.coachskin.shell;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Load;
import org.coachskin.panel.Panel;
import org.coachskin.sparse.Factor;
import org.coachskin.sparse.FactorPlan;
import org.coachskin.sparse.Inverse;
import org.coachskin.sparse.Order;
import org.coachskin.sparse.Pattern;
import org.coachskin.sparse.Solver;
import org.coachskin.sparse.SymmetricMatrix;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.jspecify.annotations.Nullable;

/** One panel on one grid, factored: solves any load. Immutable; safe to share between threads. */
final class ShellPanel {

    /** How much stiffer than the panel a prop is that counts as rigid where it has to be one. */
    private static final double RIGID = 1e5;

    final Panel panel;
    final boolean firstOrder;
    final Model model;
    final List<Rim.Piece> rim;
    final List<Pads.Hold> holds;
    final SealLine seal;
    private final EndWall wall;
    private final SymmetricMatrix matrix;
    private final List<int[]> own;
    private final Factor factor;
    private final Contact contact;

    /** Solutions of unit forces on the rigid holds, and what they do to one another. */
    private final List<double[]> unitForces = new ArrayList<>();

    private final List<Pads.Hold> rigid = new ArrayList<>();
    private final DMatrixRMaj flexibility;

    ShellPanel(Panel panel, Grid grid, int order, boolean firstOrder) {
        this(panel, grid, order, firstOrder, List.of());
    }

    /**
     * @param known plans of panels much alike: one whose pattern is this panel's serves again
     */
    ShellPanel(Panel panel, Grid grid, int order, boolean firstOrder, List<FactorPlan> known) {
        this.panel = panel;
        this.firstOrder = firstOrder;
        Basis basis = new Basis(order);
        Section[] sections = Sections.of(panel, grid, firstOrder);
        rim = Rim.of(grid);
        List<Fitting> fittings = panel.support().fittings();
        Unknowns unknowns = Holding.unknowns(grid, basis, sections, rim, fittings);
        model = new Model(grid, new ReferenceTriangle(basis, 2), sections, unknowns);
        holds = Pads.of(model, fittings);
        seal = new SealLine(model, rim, fittings);
        wall = new EndWall(model, panel);
        Pattern.Builder builder = Pattern.of(unknowns.count);
        model.enter(builder);
        List<int[]> own = new ArrayList<>();
        for (Pads.Hold hold : holds) {
            int[] ids = touched(hold.mean);
            own.add(ids);
            builder.element(ids);
        }
        wall.enter(builder);
        seal.enter(builder);
        this.own = own;
        FactorPlan plan =
                known.stream()
                        .filter(other -> builder.makes(other.pattern()))
                        .findFirst()
                        .orElseGet(() -> plan(builder.build(), grid, basis, unknowns));
        matrix = stiffness(1, plan.pattern());
        factor = plan.factor(matrix);
        holds.stream().filter(Pads.Hold::isRigid).forEach(rigid::add);
        flexibility = new DMatrixRMaj(rigid.size(), rigid.size());
        if (stands()) {
            unitForces.addAll(together(rigid.stream().map(hold -> hold.mean).toList()));
            for (int j = 0; j < rigid.size(); j++) {
                for (int i = 0; i < rigid.size(); i++) {
                    flexibility.set(i, j, rigid.get(i).of(unitForces.get(j)));
                }
            }
        }
        contact =
                new Contact(
                        seal,
                        new AtSeal(
                                seal,
                                factor,
                                rigid.stream().map(hold -> hold.mean).toList(),
                                this::holding,
                                this::linear));
    }

    private static FactorPlan plan(Pattern pattern, Grid grid, Basis basis, Unknowns unknowns) {
        return FactorPlan.of(pattern, Order.dissection(pattern, places(grid, basis, unknowns)));
    }

    /** Returns the stiffness with rigid holds propped {@code prop} times as stiffly as usual. */
    private SymmetricMatrix stiffness(double prop, Pattern pattern) {
        SymmetricMatrix out = new SymmetricMatrix(pattern);
        model.addStiffness(out);
        int first = model.grid.triangles();
        for (int i = 0; i < holds.size(); i++) {
            Pads.Hold hold = holds.get(i);
            double k = hold.isRigid() ? prop * propping(hold.direction) : hold.stiffness;
            out.add(first + i, square(hold.mean, own.get(i), k));
        }
        wall.addStiffness(out, first + holds.size());
        seal.addStiffness(out, first + holds.size() + wall.count());
        return out;
    }

    /**
     * Stiffness that props a rigid hold while the forces that make it rigid are not yet known; any
     * of the panel's own size will do.
     */
    private double propping(Fitting.Direction direction) {
        Section section = model.section(0);
        double side = Math.min(panel.width(), panel.length());
        if (direction == Fitting.Direction.Z) {
            return (section.layered.dff().m11()
                            + 2 * section.layered.dfg().m11()
                            + section.layered.dgg().m11())
                    / (side * side);
        }
        return section.layered.a().m11();
    }

    private static int[] touched(double[] mean) {
        List<Integer> ids = new ArrayList<>();
        for (int i = 0; i < mean.length; i++) {
            if (mean[i] != 0) {
                ids.add(i);
            }
        }
        return ids.stream().mapToInt(i -> i).toArray();
    }

    private static double[] square(double[] mean, int[] ids, double k) {
        double[] out = new double[ids.length * ids.length];
        for (int i = 0; i < ids.length; i++) {
            for (int j = 0; j <= i; j++) {
                out[i * ids.length + j] = k * mean[ids[i]] * mean[ids[j]];
            }
        }
        return out;
    }

    static double[] places(Grid grid, Basis basis, Unknowns unknowns) {
        double[] place = new double[3 * unknowns.count];
        for (int v = 0; v < grid.vertices; v++) {
            put(place, unknowns, v, grid.x[v], grid.y[v]);
        }
        for (int e = 0; e < grid.edges(); e++) {
            double[] middle = grid.onEdge(e, 0.5);
            for (int k = 0; k < basis.perEdge; k++) {
                put(place, unknowns, unknowns.ofEdge(e, k), middle[0], middle[1]);
            }
        }
        for (int t = 0; t < grid.triangles(); t++) {
            double[] c = grid.centre(t);
            int[] functions = unknowns.functions(grid, t);
            for (int k = basis.size - basis.bubbles; k < basis.size; k++) {
                put(place, unknowns, functions[k], c[0], c[1]);
            }
        }
        return place;
    }

    private static void put(double[] place, Unknowns unknowns, int function, double x, double y) {
        for (int k = 0; k < unknowns.width(function); k++) {
            int at = 3 * (unknowns.start(function) + k);
            place[at] = x;
            place[at + 1] = y;
        }
    }

    /** Returns whether what holds the panel leaves it no way to move freely. */
    boolean stands() {
        return factor.nullPivots().isEmpty();
    }

    /** Returns in words how the panel can move freely. */
    String mechanism() {
        return Mechanism.words(model, factor.nullVectors(matrix));
    }

    /** Returns the mass of panel and turned edges. */
    SymmetricMatrix mass() {
        SymmetricMatrix out = new SymmetricMatrix(matrix.pattern());
        model.addMass(out);
        wall.addMass(out, model.grid.triangles() + holds.size());
        return out;
    }

    /**
     * Returns the stiffness with the panel closed at rest: rubber as even springs, rigid holds as
     * props.
     */
    SymmetricMatrix atRest() {
        return stiffness(RIGID, matrix.pattern());
    }

    /**
     * Returns the stiffness that {@link #inverse} inverts where rigid holds stay where they are.
     */
    SymmetricMatrix stiffness() {
        return matrix;
    }

    /** Returns what solves for the panel at rest, rubber as even springs, rigid holds held. */
    Inverse inverse() {
        Solver solver = factor.solver();
        int n = model.unknowns.count;
        return (b, x, count) -> {
            solver.solve(b, x, count);
            for (int c = 0; c < count; c++) {
                double[] held = heldRigidly(Arrays.copyOfRange(x, c * n, (c + 1) * n));
                System.arraycopy(held, 0, x, c * n, n);
            }
        };
    }

    /** Returns how matrices of this panel are factored. */
    FactorPlan plan() {
        return factor.plan();
    }

    /**
     * Returns the solution under a load, seals as even springs, and after it the force of each
     * rigid hold on the panel [N].
     */
    double[] linear(double[] load) {
        return heldRigidly(factor.solve(load));
    }

    /** Returns the solutions under several loads, which is quicker than one by one. */
    List<double[]> linearAll(List<double[]> loads) {
        return together(loads).stream().map(this::heldRigidly).toList();
    }

    /** Returns A^-1 of several loads, which is quicker than one by one. */
    private List<double[]> together(List<double[]> loads) {
        int n = model.unknowns.count;
        double[] all = new double[n * loads.size()];
        for (int i = 0; i < loads.size(); i++) {
            System.arraycopy(loads.get(i), 0, all, i * n, n);
        }
        factor.solver().solve(all, all, loads.size());
        List<double[]> solutions = new ArrayList<>();
        for (int i = 0; i < loads.size(); i++) {
            solutions.add(Arrays.copyOfRange(all, i * n, (i + 1) * n));
        }
        return solutions;
    }

    /**
     * Returns the forces against the rigid holds that take back how they have moved.
     *
     * @param moved of each rigid hold
     */
    private double[] holding(double[] moved) {
        DMatrixRMaj force = new DMatrixRMaj(rigid.size(), 1);
        if (!rigid.isEmpty()) {
            CommonOps_DDRM.solve(flexibility, DMatrixRMaj.wrap(rigid.size(), 1, moved), force);
        }
        return force.data;
    }

    private double[] heldRigidly(double[] propped) {
        int n = propped.length;
        double[] x = Arrays.copyOf(propped, n + rigid.size());
        double[] force = holding(rigid.stream().mapToDouble(hold -> hold.of(propped)).toArray());
        for (int j = 0; j < rigid.size(); j++) {
            double[] unit = unitForces.get(j);
            for (int i = 0; i < unit.length; i++) {
                x[i] -= force[j] * unit[i];
            }
            x[n + j] = -force[j];
        }
        return x;
    }

    /**
     * Returns what the panel does under loads acting together, counted from the unbent panel; seals
     * push with it.
     */
    ShellResponse solve(List<Load> loads) {
        double[] @Nullable [] free = new double[model.grid.triangles()][];
        return new ShellResponse(this, settled(even(loads, free)), free);
    }

    /** Returns what loads do on the unknowns, seals and heat left out. */
    double[] load(List<Load> loads) {
        double[] load = new double[model.unknowns.count];
        Loading loading = new Loading(model, wall);
        double[] @Nullable [] free = new double[model.grid.triangles()][];
        loads.forEach(part -> loading.add(part, load, free));
        return load;
    }

    /** Returns the solution under loads and the push of seals that are even springs. */
    double[] even(List<Load> loads, double[] @Nullable [] free) {
        double[] load = new double[model.unknowns.count];
        Loading loading = new Loading(model, wall);
        for (Load part : loads) {
            loading.add(part, load, free);
        }
        seal.addWorkingForce(load);
        return linear(load);
    }

    /** Returns the solution in which seals let go and go solid as they must. */
    double[] settled(double[] even) {
        return seal.points.isEmpty() ? even : contact.settle(even);
    }

    /** Returns the force of each hold on the panel [N], in the order of {@link #holds}. */
    double[] forces(double[] solution) {
        double[] out = new double[holds.size()];
        for (int i = 0; i < out.length; i++) {
            Pads.Hold hold = holds.get(i);
            out[i] =
                    hold.isRigid()
                            ? solution[model.unknowns.count + rigid.indexOf(hold)]
                            : -hold.stiffness * hold.of(solution);
        }
        return out;
    }

    /** Returns the solution under a unit force inward at a place. */
    double[] unitAt(double x, double y) {
        double[] local = new double[2];
        int t = model.grid.locate(x, y, local);
        double[] load = new double[model.unknowns.count];
        model.addPoint(t, local, Loading.outward(-1), load);
        return linear(load);
    }

    /** Returns a solution on even springs as it is where seals stay as they are when settled. */
    double[] tangent(double[] settled, double[] even) {
        return seal.points.isEmpty() ? even : contact.tangent(settled, even);
    }

    /** Returns the stacks of another panel of this one's shape, triangle by triangle. */
    Section[] sections(Panel other) {
        return Sections.of(other, model.grid, firstOrder);
    }

    /** Returns a + by * b. */
    static double[] sum(double[] a, double[] b, double by) {
        double[] out = a.clone();
        for (int i = 0; i < out.length; i++) {
            out[i] += by * b[i];
        }
        return out;
    }
}
