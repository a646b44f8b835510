package org.coachskin.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.coachskin.check.Answer;
import org.coachskin.check.Movement;
import org.coachskin.check.PanelCheck;
import org.coachskin.check.Picture;
import org.coachskin.check.Verdict;
import org.coachskin.cli.file.PanelFile;
import org.coachskin.cli.report.Block;
import org.coachskin.cli.report.MovementDrawing;
import org.coachskin.cli.report.Report;
import org.coachskin.cli.report.Sheet;
import org.coachskin.design.Comparison;
import org.coachskin.failure.Mode;
import org.coachskin.panel.LoadCase;

/** The report on panels side by side: which to build, how each gives, what was compared. */
final class CompareReport {

    /** Reserves beyond this have a bar as long as this. */
    private static final double LONGEST = 5;

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
                List.of(report.choice(), report.movements(), report.words(names, files, printed)));
    }

    private Report.Answered answered(Comparison.Column column) {
        Verdict verdict = column.verdict();
        boolean clear = Remarks.clearly(verdict);
        return new Report.Answered(
                column.name(),
                !verdict.holds() ? "NO" : clear ? "YES" : "BARELY",
                CheckPage.sentence(Remarks.outcome(verdict))
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
                    new Block.Bars(
                            "Felt stiffness",
                            "How hard a hand has to press for a unit of movement; the line is what is wanted.",
                            figures.stiffnessName(),
                            wanted,
                            figures.stiffness(wanted) + " wanted",
                            columns.stream().map(this::stiffness).toList(),
                            true));
        }
        blocks.add(
                new Block.Bars(
                        "Least reserve",
                        "What goes first, whatever it is: short of the line it does not hold.",
                        "reserve",
                        1,
                        "1.00",
                        columns.stream().map(this::reserve).toList(),
                        true));
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
        double value = verdict.governing().reserve();
        return new Block.Bar(
                column.name(),
                Math.min(LONGEST, value),
                Figures.reserve(value),
                Remarks.outcome(verdict),
                !verdict.holds());
    }

    private Block.Bar weight(Comparison.Column column) {
        double mass = column.verdict().mass();
        double more = mass - columns.get(0).verdict().mass();
        String change =
                Math.abs(more) < 0.0005
                        ? ""
                        : (more > 0 ? "+" : "-") + figures.grams(Math.abs(more));
        return new Block.Bar(column.name(), mass, figures.massNumber(mass), change, false);
    }

    /** Draws each panel under the load by which the first is felt, all in one scale. */
    private Sheet movements() {
        List<Picture> pictures =
                columns.stream()
                        .map(column -> new PanelCheck().picture(column.verdict(), List.of()))
                        .toList();
        List<Block> blocks = new ArrayList<>();
        LoadCase load =
                columns.get(0).verdict().job().loads().stream()
                        .filter(each -> each.kind() == LoadCase.Kind.FELT)
                        .findFirst()
                        .orElse(columns.get(0).verdict().job().loads().get(0));
        List<Optional<Picture.Moved>> moved =
                pictures.stream()
                        .map(
                                picture ->
                                        picture.moved().stream()
                                                .filter(m -> m.load().equals(load.name()))
                                                .findFirst())
                        .toList();
        double reach =
                moved.stream()
                        .flatMap(Optional::stream)
                        .mapToDouble(MovementDrawing::reach)
                        .max()
                        .orElse(0);
        IntStream.range(0, columns.size())
                .forEach(
                        i ->
                                moved.get(i)
                                        .ifPresent(
                                                m ->
                                                        blocks.add(
                                                                movement(
                                                                        i,
                                                                        load.name(),
                                                                        m,
                                                                        reach))));
        return new Sheet("gives", "How each gives", "for the engineer", blocks);
    }

    private Block movement(int number, String load, Picture.Moved moved, double reach) {
        Verdict verdict = columns.get(number).verdict();
        Movement movement = verdict.movementUnder(load);
        String parts =
                MovementParts.of(verdict, movement).parts().stream()
                        .map(part -> part.words() + " " + figures.movement(part.movement()))
                        .collect(Collectors.joining("; "));
        List<LoadCase> loads =
                verdict.job().loads().stream().filter(l -> l.name().equals(load)).toList();
        return new Block.Figure(
                columns.get(number).name(),
                figures.movement(Math.abs(movement.total()))
                        + " under "
                        + Rows.called(load)
                        + ", a line every "
                        + MovementDrawing.step(reach, figures)
                        + ". Of it: "
                        + parts
                        + ".",
                MovementDrawing.of(
                        "moved" + number, verdict.job().panel(), moved, reach, loads, figures),
                List.of(),
                false);
    }

    private Sheet words(List<String> names, List<PanelFile> files, String printed) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Raw("As the command prints it", "", printed));
        for (int i = 0; i < names.size(); i++) {
            blocks.add(new Block.Raw("The panel file " + names.get(i), "", files.get(i).text()));
        }
        blocks.add(WhySheet.checked());
        return new Sheet("words", "In words", "for the engineer", blocks);
    }
}
