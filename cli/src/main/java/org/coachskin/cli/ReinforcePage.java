package org.coachskin.cli;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import org.coachskin.check.Job;
import org.coachskin.check.Margin;
import org.coachskin.check.Verdict;
import org.coachskin.cli.file.PanelFile;
import org.coachskin.design.Change;
import org.coachskin.failure.Mode;
import org.coachskin.panel.Shape;
import org.coachskin.reinforce.Build;
import org.coachskin.reinforce.Measure;
import org.coachskin.reinforce.Practice;
import org.coachskin.reinforce.Reinforcement;
import org.coachskin.reinforce.Target;
import org.coachskin.reinforce.Tried;

/** What must go around something, for the person who is going to lay it. */
final class ReinforcePage {

    private final String fileName;
    private final PanelFile file;
    private final Reinforcement found;
    private final Figures figures;
    private final Verdict bare;
    private final Page page = new Page();
    private final ReinforceWords words;

    ReinforcePage(String fileName, PanelFile file, Reinforcement found, Figures figures) {
        this.fileName = fileName;
        this.file = file;
        this.found = found;
        this.figures = figures;
        bare = found.bare();
        words = new ReinforceWords(found, figures);
    }

    /** Returns all of it. */
    String text() {
        answer();
        Remarks.takenForGranted(page, file.assumptions(), figures);
        covered();
        Remarks.careful(page, words.verdict(), figures);
        next();
        return page.toString();
    }

    /** Returns the answer alone, for a report that has the rest on sheets of its own. */
    String answer() {
        head();
        words.answer().forEach(page::paragraph);
        page.blank();
        beforeAndAfter();
        if (!found.tried().isEmpty() && !found.isNeedless() && !found.isBesideThePoint()) {
            table();
        }
        further();
        words.shown().ifPresent(this::bench);
        return page.toString();
    }

    private void head() {
        Job job = bare.job();
        String size = "";
        if (found.target() instanceof Target.Hole hole) {
            Shape shape = hole.opening().shape();
            size =
                    shape instanceof Shape.Rectangle r
                            ? " " + figures.sizes(r.x(), r.y())
                            : shape instanceof Shape.Circle circle
                                    ? " " + figures.size(circle.diameter()) + " across"
                                    : "";
        }
        String foam =
                job.schedule().board() == null
                        ? "no foam"
                        : figures.size(job.schedule().board().thickness()) + " foam";
        page.ends(
                CheckPage.sentence(job.panel().name()) + ", " + found.target().name() + size,
                figures.sizes(job.panel().width(), job.panel().length()) + ", " + foam);
        page.blank();
    }

    private void beforeAndAfter() {
        Map<String, Verdict> states = words.states();
        Collection<Verdict> columns = states.values();
        List<String> head = new ArrayList<>(List.of("Before and after"));
        head.addAll(states.keySet());
        Page.Table table = new Page.Table("l" + "r".repeat(columns.size()));
        table.row(head);
        if (bare.felt().isPresent()) {
            row(
                    table,
                    "felt stiffness, "
                            + figures.stiffnessName()
                            + " ("
                            + figures.stiffness(bare.job().limits().feltStiffness())
                            + " wanted)",
                    columns,
                    verdict -> Rows.felt(verdict, figures));
            String load = bare.job().felt().orElseThrow().name();
            row(
                    table,
                    "gives under " + Rows.called(load),
                    columns,
                    verdict -> figures.movement(verdict.movementUnder(load).total()));
        }
        for (Mode mode : modes(columns)) {
            row(
                    table,
                    "reserve, " + mode.words(),
                    columns,
                    verdict ->
                            margin(verdict, mode)
                                    .map(Margin::reserve)
                                    .map(Figures::reserve)
                                    .orElse("-"));
        }
        row(
                table,
                "weight, " + figures.massName(),
                columns,
                verdict -> figures.massNumber(verdict.mass()));
        page.table(table).blank();
    }

    private interface Cell {
        String of(Verdict verdict);
    }

    private static void row(
            Page.Table table, String title, Collection<Verdict> columns, Cell cell) {
        List<String> cells = new ArrayList<>(List.of(title));
        columns.forEach(verdict -> cells.add(cell.of(verdict)));
        table.row(cells);
    }

    /** The three modes other than stiffness that come nearest in any column. */
    private static List<Mode> modes(Collection<Verdict> columns) {
        return columns.stream()
                .flatMap(verdict -> verdict.margins().stream())
                .filter(margin -> margin.mode() != Mode.FELT_STIFFNESS && margin.reserve() < 99)
                .sorted(Comparator.comparingDouble(Margin::reserve))
                .map(Margin::mode)
                .distinct()
                .limit(3)
                .toList();
    }

    private static Optional<Margin> margin(Verdict verdict, Mode mode) {
        return verdict.margins().stream().filter(m -> m.mode() == mode).findFirst();
    }

