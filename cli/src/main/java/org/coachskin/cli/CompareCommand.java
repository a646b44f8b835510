package org.coachskin.cli;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coachskin.check.Job;
import org.coachskin.cli.file.PanelFile;
import org.coachskin.design.Comparison;
import org.coachskin.design.OneMore;
import org.coachskin.material.MaterialLibrary;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code coachskin compare}: variants side by side. */
final class CompareCommand implements Subcommand {

    @Override
    public CommandSpec spec() {
        return Subcommand.answering(Subcommand.arguments("a panel file, or several", "1", "*"))
                .addOption(ReportFile.option());
    }

    @Override
    public Outcome run(ParseResult given) {
        Figures figures = Panels.units(given);
        String[] names = Subcommand.argumentsOf(given);
        List<PanelFile> files = Arrays.stream(names).map(Panels::read).toList();
        Map<String, Job> jobs =
                names.length == 1 ? variants(names[0], files.get(0)) : panels(files);
        Optional<ReportFile> report = ReportFile.wanted(given, List.of(names));
        MaterialLibrary library = files.get(0).library();
        Job first = jobs.values().iterator().next();
        Comparison comparison;
        OneMore oneMore;
        int solutions = jobs.size() + OneMore.solutions(first, library);
        try (Progress progress = Progress.of("comparing", solutions)) {
            comparison = Comparison.of(jobs, progress::step);
            oneMore = OneMore.of(comparison.columns().get(0).verdict(), library, progress::step);
        }
        String title = names.length == 1 ? first.panel().name() : "Side by side";
        boolean holds = comparison.columns().stream().allMatch(column -> column.verdict().holds());
        String page = new ComparePage(title, comparison, oneMore, figures).text();
        report.ifPresent(
                to ->
                        to.write(
                                () ->
                                        CompareReport.of(
                                                title,
                                                List.of(names),
                                                files,
                                                comparison,
                                                oneMore,
                                                page,
                                                figures)));
        String text =
                given.hasMatchedOption("--json")
                        ? Json.text(CompareJson.of(comparison, oneMore))
                        : page;
        return Outcome.answer(holds ? Outcome.HOLDS : Outcome.DOES_NOT_HOLD, text);
    }

    private static Map<String, Job> variants(String name, PanelFile file) {
        Map<String, Job> jobs = file.jobs();
        if (jobs.size() < 2) {
            throw Panels.refused(
                    name + " has no variants to compare.",
                    """
                    Add for example
                    variants:
                      thicker foam: {foam: {thickness: 18 mm}}
                    or name two files or more.""");
        }
        return jobs;
    }

    private static Map<String, Job> panels(List<PanelFile> files) {
        Map<String, Job> jobs = new LinkedHashMap<>();
        for (PanelFile file : files) {
            String column = file.name();
            for (int copy = 2; jobs.containsKey(column); copy++) {
                column = file.name() + " (" + copy + ")";
            }
            jobs.put(column, file.asDrawn());
        }
        return jobs;
    }
}
