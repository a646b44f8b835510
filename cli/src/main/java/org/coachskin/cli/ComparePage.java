package org.coachskin.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.coachskin.check.Answer;
import org.coachskin.check.Margin;
import org.coachskin.check.Movement;
import org.coachskin.check.Spread;
import org.coachskin.check.Verdict;
import org.coachskin.design.Comparison;
import org.coachskin.failure.Mode;
import org.coachskin.panel.LoadCase;

/** Variants side by side, and what the figures say in words. */
final class ComparePage {

    /** What fits beside the names of the rows. */
    private static final int MOST = 4;

    /** A share of the movement from which the rubber seal has a row of its own. */
    private static final double SEAL = 0.05;

    private final String title;
    private final Comparison comparison;
    private final Figures figures;
    private final Page page = new Page();

    ComparePage(String title, Comparison comparison, Figures figures) {
        this.title = title;
        this.comparison = comparison;
        this.figures = figures;
    }

    /**
     * Returns the page. More variants than fit side by side come in blocks, the first one in each.
     */
    String text() {
        List<Comparison.Column> columns = comparison.columns();
        boolean whole =
                comparison.columns().stream()
                        .allMatch(column -> column.verdict().job().panel().rimCarried());
        page.ends(CheckPage.sentence(title), whole ? "its whole rim carried" : "as it is held");
        for (int from = 1; from < columns.size(); from += MOST - 1) {
            List<Comparison.Column> block = new ArrayList<>();
            block.add(columns.get(0));
            block.addAll(columns.subList(from, Math.min(columns.size(), from + MOST - 1)));
            page.blank().table(table(block));
        }
        page.blank().line("In words");
        words();
        return page.toString();
    }

    private Page.Table table(List<Comparison.Column> block) {
        Page.Table table = new Page.Table("l" + "r".repeat(block.size()));
        heads(table, block);
        row(table, block, "stiff enough?", c -> answer(c.verdict().stiff()));
        row(table, block, "strong enough?", c -> answer(c.verdict().strong()));
        row(table, block, "unmarked?", c -> answer(c.verdict().unmarked()));
        if (block.stream().allMatch(c -> c.verdict().felt().isPresent())) {
            changing(
                    table,
                    block,
                    "felt stiffness, " + figures.stiffnessName(),
                    c -> stiffness(c),
                    figures::stiffness);
            String unit = figures.movement(1).split(" ", -1)[1];
            row(
                    table,
                    block,
                    "gives under a " + palm(block.get(0)).loadCase() + ", " + unit,
                    c -> figures.movementNumber(palm(c).total()));
            row(table, block, "  skins", c -> figures.movementNumber(palm(c).bending()));
            row(table, block, "  foam", c -> figures.movementNumber(palm(c).sliding()));
            if (block.stream().anyMatch(c -> palm(c).seal() > SEAL * palm(c).total())) {
                row(table, block, "  rubber seal", c -> figures.movementNumber(palm(c).seal()));
            }
        }
        reserve(table, block, "strength, reserve", Mode.Question.STRONG);
        reserve(table, block, "mark, reserve", Mode.Question.UNMARKED);
        changing(
                table,
                block,
                "panel, " + figures.massName(),
                Comparison.Column::mass,
                figures::massNumber);
        // What zones hold is in the whole and not told apart.
        if (block.stream().allMatch(c -> c.verdict().job().panel().zones().isEmpty())) {
            kinds(table, block);
        }
        if (block.stream().anyMatch(c -> Double.isFinite(gain(c)))) {
            row(
                    table,
                    block,
                    figures.stiffnessName() + " gained per added " + figures.massName(),
                    c -> Double.isFinite(gain(c)) ? figures.stiffnessPerMass(gain(c)) : "");
        }
        return table;
    }

    private void kinds(Page.Table table, List<Comparison.Column> block) {
        row(
                table,
                block,
                "  glass, " + figures.massName(),
                c -> figures.massNumber(c.verdict().job().schedule().masses().glass() * area(c)));
        row(
                table,
                block,
                "  resin, " + figures.massName(),
                c ->
                        figures.massNumber(
                                (c.verdict().job().schedule().masses().resin()
                                                + c.verdict().job().schedule().masses().sealCoat())
                                        * area(c)));
    }

    /** The names of the columns, on as many lines as the longest one needs. */
    private static void heads(Page.Table table, List<Comparison.Column> block) {
        List<List<String>> heads = block.stream().map(c -> lines(c.name())).toList();
        int height = heads.stream().mapToInt(List::size).max().orElse(0);
        for (int i = 0; i < height; i++) {
            List<String> row = new ArrayList<>(List.of(""));
            for (List<String> head : heads) {
                row.add(i < head.size() ? head.get(i) : "");
            }
            table.row(row);
        }
    }

