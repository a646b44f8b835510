package org.coachskin.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.coachskin.check.Job;
import org.coachskin.check.PanelCheck;
import org.coachskin.check.Verdict;

/**
 * Variants of a panel side by side, the first one being what the others are compared with.
 *
 * @param columns at least two
 */
public record Comparison(List<Column> columns) {

    /** Copies the columns. */
    public Comparison {
        columns = List.copyOf(columns);
    }

    /**
     * One variant.
     *
     * @param name how it is called
     * @param verdict on it
     */
    public record Column(String name, Verdict verdict) {

        /** Returns the mass of the whole panel [kg]. */
        public double mass() {
            return verdict.mass();
        }
    }

    /** Judges every job, in the order given. */
    public static Comparison of(Map<String, Job> jobs) {
        PanelCheck check = new PanelCheck();
        List<Column> columns = new ArrayList<>();
        new LinkedHashMap<>(jobs)
                .forEach((name, job) -> columns.add(new Column(name, check.check(job))));
        return new Comparison(columns);
    }

    /**
     * Returns the stiffness gained per added mass against the first column [N/m per kg]; NaN
     * without a palm or mass.
     */
    public double gainPerMass(Column column) {
        Column first = columns.get(0);
        double mass = column.mass() - first.mass();
        if (column.verdict().felt().isEmpty()
                || first.verdict().felt().isEmpty()
                || Math.abs(mass) < 1e-6) {
            return Double.NaN;
        }
        return (column.verdict().felt().get().nominal() - first.verdict().felt().get().nominal())
                / mass;
    }

    /**
     * Returns how much two panels laid alike differ by hand work alone: the standard deviation of
     * the difference of two felt stiffnesses, relative to the first [-].
     */
    public double handScatter() {
        return columns.get(0)
                .verdict()
                .felt()
                .map(
                        felt ->
                                Math.sqrt(2)
                                        * (felt.nominal() - felt.low())
                                        / 1.2815515655446004
                                        / felt.nominal())
                .orElse(0.0);
    }
}
