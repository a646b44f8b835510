package org.coachskin.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
    private final Optional<Tried> best;
    private final Verdict shown;

    private ReinforceReport(Reinforcement found, Figures figures) {
        this.found = found;
        this.figures = figures;
        best =
                found.isNeedless()
                        ? Optional.empty()
                        : found.chosen().or(found::nearest).filter(t -> t.verdict().isPresent());
        shown = best.flatMap(Tried::verdict).orElse(found.bare());
    }

    /**
     * Returns the report.
     *
     * @param printed what the command prints
     */
    static Report of(
            String fileName, PanelFile file, Reinforcement found, String printed, Figures figures) {
        ReinforceReport report = new ReinforceReport(found, figures);
        Picture picture = new PanelCheck().picture(report.shown, figures.weights());
        return CheckReport.of(
                fileName,
                CheckPage.sentence(file.name()) + ": " + found.target().name(),
                report.shown,
                List.of(
                        report.around(picture),
                        report.bench(printed),
                        GivesSheet.of(report.panels(), figures),
                        new WhySheet(report.shown, figures).sheet(picture, file)),
                figures);
    }

    private Sheet around(Picture picture) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                new Block.Words(
                        "", "", new ReinforceWords(found, figures).answer(), false, "", true));
        BuildSheet build = new BuildSheet(shown, figures);
        blocks.add(build.plan(picture));
        blocks.add(build.cut());
        blocks.add(reserves());
        return new Sheet(
                "around", "What goes around the " + found.target().name(), "for the wall", blocks);
    }

    private Block steps(Tried one) {
        List<List<String>> rows = new ArrayList<>();
        one.benchSteps(found.target()).forEach(step -> rows.add(List.of("", figures.words(step))));
        return new Block.Rows(
                found.chosen().isPresent()
                        ? "At the bench, in this order"
                        : "The nearest at the bench, in this order",
                "",
                List.of(),
                rows,
                "tick",
                true);
    }

    private Block reserves() {
        List<Block.Bar> bars = new ArrayList<>();
        panels().forEach(
                        (name, verdict) -> {
                            double reserve = verdict.governing().reserve();
                            bars.add(
                                    new Block.Bar(
                                            name
                                                    + ": "
                                                    + figures.words(
                                                            Rows.words(verdict.governing())),
                                            Math.min(WhySheet.LONGEST, reserve),
                                            Figures.reserve(reserve),
                                            figures.mass(verdict.mass())
                                                    + ", "
                                                    + Remarks.outcome(verdict),
                                            !verdict.holds()));
                        });
        return new Block.Bars(
                "Before and after",
                "The least reserve of each and what goes first: short of the line it does not hold.",
                "reserve",
                1,
                "1.00",
                bars,
                true);
    }

    /** Returns what stands side by side: uncut, bare, as drawn and with what goes around. */
    private Map<String, Verdict> panels() {
        Map<String, Verdict> panels = new LinkedHashMap<>();
        found.uncut().ifPresent(verdict -> panels.put("uncut", verdict));
        panels.put(found.uncut().isPresent() ? "cut, bare" : "as it is", found.bare());
        found.drawn().ifPresent(verdict -> panels.put("as drawn", verdict));
        best.flatMap(Tried::verdict)
                .ifPresent(
                        verdict ->
                                panels.put(
                                        found.chosen().isPresent() ? "with it" : "nearest",
                                        verdict));
        return panels;
    }

    private Sheet bench(String printed) {
        List<Block> blocks = new ArrayList<>();
        best.ifPresent(one -> blocks.add(steps(one)));
        blocks.add(new Block.Raw("As the command prints it", "", printed));
        return new Sheet("bench", "Lay it", "for the bench", blocks);
    }
}
