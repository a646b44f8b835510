package org.coachskin.shell;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.coachskin.analysis.Field;
import org.coachskin.analysis.Held;
import org.coachskin.analysis.Owed;
import org.coachskin.analysis.Response;
import org.coachskin.analysis.SectionForces;
import org.coachskin.laminate.SectionState;
import org.coachskin.laminate.Triple;
import org.coachskin.panel.Panel;
import org.jspecify.annotations.Nullable;

/** What a panel does under one load on its real supports. Immutable; safe to share. */
public final class ShellResponse implements Response {

    private static final int W = 2;

    private static final double NEAR = 0.02;

    /** Where each triangle is looked at, in its reference coordinates. */
    private static final double[][] LOOK = {
        {1.0 / 3, 1.0 / 3},
        {NEAR, NEAR},
        {1 - 2 * NEAR, NEAR},
        {NEAR, 1 - 2 * NEAR},
        {0.5, NEAR},
        {0.5 - NEAR / 2, 0.5 - NEAR / 2},
        {NEAR, 0.5}
    };

    private final ShellPanel shell;
    private final double[] solution;

    /** Strain without force of each triangle, Section.STRAINS values; null where there is none. */
    private final double[] @Nullable [] free;

    /** What is taken from another state of the seal; null for a state of its own. */
    private final @Nullable ShellResponse from;

    private final @Nullable ShellResponse less;

    ShellResponse(ShellPanel shell, double[] solution, double[] @Nullable [] free) {
        this(shell, solution, free, null, null);
    }

    private ShellResponse(
            ShellPanel shell,
            double[] solution,
            double[] @Nullable [] free,
            @Nullable ShellResponse from,
            @Nullable ShellResponse less) {
        this.shell = shell;
        this.solution = solution;
        this.free = free;
        this.from = from;
        this.less = less;
    }

    /** Returns what this has more than {@code other}, an answer of the same panel. */
    ShellResponse minus(ShellResponse other) {
        double[] @Nullable [] more = new double[free.length][];
        for (int t = 0; t < more.length; t++) {
            double[] mine = free[t];
            double[] theirs = other.free[t];
            if (theirs == null) {
                more[t] = mine;
            } else {
                more[t] =
                        ShellPanel.sum(mine == null ? new double[theirs.length] : mine, theirs, -1);
            }
        }
        double[] solutions = ShellPanel.sum(solution, other.solution, -1);
        return new ShellResponse(shell, solutions, more, this, other);
    }

    double[] solution() {
        return solution;
    }

    @Override
    public String method() {
        return "finite elements of order "
                + shell.model.reference.basis.order
                + ", "
                + shell.model.grid.triangles()
                + " triangles, "
                + (shell.firstOrder ? "first-order shear theory" : "layered theory");
    }

    @Override
    public double deflection(double x, double y) {
        double[] local = new double[2];
        int t = triangle(x, y, local);
        return -shell.model.gradients(solution, t, local)[3 * W];
    }

    /**
     * By energy: with y the solution under a unit force at the place, rubber free, soft or solid as
     * it is under x, the deflection is x' K y, and skins, foam and seals each have their share of
     * K.
     */
    @Override
    public Owed owed(double x, double y) {
        double[] parts = shares(shell.unitAt(x, y));
        return new Owed(deflection(x, y) - parts[0] - parts[1], parts[0], parts[1]);
    }

    /** Returns the shares of foam and seals in the deflection where a unit force does this. */
    private double[] shares(double[] unit) {
        if (from != null && less != null && !areEven(from, less)) {
            return ShellPanel.sum(from.shares(unit), less.shares(unit), -1);
        }
        double[] there = from == null ? shell.tangent(solution, unit) : unit;
        double foam = new Work(shell.model, solution, there).against(section -> section.foamShear);
        double[] state = from == null ? solution : from.solution;
        return new double[] {foam, shell.seal.energy(state, solution, there)};
    }

    /**
     * To first order: - x' (K' - K) y, y the solution under a unit force at the place with rubber
     * free, soft or solid as it is under x.
     */
    @Override
    public List<Double> nearby(List<Panel> others, double x, double y) {
        List<Section[]> stacks = others.stream().map(shell::sections).toList();
        double[] changes = changes(stacks, shell.unitAt(x, y));
        double here = deflection(x, y);
        return Arrays.stream(changes).mapToObj(change -> here + change).toList();
    }

