package org.coachskin.cli.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.Foam;
import org.coachskin.material.Inserts;
import org.coachskin.material.MaterialLibrary;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Height;
import org.coachskin.panel.Opening;
import org.coachskin.panel.Region;
import org.coachskin.panel.Shape;
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
                    "insert",
                    "over it");

    static final List<String> LIP = List.of("width", "at", "more plies", "flush");

    private static final List<String> PLACES = List.of("round", "at", "patch");

    private static final List<String> BUILDS = List.of("foam strip", "insert");

    private static final List<String> SKINS = List.of("outside", "inside");

    private static final String EXAMPLE =
            "Write   - {round: vent, width: 50 mm, inside: [twill glass 300 g/m^2]}\n"
                    + "or      - {at: rear edge, width: 80 mm, insert: plywood 9 mm}";

    private final Section root;
    private final Findings findings;
    private final Ground ground;
    private final PlyList plies;
    private final List<PanelFile.Assumption> assumptions;
    private final boolean foam;

    ZoneSection(
            Section root,
            Ground ground,
            MaterialSection materials,
            List<PanelFile.Assumption> assumptions) {
        this.root = root;
        this.findings = root.findings();
        this.ground = ground;
        this.plies = new PlyList(findings, materials, assumptions);
        this.assumptions = assumptions;
        this.foam = root.has("foam");
    }

    List<ZoneRecipe> read() {
        List<ZoneRecipe> recipes = new ArrayList<>();
        for (Node item : root.list("zones")) {
            if (item instanceof MappingNode map) {
                recipes.addAll(zone(new Section(findings, map).allowing(KEYS), item));
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
        Optional<Where> where = where(keys, item);
        List<ZoneRecipe.Build> builds = builds(keys, item);
        if (where.isEmpty() || builds.isEmpty()) {
            return List.of();
        }
        String name = keys.has("name") ? keys.text("name").orElse("") : where.get().name();
        if (builds.size() == 1 || !keys.has("step")) {
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
                            down(where.get().widest() / builds.size())));
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

    /** A length a maker would take, no longer than {@code length}. */
    private static String down(double length) {
        return Math.max(1, (int) Math.floor(1000 * length + 1e-6)) + " mm";
    }

    /** Where a zone is, and how it shrinks when each ply steps back. */
    private record Where(String name, Region whole, double widest) {
        Region region(double back) {
            if (whole instanceof Region.Around ring) {
                return new Region.Around(ring.opening(), ring.width() - back);
            }
            if (whole instanceof Region.AlongEdges band) {
                return new Region.AlongEdges(band.edges(), band.width() - back);
            }
            Region.Box box = (Region.Box) whole;
            return new Region.Box(
                    box.x1() + back, box.x2() - back, box.y1() + back, box.y2() - back);
        }
    }

    private Optional<Where> where(Section keys, Node item) {
        List<String> places = PLACES.stream().filter(keys::has).toList();
        if (places.size() != 1) {
            findings.add(
                    item,
                    places.isEmpty()
                            ? "It is not said where this zone is."
                            : "This zone is in two places: " + String.join(" and ", places) + ".",
                    EXAMPLE
                            + "\nor      - {patch: 200 mm x 100 mm, centre: {from left: 450 mm, from front: 300 mm}, inside: [...]}");
            return Optional.empty();
        }
        if (keys.has("patch")) {
            return patch(keys);
        }
        if (keys.has("centre")) {
            findings.add(
                    keys.keyNode("centre"),
                    "Only a patch has a centre of its own.",
                    "Take   centre   out.");
        }
        Numbers n = new Numbers(keys);
        double width = n.need("width", Dimension.LENGTH, 0.002, 3);
        if (keys.has("round")) {
            return n.complete() ? ring(keys, width) : Optional.empty();
        }
        List<Edge> edges = Tape.edges(keys, "at");
        return n.complete() && !edges.isEmpty() && fits(keys, "zone", edges, width)
                ? Optional.of(
                        new Where(
                                "zone at the "
                                        + keys.list("at").stream()
                                                .map(ZoneSection::text)
                                                .reduce((a, b) -> a + ", " + b)
                                                .orElse(""),
                                new Region.AlongEdges(edges, width),
                                width))
                : Optional.empty();
    }

    private static String text(Node node) {
        return node instanceof org.snakeyaml.engine.v2.nodes.ScalarNode scalar
                ? scalar.getValue().strip()
                : "";
    }

    private Optional<Where> ring(Section keys, double width) {
        Optional<String> name = keys.text("round");
        if (name.isEmpty()) {
            return Optional.empty();
        }
        List<String> known = ground.openings().stream().map(Opening::name).toList();
        Optional<Opening> opening =
                ground.openings().stream().filter(o -> o.name().equals(name.get())).findFirst();
        if (opening.isEmpty()) {
            if (known.isEmpty() && root.has("openings")) {
                // The opening itself is wrong and noted.
                return Optional.empty();
            }
            findings.add(
                    keys.keyNode("round"),
                    "No opening is called \"" + name.get() + "\".",
                    known.isEmpty()
                            ? "Draw it under   openings:"
                            : "Write   round: "
                                    + MaterialLibrary.nearest(name.get(), known)
                                    + (known.size() > 1
                                            ? "   or one of: " + String.join(", ", known)
                                            : ""));
            return Optional.empty();
        }
        double room = ground.room(opening.get());
        if (width > room + Ground.ROUNDING) {
            findings.add(
                    keys.keyNode("width"),
                    String.format(
                            Locale.ROOT,
                            "The ring round \"%s\" is %s wide; from there to the rim of the panel there are %s.",
                            name.get(),
                            Side.mm(width),
                            down(room)),
                    "Write   width: " + down(room) + "   or less");
            return Optional.empty();
        }
        return Optional.of(
                new Where(
                        "ring round the " + name.get(),
                        new Region.Around(name.get(), width),
                        width));
    }

    private Optional<Where> patch(Section keys) {
        if (keys.has("width")) {
            findings.add(
                    keys.keyNode("width"),
                    "A patch has two sides and no width.",
                    "Take   width   out.");
        }
        Optional<Shape.Point> centre = Tape.point(keys, "centre");
        Optional<Shape.Point> size =
                keys.text("patch")
                        .flatMap(
                                text ->
                                        Tape.sides(
                                                keys,
                                                keys.keyNode("patch"),
                                                "patch",
                                                text,
                                                false,
                                                "200 mm x 100 mm"));
        if (centre.isEmpty() || size.isEmpty()) {
            return Optional.empty();
        }
        double hx = size.get().x() / 2;
        double hy = size.get().y() / 2;
        double x = centre.get().x();
        double y = centre.get().y();
        for (Side side : Side.both(ground, hx, hy, x, y)) {
            if (side.past() > Ground.ROUNDING) {
                findings.add(
                        keys.keyNode("centre"),
                        side.what("patch"),
                        side.isTooLarge()
                                ? "It is larger than the panel: write a smaller   patch:"
                                : side.fix());
                return Optional.empty();
            }
        }
        return Optional.of(
                new Where(
                        "patch",
                        new Region.Box(
                                Math.max(0, x - hx),
                                Math.min(ground.width(), x + hx),
                                Math.max(0, y - hy),
                                Math.min(ground.length(), y + hy)),
                        Math.min(hx, hy)));
    }

    /** Notes a band that meets itself from edge to edge. */
    private boolean fits(Section keys, String what, List<Edge> edges, double width) {
        for (Edge edge : edges) {
            boolean both =
                    edges.stream().filter(other -> other.alongX() == edge.alongX()).count() == 2;
            double most = ground.depth(edge) / (both || what.equals("lip") ? 2 : 1);
            if (width >= most) {
                findings.add(
                        keys.keyNode("width"),
                        String.format(
                                Locale.ROOT,
                                "The %s is %s wide; the panel measures %s from the %s.",
                                what,
                                Side.mm(width),
                                Side.mm(ground.depth(edge)),
                                Tape.name(edge)),
                        "Write a width of less than " + Side.mm(most) + ".");
                return false;
            }
        }
        return true;
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
                    "A strip or an insert that tapers cannot be worked out yet.",
                    "Take   step   out; a bevel is a little stiffer than no bevel.");
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
        OptionalDouble more = keys.quantity("foam strip", Dimension.LENGTH, 0.001, 0.15);
        return more.isPresent()
                ? Optional.of(new ZoneRecipe.FoamStrip(more.getAsDouble(), over))
                : Optional.empty();
    }

    /** {@code plywood 9 mm}. */
    private Optional<ZoneRecipe.Build> insert(Section keys, List<Schedule.Item> over) {
        Optional<String> text = keys.text("insert");
        if (text.isEmpty()) {
            return Optional.empty();
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
                || !fits(keys, "lip", edges, width)) {
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
