package org.coachskin.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.coachskin.check.Job;
import org.coachskin.check.Margin;
import org.coachskin.design.Comparison;
import org.coachskin.failure.Mode;

/**
 * What a comparison says in words: only differences that are more than the elements may be off, and
 * those of stiffness beside what hand work alone makes of it.
 */
final class CompareWords {

    /** Gains per mass no further apart than this are the same: cloth is not weighed truer. */
    private static final double ALIKE = 0.15;

    /** A change of what marks a skin below this is not worth a word. */
    private static final double MARKED = 0.02;

    /** A share of the movement from which it is worth a word what the foam gives. */
    private static final double WORTH_A_WORD = 0.2;

    private final Page page;
    private final Comparison comparison;
    private final Figures figures;
    private final List<Comparison.Column> columns;
    private final Comparison.Column first;

    /** Those under the same loads as the first. */
    private final List<Comparison.Column> alike;

    CompareWords(Page page, Comparison comparison, Figures figures) {
        this.page = page;
        this.comparison = comparison;
        this.figures = figures;
        columns = comparison.columns();
        first = columns.get(0);
        alike = columns.stream().filter(comparison::isLoadedAlike).toList();
    }

    void write() {
        holding();
        if (alike.size() < columns.size()) {
            List<Comparison.Column> unlike = new ArrayList<>(columns);
            unlike.removeAll(alike);
            page.paragraph(
                    "Each under its own loads, not those of "
                            + quoted(first)
                            + ": "
                            + names(unlike)
                            + ".");
        }
        if (alike.size() > 1) {
            stiffness();
            gains();
            gaps();
            marks();
            firstToGo();
            foamStays();
        }
    }

    /** What comes of each, those that come to the same together. */
    private void holding() {
        if (columns.stream().allMatch(c -> Remarks.clearly(c.verdict()))) {
            page.paragraph("All of them hold every limit, and clearly.");
            return;
        }
        Map<Upshot, List<Comparison.Column>> upshots = new EnumMap<>(Upshot.class);
        columns.forEach(
                c ->
                        upshots.computeIfAbsent(Upshot.of(c.verdict()), k -> new ArrayList<>())
                                .add(c));
        List<String> sentences = new ArrayList<>();
        upshots.forEach(
                (upshot, group) ->
                        sentences.add(said(upshot, group.size() > 1) + ": " + names(group) + "."));
        page.paragraph(String.join(" ", sentences));
    }

    private static String said(Upshot upshot, boolean several) {
        return switch (upshot) {
            case HOLDS -> several ? "Hold every limit" : "Holds every limit";
            case BARELY ->
                    several ? "Hold every limit, but barely" : "Holds every limit, but barely";
            case MARKS -> several ? "Still mark" : "Still marks";
            case TOO_SOFT, TOO_WEAK -> CheckPage.sentence(upshot.words());
        };
    }

    /** Felt stiffness beside what hand work alone makes of it. */
    private void stiffness() {
        double hand = comparison.handScatter();
        if (hand <= 0 || columns.stream().allMatch(c -> comparison.stiffness(c).isEmpty())) {
            return;
        }
        List<Comparison.Column> more = new ArrayList<>();
        List<Comparison.Column> less = new ArrayList<>();
        List<Comparison.Column> same = new ArrayList<>();
        for (Comparison.Column column : alike.subList(1, alike.size())) {
            comparison
                    .stiffness(column)
                    .ifPresent(
                            d ->
                                    (!d.tells() ? same : Math.abs(d.share()) > hand ? more : less)
                                            .add(column));
        }
        String by = Figures.percent(hand);
        if (!more.isEmpty()) {
            page.paragraph(
                    "Felt stiffness against "
                            + quoted(first)
                            + ": "
                            + shares(more)
                            + ": more than what hand work alone makes of it between two panels laid alike ("
                            + by
                            + ").");
        }
        if (!less.isEmpty()) {
            page.paragraph(
                    (more.isEmpty()
                                    ? "Felt stiffness against " + quoted(first) + ": "
                                    : "Smaller than that: ")
                            + shares(less)
                            + (more.isEmpty()
                                    ? ": smaller than what hand work alone makes of it between two panels laid alike ("
                                            + by
                                            + "). Laid by the same hand it is there all the same; two "
                                            + "separate panels could change places."
                                    : ". Laid by the same hand it is there all the same; two separate panels could "
                                            + "change places."));
        }
        if (!same.isEmpty()) {
            page.paragraph(
                    "As stiff as "
                            + quoted(first)
                            + ", as near as it can be told: "
                            + names(same)
                            + ".");
        }
    }

