package org.coachskin.cli.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.Foam;
import org.coachskin.material.Inserts;
import org.coachskin.material.MaterialLibrary;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Height;
import org.coachskin.panel.Region;
import org.coachskin.panel.ZoneRecipe;
import org.coachskin.units.Dimension;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * Where the panel is laid otherwise: zones, of which the last one named wins, and over them all the
 * lip.
 */
final class ZoneSection {

    static final List<String> KEYS =
            List.of(
                    "name",
                    "round",
                    "at",
                    "patch",
                    "centre",
                    "width",
                    "outside",
                    "inside",
                    "step",
                    "foam strip",
                    "bevel",
                    "insert",
                    "over it");

    static final List<String> LIP = List.of("width", "at", "more plies", "flush");

    private static final List<String> BUILDS = List.of("foam strip", "insert");

    /** Kind, density and thickness of foam. */
    private static final Pattern DENSER =
            Pattern.compile("([A-Za-z ]+?)\\s+([\\d.]+\\s*(?:kg|lb|g)\\S*/\\S+)\\s+(\\d.*)");

    private static final List<String> SKINS = List.of("outside", "inside");

    static final String EXAMPLE =
            "Write   - {round: vent, width: 50 mm, inside: [twill glass 300 g/m^2]}\n"
                    + "or      - {at: rear edge, width: 80 mm, insert: plywood 9 mm}";

    private static final PanelFile.Assumption USUAL_BEVEL =
            new PanelFile.Assumption(
                    "bevel",
                    "foam strips bevelled 1 in 3, beyond their width [common practice, no source]");

    private final Section root;
    private final Findings findings;
    private final RegionSection regions;
    private final PlyList plies;
    private final MaterialSection materials;
    private final List<PanelFile.Assumption> assumptions;
    private final BevelSection bevels;
    private final boolean foam;

    ZoneSection(
            Section root,
            Ground ground,
            MaterialSection materials,
            List<PanelFile.Assumption> assumptions) {
        this.root = root;
        this.findings = root.findings();
        this.regions = new RegionSection(root, ground);
        this.materials = materials;
        this.plies = new PlyList(findings, materials, assumptions);
        this.assumptions = assumptions;
        this.bevels = new BevelSection(findings);
        this.foam = root.has("foam");
    }

    /** Returns the bevels that are written, to be looked at on the whole panel. */
    BevelSection bevels() {
        return bevels;
    }

    List<ZoneRecipe> read() {
        List<ZoneRecipe> recipes = new ArrayList<>();
        for (Node item : root.list("zones")) {
            if (item instanceof MappingNode map) {
                Section keys = new Section(findings, map).allowing(KEYS);
                List<ZoneRecipe> laid = zone(keys, item);
                if (!laid.isEmpty() && keys.has("bevel")) {
                    bevels.add(recipes.size(), keys.keyNode("bevel"));
                }
                recipes.addAll(laid);
            } else if (!Yaml.isNothing(item)) {
                findings.add(item, "A zone wants keys of its own.", EXAMPLE);
            }
        }
        if (root.has("lip")) {
            root.map("lip").flatMap(keys -> lip(keys.allowing(LIP))).ifPresent(recipes::add);
        }
        return recipes;
    }

    private List<ZoneRecipe> zone(Section keys, Node item) {
        Optional<RegionSection.Where> where = regions.read(keys, item);
        List<ZoneRecipe.Build> builds = builds(keys, item);
        if (where.isEmpty() || builds.isEmpty()) {
            return List.of();
        }
        String usual = keys.has("insert") ? "insert" : where.get().name();
        String name = keys.has("name") ? keys.text("name").orElse("") : usual;
        if (!keys.has("step")) {
            return List.of(
                    new ZoneRecipe(name, where.get().region(0), builds.get(builds.size() - 1)));
        }
        OptionalDouble step = keys.quantity("step", Dimension.LENGTH, 0.001, 0.5);
        if (step.isEmpty()) {
            return List.of();
        }
        double last = (builds.size() - 1) * step.getAsDouble();
        if (last >= where.get().widest() - Ground.ROUNDING) {
            findings.add(
                    keys.keyNode("step"),
                    String.format(
                            Locale.ROOT,
                            "Stepped back by %s each, ply %d has no width left of %s.",
                            Side.mm(step.getAsDouble()),
                            (int) Math.ceil(where.get().widest() / step.getAsDouble()) + 1,
                            Side.mm(where.get().widest())),
                    String.format(
                            Locale.ROOT,
                            "Write   step: %s   or less, or a greater   width:",
                            RegionSection.down(where.get().widest() / builds.size())));
            return List.of();
        }
        List<ZoneRecipe> steps = new ArrayList<>();
        for (int i = 0; i < builds.size(); i++) {
            steps.add(
                    new ZoneRecipe(
                            name + ", " + (i + 1) + (i == 0 ? " ply" : " plies"),
                            where.get().region(i * step.getAsDouble()),
                            builds.get(i)));
        }
        return steps;
    }

