package org.coachskin.reinforce;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.coachskin.check.Job;
import org.coachskin.laminate.Schedule;
import org.coachskin.panel.Opening;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Shape;
import org.coachskin.panel.TurnedEdge;
import org.coachskin.panel.ZoneRecipe;

/** Puts a reinforcement on a panel, or takes what the file has of it away. */
public final class Laying {

    private Laying() {}

    /** Returns a job without what its file lays to reinforce the target. */
    static Job bare(Job job, Target target) {
        if (target instanceof Target.Lip) {
            return job;
        }
        List<ZoneRecipe> others =
                job.recipes().stream().filter(recipe -> !target.isReinforcedBy(recipe)).toList();
        return job(job, job.panel().withTurned(otherEdges(job.panel(), target)), others);
    }

    private static List<TurnedEdge> otherEdges(Panel panel, Target target) {
        return panel.turned().stream().filter(edge -> !isOf(edge, target)).toList();
    }

    private static boolean isOf(TurnedEdge edge, Target target) {
        if (edge instanceof TurnedEdge.Round round) {
            return target instanceof Target.Hole && round.opening().equals(target.name());
        }
        return target instanceof Target.Along along
                && ((TurnedEdge.Along) edge).edge() == along.edge();
    }

    /** Returns the same panel with an opening filled. */
    static Optional<Job> uncut(Job bare, Target target) {
        if (!(target instanceof Target.Hole hole)) {
            return Optional.empty();
        }
        List<Opening> others =
                bare.panel().openings().stream()
                        .filter(opening -> !opening.equals(hole.opening()))
                        .toList();
        return Optional.of(job(bare, bare.panel().withOpenings(others), bare.recipes()));
    }

    /** Returns a job with an opening in place of the one of that name. */
    static Job withOpening(Job job, Opening changed) {
        List<Opening> openings =
                job.panel().openings().stream()
                        .map(opening -> opening.name().equals(changed.name()) ? changed : opening)
                        .toList();
        return job(job, job.panel().withOpenings(openings), job.recipes());
    }

    private static Job job(Job job, Panel panel, List<ZoneRecipe> recipes) {
        return Job.of(panel, job.schedule(), recipes, job.loads(), job.limits());
    }

    /**
     * Returns a job with the target reinforced.
     *
     * <p>What the file lays elsewhere wins where both meet, but for a fitting, whose own patch lies
     * over the band it sits in.
     *
     * @param bare the job without any of it
     */
    public static Job on(Job bare, Target target, Measure measure) {
        Panel panel = bare.panel();
        if (measure.radius() > 0 && target instanceof Target.Hole hole) {
            Shape.Rectangle r = (Shape.Rectangle) hole.opening().shape();
            Opening rounder =
                    new Opening(
                            hole.name(),
                            new Shape.Rectangle(r.x(), r.y(), measure.radius()),
                            hole.opening().x(),
                            hole.opening().y());
            panel = withOpening(bare, rounder).panel();
        }
        if (measure.turned()) {
            List<TurnedEdge> turned = new ArrayList<>(panel.turned());
            target.turned().ifPresent(turned::add);
            panel = panel.withTurned(turned);
        }
        List<ZoneRecipe> own = recipes(panel, target, measure);
        if (target instanceof Target.Lip) {
            // In its place: which zone decides where two meet goes by their order.
            return job(
                    bare,
                    panel,
                    bare.recipes().stream()
                            .map(recipe -> target.isReinforcedBy(recipe) ? own.get(0) : recipe)
                            .toList());
        }
        List<ZoneRecipe> all = new ArrayList<>();
        boolean last = target instanceof Target.Hardware;
        all.addAll(last ? List.of() : own);
        all.addAll(bare.recipes());
        if (last) {
            // The lip wins over every zone.
            int at = all.size();
            while (at > 0 && all.get(at - 1).build() instanceof ZoneRecipe.NoFoam) {
                at--;
            }
            all.addAll(at, own);
        }
        return job(bare, panel, all);
    }

    /** Returns the zones of a measure, the widest first. */
    public static List<ZoneRecipe> recipes(Panel panel, Target target, Measure measure) {
        double width = measure.width();
        String name = target.zone();
        if (measure.build() instanceof Build.Plies plies) {
            List<ZoneRecipe> steps = new ArrayList<>();
            int most = plies.most();
            for (int k = 1; k <= most; k++) {
                steps.add(
                        new ZoneRecipe(
                                most == 1 ? name : name + ", " + k + (k == 1 ? " ply" : " plies"),
                                target.region(
                                        panel, Practice.rounded(width - (k - 1) * Practice.STEP)),
                                new ZoneRecipe.MorePlies(
                                        copies(plies.ply(), Math.min(k, plies.outside())),
                                        copies(plies.ply(), Math.min(k, plies.inside())))));
            }
            return steps;
        }
        if (measure.build() instanceof Build.Strip strip) {
            List<ZoneRecipe> zones = new ArrayList<>();
            if (!strip.over().isEmpty()) {
                zones.add(
                        new ZoneRecipe(
                                name + ", plies past the strip",
                                target.region(panel, Practice.rounded(width + landing(strip))),
                                new ZoneRecipe.MorePlies(List.of(), strip.over())));
            }
            zones.add(
                    new ZoneRecipe(
                            name,
                            target.region(panel, width),
                            new ZoneRecipe.FoamStrip(
                                    strip.thickness(),
                                    strip.over(),
                                    strip.thickness() / strip.bevel())));
            return zones;
        }
        if (measure.build() instanceof Build.Insert insert) {
            double depth = panel.laminate().foamThickness();
            return List.of(
                    new ZoneRecipe(
                            name,
                            target.region(panel, width),
                            new ZoneRecipe.OtherFoam(
                                    Optional.of(insert.foam()), depth, insert.over())));
        }
        if (measure.build() instanceof Build.InLip more && target instanceof Target.Lip lip) {
            ZoneRecipe.NoFoam drawn = (ZoneRecipe.NoFoam) lip.recipe().build();
            List<Schedule.Item> all = new ArrayList<>(drawn.more());
            all.addAll(copies(more.ply(), more.count()));
            return List.of(
                    new ZoneRecipe(
                            name,
                            lip.recipe().region(),
                            new ZoneRecipe.NoFoam(all, drawn.flush())));
        }
        return List.of();
    }

    /** Returns by how many plies one skin has more than the other where a measure is laid whole. */
    static int unlike(Job job, Target target, Measure measure) {
        Schedule there = job.schedule();
        for (ZoneRecipe zone : recipes(job.panel(), target, measure)) {
            // The last one is the narrowest, where all lie.
            there = zone.laid(job.schedule());
        }
        return Math.abs(there.outside().size() - there.inside().size());
    }

    private static List<Schedule.Item> copies(Schedule.Item ply, int count) {
        return Collections.nCopies(count, ply);
    }

    /**
     * Returns how far plies reach past the full thickness of a strip: over its bevel and on, in
     * whole steps [m].
     */
    static double landing(Build.Strip strip) {
        double least = strip.bevel() + Practice.OVERLAP;
        return Practice.STEP * Math.ceil(least / Practice.STEP - 1e-9);
    }

    /** Returns whether so many plies find room in a band, each ending before the one under it. */
    static boolean fits(double width, int plies) {
        return width - (plies - 1) * Practice.STEP >= Practice.OVERLAP - 1e-9;
    }
}
