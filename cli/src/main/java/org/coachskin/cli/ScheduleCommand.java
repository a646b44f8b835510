package org.coachskin.cli;

import org.coachskin.cli.file.PanelFile;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code coachskin schedule}: what a stack and its plies give. */
final class ScheduleCommand implements Subcommand {

    @Override
    public CommandSpec spec() {
        return Subcommand.answering(Subcommand.arguments("a panel file", "1", "1"));
    }

    @Override
    public Outcome run(ParseResult given) {
        Figures figures = Panels.units(given);
        PanelFile.Laid laid = Panels.readLaid(Subcommand.argumentsOf(given)[0]);
        SchedulePage page = new SchedulePage(laid, figures);
        return Outcome.answer(
                Outcome.HOLDS, given.hasMatchedOption("--json") ? page.json() : page.text());
    }
}
