package org.coachskin.cli;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.check.Picture;
import org.coachskin.check.Verdict;
import org.coachskin.cli.file.PanelFile;
import org.coachskin.cli.report.Report;
import org.coachskin.cli.report.Sheet;
import org.coachskin.design.Change;

/** The report on one panel: what to build, how to prove it, why. */
final class CheckReport {

    private CheckReport() {}

    static Report of(
            String fileName,
            PanelFile file,
            Verdict verdict,
            List<Change> changes,
            Picture picture,
            Figures figures) {
        List<Sheet> sheets = new ArrayList<>();
        sheets.add(new BuildSheet(verdict, figures).sheet(picture, changes));
        sheets.addAll(new BenchSheet(verdict, figures).sheets(List.of(), picture));
        sheets.add(new WhySheet(verdict, figures).sheet(picture, file));
        return of(
                fileName,
                CheckPage.sentence(verdict.job().panel().name()),
                verdict,
                sheets,
                figures);
    }

    /** Returns a report that answers the three questions with one verdict. */
    static Report of(
            String fileName, String title, Verdict verdict, List<Sheet> sheets, Figures figures) {
        return new Report(
                title,
                figures.sizes(verdict.job().panel().width(), verdict.job().panel().length())
                        + ", "
                        + figures.mass(verdict.mass())
                        + " before filler, paint and fittings",
                fileName,
                Main.versionWords(),
                new Answers(verdict, figures)
                        .said().stream()
                                .map(
                                        said ->
                                                new Report.Answered(
                                                        said.question(),
                                                        said.answer().isEmpty()
                                                                ? "?"
                                                                : said.answer(),
                                                        said.reason(),
                                                        said.fails()))
                                .toList(),
                sheets);
    }
}
