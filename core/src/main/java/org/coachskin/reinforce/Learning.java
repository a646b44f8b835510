package org.coachskin.reinforce;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coachskin.check.Job;
import org.coachskin.check.Outlook;
import org.coachskin.check.Verdict;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Region;

/**
 * Which reinforcements of an opening are solved so that the felt stiffness of all others can be
 * told from them: without and with the edge turned, nothing, the least and the most of plies, the
 * least and the most of a strip; denser foam at its widest.
 */
final class Learning {

    private final Outlook outlook;

    /** Full answer over forecast for the bare opening: what coarse elements are off. */
    private final double correction;

    private Learning(Outlook outlook, double correction) {
        this.outlook = outlook;
        this.correction = correction;
    }

    /**
     * Returns what tells of all offers; empty for what cannot be told so: no palm, no opening, or
     * another radius of its corners, which wants other triangles.
     */
    static Optional<Learning> of(Verdict bare, Target target, Offers offers) {
        if (!(target instanceof Target.Hole) || bare.felt().isEmpty()) {
            return Optional.empty();
        }
        Job job = bare.job().withLoadsPlaced();
        List<Region> regions =
                offers.lines().stream().map(w -> target.region(job.panel(), w)).toList();
        List<Panel> solved = new ArrayList<>();
        solved.add(job.panel());
        for (boolean turned : offers.edges()) {
            if (turned) {
                solved.add(panel(job, target, new Measure(new Build.Nothing(), 0, true, 0)));
            }
            List<Build> plies = kind(offers, Build.Plies.class);
            List<Build> strips = kind(offers, Build.Strip.class);
            for (List<Build> builds : List.of(plies, strips)) {
                if (!builds.isEmpty()) {
                    Build least = builds.get(0);
                    Build most = builds.get(builds.size() - 1);
                    List<Double> wide = offers.widths(most);
                    double widest = wide.get(wide.size() - 1);
                    double narrowest = offers.widths(least).get(0);
                    solved.add(panel(job, target, new Measure(most, widest, turned, 0)));
                    solved.add(panel(job, target, new Measure(least, narrowest, turned, 0)));
                }
            }
        }
        for (Build build : kind(offers, Build.Insert.class)) {
            List<Double> wide = offers.widths(build);
            double widest = wide.get(wide.size() - 1);
            solved.add(panel(job, target, new Measure(build, widest, false, 0)));
        }
        double known = bare.felt().get().nominal();
        return Outlook.of(job, regions, solved)
                .map(outlook -> new Learning(outlook, known / outlook.felt(job.panel())));
    }

    private static List<Build> kind(Offers offers, Class<? extends Build> kind) {
        return offers.builds().stream()
                .filter(kind::isInstance)
                .filter(build -> !offers.widths(build).isEmpty())
                .toList();
    }

    private static Panel panel(Job job, Target target, Measure measure) {
        return Laying.on(job, target, measure).panel();
    }

    /** Returns the felt stiffness to expect [N/m]; NaN where it cannot be told. */
    double felt(Measure measure, Panel with) {
        return measure.radius() > 0 ? Double.NaN : correction * outlook.felt(with);
    }
}
