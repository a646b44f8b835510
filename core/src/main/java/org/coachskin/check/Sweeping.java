package org.coachskin.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.coachskin.analysis.Analysis;
import org.coachskin.analysis.Response;
import org.coachskin.laminate.Laminate;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Panel;
import org.jspecify.annotations.Nullable;

/**
 * Looks for the place where a panel yields most under a press: on a grid that reaches the rim, then
 * round the softest place in ever smaller steps. All of the patch lies on the panel.
 */
final class Sweeping {

    /** Steps of the grid along the longer and the shorter side. */
    private static final int LONG = 7;

    private static final int SHORT = 5;

    /** The last step is shorter than this [m]. */
    private static final double FINE = 0.02;

    private final Panel panel;
    private final LoadCase load;
    private final Load.Press press;
    private final Analysis solver;
    private final Map<Laminate, Double> sinking = new HashMap<>();
    private final List<Swept.Feel> places = new ArrayList<>();

    private Sweeping(Panel panel, LoadCase load, Analysis solver) {
        this.panel = panel;
        this.load = load;
        this.solver = solver;
        press = (Load.Press) load.loads().get(0);
    }

    /**
     * Returns how the panel feels under a load case.
     *
     * @param load a press alone
     */
    static Swept of(Panel panel, LoadCase load, Analysis solver) {
        Sweeping sweep = new Sweeping(panel, load, solver);
        sweep.look();
        return new Swept(load.name(), sweep.press.force(), sweep.places);
    }

    /**
     * Returns a job whose presses stand where they are looked for: in the middle of a plain panel
     * carried all round, by its symmetry.
     */
    static Job placed(Job job, Analysis solver) {
        if (job.loads().stream().noneMatch(LoadCase::softest)) {
            return job;
        }
        List<LoadCase> loads = new ArrayList<>();
        for (LoadCase load : job.loads()) {
            if (load.softest()) {
                loads.add(placed(job.panel(), load, solver));
            } else {
                loads.add(load);
            }
        }
        return job.withLoads(loads);
    }

    private static LoadCase placed(Panel panel, LoadCase load, Analysis solver) {
        Load.Press press = (Load.Press) load.loads().get(0);
        double x = panel.width() / 2;
        double y = panel.length() / 2;
        if (!panel.isPlain() || !panel.rimCarried()) {
            Swept.Feel softest = of(panel, load, solver).softest();
            x = softest.x();
            y = softest.y();
        }
        return load.withLoads(List.of(new Load.Press(press.force(), press.patch(), x, y)));
    }

    private void look() {
        boolean wide = panel.width() >= panel.length();
        int nx = wide ? LONG : SHORT;
        int ny = wide ? SHORT : LONG;
        double halfX = press.patch().halfX();
        double halfY = press.patch().halfY();
        double stepX = Math.max(0, panel.width() - 2 * halfX) / nx;
        double stepY = Math.max(0, panel.length() - 2 * halfY) / ny;
        List<Response.Spot> grid = new ArrayList<>();
        grid.add(new Response.Spot(press.x(), press.y()));
        for (int j = 0; j <= ny; j++) {
            for (int i = 0; i <= nx; i++) {
                grid.add(new Response.Spot(halfX + i * stepX, halfY + j * stepY));
            }
        }
        Swept.Feel best = softest(grid, null);
        for (double share = 0.5; share * Math.max(stepX, stepY) > FINE / 2; share /= 2) {
            List<Response.Spot> round = new ArrayList<>();
            for (int j = -1; j <= 1; j++) {
                for (int i = -1; i <= 1; i++) {
                    if (i != 0 || j != 0) {
                        round.add(
                                new Response.Spot(
                                        best.x() + i * share * stepX,
                                        best.y() + j * share * stepY));
                    }
                }
            }
            best = softest(round, best);
        }
    }

    /** Tries the places among these where the patch lies on the panel. */
    private Swept.Feel softest(List<Response.Spot> spots, Swept.@Nullable Feel before) {
        List<Response.Spot> on =
                spots.stream().filter(at -> panel.covers(press.patch(), at.x(), at.y())).toList();
        List<Double> moved = solver.swept(panel, press, load.standing(), on);
        Swept.Feel best = before;
        for (int i = 0; i < on.size(); i++) {
            double x = on.get(i).x();
            double y = on.get(i).y();
            double movement = moved.get(i) + sinking(x, y);
            // Beside a fitting the middle of the patch may come outward.
            double felt = movement > 0 ? press.force() / movement : Double.POSITIVE_INFINITY;
            Swept.Feel feel = new Swept.Feel(x, y, felt);
            places.add(feel);
            if (best == null || feel.stiffness() < best.stiffness() * (1 - Swept.SAME)) {
                best = feel;
            }
        }
        return Objects.requireNonNull(best, "the press has no place on the panel");
    }

    /** Sinking into the foam, worked out once for every stack. */
    private double sinking(double x, double y) {
        return sinking.computeIfAbsent(
                panel.laminateAt(x, y),
                stack -> {
                    Load.Press there = new Load.Press(press.force(), press.patch(), x, y);
                    return Patches.local(panel, there).sinking();
                });
    }
}
