package org.coachskin.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import org.coachskin.Source;
import org.coachskin.cli.file.ReadyMade;
import org.coachskin.laminate.LayUp;
import org.coachskin.material.Cloth;
import org.coachskin.material.Foam;
import org.coachskin.material.Inserts;
import org.coachskin.material.MaterialLibrary;
import org.coachskin.material.Resin;
import org.coachskin.material.Weave;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code coachskin materials}: the tables, with where each row comes from. */
final class MaterialsCommand implements Subcommand {

    private final MaterialLibrary library = MaterialLibrary.standard();

    private final Map<String, Kind> kinds = new LinkedHashMap<>();

    MaterialsCommand() {
        kinds.put("cloth", new Kind(this::cloths, this::clothsJson));
        kinds.put("resin", new Kind(this::resins, this::resinsJson));
        kinds.put("foam", new Kind(this::foams, this::foamsJson));
        kinds.put("insert", new Kind(this::inserts, this::insertsJson));
        kinds.put("method", new Kind(this::methods, this::methodsJson));
        kinds.put("fitting", new Kind(this::fittings, this::fittingsJson));
    }

    private record Kind(Function<Figures, String> text, Supplier<List<Object>> json) {}

    @Override
    public CommandSpec spec() {
        return Subcommand.answering(
                Subcommand.arguments("cloth, resin, foam, insert, method or fitting", "0", "1"));
    }

    @Override
    public Outcome run(ParseResult given) {
        List<String> wanted =
                Arrays.stream(Subcommand.argumentsOf(given)).map(this::singular).toList();
        for (String word : wanted) {
            if (!kinds.containsKey(word)) {
                String nearest = MaterialLibrary.nearest(word, List.copyOf(kinds.keySet()));
                return Outcome.problem(
                        Outcome.INPUT,
                        "There is no table  "
                                + word
                                + "\n  Write   coachskin materials "
                                + nearest
                                + "\n  or one of "
                                + String.join(", ", kinds.keySet())
                                + "\n");
            }
        }
        List<String> shown = wanted.isEmpty() ? List.copyOf(kinds.keySet()) : wanted;
        if (given.hasMatchedOption("--json")) {
            Map<String, Object> json = Json.answer("materials");
            kinds.forEach(
                    (name, kind) -> {
                        if (shown.contains(name)) {
                            json.put(name, kind.json.get());
                        }
                    });
            return Outcome.answer(Outcome.HOLDS, Json.text(json));
        }
        Figures figures = Panels.units(given);
        StringBuilder text = new StringBuilder();
        kinds.forEach(
                (name, kind) -> {
                    if (shown.contains(name)) {
                        text.append(text.isEmpty() ? "" : "\n").append(kind.text.apply(figures));
                    }
                });
        return Outcome.answer(Outcome.HOLDS, text.toString());
    }

    /** {@code Cloths} is as good as {@code cloth}. */
    private String singular(String word) {
        String lower = word.toLowerCase(Locale.ROOT);
        String one = lower.endsWith("s") ? lower.substring(0, lower.length() - 1) : lower;
        return kinds.containsKey(one) ? one : word;
    }

    private String cloths(Figures figures) {
        Page.Table table =
                new Page.Table("lrrrl").row("name", "in ounces", "warp", "+-", "sold in widths of");
        Sources sources = new Sources();
        for (Cloth cloth : library.cloths()) {
            table.row(
                    cloth.name(),
                    Figures.ounces(cloth.arealMass(), cloth.weave() == Weave.MAT),
                    cloth.weave() == Weave.MAT ? "-" : Figures.percent(cloth.warpShare()),
                    Figures.percent(cloth.massSpread()),
                    figures.widths(cloth.widths()) + sources.mark(cloth.source()));
        }
        return new Page()
                .line("Cloth")
                .table(table)
                .paragraph(
                        "In ounces: dry mass per square yard, of mat per square foot. Warp: share of the mass "
                                + "along the roll. +-: scatter of the mass, one standard "
                                + "deviation. Carbon, aramid and cloths of your own: give them under  my cloths.")
                .lines(sources)
                .toString();
    }

