package org.coachskin.cli;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coachskin.check.Job;
import org.coachskin.check.PanelCheck;
import org.coachskin.check.Reserves;
import org.coachskin.check.Spread;
import org.coachskin.check.Swept;
import org.coachskin.check.Verdict;
import org.coachskin.cli.file.PanelFile;
import org.coachskin.design.Change;
import org.coachskin.design.Cures;
import org.coachskin.failure.Mode;
import org.coachskin.prove.StripTest;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code coachskin check}: will it hold? */
final class CheckCommand implements Subcommand {

    /** The verdict, its changes, the look around. */
    private static final int STAGES = 3;

    @Override
    public CommandSpec spec() {
        return Subcommand.answering(Subcommand.arguments("a panel file", "1", "1"))
                .addOption(Subcommand.flag("--all"))
                .addOption(Subcommand.option("--why", "\"words of a row\""))
                .addOption(ReportFile.option());
    }

    @Override
    public Outcome run(ParseResult given) {
        Figures figures = Panels.units(given);
        String name = Subcommand.argumentsOf(given)[0];
        PanelFile file = Panels.read(name);
        Optional<ReportFile> report = ReportFile.wanted(given, List.of(name));
        if (report.isPresent() && given.hasMatchedOption("--why")) {
            throw Panels.refused(
                    "A report holds every why.", "Write   --report   or   --why   , not both.");
        }
        boolean all = given.hasMatchedOption("--all");
        boolean json = given.hasMatchedOption("--json");
        PanelCheck check = new PanelCheck();
        Verdict verdict;
        int status;
        List<Change> changes;
        Map<Mode, Spread> spreads;
        Optional<Swept> swept;
        try (Progress progress = Progress.of("checking", STAGES)) {
            verdict = check.check(file.asDrawn());
            progress.step();
            status = verdict.holds() ? Outcome.HOLDS : Outcome.DOES_NOT_HOLD;
            if (given.hasMatchedOption("--why")) {
                String words = given.matchedOptionValue("--why", "");
                return Outcome.answer(status, new WhyPage(verdict, figures).about(words));
            }
            Cures cures = new Cures(file.library());
            changes = Remarks.clearly(verdict) ? cures.toLeaveOut(verdict) : cures.toCure(verdict);
            progress.step();
            spreads = all || json ? Reserves.of(verdict) : Map.of();
            swept = swept(check, verdict.job());
            progress.step();
        }
        StripTest strip = StripTest.of(verdict.job().schedule());
        report.ifPresent(
                to ->
                        to.write(
                                () ->
                                        CheckReport.of(
                                                name,
                                                file,
                                                verdict,
                                                changes,
                                                check.picture(verdict, figures.weights()),
                                                figures)));
        String text =
                json
                        ? Json.text(VerdictJson.check(verdict, spreads, changes, strip, swept))
                        : new CheckPage(name, file, verdict, figures)
                                .text(changes, strip, all, spreads, swept);
        return Outcome.answer(status, text);
    }

    /** Returns how the palm feels all over a panel on fittings; a plain one is softest inside. */
    private static Optional<Swept> swept(PanelCheck check, Job job) {
        return job.panel().rimCarried()
                ? Optional.empty()
                : job.felt().map(load -> check.sweep(job, load));
    }
}