    private String shares(List<Comparison.Column> group) {
        return joined(
                group.stream()
                        .map(
                                c ->
                                        c.name()
                                                + " "
                                                + Figures.change(
                                                        comparison
                                                                .stiffness(c)
                                                                .orElseThrow()
                                                                .share()))
                        .toList());
    }

    /** Stiffness for its weight. */
    private void gains() {
        List<Comparison.Column> gaining =
                alike.stream()
                        .filter(c -> gain(c) > 0)
                        .filter(
                                c ->
                                        comparison
                                                .stiffness(c)
                                                .filter(Comparison.Difference::tells)
                                                .isPresent())
                        .sorted(Comparator.comparingDouble(this::gain).reversed())
                        .toList();
        if (gaining.isEmpty()) {
            return;
        }
        double most = gain(gaining.get(0));
        List<Comparison.Column> best =
                inOrder(gaining.stream().filter(c -> gain(c) >= most * (1 - ALIKE)).toList());
        List<Comparison.Column> rest = new ArrayList<>(gaining);
        rest.removeAll(best);
        StringBuilder words = new StringBuilder("Per added ");
        words.append(figures.massName()).append(", ");
        if (best.size() > 1) {
            words.append(names(best))
                    .append(" are worth the same stiffness, ")
                    .append(figures.stiffnessPerMass(most));
        } else {
            words.append(best.get(0).name())
                    .append(" is worth ")
                    .append(figures.stiffnessPerMass(most));
        }
        words.append(' ').append(figures.stiffnessName());
        if (!rest.isEmpty()) {
            words.append(
                            times(
                                    best.stream().mapToDouble(this::gain).min().orElse(most)
                                            / gain(rest.get(0))))
                    .append(
                            joined(
                                    rest.stream()
                                            .map(
                                                    c ->
                                                            c.name()
                                                                    + " ("
                                                                    + figures.stiffnessPerMass(
                                                                            gain(c))
                                                                    + ")")
                                            .toList()));
            if (rest.size() > 1
                    && gain(rest.get(rest.size() - 1)) >= gain(rest.get(0)) * (1 - ALIKE)) {
                words.append(", which are worth the same");
            }
        }
        page.paragraph(words.append('.').toString());
    }

    private static String times(double ratio) {
        if (ratio >= 2.8) {
            return ", about " + Math.round(ratio) + " times as much as ";
        }
        if (ratio >= 1.8) {
            return ", about twice as much as ";
        }
        return ratio >= 1.4 ? ", half as much again as " : ", more than ";
    }

    private List<Comparison.Column> inOrder(List<Comparison.Column> group) {
        return columns.stream().filter(group::contains).toList();
    }

    private double gain(Comparison.Column column) {
        return ComparePage.gain(comparison, column);
    }

    /** Which of them the loads lift off the rubber, where it is not all or none. */
    private void gaps() {
        double allowed = first.verdict().job().limits().sealGap();
        List<String> off = new ArrayList<>();
        List<Comparison.Column> on = new ArrayList<>();
        for (Comparison.Column column : alike) {
            double gap = ComparePage.gap(column);
            if (gap > allowed) {
                off.add(column.name() + " " + figures.movement(gap));
            } else if (ComparePage.hasSeal(column)) {
                on.add(column);
            }
        }
        if (!off.isEmpty() && !on.isEmpty()) {
            page.paragraph(
                    "Lifted off the rubber seal by more than "
                            + figures.movement(allowed)
                            + ": "
                            + joined(off)
                            + "; not so: "
                            + names(on)
                            + ".");
        }
    }

