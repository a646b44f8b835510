package org.coachskin.cli.file;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.coachskin.material.MaterialLibrary;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Opening;
import org.coachskin.panel.Region;
import org.coachskin.panel.Shape;
import org.coachskin.units.Dimension;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** Where a zone is: round an opening, at an edge, or a patch. */
final class RegionSection {

    private static final List<String> PLACES = List.of("round", "at", "patch");

    private final Section root;
    private final Findings findings;
    private final Ground ground;

    RegionSection(Section root, Ground ground) {
        this.root = root;
        this.findings = root.findings();
        this.ground = ground;
    }

    /** A length a maker would take, no longer than {@code length}. */
    static String down(double length) {
        return Math.max(1, (int) Math.floor(1000 * length + 1e-6)) + " mm";
    }

    /** Where a zone is, and how it shrinks when each ply steps back. */
    record Where(String name, Region whole, double widest) {
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

    Optional<Where> read(Section keys, Node item) {
        List<String> places = PLACES.stream().filter(keys::has).toList();
        if (places.size() != 1) {
            findings.add(
                    item,
                    places.isEmpty()
                            ? "It is not said where this zone is."
                            : "This zone is in two places: " + String.join(" and ", places) + ".",
                    ZoneSection.EXAMPLE
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
                                                .map(RegionSection::text)
                                                .reduce((a, b) -> a + ", " + b)
                                                .orElse(""),
                                new Region.AlongEdges(edges, width),
                                width))
                : Optional.empty();
    }

    private static String text(Node node) {
        return node instanceof ScalarNode scalar ? scalar.getValue().strip() : "";
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
    boolean fits(Section keys, String what, List<Edge> edges, double width) {
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
                                edge.words()),
                        "Write a width of less than " + Side.mm(most) + ".");
                return false;
            }
        }
        return true;
    }
}
