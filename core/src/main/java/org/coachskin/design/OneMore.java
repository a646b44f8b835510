package org.coachskin.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.coachskin.check.Job;
import org.coachskin.check.Margin;
import org.coachskin.check.PanelCheck;
import org.coachskin.check.Spread;
import org.coachskin.check.Verdict;
import org.coachskin.failure.Mode;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.MaterialLibrary;

/**
 * What one more of everything would do to a panel: another ply of what lies on top of each skin, 5
 * mm more foam, the next density of foam that is sold, a tenth more glass in every ply.
 *
 * <p>The panel and each change are solved anew with elements one order coarser on the same mesh;
 * what such elements are off is nearly the same in both, so that the ratios are good to {@value
 * #STIFFNESS_WITHIN} and {@value #RESERVES_WITHIN} where the figures themselves are not. Zones
 * follow the panel's own stack, and loads stay where they are, also those whose place was looked
 * for.
 *
 * @param before brief verdict on the panel as it is
 * @param steps what each change comes to
 */
public record OneMore(Verdict before, List<Step> steps) {

    /** Ratios of felt stiffness are within this of those of full verdicts [-]. */
    public static final double STIFFNESS_WITHIN = 0.01;

    /** Ratios of reserves are within this of those of full verdicts [-]. */
    public static final double RESERVES_WITHIN = 0.02;

    private static final double FOAM = 0.005;

    private static final double GLASS = 1.1;

    /** Copies the steps. */
    public OneMore {
        steps = List.copyOf(steps);
    }

    /**
     * One change.
     *
     * @param words what to do, for example {@code 5 mm more foam}
     * @param addedMass of the whole panel [kg]
     * @param after brief verdict on the changed panel
     */
    public record Step(String words, double addedMass, Verdict after) {}

    /**
     * Works out what would be gained.
     *
     * @param verdict on the panel as it is
     * @param library what can be bought
     * @param done called after each solution, from any thread, {@link #solutions} times
     */
    public static OneMore of(Verdict verdict, MaterialLibrary library, Runnable done) {
        Job job = verdict.job().withLoadsPlaced();
        Map<String, Schedule> changes = changes(job.schedule(), library);
        List<Supplier<Verdict>> work = new ArrayList<>();
        work.add(() -> judged(job, done));
        changes.values()
                .forEach(schedule -> work.add(() -> judged(job.withSchedule(schedule), done)));
        List<Verdict> verdicts = SideBySide.run(work);
        Verdict before = verdicts.get(0);
        List<Step> steps = new ArrayList<>();
        for (String words : changes.keySet()) {
            Verdict after = verdicts.get(steps.size() + 1);
            steps.add(new Step(words, after.mass() - before.mass(), after));
        }
        return new OneMore(before, steps);
    }

    private static Verdict judged(Job job, Runnable done) {
        // A check of its own, so that nothing depends on who comes first.
        Verdict verdict = PanelCheck.brief().check(job);
        done.run();
        return verdict;
    }

    /** Returns how many solutions it takes. */
    public static int solutions(Job job, MaterialLibrary library) {
        return 1 + changes(job.schedule(), library).size();
    }

    /** Returns words and stacks. */
    static Map<String, Schedule> changes(Schedule schedule, MaterialLibrary library) {
        Map<String, Schedule> found = new LinkedHashMap<>();
        Schedule.Board board = schedule.board();
        String outside = board == null ? "" : " outside";
        last(schedule.outside())
                .ifPresent(ply -> StackChanges.putOutside(found, schedule, ply, outside));
        last(schedule.inside()).ifPresent(ply -> StackChanges.putInside(found, schedule, ply));
        if (board != null) {
            found.put(
                    "5 mm more foam",
                    schedule.withBoard(board.withThickness(board.thickness() + FOAM)));
            new StackChanges(library).putDenser(found, schedule, board);
        }
        if (last(schedule.outside()).isPresent() || last(schedule.inside()).isPresent()) {
            found.put(
                    "every cloth 10 % heavier",
                    schedule.withOutside(heavier(schedule.outside()))
                            .withInside(heavier(schedule.inside())));
        }
        return found;
    }

    /** Returns the cloth that is laid last on a skin. */
    private static Optional<Schedule.Wet> last(List<Schedule.Item> skin) {
        return skin.stream()
                .filter(Schedule.Wet.class::isInstance)
                .map(Schedule.Wet.class::cast)
                .reduce((before, after) -> after);
    }

    private static List<Schedule.Item> heavier(List<Schedule.Item> skin) {
        List<Schedule.Item> heavier = new ArrayList<>();
        for (Schedule.Item item : skin) {
            heavier.add(
                    item instanceof Schedule.Wet wet
                            ? new Schedule.Wet(
                                    wet.cloth().withArealMass(GLASS * wet.cloth().arealMass()),
                                    wet.angle())
                            : item);
        }
        return heavier;
    }

    /** Returns how many times as stiff a step feels; empty where nobody presses. */
    public Optional<Double> stiffer(Step step) {
        return before.felt()
                .flatMap(
                        felt -> step.after().felt().map(after -> after.nominal() / felt.nominal()));
    }

    /**
     * Returns how many times as large a step makes the least reserve of one question; empty where
     * there is none.
     */
    public Optional<Double> reserve(Step step, Mode.Question question) {
        return least(before, question)
                .flatMap(least -> least(step.after(), question).map(after -> after / least));
    }

    private static Optional<Double> least(Verdict verdict, Mode.Question question) {
        return verdict.governing(question).map(Margin::reserve).filter(Double::isFinite);
    }

    /** Returns the felt stiffness gained per added mass, by the full verdict's stiffness. */
    public Optional<Double> gainPerMass(Step step, Spread felt) {
        return stiffer(step).map(times -> felt.nominal() * (times - 1) / step.addedMass());
    }
}
