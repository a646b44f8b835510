package org.coachskin.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.coachskin.check.Spread;
import org.coachskin.design.Comparison;
import org.coachskin.design.OneMore;
import org.coachskin.failure.Mode;

/** What one more of everything would do to the first panel of a comparison. */
final class OneMoreBlock {

    private final Page page;
    private final Comparison.Column first;
    private final OneMore oneMore;
    private final Figures figures;

    OneMoreBlock(Page page, Comparison comparison, OneMore oneMore, Figures figures) {
        this.page = page;
        first = comparison.columns().get(0);
        this.oneMore = oneMore;
        this.figures = figures;
    }

    void write() {
        page.wrap(
                "", 2, "What one more would do to \"" + first.name() + "\", one change at a time");
        List<Heading> headings = headings();
        Page.Table table = new Page.Table("l" + "r".repeat(headings.size()));
        List<String> head = new ArrayList<>(List.of(""));
        headings.forEach(heading -> head.add(heading.name()));
        table.row(head);
        for (OneMore.Step step : oneMore.steps()) {
            List<String> row = new ArrayList<>(List.of(figures.words(step.words())));
            headings.forEach(heading -> row.add(heading.cell().of(step)));
            table.row(row);
        }
        page.table(table);
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
