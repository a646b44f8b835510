package org.coachskin.cli.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Shape;
import org.coachskin.panel.Stretch;
import org.coachskin.units.Dimension;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** What holds the panel, at length: one map for each thing. */
final class FittingSection {

    private static final List<String> AT_EDGE = List.of("at", "pad");

    private static final List<String> PART = List.of("from", "to");

    /** What each thing may say beside where it is. */
    static final Map<String, List<String>> THINGS =
            Map.of(
                    "hinge", AT_EDGE,
                    "latch", AT_EDGE,
                    "rest", List.of("pad"),
                    "prop", List.of("pad"),
                    "rubber seal", List.of("force", "squeezed", "solid at", "from", "to"),
                    "carried", PART,
                    "clamped", PART);

    private static final String EXAMPLE =
            "Write   - {hinge: front edge, at: 150 mm from left, pad: 40 mm}   or one of: "
                    + THINGS.keySet().stream()
                            .sorted()
                            .collect(java.util.stream.Collectors.joining(", "));

    private final Findings findings;
    private final Ground ground;
    private final Pads pads;

    FittingSection(Findings findings, Ground ground, Pads pads) {
        this.findings = findings;
        this.ground = ground;
        this.pads = pads;
    }

    List<Fitting> read(SequenceNode list) {
        List<Fitting> fittings = new ArrayList<>();
        for (Node item : list.getValue()) {
            if (item instanceof MappingNode map) {
                one(new Section(findings, map), item).forEach(fittings::add);
            } else {
                findings.add(item, "What holds the panel wants keys of its own here.", EXAMPLE);
            }
        }
        return fittings;
    }

    private List<Fitting> one(Section keys, Node item) {
        List<String> things = THINGS.keySet().stream().filter(keys::has).sorted().toList();
        if (things.size() != 1) {
            findings.add(
                    item,
                    things.isEmpty()
                            ? "It is not said what holds the panel here."
                            : "Two things are named in one: " + String.join(" and ", things) + ".",
                    EXAMPLE);
            return List.of();
        }
        String thing = things.get(0);
        List<String> known = new ArrayList<>(List.of(thing));
        known.addAll(THINGS.getOrDefault(thing, List.of()));
        keys.allowing(known);
        return switch (thing) {
            case "hinge", "latch" -> hardware(thing, keys).stream().toList();
            case "rest", "prop" -> {
                Optional<Shape.Point> at = Tape.point(keys, thing);
                Optional<Shape.Point> size = pad(keys);
                yield at.isEmpty() || size.isEmpty()
                        ? List.of()
                        : pads.inField(thing, at.get(), size.get(), keys.keyNode(thing)).stream()
                                .toList();
            }
            case "rubber seal" -> seal(keys);
            default ->
                    stretches(keys, thing).stream()
                            .map(part -> (Fitting) HeldSection.held(part, thing.equals("clamped")))
                            .toList();
        };
    }

    private Optional<Shape.Point> pad(Section keys) {
        double usual = ReadyMade.row("latch").pad().orElseThrow();
        return keys.has("pad")
                ? keys.text("pad")
                        .flatMap(
                                text ->
                                        Tape.sides(
                                                keys,
                                                keys.keyNode("pad"),
                                                "pad",
                                                text,
                                                true,
                                                "40 mm   or   60 mm x 40 mm"))
                : Optional.of(new Shape.Point(usual, usual));
    }

    private Optional<Fitting> hardware(String thing, Section keys) {
        List<Edge> edges = Tape.edges(keys, thing);
        Optional<Shape.Point> size = pad(keys);
        if (edges.size() > 1) {
            findings.add(
                    keys.keyNode(thing),
                    "A " + thing + " sits at one edge.",
                    "Write   " + thing + ": front edge");
        }
        if (edges.size() != 1 || size.isEmpty()) {
            return Optional.empty();
        }
        Edge edge = edges.get(0);
        if (!keys.has("at")) {
            keys.missing(
                    "It is not said where on the " + edge.words() + " the " + thing + " is.",
                    "Write   at: 150 mm from " + edge.start() + "   or   at: middle");
            return Optional.empty();
        }
        OptionalDouble along = Tape.along(keys, "at", edge, ground.length(edge));
        return along.isEmpty()
                ? Optional.empty()
                : pads.atEdge(thing, edge, along.getAsDouble(), size.get(), keys.keyNode("at"));
    }

