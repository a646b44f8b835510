package org.coachskin.reinforce;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.coachskin.check.Job;
import org.coachskin.check.Margin;
import org.coachskin.check.Verdict;
import org.coachskin.failure.Mode;

/**
 * One reinforcement that was looked at.
 *
 * @param measure what
 * @param job the panel with it
 * @param addedMass against the panel without any [kg]
 * @param felt stiffness under the palm [N/m]; NaN where no load asks for it
 * @param margins the worst of each mode, the smallest reserve first; empty where the forecast was
 *     enough
 * @param verdict in full; empty where it was not asked
 */
public record Tried(
        Measure measure,
        Job job,
        double addedMass,
        double felt,
        List<Margin> margins,
        Optional<Verdict> verdict) {

    /** By coarser elements this near to holding is worth the full check [-]. */
    private static final double NEAR = 0.98;

    /** The same where plies break: beside a tight corner coarser elements are 6 % off [-]. */
    private static final double PLIES = 0.9;

    /** Sorts and copies the margins. */
    public Tried {
        margins = margins.stream().sorted(Comparator.comparingDouble(Margin::reserve)).toList();
    }

    /** Returns whether it was solved, and not only forecast. */
    public boolean isSolved() {
        return !margins.isEmpty();
    }

    /** Returns the margin that decides, in full where that is known; marks that are allowed not. */
    public Optional<Margin> governing() {
        return verdict.map(Verdict::margins).orElse(margins).stream()
                .filter(this::counts)
                .findFirst();
    }

    /** Returns what does not hold, in full where that is known; marks that are allowed not. */
    Set<Mode> failing() {
        return failing(job, verdict.map(Verdict::margins).orElse(margins));
    }

    /** Returns the modes that do not hold; marks that are allowed not among them. */
    static Set<Mode> failing(Job job, List<Margin> margins) {
        Set<Mode> failing = EnumSet.noneOf(Mode.class);
        margins.stream()
                .filter(margin -> !margin.holds() && counts(job, margin))
                .forEach(margin -> failing.add(margin.mode()));
        return failing;
    }

    /** Returns whether what coarser elements say is near enough to holding for a full verdict. */
    static boolean mayHold(Job job, List<Margin> margins) {
        return margins.stream()
                .filter(margin -> counts(job, margin))
                .allMatch(margin -> margin.reserve() >= (margin.mode().isOfPlies() ? PLIES : NEAR));
    }

    private boolean counts(Margin margin) {
        return counts(job, margin);
    }

    private static boolean counts(Job job, Margin margin) {
        return !job.limits().marksAllowed() || margin.mode().question() != Mode.Question.UNMARKED;
    }

    /** Returns the least reserve [-]; NaN where it was not solved. */
    public double reserve() {
        return governing().map(Margin::reserve).orElse(Double.NaN);
    }

    /** Returns what to do at the bench, in order. */
    public List<String> benchSteps(Target target) {
        return BenchSteps.of(job.panel(), target, measure);
    }

    /** Returns this with a verdict in full. */
    Tried confirmed(Verdict full) {
        double there = full.felt().map(spread -> spread.nominal()).orElse(felt);
        List<Margin> known = margins.isEmpty() ? full.margins() : margins;
        return new Tried(measure, full.job(), addedMass, there, known, Optional.of(full));
    }
}
