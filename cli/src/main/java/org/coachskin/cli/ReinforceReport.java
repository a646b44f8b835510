package org.coachskin.cli;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.check.PanelCheck;
import org.coachskin.check.Picture;
import org.coachskin.check.Verdict;
import org.coachskin.cli.file.PanelFile;
import org.coachskin.cli.report.Block;
import org.coachskin.cli.report.Report;
import org.coachskin.cli.report.Sheet;
import org.coachskin.reinforce.Reinforcement;
import org.coachskin.reinforce.Tried;

/** The report on what must go around something: what to lay, what it brings, why. */
final class ReinforceReport {

    private final Reinforcement found;
    private final Figures figures;
    private final ReinforceWords words;
    private final Verdict shown;

    private ReinforceReport(Reinforcement found, Figures figures) {
        this.found = found;
        this.figures = figures;
        words = new ReinforceWords(found, figures);
        shown = words.verdict();
    }

    /** Returns the report. */
    static Report of(String fileName, PanelFile file, Reinforcement found, Figures figures) {
        ReinforceReport report = new ReinforceReport(found, figures);
        Picture picture = new PanelCheck().picture(report.shown, figures.weights());
        List<Sheet> sheets = new ArrayList<>();
        sheets.add(report.around(picture));
        sheets.addAll(new BenchSheet(report.shown, figures).sheets(report.steps(), picture));
        sheets.add(GivesSheet.of(report.words.states(), figures));
        sheets.add(
                new Sheet(
                        "words",
                        "In words",
                        "for the engineer",
                        List.of(
                                new Block.Raw(
                                        "As the command prints it",
                                        new ReinforcePage(fileName, file, found, figures)
                                                .answer()))));
        sheets.add(new WhySheet(report.shown, figures).sheet(picture, file));
        return CheckReport.of(
                fileName,
                CheckPage.sentence(file.name()) + ": " + found.target().name(),
                report.shown,
                sheets,
                figures);
    }

    private Sheet around(Picture picture) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Words("", words.answer(), false, ""));
        BuildSheet build = new BuildSheet(shown, figures);
        blocks.add(build.plan(picture));
        blocks.add(build.cut());
        blocks.add(reserves().narrow());
        return new Sheet(
                "around", "What goes around the " + found.target().name(), "for the wall", blocks);
    }

    private List<Block> steps() {
        return words.shown().stream().map(this::steps).toList();
    }

    private Block steps(Tried one) {
        List<List<String>> rows = new ArrayList<>();
        one.benchSteps(found.target()).forEach(step -> rows.add(List.of("", figures.words(step))));
        return new Block.Rows(words.bench(), "", List.of(), rows, "tick", true);
    }

    private Block.Bars reserves() {
        List<Block.Bar> bars = new ArrayList<>();
        words.states()
                .forEach(
                        (name, verdict) -> {
                            bars.add(
                                    WantedBars.reserve(
                                            name + ": " + Rows.what(verdict.governing()),
                                            verdict.governing().reserve(),
                                            figures.mass(verdict.mass())
                                                    + ", "
                                                    + Upshot.of(verdict).words(),
                                            !verdict.holds()));
                        });
        return WantedBars.reserves(
                "Before and after",
                "The least reserve of each and what goes first: short of the line it does not hold.",
                bars);
    }
}
