package org.coachskin.shell;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.coachskin.NoAnswerException;
import org.coachskin.Problem;
import org.coachskin.Require;
import org.coachskin.analysis.Analysis;
import org.coachskin.analysis.CaseResponse;
import org.coachskin.analysis.Response;
import org.coachskin.analysis.Shares;
import org.coachskin.mesh.Mesh;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Panel;

/**
 * A panel of any outline, with openings and zones, on its real supports, by finite elements.
 *
 * <p><b>Seals.</b> A response under loads holds all that moves the panel from its unbent shape: the
 * loads and the push of rubber seals, which let go and go solid as they must. {@link #loadCases}
 * takes the closed panel at rest for what stands.
 *
 * <p><b>Limits.</b> Linear but for the seals, small deflections, shallow crown. Round corners of a
 * held edge are held in the deflection, and in the plane or against turning only where the edge is
 * held both along and across itself. A pad takes its force evenly.
 *
 * <p>Keeps the last meshes it has made and the last panels it has factored; safe to share between
 * threads. Responses are immutable.
 */
public final class ShellAnalysis implements Analysis {

    /** Order of the polynomials that answer. */
    public static final int ORDER = 4;

    private static final int KEPT = 8;

    /** How many factored panels are kept: as many as are judged side by side. */
    private static final int FACTORED = 3;

    private final int order;
    private final boolean firstOrder;
    private final double share;
    private final Map<Object, Mesh> meshes;
    private final Deque<Factored> factored = new ArrayDeque<>();

    /** Creates the analysis in layered theory, of the usual order. */
    public ShellAnalysis() {
        this(ORDER, false);
    }

    /**
     * Creates an analysis.
     *
     * @param order of the polynomials, 2 to 8
     * @param firstOrder whether skins and foam turn together, as in published tables
     */
    public ShellAnalysis(int order, boolean firstOrder) {
        this(order, firstOrder, 1);
    }

    /**
     * Creates an analysis on another mesh.
     *
     * @param order of the polynomials, 2 to 8
     * @param firstOrder whether skins and foam turn together, as in published tables
     * @param share of the usual length of all edges, above 0 [-]
     */
    public ShellAnalysis(int order, boolean firstOrder, double share) {
        this(order, firstOrder, share, new LinkedHashMap<>());
    }

    private ShellAnalysis(int order, boolean firstOrder, double share, Map<Object, Mesh> meshes) {
        if (order < 2 || order > 8) {
            throw new IllegalArgumentException("order " + order + " is not within 2 to 8");
        }
        this.order = order;
        this.firstOrder = firstOrder;
        this.share = Require.positive("share of the usual edges", share, "");
        this.meshes = meshes;
    }

    /** Returns the same analysis of another order, on the same meshes. */
    public ShellAnalysis ofOrder(int other) {
        return new ShellAnalysis(other, firstOrder, share, meshes);
    }

    /** Returns the same analysis in first-order theory, on the same meshes. */
    public ShellAnalysis inFirstOrder() {
        return new ShellAnalysis(order, true, share, meshes);
    }

    @Override
    public List<Response> cases(Panel panel, List<List<Load>> cases) {
        ShellPanel shell = shell(panel, cases);
        List<Response> out = new ArrayList<>();
        cases.forEach(loads -> out.add(shell.solve(loads)));
        return out;
    }

    @Override
    public List<CaseResponse> loadCases(Panel panel, List<LoadCase> cases) {
        ShellPanel shell = shell(panel, cases.stream().map(LoadCase::loads).toList());
        List<CaseResponse> out = new ArrayList<>();
        Map<List<Load>, ShellResponse> known = new HashMap<>();
        for (LoadCase load : cases) {
            ShellResponse standing = known.computeIfAbsent(load.standing(), shell::solve);
            ShellResponse total = shell.solve(together(load, 1));
            ShellResponse loaded = total.minus(standing);
            ShellResponse other = load.reverses() ? shell.solve(together(load, -1)) : standing;
            ShellResponse reversed =
                    load.reverses() ? other.minus(standing) : standing.minus(total);
            out.add(
                    new CaseResponse(
                            standing,
                            loaded,
                            reversed,
                            standing.held(),
                            total.held(),
                            other.held()));
        }
        return out;
    }

    /**
     * On a factored panel: rubber seals let go and go solid under the press as they must. The patch
     * is not followed by the mesh.
     */
    @Override
    public List<Double> swept(
            Panel panel, Load.Press press, List<Load> standing, List<Response.Spot> places) {
        return Sweep.of(shell(panel, List.of(standing)), press, standing, places);
    }

    private static List<Load> together(LoadCase load, int sign) {
        List<Load> all = new ArrayList<>(load.standing());
        load.loads().forEach(part -> all.add(sign > 0 ? part : part.reversed()));
        return all;
    }

