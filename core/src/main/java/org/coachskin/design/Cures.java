package org.coachskin.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.coachskin.check.Job;
import org.coachskin.check.PanelCheck;
import org.coachskin.check.Verdict;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.MaterialLibrary;

/**
 * What would cure a panel that does not hold, or what could be left out of one that does: single
 * changes, each judged by every limit.
 *
 * <p>Tried to cure: one more of each cloth already in the file and of the lightest cloth of the
 * table, inside and outside; the next sold foam thicknesses up to 13 mm more; the next sold
 * density; on hinges, latches and rubber seals those changes of them that bear on what does not
 * hold. Tried to leave out: one ply of each skin, the next thinner foam, the next lighter foam.
 *
 * <p>A full verdict is dear, so a change of what is laid is first judged by a forecast from the
 * panel as drawn, and those that cannot hold by it are judged only where few others are.
 */
public final class Cures {

    /** Changes that are told of at most. */
    private static final int MOST = 6;

    /** So many that hold are enough. */
    private static final int ENOUGH = 4;

    /** Verdicts that may be spent. */
    private static final int BUDGET = 8;

    /** A forecast reserve from which a verdict is worth its time. */
    private static final double LIKELY = 0.9;

    private final PanelCheck check = PanelCheck.brief();
    private final StackChanges stacks;

    /** Creates the search with what can be bought. */
    public Cures(MaterialLibrary library) {
        stacks = new StackChanges(library);
    }

    /** A change that has not been judged. */
    private record Candidate(String words, Job job, double perArea, double forecast) {}

    /**
     * Returns the changes that could cure {@code verdict}'s panel: those that hold first, by added
     * mass, six at most. Those of fittings count as of no mass.
     */
    public List<Change> toCure(Verdict verdict) {
        List<Candidate> likely = new ArrayList<>(fittings(verdict));
        List<Candidate> rest = new ArrayList<>();
        for (Candidate candidate : byMass(verdict, stacks.stronger(verdict.job().schedule()))) {
            (candidate.forecast() >= LIKELY ? likely : rest).add(candidate);
        }
        rest.sort(Comparator.comparingDouble(Candidate::forecast).reversed());
        List<Change> hold = new ArrayList<>();
        List<Change> fail = new ArrayList<>();
        int next = 0;
        while (next < Math.min(likely.size(), BUDGET) && hold.size() < ENOUGH) {
            int end = Math.min(Math.min(likely.size(), BUDGET), next + ENOUGH - hold.size());
            sort(judged(likely.subList(next, end), verdict), hold, fail);
            next = end;
        }
        int few = Math.max(0, Math.min(rest.size(), ENOUGH - hold.size() - fail.size()));
        sort(judged(rest.subList(0, few), verdict), hold, fail);
        hold.sort(Comparator.comparingDouble(Change::addedMass));
        fail.sort(Comparator.comparingDouble(Change::addedMass));
        hold.addAll(fail.subList(0, Math.min(MOST - hold.size(), fail.size())));
        return List.copyOf(hold);
    }

    private static void sort(List<Change> changes, List<Change> hold, List<Change> fail) {
        for (Change change : changes) {
            (change.verdict().holds() ? hold : fail).add(change);
        }
    }

    /**
     * Returns what can be left out of {@code verdict}'s panel so that it still holds, the most mass
     * saved first.
     */
    public List<Change> toLeaveOut(Verdict verdict) {
        List<Candidate> could =
                byMass(verdict, stacks.lighter(verdict.job().schedule())).stream()
                        .filter(candidate -> candidate.forecast() >= LIKELY)
                        .toList();
        return judged(could, verdict).stream()
                .filter(change -> change.verdict().holds())
                .limit(MOST)
                .toList();
    }

    private List<Candidate> byMass(Verdict verdict, Map<String, Schedule> schedules) {
        Forecast forecast = new Forecast(verdict);
        List<Candidate> candidates = new ArrayList<>();
        // Another stack hardly moves the softest place; other fittings do.
        Job placed = verdict.job().withLoadsPlaced();
        schedules.forEach(
                (words, schedule) -> {
                    Job job = placed.withSchedule(schedule);
                    candidates.add(
                            new Candidate(
                                    words,
                                    job,
                                    job.panel().laminate().mass(),
                                    forecast.reserve(job.panel())));
                });
        candidates.sort(Comparator.comparingDouble(Candidate::perArea));
        return candidates;
    }

    private static List<Candidate> fittings(Verdict verdict) {
        List<Candidate> candidates = new ArrayList<>();
        FittingChanges.of(verdict)
                .forEach(
                        (words, support) -> {
                            Job job = verdict.job().withSupport(support);
                            double perArea = job.panel().laminate().mass();
                            candidates.add(new Candidate(words, job, perArea, 1));
                        });
        return candidates;
    }

    private List<Change> judged(List<Candidate> candidates, Verdict before) {
        double perArea = before.job().panel().laminate().mass();
        // Each change stands by itself, so the order of work matters to none of them.
        return candidates.parallelStream()
                .map(
                        candidate -> {
                            Verdict changed = check.check(candidate.job());
                            boolean same = candidate.perArea() == perArea;
                            return new Change(
                                    candidate.words(),
                                    changed,
                                    same ? 0 : changed.mass() - before.mass());
                        })
                .toList();
    }
}