    /** Returns the parts of edges that are meant; none, and noted, where something is wrong. */
    private List<Stretch> stretches(Section keys, String thing) {
        List<Edge> edges = Tape.edges(keys, thing);
        if (!keys.has("from") && !keys.has("to")) {
            return edges.stream().map(Stretch::whole).toList();
        }
        if (edges.size() != 1) {
            if (!edges.isEmpty()) {
                findings.add(
                        keys.keyNode(keys.has("from") ? "from" : "to"),
                        "A part can be given of one edge only.",
                        "Write   " + thing + ": left edge");
            }
            return List.of();
        }
        Edge edge = edges.get(0);
        double length = ground.length(edge);
        Numbers n = new Numbers(keys);
        double from = n.or("from", Dimension.LENGTH, 0, 20, 0);
        double to = n.or("to", Dimension.LENGTH, 0, 20, length);
        if (!n.complete()) {
            return List.of();
        }
        if (Math.max(from, to) > length + Ground.ROUNDING) {
            boolean start = from > length;
            findings.add(
                    keys.keyNode(start ? "from" : "to"),
                    String.format(
                            Locale.ROOT,
                            "The %s is %s long and ends before %s.",
                            edge.words(),
                            Side.mm(length),
                            Side.mm(start ? from : to)),
                    "Write   "
                            + (start ? "from: 0 mm" : "to: " + Side.mm(length))
                            + "   measured from the "
                            + edge.start());
            return List.of();
        }
        if (from >= to) {
            findings.add(
                    keys.keyNode("from"),
                    "This part of the " + edge.words() + " ends before it begins.",
                    String.format(
                            Locale.ROOT,
                            "Write   from: %s, to: %s   measured from the %s",
                            Side.mm(Math.min(from, to)),
                            Side.mm(from > to ? from : length),
                            edge.start()));
            return List.of();
        }
        return List.of(
                new Stretch(
                        edge, from, to < length - Ground.ROUNDING ? to : Double.POSITIVE_INFINITY));
    }

    private List<Fitting> seal(Section keys) {
        ReadyMade usual = ReadyMade.row("rubber seal");
        List<Stretch> stretches = stretches(keys, "rubber seal");
        Numbers n = new Numbers(keys);
        double usualSqueeze = usual.squeezed().orElseThrow();
        double force =
                n.or("force", Dimension.FORCE_PER_LENGTH, 1, 20e3, usual.force().orElseThrow());
        double squeezed = n.or("squeezed", Dimension.LENGTH, 0.0002, 0.05, usualSqueeze);
        double solid =
                n.or(
                        "solid at",
                        Dimension.LENGTH,
                        0.0002,
                        0.05,
                        usual.solid().orElseThrow() * squeezed / usualSqueeze);
        if (!n.complete() || stretches.isEmpty()) {
            return List.of();
        }
        if (solid < squeezed) {
            findings.add(
                    keys.keyNode("solid at"),
                    String.format(
                            Locale.ROOT,
                            "The rubber seal would be solid at %s, before its working squeeze of %s.",
                            Side.mm(solid),
                            Side.mm(squeezed)),
                    "Write   solid at: " + Side.mm(1.5 * squeezed) + "   or a smaller   squeezed:");
            return List.of();
        }
        return List.of(
                new Fitting.RubberSeal(
                        stretches, force, squeezed, solid, usual.stiffer().orElseThrow()));
    }
}