    private void marks() {
        String load =
                first.verdict().governing(Mode.Question.UNMARKED).map(Margin::loadCase).orElse("");
        List<String> more = marking(share -> share > MARKED);
        if (!more.isEmpty()) {
            page.paragraph(
                    "To mark them "
                            + Rows.oneOf(load)
                            + " has to press harder: "
                            + joined(more)
                            + ".");
        }
        List<String> less = marking(share -> share < -MARKED);
        if (!less.isEmpty()) {
            page.paragraph(
                    CheckPage.sentence(Rows.oneOf(load))
                            + " marks more easily: "
                            + joined(less)
                            + ".");
        }
    }

    private List<String> marking(Predicate<Double> wanted) {
        List<String> names = new ArrayList<>();
        for (Comparison.Column column : alike.subList(1, alike.size())) {
            comparison
                    .reserve(column, Mode.Question.UNMARKED)
                    .filter(Comparison.Difference::tells)
                    .filter(d -> wanted.test(d.share()))
                    .ifPresent(d -> names.add(column.name() + " " + Figures.change(d.share())));
        }
        return names;
    }

    /** What would break first, where it is not the same in all of them. */
    private void firstToGo() {
        Map<String, List<Comparison.Column>> modes = new LinkedHashMap<>();
        for (Comparison.Column column : alike) {
            column.verdict()
                    .governing(Mode.Question.STRONG)
                    .filter(margin -> Double.isFinite(margin.multiplier()))
                    .ifPresent(
                            margin ->
                                    modes.computeIfAbsent(Rows.what(margin), k -> new ArrayList<>())
                                            .add(column));
        }
        if (modes.size() > 1) {
            page.paragraph(
                    "First to go: "
                            + modes.entrySet().stream()
                                    .map(e -> e.getKey() + " (" + names(e.getValue()) + ")")
                                    .collect(Collectors.joining("; "))
                            + ".");
        } else if (modes.size() == 1) {
            page.paragraph(
                    (alike.size() == 2 ? "First to go in both: " : "First to go in all of them: ")
                            + modes.keySet().iterator().next()
                            + ".");
        }
    }

    /** Cloth does not change what the foam gives; say so where only cloth differs. */
    private void foamStays() {
        if (alike.stream().anyMatch(c -> c.verdict().felt().isEmpty())
                || !alike.stream()
                        .allMatch(
                                c -> onlyClothDiffers(c.verdict().job(), first.verdict().job()))) {
            return;
        }
        double least =
                alike.stream().mapToDouble(c -> ComparePage.pressed(c).sliding()).min().orElse(0);
        double most =
                alike.stream().mapToDouble(c -> ComparePage.pressed(c).sliding()).max().orElse(0);
        if (most > WORTH_A_WORD * ComparePage.pressed(first).total() && most < 1.12 * least) {
            page.paragraph(
                    "The foam gives "
                            + (figures.movement(most).equals(figures.movement(least))
                                    ? ""
                                    : figures.movementNumber(least) + " to ")
                            + figures.movement(most)
                            + " whatever cloth you add: only foam changes that.");
        }
    }

    private static boolean onlyClothDiffers(Job job, Job other) {
        return job.panel().support().equals(other.panel().support())
                && job.panel().outline().equals(other.panel().outline())
                && job.panel().openings().equals(other.panel().openings())
                && job.panel().crown().equals(other.panel().crown())
                && job.recipes().equals(other.recipes())
                && Optional.ofNullable(job.schedule().board())
                        .equals(Optional.ofNullable(other.schedule().board()));
    }

    private static String names(List<Comparison.Column> group) {
        return joined(group.stream().map(Comparison.Column::name).toList());
    }

    private static String quoted(Comparison.Column column) {
        return "\"" + column.name() + "\"";
    }

    /** Words one after the other, the last after an and. */
    private static String joined(List<String> words) {
        int last = words.size() - 1;
        return last < 1
                ? String.join("", words)
                : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }
}
