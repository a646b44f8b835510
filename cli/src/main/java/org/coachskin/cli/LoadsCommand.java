package org.coachskin.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.coachskin.laminate.Patch;
import org.coachskin.panel.EverydayLoads;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code coachskin loads}: who and what presses on a panel, with where the figures come from. */
final class LoadsCommand implements Subcommand {

    @Override
    public CommandSpec spec() {
        return CommandSpec.create()
                .addOption(Subcommand.flag("--json"))
                .addOption(Subcommand.option("--units", "metric|us"));
    }

    @Override
    public Outcome run(ParseResult given) {
        return Outcome.answer(
                Outcome.HOLDS,
                given.hasMatchedOption("--json") ? json() : text(Panels.units(given)));
    }

    private static String text(Figures figures) {
        Page.Table table = new Page.Table("lrll").row("name", "force", "on", "");
        Sources sources = new Sources();
        Page remarks = new Page();
        for (EverydayLoads.Named load : EverydayLoads.known()) {
            table.row(
                    load.name(),
                    figures.force(load.force()),
                    area(load.patch(), figures),
                    sources.mark(load.source()).strip());
            remarks.wrap(
                    "  " + load.name() + " ".repeat(Math.max(1, 8 - load.name().length())),
                    load.remark());
        }
        return new Page()
                .line("What presses on one place, in the middle unless the file says where")
                .table(table)
                .lines(sources)
                .blank()
                .line("What stands behind the figures")
                .line(remarks.toString().stripTrailing())
                .blank()
                .line("What is spread over the panel; give the figure in the file")
                .table(
                        new Page.Table("ll")
                                .row(
                                        "wind: 110 km/h",
                                        "suction by road speed and a gust, judged both ways")
                                .row("snow: 800 Pa", "lies for weeks")
                                .row("luggage", "a mass on a patch; may lie for weeks")
                                .row("own weight", "of a panel that lies flat"))
                .toString();
    }

    private static String area(Patch patch, Figures figures) {
        return patch instanceof Patch.Disc
                ? "a disc of " + figures.size(2 * patch.halfX())
                : figures.sizes(2 * patch.halfX(), 2 * patch.halfY());
    }

    private static String json() {
        List<Object> rows = new ArrayList<>();
        for (EverydayLoads.Named load : EverydayLoads.known()) {
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("name", load.name());
            row.put("force", load.force());
            row.put("disc", load.patch() instanceof Patch.Disc);
            row.put("across", 2 * load.patch().halfX());
            row.put("along", 2 * load.patch().halfY());
            row.put("judgedAs", load.kind().name().toLowerCase(Locale.ROOT));
            row.put("remark", load.remark());
            row.put("source", Json.source(load.source()));
            rows.add(row);
        }
        Map<String, Object> json = Json.answer("loads");
        json.put("loads", rows);
        return Json.text(json);
    }
}
