package org.coachskin.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.coachskin.check.Answer;
import org.coachskin.check.Verdict;
import org.coachskin.cli.file.PanelFile;
import org.coachskin.cli.report.Block;
import org.coachskin.cli.report.Report;
import org.coachskin.cli.report.Sheet;
import org.coachskin.design.Comparison;
import org.coachskin.design.OneMore;
import org.coachskin.failure.Mode;

/** The report on panels side by side: which to build, how each gives, what was compared. */
final class CompareReport {

    private final List<Comparison.Column> columns;
    private final Figures figures;

    private CompareReport(Comparison comparison, Figures figures) {
        columns = comparison.columns();
        this.figures = figures;
    }

    /**
     * Returns the report.
     *
     * @param names of the panel files
     * @param files what stands in them
     * @param printed what the command prints
     */
    static Report of(
            String title,
            List<String> names,
            List<PanelFile> files,
            Comparison comparison,
            OneMore oneMore,
            String printed,
            Figures figures) {
        CompareReport report = new CompareReport(comparison, figures);
        return new Report(
                CheckPage.sentence(title),
                report.columns.stream()
                        .map(Comparison.Column::name)
                        .collect(Collectors.joining(", ")),
                String.join(", ", names),
                Main.versionWords(),
                report.columns.stream().map(report::answered).toList(),
                List.of(
                        report.choice(),
                        new OneMoreBlock(comparison, oneMore, figures).sheet(),
                        report.movements(),
                        report.words(names, files, printed)));
    }

    private Report.Answered answered(Comparison.Column column) {
        Verdict verdict = column.verdict();
        boolean clear = Remarks.clearly(verdict);
        return new Report.Answered(
                column.name(),
                !verdict.holds() ? "NO" : clear ? "YES" : "BARELY",
                CheckPage.sentence(Upshot.of(verdict).words())
                        + ". First: "
                        + figures.words(Rows.words(verdict.governing()))
                        + ", reserve "
                        + Figures.reserve(verdict.governing().reserve())
                        + ".",
                !verdict.holds());
    }

    private Sheet choice() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                new Block.Rows(
                        "The three answers",
                        "Between two panels laid alike hand work alone makes a difference too: what is "
                                + "smaller than that is said in the words on the last sheet.",
                        List.of(
                                "",
                                "stiff enough?",
                                "strong enough?",
                                "unmarked?",
                                figures.stiffnessName(),
                                figures.massName()),
                        columns.stream().map(this::row).toList(),
                        "numbers",
                        true));
        if (columns.stream().allMatch(c -> c.verdict().felt().isPresent())) {
            double wanted = columns.get(0).verdict().job().limits().feltStiffness();
            blocks.add(
                    WantedBars.stiffnesses(
                            "Felt stiffness",
                            "How hard a hand has to press for a unit of movement; the line is what is wanted.",
                            wanted,
                            columns.stream().map(this::stiffness).toList(),
                            figures));
        }
        blocks.add(
                WantedBars.reserves(
                        "Least reserve",
                        "What goes first, whatever it is: short of the line it does not hold.",
                        columns.stream().map(this::reserve).toList()));
        blocks.add(
                new Block.Bars(
                        "Weight",
                        "Before filler, paint and fittings.",
                        figures.massName(),
                        Double.NaN,
                        "",
                        columns.stream().map(this::weight).toList(),
                        true));
        return new Sheet("choice", "Which to build", "for the wall", blocks);
    }

    private List<String> row(Comparison.Column column) {
        Verdict verdict = column.verdict();
        return List.of(
                column.name(),
                answer(verdict.governing(Mode.Question.STIFF), verdict.stiff()),
                answer(verdict.governing(Mode.Question.STRONG), verdict.strong()),
                answer(verdict.governing(Mode.Question.UNMARKED), verdict.unmarked()),
                verdict.felt().map(felt -> figures.stiffness(felt.nominal())).orElse("-"),
                figures.massNumber(verdict.mass()));
    }

    private static String answer(Optional<?> asked, Answer answer) {
        return asked.isEmpty() ? "not asked" : answer.name().toLowerCase(Locale.ROOT);
    }

    private Block.Bar stiffness(Comparison.Column column) {
        double value = column.verdict().felt().orElseThrow().nominal();
        double wanted = column.verdict().job().limits().feltStiffness();
        boolean fails = value < wanted;
        return new Block.Bar(
                column.name(),
                value,
                figures.stiffness(value, wanted),
                fails ? "too soft" : "",
                fails);
    }

    private Block.Bar reserve(Comparison.Column column) {
        Verdict verdict = column.verdict();
        return WantedBars.reserve(
                column.name(),
                verdict.governing().reserve(),
                Upshot.of(verdict).words(),
                !verdict.holds());
    }

    private Block.Bar weight(Comparison.Column column) {
        double mass = column.verdict().mass();
        String more = figures.addedGrams(mass - columns.get(0).verdict().mass());
        return new Block.Bar(column.name(), mass, figures.massNumber(mass), more, false);
    }

    private Sheet movements() {
        Map<String, Verdict> verdicts = new LinkedHashMap<>();
        columns.forEach(column -> verdicts.put(column.name(), column.verdict()));
        return GivesSheet.of(verdicts, figures);
    }

    private Sheet words(List<String> names, List<PanelFile> files, String printed) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Raw("As the command prints it", printed));
        for (int i = 0; i < names.size(); i++) {
            blocks.add(new Block.Raw("The panel file " + names.get(i), files.get(i).text()));
        }
        blocks.add(WhySheet.checked());
        return new Sheet("words", "In words", "for the engineer", blocks);
    }
}