    private String resins(Figures figures) {
        Page.Table table =
                new Page.Table("lrrrrrrl")
                        .row(
                                "name",
                                "E",
                                "strength",
                                "breaks",
                                figures == Figures.METRIC ? "kg/m^3" : "lb/ft^3",
                                "softens",
                                "shrinks",
                                "");
        Sources sources = new Sources();
        for (Resin resin : library.resins()) {
            table.row(
                    resin.name(),
                    figures.resin(resin.e()),
                    figures.resin(resin.tension().value()),
                    Figures.decimals(100 * resin.failureStrain(), 1) + " %",
                    figures.density(resin.density()).split(" ", -1)[0],
                    figures.temperature(resin.softening()),
                    Figures.decimals(100 * resin.shrinkage(), 1) + " %",
                    sources.mark(resin.source()).strip());
        }
        return new Page()
                .line("Resin, cured")
                .table(table)
                .paragraph(
                        "Breaks: stretch in tension. Polyester and vinyl ester hold styrene while wet, which dissolves XPS and EPS.")
                .lines(sources)
                .toString();
    }

    private String foams(Figures figures) {
        return foamTable(
                "Foam",
                "kind",
                library.foams(),
                "E along the board and through its thickness, shear modulus G; mean strengths in shear, "
                        + "crushing and tension. A density between two rows is worked out from both, one up to a third "
                        + "beyond the last from that one. XPS and EPS keep their shape up to about "
                        + service(figures, Foam.Kind.XPS)
                        + ", PVC up to "
                        + service(figures, Foam.Kind.PVC)
                        + " [from memory]: paint them white.",
                figures);
    }

    private String inserts(Figures figures) {
        return foamTable(
                "Insert, in place of the foam",
                "name",
                Inserts.all(),
                "As for foam, along the board and through it. In the file, with its thickness:  "
                        + "insert: plywood 9 mm",
                figures);
    }

    private static String foamTable(
            String heading, String first, List<Foam> foams, String remark, Figures figures) {
        Page.Table table =
                new Page.Table("lrrrrrrrl")
                        .row(
                                first, "density", "E along", "through", "G", "shear", "crush",
                                "tension", "");
        Sources sources = new Sources();
        for (Foam foam : foams) {
            table.row(
                    foam.name(),
                    figures.density(foam.density()).split(" ", -1)[0],
                    bare(figures, foam.eInPlane()),
                    bare(figures, foam.eThrough()),
                    bare(figures, foam.g()),
                    bare(figures, foam.shear().value()),
                    bare(figures, foam.crush().value()),
                    bare(figures, foam.tension().value()),
                    sources.mark(foam.source()).strip());
        }
        return new Page()
                .line(
                        heading
                                + ", density in "
                                + (figures == Figures.METRIC
                                        ? "kg/m^3, the rest in MPa"
                                        : "lb/ft^3, the rest in psi"))
                .table(table)
                .paragraph(remark)
                .lines(sources)
                .toString();
    }

    /** A stress in MPa or psi, without the unit. */
    private static String bare(Figures figures, double stress) {
        return figures.rounded(stress).split(" ", -1)[0];
    }

    private static String service(Figures figures, Foam.Kind kind) {
        return figures.temperature(kind.serviceLimit().orElseThrow());
    }

    private String methods(Figures figures) {
        Page.Table table = new Page.Table("lrrrl").row("method", "glass", "+-", "voids", "");
        Sources sources = new Sources();
        for (LayUp layUp : LayUp.KNOWN) {
            table.row(
                    layUp.name(),
                    Figures.percent(layUp.glassShare()),
                    Figures.decimals(100 * layUp.spread(), 1) + " %",
                    Figures.percent(layUp.voids()),
                    sources.mark(layUp.source()).strip());
        }
        LayUp usual = LayUp.USUAL;
        table.row(
                "mat, any method",
                Figures.percent(usual.matShare()),
                Figures.decimals(100 * usual.spread(), 1) + " %",
                "-",
                sources.mark(LayUp.matSource()).strip());
        return new Page()
                .line("Method of laying")
                .table(table)
                .paragraph(
                        "glass: share of the cured ply by weight; +-: one standard deviation, in points of that "
                                + "share. Mat has the spread and the voids of the method. A coupon of your own:  glass share: 52 %")
                .lines(sources)
                .toString();
    }

