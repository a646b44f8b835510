package org.coachskin.bench;

import java.util.List;
import org.coachskin.check.Job;
import org.coachskin.laminate.Schedule;
import org.coachskin.panel.Height;
import org.coachskin.panel.ZoneRecipe;

/**
 * All that is laid for a panel, in the order of laying: one stage for each skin, the panel turned
 * over between them. What each piece weighs is its share of the areas by which the panel's own
 * weight is counted, so that all of it together is the panel less its foam.
 *
 * <p>The skin that runs on flat over a lip comes first; with no lip, or one flush with the outside,
 * the outside. Zones' plies come right after the panel's own plies of their skin, a ply that goes
 * on through several zones once and in one piece.
 *
 * @param stages one or two
 */
public record LayingList(List<Stage> stages) {

    /** Copies the list. */
    public LayingList {
        stages = List.copyOf(stages);
    }

    /**
     * What is laid before the panel is turned over, or after.
     *
     * @param skin which side is up
     * @param steps in order
     */
    public record Stage(Height skin, List<Step> steps) {
        /** Copies the list. */
        public Stage {
            steps = List.copyOf(steps);
        }

        /** Returns what it adds to the part, foam aside. */
        public Weight weight() {
            return steps.stream().map(Step::weight).reduce(Weight.NONE, Weight::plus);
        }
    }

    /** Returns what is laid for a panel. */
    public static LayingList of(Job job) {
        return new LayingList(new Stages(job).inOrder());
    }

    /** Returns what stays in the part, foam aside. */
    public Weight weight() {
        return stages.stream().map(Stage::weight).reduce(Weight.NONE, Weight::plus);
    }

    /** Returns which skin is laid first. */
    public static Height first(Job job) {
        Schedule laid = job.schedule();
        boolean insideFirst =
                laid.outside().isEmpty()
                        || job.recipes().stream()
                                .map(ZoneRecipe::build)
                                .anyMatch(
                                        build ->
                                                build instanceof ZoneRecipe.NoFoam lip
                                                        && lip.flush() == Height.INSIDE);
        return insideFirst ? Height.INSIDE : Height.OUTSIDE;
    }
}