    private void table() {
        Measure like =
                words.shown().map(Tried::measure).orElseGet(() -> found.tried().get(0).measure());
        Map<Build, List<Tried>> rows = found.rows(like);
        TreeSet<Double> widths = new TreeSet<>();
        rows.values().forEach(row -> row.forEach(one -> widths.add(one.measure().width())));
        widths.remove(0.0);
        boolean judged = found.tried().stream().anyMatch(one -> !Double.isNaN(one.reserve()));
        boolean stiffness = words.isOfStiffness() || !judged;
        ToDoubleFunction<Tried> value = stiffness ? Tried::felt : Tried::reserve;
        page.wrap(
                "",
                "What width and material buy: "
                        + (stiffness
                                ? figures.stiffnessName()
                                        + " ("
                                        + figures.stiffness(bare.job().limits().feltStiffness())
                                        + " wanted)"
                                : "least reserve (1.00 wanted)")
                        + (like.turned() ? ", inside skin turned round the edge" : "")
                        + (like.radius() > 0
                                ? ", corner radius " + figures.size(like.radius())
                                : ""));
        double massAt = like.width() > 0 || widths.isEmpty() ? like.width() : widths.first();
        List<String> head = new ArrayList<>(List.of(""));
        widths.forEach(width -> head.add(figures.size(width)));
        if (widths.isEmpty()) {
            head.add("");
        }
        head.add("adds" + (massAt > 0 ? " at " + figures.size(massAt) : ""));
        Page.Table table = new Page.Table("l" + "r".repeat(head.size() - 1)).row(head);
        for (Map.Entry<Build, List<Tried>> row : rows.entrySet()) {
            List<String> cells = new ArrayList<>(List.of(figures.words(row.getKey().words())));
            List<Double> columns = widths.isEmpty() ? List.of(0.0) : List.copyOf(widths);
            boolean same = row.getValue().stream().allMatch(one -> one.measure().width() == 0);
            for (double width : columns) {
                OptionalDouble there =
                        row.getValue().stream()
                                .filter(one -> same || one.measure().width() == width)
                                .mapToDouble(value)
                                .findFirst();
                cells.add(there.isEmpty() ? "-" : number(there.getAsDouble(), stiffness));
            }
            cells.add(
                    row.getValue().stream()
                            .filter(one -> same || one.measure().width() == massAt)
                            .findFirst()
                            .map(one -> figures.grams(one.addedMass()))
                            .orElse("-"));
            table.row(cells);
        }
        page.table(table);
        words.underTheTable().forEach(page::paragraph);
        page.blank();
    }

    private String number(double value, boolean stiffness) {
        if (Double.isNaN(value)) {
            return "-";
        }
        return stiffness
                ? figures.stiffness(value, bare.job().limits().feltStiffness())
                : Figures.reserve(value);
    }

    private void further() {
        if (found.further().isEmpty()) {
            return;
        }
        page.line(
                found.isBesideThePoint()
                        ? "What would help, with nothing laid there"
                        : "What would help more, beside "
                                + (found.cured().isEmpty() ? "the nearest" : "that"));
        Page.Table table = new Page.Table("lrrl").row("", "reserve", "adds", "");
        for (Change change : found.further()) {
            table.row(
                    figures.words(change.words()),
                    Figures.reserve(change.verdict().governing().reserve()),
                    change.addedMass() == 0 ? "-" : figures.grams(change.addedMass()),
                    Upshot.of(change.verdict()).words());
        }
        page.table(table).blank();
    }

    private void bench(Tried best) {
        page.line(words.bench());
        List<String> steps = best.benchSteps(found.target());
        for (int i = 0; i < steps.size(); i++) {
            page.wrap("  " + (i + 1) + "  ", figures.words(steps.get(i)));
        }
        page.paragraph(
                "(" + figures.words(Practice.source().work()) + ": common practice, no source)");
        page.blank();
        page.line(
                "In the panel file"
                        + (found.drawn().isPresent()
                                ? ", in place of what it lays there; other zones stay"
                                : ""));
        FileLines.print(FileLines.of(found.target(), best), page);
        page.blank();
    }

    private void covered() {
        page.line("Not covered");
        page.paragraph(
                "Glue lines, the stress a turned skin bears round its corner, a crash"
                        + (found.target() instanceof Target.Hole
                                ? "; what sits in the "
                                        + found.target().name()
                                        + ", its seal, glass that breaks."
                                : found.target() instanceof Target.Hardware
                                        ? "; screws, bolts and what they are fixed to."
                                        : "."));
        page.blank();
    }

    private void next() {
        if (words.shown().isEmpty()) {
            return;
        }
        page.line("Next");
        page.line(
                "    coachskin check "
                        + Texts.asArgument(fileName)
                        + "    once the lines stand in it");
    }
}
