package org.coachskin.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.coachskin.check.Spread;
import org.coachskin.cli.report.Block;
import org.coachskin.cli.report.Sheet;
import org.coachskin.design.Comparison;
import org.coachskin.design.OneMore;
import org.coachskin.failure.Mode;

/** What one more of everything would do to the first panel of a comparison. */
final class OneMoreBlock {

    private final Comparison.Column first;
    private final OneMore oneMore;
    private final Figures figures;

    OneMoreBlock(Comparison comparison, OneMore oneMore, Figures figures) {
        first = comparison.columns().get(0);
        this.oneMore = oneMore;
        this.figures = figures;
    }

    void write(Page page) {
        page.wrap("", 2, heading() + ", one change at a time");
        Page.Table table = new Page.Table("l" + "r".repeat(headings().size()));
        table.row(head());
        rows().forEach(table::row);
        page.table(table);
    }

    private String heading() {
        return "What one more would do to \"" + first.name() + "\"";
    }

    private List<String> head() {
        List<String> head = new ArrayList<>(List.of(""));
        headings().forEach(heading -> head.add(heading.name()));
        return head;
    }

    private List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>();
        for (OneMore.Step step : oneMore.steps()) {
            List<String> row = new ArrayList<>(List.of(figures.words(step.words())));
            headings().forEach(heading -> row.add(heading.cell().of(step)));
            rows.add(row);
        }
        return rows;
    }

    /** Returns the same for a report: bars of what the hand feels, a table of all of it. */
    Sheet sheet() {
        List<Block> blocks = new ArrayList<>();
        first.verdict().felt().ifPresent(felt -> blocks.add(bars(felt)));
        blocks.add(
                new Block.Rows(
                        "In figures",
                        "Strength and mark: by how much the least reserve of each grows or shrinks. "
                                + "Zones follow, loads stay where they are.",
                        head(),
                        rows(),
                        "numbers",
                        true));
        return new Sheet("one-more", heading(), "for the wall", blocks);
    }

    private Block bars(Spread felt) {
        double wanted = first.verdict().job().limits().feltStiffness();
        List<Block.Bar> bars = new ArrayList<>();
        bars.add(bar(first.name(), felt.nominal(), wanted, ""));
        for (OneMore.Step step : oneMore.steps()) {
            bars.add(
                    bar(
                            figures.words(step.words()),
                            oneMore.stiffer(step).orElse(1.0) * felt.nominal(),
                            wanted,
                            figures.addedGrams(step.addedMass())));
        }
        String best =
                oneMore.steps().stream()
                        .max(
                                Comparator.comparingDouble(
                                        step -> oneMore.gainPerMass(step, felt).orElse(0.0)))
                        .map(step -> " Most for its weight: " + figures.words(step.words()) + ".")
                        .orElse("");
        return WantedBars.stiffnesses(
                "Felt stiffness", "One change at a time." + best, wanted, bars, figures);
    }

    private Block.Bar bar(String words, double value, double wanted, String mass) {
        boolean fails = value < wanted;
        String more = mass.isEmpty() || !fails ? mass : mass + ", too soft";
        return new Block.Bar(
                words,
                value,
                figures.stiffness(value, wanted),
                mass.isEmpty() && fails ? "too soft" : more,
                fails);
    }

    private interface Cell {
        String of(OneMore.Step step);
    }

    private record Heading(String name, Cell cell) {}

    private List<Heading> headings() {
        List<Heading> headings = new ArrayList<>();
        Optional<Spread> felt = first.verdict().felt();
        if (felt.isPresent()) {
            headings.add(
                    new Heading(
                            figures.stiffnessName(),
                            step -> {
                                double times = oneMore.stiffer(step).orElse(1.0);
                                return figures.stiffness(times * felt.get().nominal())
                                        + String.format(
                                                Locale.ROOT, " %6s", Figures.change(times - 1));
                            }));
            headings.add(
                    new Heading(
                            "per " + figures.massName(),
                            step ->
                                    oneMore.gainPerMass(step, felt.get())
                                            .map(figures::stiffnessPerMass)
                                            .orElse("")));
        } else {
            question(headings, "stiffness", Mode.Question.STIFF);
        }
        question(headings, "strength", Mode.Question.STRONG);
        question(headings, "mark", Mode.Question.UNMARKED);
        headings.add(
                new Heading(
                        figures.massName(), step -> "+" + figures.massNumber(step.addedMass())));
        return headings;
    }

    private void question(List<Heading> headings, String name, Mode.Question question) {
        if (oneMore.steps().stream().allMatch(s -> oneMore.reserve(s, question).isPresent())) {
            headings.add(
                    new Heading(
                            name,
                            step -> {
                                double times = oneMore.reserve(step, question).orElse(1.0);
                                boolean told = Math.abs(times - 1) >= OneMore.RESERVES_WITHIN;
                                return Figures.change(told ? times - 1 : 0);
                            }));
        }
    }
}