    private static List<String> lines(String name) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : name.split(" +", -1)) {
            if (line.length() > 0 && line.length() + 1 + word.length() > 11) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() > 0 ? " " : "").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    private static void row(
            Page.Table table,
            List<Comparison.Column> block,
            String name,
            Function<Comparison.Column, String> cell) {
        List<String> row = new ArrayList<>(List.of(name));
        block.forEach(c -> row.add(cell.apply(c)));
        table.row(row);
    }

    private static void changing(
            Page.Table table,
            List<Comparison.Column> block,
            String name,
            ToDoubleFunction<Comparison.Column> figure,
            Function<Double, String> shown) {
        double first = figure.applyAsDouble(block.get(0));
        row(
                table,
                block,
                name,
                c -> {
                    double value = figure.applyAsDouble(c);
                    return shown.apply(value)
                            + (c.equals(block.get(0)) ? "" : " " + change(value / first - 1));
                });
    }

    private void reserve(
            Page.Table table, List<Comparison.Column> block, String name, Mode.Question question) {
        if (block.stream().allMatch(c -> reserve(c, question).isPresent())) {
            changing(table, block, name, c -> reserve(c, question).orElse(1.0), Figures::reserve);
        }
    }

    private static Optional<Double> reserve(Comparison.Column column, Mode.Question question) {
        return column.verdict().governing(question).map(Margin::reserve).filter(Double::isFinite);
    }

    private static String change(double share) {
        String percent = Figures.decimals(100 * share, 0);
        return String.format(
                        Locale.ROOT,
                        "%5s",
                        (share > 0 && !percent.equals("0") ? "+" : "") + percent + " %")
                .replace("-0 %", "0 %");
    }

    private static String answer(Answer answer) {
        return answer.name().toLowerCase(Locale.ROOT);
    }

    /** Stiffness gained per added mass; NaN for the first panel and for one that is no heavier. */
    private double gain(Comparison.Column column) {
        boolean heavier = column.mass() > comparison.columns().get(0).mass();
        return heavier ? comparison.gainPerMass(column) : Double.NaN;
    }

    private static double area(Comparison.Column column) {
        return column.verdict().job().panel().area();
    }

    private static double stiffness(Comparison.Column column) {
        return column.verdict().felt().map(Spread::nominal).orElse(Double.NaN);
    }

    private static Movement palm(Comparison.Column column) {
        Verdict verdict = column.verdict();
        String load =
                verdict.job().loads().stream()
                        .filter(l -> l.kind() == LoadCase.Kind.FELT)
                        .findFirst()
                        .map(LoadCase::name)
                        .orElseThrow();
        return verdict.movements().stream()
                .filter(m -> m.loadCase().equals(load))
                .findFirst()
                .orElseThrow();
    }

    /** Returns whether the same presses on two variants; a place may have been looked for. */
    private static boolean isPressedAlike(Comparison.Column one, Comparison.Column other) {
        List<LoadCase> mine = one.verdict().job().loads();
        List<LoadCase> theirs = other.verdict().job().loads();
        if (mine.size() != theirs.size()) {
            return false;
        }
        for (int i = 0; i < mine.size(); i++) {
            LoadCase a = mine.get(i);
            LoadCase b = theirs.get(i);
            if (!(a.softest() ? b.softest() && a.name().equals(b.name()) : a.equals(b))) {
                return false;
            }
        }
        return true;
    }

    private void words() {
        List<Comparison.Column> columns = comparison.columns();
        Comparison.Column first = columns.get(0);
        best(c -> gain(c) > 0, this::gain)
                .ifPresent(
                        best ->
                                page.paragraph(
                                        "Most stiffness for its added weight: "
                                                + best.name()
                                                + ", "
                                                + figures.stiffnessPerMass(gain(best))
                                                + " "
                                                + figures.stiffnessName()
                                                + " per "
                                                + figures.massName()
                                                + "."));
        best(
                        c ->
                                isPressedAlike(c, first)
                                        && reserve(c, Mode.Question.UNMARKED).orElse(0.0)
                                                > 1.02
                                                        * reserve(first, Mode.Question.UNMARKED)
                                                                .orElse(Double.MAX_VALUE),
                        c -> reserve(c, Mode.Question.UNMARKED).orElse(0.0))
                .ifPresent(best -> page.paragraph("Resists marks best: " + best.name() + "."));
        List<String> holding =
                columns.stream()
                        .filter(c -> c.verdict().holds())
                        .map(Comparison.Column::name)
                        .toList();
        page.paragraph(
                holding.isEmpty()
                        ? "None of them holds every limit."
                        : holding.size() == columns.size()
                                ? "All of them hold every limit as drawn."
                                : "Every limit as drawn is held by: "
                                        + String.join(", ", holding)
                                        + ".");
        foamStays();
        if (comparison.handScatter() > 0) {
            page.paragraph(
                    "Panels laid by the same hand are compared. Between two separate panels, hand work alone makes "
                            + "about "
                            + Figures.percent(comparison.handScatter())
                            + " of difference in stiffness"
                            + swaps()
                            + ".");
        }
    }

    private Optional<Comparison.Column> best(
            Predicate<Comparison.Column> eligible, ToDoubleFunction<Comparison.Column> figure) {
        return comparison.columns().stream()
                .filter(eligible)
                .max(Comparator.comparingDouble(figure));
    }

    /** Cloth does not change what the foam gives; say so where only cloth differs. */
    private void foamStays() {
        List<Comparison.Column> columns = comparison.columns();
        if (columns.stream().anyMatch(c -> c.verdict().felt().isEmpty())) {
            return;
        }
        double least = columns.stream().mapToDouble(c -> palm(c).sliding()).min().orElse(0);
        double most = columns.stream().mapToDouble(c -> palm(c).sliding()).max().orElse(0);
        if (most > 0.2 * palm(columns.get(0)).total() && most < 1.12 * least) {
            page.paragraph(
                    "The foam gives "
                            + (figures.movement(most).equals(figures.movement(least))
                                    ? ""
                                    : figures.movementNumber(least) + " to ")
                            + figures.movement(most)
                            + " whatever cloth you add: only foam changes that.");
        }
    }

    /** Names the variants that are no further from the first than two panels laid alike. */
    private String swaps() {
        List<Comparison.Column> columns = comparison.columns();
        double first = stiffness(columns.get(0));
        List<String> close =
                columns.stream()
                        .skip(1)
                        .filter(c -> Math.abs(stiffness(c) / first - 1) < comparison.handScatter())
                        .map(c -> "\"" + c.name() + "\"")
                        .toList();
        return close.isEmpty()
                ? ""
                : ": \""
                        + columns.get(0).name()
                        + "\" could change places with "
                        + String.join(" or ", close);
    }
}