    /** What is done there; for plies of one zone, one build for each number of plies. */
    private List<ZoneRecipe.Build> builds(Section keys, Node item) {
        List<String> named =
                Stream.concat(
                                BUILDS.stream().filter(keys::has),
                                SKINS.stream().anyMatch(keys::has)
                                        ? Stream.of("plies")
                                        : Stream.of())
                        .toList();
        if (named.size() != 1) {
            boolean over = named.contains("plies") && named.size() == 2;
            findings.add(
                    item,
                    named.isEmpty()
                            ? "It is not said what is laid in this zone."
                            : "Two things are done in one zone: "
                                    + String.join(" and ", named)
                                    + ".",
                    over
                            ? "Plies on the inside skin over a strip or an insert stand under   over it: [...]\nPlies outside want a zone of their own."
                            : EXAMPLE);
            return List.of();
        }
        if (named.get(0).equals("plies")) {
            return plies(keys);
        }
        if (keys.has("step")) {
            findings.addLater(
                    keys.keyNode("step"),
                    "A strip or an insert laid in steps cannot be worked out yet.",
                    "Take   step   out; how far a strip slopes at its edges is   bevel: 45 mm");
        }
        if (keys.has("bevel") && !named.get(0).equals("foam strip")) {
            findings.add(
                    keys.keyNode("bevel"),
                    "Only a foam strip has a bevel of its own.",
                    "Take   bevel   out");
        }
        if (!foam) {
            findings.add(
                    keys.keyNode(named.get(0)),
                    "The panel has no foam, so nothing can lie beside it or in its place.",
                    "Give the panel   foam:   or lay more plies here:   inside: [...]");
            return List.of();
        }
        List<Schedule.Item> over = plies.read(keys, "over it", "none");
        return (named.get(0).equals("insert") ? insert(keys, over) : strip(keys, over))
                .stream().toList();
    }

    private List<ZoneRecipe.Build> plies(Section keys) {
        if (keys.has("over it")) {
            findings.add(
                    keys.keyNode("over it"),
                    "Nothing lies under these plies that they could be over.",
                    "Write them under   inside:");
        }
        List<Schedule.Item> outside = plies.read(keys, "outside", "none");
        List<Schedule.Item> inside = plies.read(keys, "inside", "none");
        int most = Math.max(outside.size(), inside.size());
        List<ZoneRecipe.Build> builds = new ArrayList<>();
        for (int i = 1; i <= most; i++) {
            builds.add(
                    new ZoneRecipe.MorePlies(
                            outside.subList(0, Math.min(i, outside.size())),
                            inside.subList(0, Math.min(i, inside.size()))));
        }
        return builds;
    }

    private Optional<ZoneRecipe.Build> strip(Section keys, List<Schedule.Item> over) {
        OptionalDouble thickness = keys.quantity("foam strip", Dimension.LENGTH, 0.001, 0.15);
        if (thickness.isEmpty()) {
            return Optional.empty();
        }
        double more = thickness.getAsDouble();
        if (!keys.has("bevel")) {
            if (!assumptions.contains(USUAL_BEVEL)) {
                assumptions.add(USUAL_BEVEL);
            }
            return Optional.of(new ZoneRecipe.FoamStrip(more, over));
        }
        OptionalDouble bevel = keys.quantity("bevel", Dimension.LENGTH, 0.001, 1);
        if (bevel.isPresent() && bevel.getAsDouble() < more * (1 - 1e-9)) {
            findings.add(
                    keys.keyNode("bevel"),
                    "The skin does not follow so steep a bevel: it slopes more than 45 degrees.",
                    "Write   bevel: " + Side.mm(more) + "   or more; three times that is usual");
            return Optional.empty();
        }
        return bevel.isPresent()
                ? Optional.of(new ZoneRecipe.FoamStrip(more, over, more / bevel.getAsDouble()))
                : Optional.empty();
    }

