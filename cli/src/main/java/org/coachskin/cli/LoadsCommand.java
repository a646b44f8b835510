package org.coachskin.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.coachskin.laminate.Patch;
import org.coachskin.panel.EverydayLoads;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code coachskin loads}: who and what presses on a panel, with where the figures come from. */
final class LoadsCommand implements Subcommand {

    private static final Pattern NEWTONS = Pattern.compile("(\\d+) N\\b");

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
            remark(remarks, load.name(), forces(load.remark(), figures));
        }
        EverydayLoads.Wind wind = EverydayLoads.windFigures();
        remark(remarks, "wind", wind.remark());
        boolean metric = figures == Figures.METRIC;
        return new Page()
                .line("What presses on one place, in the middle unless the file says where")
                .table(table)
                .blank()
                .line("What is spread over the panel; give the figure in the file")
                .table(
                        new Page.Table("lll")
                                .row(
                                        "wind: " + figures.windToWrite(),
                                        air(wind, figures),
                                        sources.mark(wind.source()).strip())
                                .row(
                                        metric ? "snow: 800 Pa" : "snow: 0.12 psi",
                                        "lies for weeks",
                                        "")
                                .row("luggage", "a mass on a patch; may lie for weeks", "")
                                .row("own weight", "of a panel that lies flat", ""))
                .lines(sources)
                .blank()
                .line("What stands behind the figures")
                .line(remarks.toString().stripTrailing())
                .toString();
    }

    private static void remark(Page page, String name, String words) {
        page.wrap("  " + name + " ".repeat(Math.max(1, 8 - name.length())), words);
    }

    private static String forces(String remark, Figures figures) {
        return NEWTONS.matcher(remark)
                .replaceAll(found -> figures.force(Double.parseDouble(found.group(1))));
    }

    private static String air(EverydayLoads.Wind wind, Figures figures) {
        return "suction, gust of "
                + figures.speed(wind.gust())
                + "; times "
                + Figures.decimals(wind.frontSuction() / wind.suction(), 1)
                + " in the front "
                + Figures.percent(wind.front());
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
        EverydayLoads.Wind wind = EverydayLoads.windFigures();
        Map<String, Object> air = new LinkedHashMap<>();
        air.put("density", wind.density());
        air.put("gust", wind.gust());
        air.put("suction", wind.suction());
        air.put("frontSuction", wind.frontSuction());
        air.put("front", wind.front());
        air.put("remark", wind.remark());
        air.put("source", Json.source(wind.source()));
        json.put("wind", air);
        return Json.text(json);
    }
}
