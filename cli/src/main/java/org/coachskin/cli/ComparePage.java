package org.coachskin.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.coachskin.analysis.Held;
import org.coachskin.check.Answer;
import org.coachskin.check.Movement;
import org.coachskin.check.Spread;
import org.coachskin.check.Verdict;
import org.coachskin.design.Comparison;
import org.coachskin.design.OneMore;
import org.coachskin.failure.Mode;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;

/** Variants side by side, what the figures say in words, and what one more would do. */
final class ComparePage {

    /** What fits beside the names of the rows. */
    private static final int MOST = 4;

    /** A share of the movement from which a part of it has a row of its own. */
    private static final double PART = 0.02;

    private final String title;
    private final Comparison comparison;
    private final OneMore oneMore;
    private final Figures figures;
    private final Page page = new Page();

    ComparePage(String title, Comparison comparison, OneMore oneMore, Figures figures) {
        this.title = title;
        this.comparison = comparison;
        this.oneMore = oneMore;
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
        new CompareWords(page, comparison, figures).write();
        page.blank();
        new OneMoreBlock(comparison, oneMore, figures).write(page);
        return page.toString();
    }

    private Page.Table table(List<Comparison.Column> block) {
        Page.Table table = new Page.Table("l" + "r".repeat(block.size()));
        heads(table, block);
        row(table, block, "stiff enough?", c -> answer(c.verdict().stiff()));
        row(table, block, "strong enough?", c -> answer(c.verdict().strong()));
        row(table, block, "unmarked?", c -> answer(c.verdict().unmarked()));
        if (block.stream().allMatch(c -> c.verdict().felt().isPresent())) {
            felt(table, block);
        }
        spread(table, block);
        gap(table, block);
        reserve(table, block, "strength, reserve", Mode.Question.STRONG);
        reserve(table, block, "mark, reserve", Mode.Question.UNMARKED);
        row(
                table,
                block,
                "panel, " + figures.massName(),
                c ->
                        figures.massNumber(c.mass())
                                + change(block, c, c.mass() / block.get(0).mass() - 1));
        kind(table, block, "glass", c -> c.weights().glass());
        kind(table, block, "resin", c -> c.weights().resin() + c.weights().sealCoat());
        differing(table, block, "foam", c -> c.weights().foam());
        differing(table, block, "inserts", c -> c.weights().inserts());
        differing(table, block, "own plies", c -> c.weights().given());
        if (block.stream().anyMatch(c -> Double.isFinite(gain(comparison, c)))) {
            row(
                    table,
                    block,
                    figures.stiffnessName() + " gained per added " + figures.massName(),
                    c -> {
                        double gain = gain(comparison, c);
                        return Double.isFinite(gain) ? figures.stiffnessPerMass(gain) : "";
                    });
        }
        return table;
    }

    private void felt(Page.Table table, List<Comparison.Column> block) {
        row(
                table,
                block,
                "felt stiffness, " + figures.stiffnessName(),
                c ->
                        figures.stiffness(stiffness(c))
                                + difference(block, c, comparison.stiffness(c)));
        String load = pressed(block.get(0)).loadCase();
        row(
                table,
                block,
                "gives under " + Rows.oneOf(load) + ", " + figures.lengthName(),
                c -> figures.movementNumber(pressed(c).total()));
        part(table, block, "skins", Movement::bending);
        part(table, block, "foam", Movement::sliding);
        part(table, block, "rubber seal", Movement::seal);
        part(table, block, "dent", Movement::dent);
        if (block.stream().anyMatch(c -> felt(c).softest())) {
            row(table, block, "  softest place, from left", c -> figures.size(at(c).x()));
            row(table, block, "    from front", c -> figures.size(at(c).y()));
        }
    }

    /** A part of the movement that is seen in one of the variants at least. */
    private void part(
            Page.Table table,
            List<Comparison.Column> block,
            String name,
            ToDoubleFunction<Movement> part) {
        boolean seen =
                block.stream()
                        .map(ComparePage::pressed)
                        .anyMatch(m -> Math.abs(part.applyAsDouble(m)) > PART * m.total());
        if (seen) {
            row(
                    table,
                    block,
                    "  " + name,
                    c ->
                            figures.partOfMovement(
                                    part.applyAsDouble(pressed(c)), pressed(c).total()));
        }
    }