    /** {@code plywood 9 mm}. */
    private Optional<ZoneRecipe.Build> insert(Section keys, List<Schedule.Item> over) {
        Optional<String> text = keys.text("insert");
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Matcher denser = DENSER.matcher(text.get());
        if (denser.matches()) {
            return denser(keys, denser, over);
        }
        String name = text.get().replaceFirst("\\s*\\d.*$", "");
        String size = text.get().substring(name.length()).strip();
        Optional<Foam> insert = Inserts.named(name);
        List<String> known = Inserts.all().stream().map(Foam::name).toList();
        String nearest = MaterialLibrary.nearest(name, known);
        if (insert.isEmpty() || size.isEmpty()) {
            findings.add(
                    keys.keyNode("insert"),
                    insert.isEmpty()
                            ? "No insert is called \"" + name + "\"."
                            : "The thickness of the insert is missing.",
                    "Write   insert: "
                            + nearest
                            + " "
                            + (size.isEmpty() ? "9 mm" : size)
                            + (insert.isEmpty()
                                    ? "   or one of: "
                                            + String.join(", ", known)
                                            + "\nList:  coachskin materials insert"
                                    : ""));
            return Optional.empty();
        }
        OptionalDouble thickness =
                keys.quantity(
                        keys.keyNode("insert"), "insert", size, Dimension.LENGTH, 0.001, 0.15);
        return thickness.isPresent()
                ? Optional.of(new ZoneRecipe.OtherFoam(insert, thickness.getAsDouble(), over))
                : Optional.empty();
    }

    /** {@code polyurethane 96 kg/m^3 12 mm}: foam of another density in place of the panel's. */
    private Optional<ZoneRecipe.Build> denser(
            Section keys, Matcher words, List<Schedule.Item> over) {
        Node node = keys.keyNode("insert");
        OptionalDouble density =
                keys.quantity(node, "insert", words.group(2), Dimension.DENSITY, 1, 2000);
        OptionalDouble thickness =
                keys.quantity(node, "insert", words.group(3), Dimension.LENGTH, 0.001, 0.15);
        if (density.isEmpty() || thickness.isEmpty()) {
            return Optional.empty();
        }
        Optional<Foam> foam =
                FoamSection.kind(words.group(1).strip())
                        .flatMap(kind -> materials.library().foam(kind, density.getAsDouble()));
        if (foam.isEmpty()) {
            findings.add(
                    node,
                    "The tables have no foam \"" + words.group(1) + " " + words.group(2) + "\".",
                    "Write   insert: polyurethane 96 kg/m^3 "
                            + words.group(3)
                            + "   List:  coachskin materials foam");
            return Optional.empty();
        }
        return Optional.of(new ZoneRecipe.OtherFoam(foam, thickness.getAsDouble(), over));
    }

    private Optional<ZoneRecipe> lip(Section keys) {
        Numbers n = new Numbers(keys);
        double width = n.need("width", Dimension.LENGTH, 0.002, 3);
        List<Edge> edges = keys.has("at") ? Tape.edges(keys, "at") : List.of(Edge.values());
        List<Schedule.Item> more = plies.read(keys, "more plies", "none");
        Optional<Height> flush = flush(keys);
        if (!foam) {
            findings.add(
                    root.keyNode("lip"),
                    "The panel has no foam: it is all lip.",
                    "Take   lip   out, or lay more plies along the rim under   zones:");
            return Optional.empty();
        }
        if (!n.complete()
                || edges.isEmpty()
                || flush.isEmpty()
                || !regions.fits(keys, "lip", edges, width)) {
            return Optional.empty();
        }
        assumptions.add(
                new PanelFile.Assumption(
                        "lip",
                        "lip without foam: both skins on one another"
                                + (more.isEmpty()
                                        ? ""
                                        : " and between them "
                                                + more.size()
                                                + (more.size() == 1 ? " ply" : " plies")
                                                + " more")
                                + ", flush with the "
                                + flush.get().name().toLowerCase(Locale.ROOT)));
        return Optional.of(
                new ZoneRecipe(
                        "lip",
                        new Region.AlongEdges(edges, width),
                        new ZoneRecipe.NoFoam(more, flush.get())));
    }

    private Optional<Height> flush(Section keys) {
        String words = keys.has("flush") ? keys.text("flush").orElse("") : "outside";
        return switch (words) {
            case "outside" -> Optional.of(Height.OUTSIDE);
            case "inside" -> Optional.of(Height.INSIDE);
            default -> {
                findings.add(
                        keys.keyNode("flush"),
                        "A lip is flush with the outside or with the inside.",
                        "Write   flush: outside");
                yield Optional.empty();
            }
        };
    }
}