    /** Returns by how much the deflection changes with other stacks. */
    private double[] changes(List<Section[]> stacks, double[] unit) {
        if (from != null && less != null && !areEven(from, less)) {
            return ShellPanel.sum(from.changes(stacks, unit), less.changes(stacks, unit), -1);
        }
        double[] there = from == null ? shell.tangent(solution, unit) : unit;
        Work work = new Work(shell.model, solution, there);
        double same = work.against(section -> section.stiffness);
        return stacks.stream().mapToDouble(other -> same - work.against(other)).toArray();
    }

    /** Returns whether rubber is an even spring everywhere in both, so that they go as one. */
    private static boolean areEven(ShellResponse one, ShellResponse other) {
        return one.isEven() && other.isEven();
    }

    private boolean isEven() {
        if (from != null && less != null) {
            return areEven(from, less);
        }
        return shell.seal.isEven(solution);
    }

    private int triangle(double x, double y, double[] local) {
        int t = shell.model.grid.locate(x, y, local);
        if (t < 0) {
            throw new IllegalArgumentException(
                    "there is no panel at " + x + " m from left, " + y + " m from front");
        }
        return t;
    }

    private double[] strains(int t, double[] local) {
        double[] strain = new double[Section.STRAINS];
        shell.model.section(t).strains(shell.model.gradients(solution, t, local), strain, 0);
        return strain;
    }

    /** Returns the strains at a place beyond those that need no force. */
    double[] stretched(int t, double[] local) {
        double[] e = strains(t, local);
        double[] bow = free[t];
        return bow == null ? e : ShellPanel.sum(e, bow, -1);
    }

    @Override
    public SectionState state(double x, double y) {
        double[] local = new double[2];
        int t = triangle(x, y, local);
        double[] e = strains(t, local);
        double[] turn = shell.model.section(t).turn(0);
        Triple skins = new Triple(e[3], e[4], e[5]);
        Triple foam = new Triple(e[6], e[7], e[8]);
        Triple membrane = new Triple(e[0], e[1], e[2]).plus(skins, turn[0]).plus(foam, turn[1]);
        return new SectionState(membrane, skins, foam, e[9], e[10], e[11], e[12]);
    }

    @Override
    public SectionForces forces(double x, double y) {
        double[] local = new double[2];
        int t = triangle(x, y, local);
        double[] e = stretched(t, local);
        Section section = shell.model.section(t);
        double[] s = new double[Section.STRAINS];
        for (int r = 0; r < Section.STRAINS; r++) {
            for (int i = 0; i < Section.STRAINS; i++) {
                s[r] += section.rigidity[r * Section.STRAINS + i] * e[i];
            }
        }
        Triple n = new Triple(s[0], s[1], s[2]);
        Triple m = new Triple(s[3] + s[6], s[4] + s[7], s[5] + s[8]).plus(n, section.reference);
        return new SectionForces(n, m, s[9] + s[11], s[10] + s[12]);
    }

    @Override
    public Field movement() {
        return Sampling.of(
                shell.panel,
                shell.model.grid,
                (t, local) -> -shell.model.gradients(solution, t, local)[3 * W]);
    }

    /** Returns the middle of every triangle and six places near its rim. */
    @Override
    public List<Spot> spots() {
        List<Spot> spots = new ArrayList<>();
        for (Element element : shell.model.grid.elements) {
            addSpots(element, spots);
        }
        return spots;
    }

    /** Returns the same places of the triangle that holds a place. */
    @Override
    public List<Spot> beside(double x, double y) {
        List<Spot> spots = new ArrayList<>();
        addSpots(shell.model.grid.elements[triangle(x, y, new double[2])], spots);
        return spots;
    }

    private static void addSpots(Element element, List<Spot> spots) {
        for (double[] at : LOOK) {
            double[] place = element.map(at[0], at[1]);
            spots.add(new Spot(place[0], place[1]));
        }
    }

    /** Returns what pads and seals do in this state. */
    Held held() {
        List<Held.Grip> grips = new ArrayList<>();
        double[] forces = shell.forces(solution);
        for (int i = 0; i < forces.length; i++) {
            Pads.Hold hold = shell.holds.get(i);
            grips.add(new Held.Grip(hold.pad.name(), hold.direction, forces[i], hold.x, hold.y));
        }
        List<Held.SealPlace> seals = new ArrayList<>();
        shell.seal.points.forEach(point -> seals.add(place(point)));
        shell.seal.ends.forEach(point -> seals.add(place(point)));
        return new Held(grips, seals);
    }

    private Held.SealPlace place(SealLine.Point p) {
        double squeeze = p.seal.squeeze() - shell.seal.deflection(p, solution);
        return new Held.SealPlace(
                p.x, p.y, p.length, squeeze, p.seal.forceAt(squeeze), squeeze > p.seal.solid());
    }
}