    /** How far each load that is spread moves the panels. */
    private void spread(Page.Table table, List<Comparison.Column> block) {
        for (LoadCase load : block.get(0).verdict().job().loads()) {
            boolean everywhere =
                    block.stream()
                            .allMatch(
                                    c ->
                                            c.verdict().job().loads().stream()
                                                    .anyMatch(l -> l.name().equals(load.name())));
            if (load.kind() == LoadCase.Kind.SPREAD && everywhere) {
                row(
                        table,
                        block,
                        "moves under " + Rows.called(load.name()) + ", " + figures.lengthName(),
                        c ->
                                figures.movementNumber(
                                        Math.abs(c.verdict().movementUnder(load.name()).total())));
            }
        }
    }

    private void gap(Page.Table table, List<Comparison.Column> block) {
        if (block.stream().anyMatch(c -> gap(c) > 0)) {
            row(
                    table,
                    block,
                    "gap at the seal, " + figures.lengthName(),
                    c -> hasSeal(c) ? figures.movementNumber(gap(c)) : "-");
        }
    }

    private void kind(
            Page.Table table,
            List<Comparison.Column> block,
            String name,
            ToDoubleFunction<Comparison.Column> kind) {
        if (block.stream().anyMatch(c -> kind.applyAsDouble(c) > 0)) {
            row(table, block, "  " + name, c -> figures.massNumber(kind.applyAsDouble(c)));
        }
    }

    /** A kind that not all of the panels have as much of. */
    private void differing(
            Page.Table table,
            List<Comparison.Column> block,
            String name,
            ToDoubleFunction<Comparison.Column> kind) {
        if (block.stream().map(c -> figures.massNumber(kind.applyAsDouble(c))).distinct().count()
                > 1) {
            kind(table, block, name, kind);
        }
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

    private void reserve(
            Page.Table table, List<Comparison.Column> block, String name, Mode.Question question) {
        if (block.stream().allMatch(c -> comparison.reserve(c, question).isPresent())) {
            row(
                    table,
                    block,
                    name,
                    c ->
                            Figures.reserve(c.verdict().governing(question).orElseThrow().reserve())
                                    + difference(block, c, comparison.reserve(c, question)));
        }
    }

    /** By how much a figure differs from the first panel's; nothing for that panel itself. */
    private static String difference(
            List<Comparison.Column> block,
            Comparison.Column column,
            Optional<Comparison.Difference> difference) {
        return difference.map(d -> change(block, column, d.tells() ? d.share() : 0)).orElse("");
    }

    private static String change(
            List<Comparison.Column> block, Comparison.Column column, double share) {
        return column.equals(block.get(0))
                ? ""
                : String.format(Locale.ROOT, " %6s", Figures.change(share));
    }

    private static String answer(Answer answer) {
        return answer.name().toLowerCase(Locale.ROOT);
    }

    /** Stiffness gained per added mass; NaN for the first panel and for one that is no heavier. */
    static double gain(Comparison comparison, Comparison.Column column) {
        boolean heavier = column.mass() > comparison.columns().get(0).mass() * (1 + 1e-6);
        return heavier ? comparison.gainPerMass(column) : Double.NaN;
    }

    static double stiffness(Comparison.Column column) {
        return column.verdict().felt().map(Spread::nominal).orElse(Double.NaN);
    }

    static double gap(Comparison.Column column) {
        return column.verdict().held().stream().mapToDouble(Held::widestGap).max().orElse(0);
    }

    static boolean hasSeal(Comparison.Column column) {
        return column.verdict().held().stream().anyMatch(held -> !held.seals().isEmpty());
    }

    /** Returns the load that the felt stiffness is felt under. */
    private static LoadCase felt(Comparison.Column column) {
        return column.verdict().job().felt().orElseThrow();
    }

    private static Load.Press at(Comparison.Column column) {
        return (Load.Press) felt(column).loads().get(0);
    }

    /** Returns the movement that the felt stiffness is felt by. */
    static Movement pressed(Comparison.Column column) {
        Verdict verdict = column.verdict();
        return verdict.movementUnder(felt(column).name());
    }
}