    /** Returns the factored panel, that of the call before where it will do. */
    private ShellPanel shell(Panel panel, List<List<Load>> cases) {
        List<Load> followed = new ArrayList<>();
        for (List<Load> loads : cases) {
            for (Load load : loads) {
                boolean drawn =
                        load instanceof Load.Press
                                || load instanceof Load.StripPressure
                                || load instanceof Load.Line;
                if (drawn && !followed.contains(load)) {
                    followed.add(load);
                }
            }
        }
        synchronized (factored) {
            for (Factored known : factored) {
                if (known.serves(panel, followed)) {
                    return known.shell();
                }
            }
        }
        ShellPanel shell = new ShellPanel(panel, grid(panel, followed), order, firstOrder);
        if (!shell.stands()) {
            throw new NoAnswerException(
                    new Problem(
                            "",
                            "",
                            panel.name() + " can move freely: " + shell.mechanism() + ".",
                            "Hold it: a hinge, a latch, a held edge."));
        }
        synchronized (factored) {
            factored.addFirst(new Factored(panel, followed, shell));
            if (factored.size() > FACTORED) {
                factored.removeLast();
            }
        }
        return shell;
    }

    /** A panel that has been factored on a mesh that follows some loads. */
    private record Factored(Panel panel, List<Load> followed, ShellPanel shell) {
        /** The very same panel: to compare two by value costs more than it saves. */
        @SuppressWarnings("ReferenceEquality")
        boolean serves(Panel other, List<Load> loads) {
            return panel == other && followed.containsAll(loads);
        }
    }

    private Grid grid(Panel panel, List<Load> followed) {
        Object key =
                List.of(
                        panel.outline(),
                        panel.openings(),
                        panel.zones().stream().map(zone -> zone.region()).toList(),
                        panel.support(),
                        followed);
        Mesh mesh;
        synchronized (meshes) {
            Mesh known = meshes.get(key);
            if (known == null) {
                known = Drawn.mesh(panel, followed, share);
                if (meshes.size() == KEPT) {
                    meshes.remove(meshes.keySet().iterator().next());
                }
                meshes.put(key, known);
            }
            mesh = known;
        }
        return Drawn.grid(panel, mesh, order);
    }

    @Override
    public Shares shares(Panel panel) {
        return Sharing.of(panel, grid(panel, List.of()), order);
    }

    @Override
    public double frequency(Panel panel) {
        return Eigenshapes.frequency(shell(panel, List.of()));
    }

    /**
     * Returns the lowest natural frequencies of a panel closed at rest and their shapes, upwards.
     * Rubber seals are even springs: small swings about the working squeeze.
     *
     * @param count how many, at least 1
     * @throws NoAnswerException when the panel can move freely
     */
    public List<Vibration> vibrations(Panel panel, int count) {
        return Eigenshapes.vibrations(shell(panel, List.of()), count);
    }

    /**
     * Returns at how many times its loads a panel buckles, and how: the lowest factors, upwards.
     *
     * <p>What stands is counted in full and not multiplied. Empty where the loads push the panel
     * together nowhere, as on a flat panel that is free to move in its plane; a load that only
     * pulls the panel taut has no such factor either. Factors of the load turned round are not
     * among them.
     *
     * <p><b>Limits.</b> Linear: the membrane forces grow with the load, and how far the panel has
     * deflected by then counts for nothing. So the factor is an upper limit. A shallow crown
     * pressed in snaps through below it, at half of it or less, and a deep one that is not quite
     * true likewise. Rubber seals are even springs as at rest, whatever the load does to them.
     * Skins that wrinkle on their foam are another failure.
     *
     * @param count how many, at least 1
     * @throws NoAnswerException when the panel can move freely, or buckles under what stands alone
     */
    public List<Buckling> buckling(Panel panel, LoadCase load, int count) {
        ShellPanel shell = shell(panel, List.of(load.loads()));
        ShellResponse standing = shell.solve(load.standing());
        ShellResponse loaded = shell.solve(together(load, 1)).minus(standing);
        return Eigenshapes.buckling(shell, standing, loaded, count);
    }

    /**
     * Returns what held edges do to a panel under loads that act together, place by place along the
     * rim; empty where only pads and seals hold it, whose forces {@link #loadCases} tells. They
     * balance loads, pads and seals to the last figures of the solution.
     *
     * <p>Beside a corner and the end of a held stretch the force per length has no limit in the
     * theory: there only its sum over a length of about the thickness and more means anything.
     *
     * @throws NoAnswerException when the panel can move freely or lifts off its seal
     */
    public List<EdgeReaction> edgeReactions(Panel panel, List<Load> loads) {
        ShellPanel shell = shell(panel, List.of(loads));
        return new EdgeReactions(shell).of(loads, shell.solve(loads));
    }
}
