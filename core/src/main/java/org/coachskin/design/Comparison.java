package org.coachskin.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.coachskin.check.Job;
import org.coachskin.check.Margin;
import org.coachskin.check.PanelCheck;
import org.coachskin.check.Spread;
import org.coachskin.check.Verdict;
import org.coachskin.check.Weights;
import org.coachskin.failure.Mode;
import org.coachskin.panel.LoadCase;

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
     * @param weights what it weighs, by kind
     */
    public record Column(String name, Verdict verdict, Weights weights) {

        /** Returns the mass of the whole panel [kg]. */
        public double mass() {
            return verdict.mass();
        }
    }

    /** Judges every job, in the order given. */
    public static Comparison of(Map<String, Job> jobs) {
        return of(jobs, () -> {});
    }

    /**
     * Judges every job, side by side on all processors; the answers do not depend on that.
     *
     * @param judged called after each of them, from any thread
     */
    public static Comparison of(Map<String, Job> jobs, Runnable judged) {
        List<Supplier<Column>> work = new ArrayList<>();
        new LinkedHashMap<>(jobs)
                .forEach(
                        (name, job) ->
                                work.add(
                                        () -> {
                                            // A check of its own: what one keeps for the next would
                                            // depend on who comes first.
                                            Verdict verdict = new PanelCheck().check(job);
                                            judged.run();
                                            return new Column(name, verdict, Weights.of(job));
                                        }));
        return new Comparison(SideBySide.run(work));
    }

    /**
     * How a figure of a variant differs from that of the first panel.
     *
     * @param share of the first panel's figure; above 0 where the variant's is larger [-]
     * @param numericalError what the elements may be off in it, both panels together; 0 for a
     *     series [-]
     */
    public record Difference(double share, double numericalError) {

        /** Below this a difference is none: it would not be seen among rounded figures. */
        private static final double SEEN = 0.005;

        /** Returns whether there is a difference that is not just an error of the elements. */
        public boolean tells() {
            return Math.abs(share) > Math.max(SEEN, numericalError);
        }
    }

    /** Returns how much stiffer than the first a panel feels; empty where nobody presses. */
    public Optional<Difference> stiffness(Column column) {
        Optional<Spread> mine = column.verdict().felt();
        Optional<Spread> first = columns.get(0).verdict().felt();
        if (mine.isEmpty() || first.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new Difference(
                        mine.get().nominal() / first.get().nominal() - 1,
                        movementError(column) + movementError(columns.get(0))));
    }

    /**
     * Returns how much larger than the first's the least reserve of one question is; empty where a
     * panel has none.
     */
    public Optional<Difference> reserve(Column column, Mode.Question question) {
        Optional<Margin> mine = reserved(column, question);
        Optional<Margin> first = reserved(columns.get(0), question);
        if (mine.isEmpty() || first.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new Difference(
                        mine.get().reserve() / first.get().reserve() - 1,
                        mine.get().meshError() + first.get().meshError()));
    }

    private static Optional<Margin> reserved(Column column, Mode.Question question) {
        return column.verdict()
                .governing(question)
                .filter(margin -> Double.isFinite(margin.reserve()));
    }

    private static double movementError(Column column) {
        String load = column.verdict().job().felt().map(LoadCase::name).orElse("");
        return column.verdict().numericalErrors().stream()
                .filter(error -> error.figure().equals("movement under " + load))
                .mapToDouble(error -> error.error())
                .findFirst()
                .orElse(0);
    }

    /** Returns whether the same loads bear on two panels; a place may have been looked for. */
    public boolean isLoadedAlike(Column column) {
        List<LoadCase> mine = column.verdict().job().loads();
        List<LoadCase> first = columns.get(0).verdict().job().loads();
        return mine.size() == first.size()
                && IntStream.range(0, mine.size()).allMatch(i -> alike(mine.get(i), first.get(i)));
    }

    private static boolean alike(LoadCase a, LoadCase b) {
        return a.softest() ? b.softest() && a.name().equals(b.name()) : a.equals(b);
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
                .map(felt -> Math.sqrt(2) * felt.deviation() / felt.nominal())
                .orElse(0.0);
    }
}
