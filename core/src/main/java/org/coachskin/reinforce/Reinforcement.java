package org.coachskin.reinforce;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.coachskin.check.Verdict;
import org.coachskin.design.Change;
import org.coachskin.failure.Mode;

/**
 * What must go around something.
 *
 * @param target what was to be reinforced
 * @param uncut the panel with the opening filled; empty where it is no opening
 * @param bare the panel without any reinforcement there
 * @param drawn the panel as its file draws it, where that has some
 * @param tried everything that was looked at, by added mass
 * @param chosen the lightest that holds every limit, in full; empty where none does
 * @param lighter the heaviest below it that does not, in full where it was near
 * @param clear the lightest that holds beyond the scatter of hand work, where the chosen one does
 *     not
 * @param nearest where none holds, the lightest that cures what can be cured there, else the one
 *     that misses by least, in full
 * @param further where none holds, what more would help beside the nearest, by calculation; beside
 *     nothing where the target has little to do with what is short
 * @param offered how many there were
 * @param stopped whether it was stopped before its end
 */
public record Reinforcement(
        Target target,
        Optional<Verdict> uncut,
        Verdict bare,
        Optional<Verdict> drawn,
        List<Tried> tried,
        Optional<Tried> chosen,
        Optional<Tried> lighter,
        Optional<Tried> clear,
        Optional<Tried> nearest,
        List<Change> further,
        int offered,
        boolean stopped) {

    /** Copies the lists. */
    public Reinforcement {
        tried = List.copyOf(tried);
        further = List.copyOf(further);
    }

    /**
     * Returns the rows of a table: what is laid, each with those tried of it, edge and corners as
     * in {@code like}.
     */
    public Map<Build, List<Tried>> rows(Measure like) {
        Map<Build, List<Tried>> rows = new LinkedHashMap<>();
        for (Tried one : tried) {
            Measure measure = one.measure();
            if (measure.turned() == like.turned() && measure.radius() == like.radius()) {
                rows.computeIfAbsent(measure.build(), build -> new ArrayList<>()).add(one);
            }
        }
        return rows;
    }

    /** Returns how many were solved. */
    public int solved() {
        return (int) tried.stream().filter(Tried::isSolved).count();
    }

    /** Returns what the nearest cures of what is short, though it does not hold. */
    public Set<Mode> cured() {
        Set<Mode> cured = EnumSet.noneOf(Mode.class);
        nearest.ifPresent(
                one -> {
                    cured.addAll(Tried.failing(bare.job(), bare.margins()));
                    cured.removeAll(one.failing());
                });
        return cured;
    }

    /**
     * Returns whether the target has little to do with what is short: none holds, and what comes
     * nearest cures nothing and raises the reserve by less than a tenth; or an opening that is
     * filled would cure nothing either and raise it by less than a quarter.
     */
    public boolean isBesideThePoint() {
        return !stopped && isBeside(uncut, bare, nearest);
    }

    static boolean isBeside(Optional<Verdict> uncut, Verdict bare, Optional<Tried> nearest) {
        if (nearest.isEmpty()) {
            return false;
        }
        Set<Mode> failing = Tried.failing(bare.job(), bare.margins());
        double reserve = bare.governing().reserve();
        boolean cures = !nearest.get().failing().containsAll(failing);
        if (uncut.isPresent()) {
            Verdict filled = uncut.get();
            return Tried.failing(filled.job(), filled.margins()).containsAll(failing)
                    && !cures
                    && filled.governing().reserve() < 1.25 * reserve;
        }
        return !cures && nearest.get().reserve() < 1.1 * reserve;
    }

    /** Returns whether nothing has to be done. */
    public boolean isNeedless() {
        return bare.holds();
    }
}