    private String fittings(Figures figures) {
        Page page = new Page().line("What holds an edge, by the words under  held");
        Sources sources = new Sources();
        for (ReadyMade thing : ReadyMade.all()) {
            page.wrap(
                    "  " + thing.word() + " ".repeat(13 - thing.word().length()),
                    thing.what() + figures(thing, figures) + sources.mark(thing.source()));
        }
        return page.line("  At length, thing by thing, for example")
                .line("    - {hinge: front edge, at: 150 mm from left, pad: 40 mm}")
                .lines(sources)
                .toString();
    }

    /** The figures of one of the words, with a comma before them. */
    private static String figures(ReadyMade thing, Figures figures) {
        String pad =
                thing.pad().isPresent()
                        ? "; pad "
                                + figures.sizes(
                                        thing.pad().getAsDouble(), thing.pad().getAsDouble())
                        : "";
        return thing.force().isEmpty()
                ? pad
                : "; "
                        + figures.perLength(thing.force().getAsDouble())
                        + " squeezed by "
                        + figures.size(thing.squeezed().orElseThrow())
                        + ", solid at "
                        + figures.size(thing.solid().orElseThrow())
                        + " and "
                        + Figures.decimals(thing.stiffer().orElseThrow(), 0)
                        + " times stiffer beyond";
    }

    private List<Object> clothsJson() {
        List<Object> rows = new ArrayList<>();
        for (Cloth cloth : library.cloths()) {
            Map<String, Object> row = row(cloth.name(), cloth.source());
            row.put("weave", cloth.weave().words());
            row.put("fibre", cloth.fibre().name());
            row.put("arealMass", cloth.arealMass());
            row.put("arealMassSpread", cloth.massSpread());
            row.put("warpShare", cloth.warpShare());
            row.put("widths", cloth.widths());
            rows.add(row);
        }
        return rows;
    }

    private List<Object> resinsJson() {
        List<Object> rows = new ArrayList<>();
        for (Resin resin : library.resins()) {
            Map<String, Object> row = row(resin.name(), resin.source());
            row.put("styrene", resin.kind().styrene());
            row.put("e", resin.e());
            row.put("eSpread", resin.modulusSpread());
            row.put("nu", resin.nu());
            row.put("density", resin.density());
            row.put("tension", resin.tension().value());
            row.put("failureStrain", resin.failureStrain());
            row.put("expansion", resin.expansion());
            row.put("softening", resin.softening());
            row.put("shrinkage", resin.shrinkage());
            rows.add(row);
        }
        return rows;
    }

    private List<Object> foamsJson() {
        return new ArrayList<>(library.foams().stream().map(StackJson::foam).toList());
    }

    private List<Object> insertsJson() {
        return new ArrayList<>(Inserts.all().stream().map(StackJson::foam).toList());
    }

    private List<Object> fittingsJson() {
        List<Object> rows = new ArrayList<>();
        for (ReadyMade thing : ReadyMade.all()) {
            Map<String, Object> row = row(thing.word(), thing.source());
            row.put("what", thing.what());
            thing.pad().ifPresent(pad -> row.put("pad", pad));
            thing.force().ifPresent(force -> row.put("force", force));
            thing.squeezed().ifPresent(squeezed -> row.put("squeezed", squeezed));
            thing.solid().ifPresent(solid -> row.put("solidAt", solid));
            thing.stiffer().ifPresent(stiffer -> row.put("timesStiffer", stiffer));
            rows.add(row);
        }
        return rows;
    }

    private List<Object> methodsJson() {
        List<Object> rows = new ArrayList<>();
        for (LayUp layUp : LayUp.KNOWN) {
            Map<String, Object> row = row(layUp.name(), layUp.source());
            row.put("glassShare", layUp.glassShare());
            row.put("matGlassShare", layUp.matShare());
            row.put("glassShareSpread", layUp.spread());
            row.put("voids", layUp.voids());
            rows.add(row);
        }
        return rows;
    }

    private static Map<String, Object> row(String name, Source source) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("name", name);
        row.put("source", Json.source(source));
        return row;
    }
}
