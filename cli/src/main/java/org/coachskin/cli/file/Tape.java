package org.coachskin.cli.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.coachskin.material.MaterialLibrary;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Shape;
import org.coachskin.units.Dimension;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;

/** Places on a panel as a tape measures them: edges, points, places along an edge. */
final class Tape {

    static final String ALL = "all edges";

    /** What a place on the rim may be called. */
    static final List<String> EDGES =
            List.of("front edge", "rear edge", "left edge", "right edge", ALL);

    private static final Pattern ALONG =
            Pattern.compile("(?<size>.*\\S)\\s+from\\s+(?<end>left|right|front|rear)");

    private Tape() {}

    /** Returns the edges of that name; none, and noted, where there is no such name. */
    static List<Edge> edges(Findings findings, Node node, String key, String words) {
        String name = words.strip();
        if (name.equals(ALL)) {
            return List.of(Edge.values());
        }
        if (EDGES.contains(name)) {
            return List.of(
                    Edge.valueOf(name.substring(0, name.indexOf(' ')).toUpperCase(Locale.ROOT)));
        }
        String nearest = MaterialLibrary.nearest(name, EDGES);
        findings.add(
                node,
                "No edge is called \"" + name + "\".",
                "Write   "
                        + (key.isEmpty() ? nearest + ": ..." : key + ": " + nearest)
                        + "   or one of: "
                        + String.join(", ", EDGES));
        return List.of();
    }

    /** Returns the edges under a key: one name, or a list of names. */
    static List<Edge> edges(Section keys, String key) {
        List<Edge> edges = new ArrayList<>();
        for (Node node : keys.list(key)) {
            keys.scalar(node, key)
                    .ifPresent(
                            words ->
                                    edges(keys.findings(), node, key, words).stream()
                                            .filter(edge -> !edges.contains(edge))
                                            .forEach(edges::add));
        }
        return edges;
    }

    /** Returns a point by both readings; empty, and noted, where one is missing or wrong. */
    static Optional<Shape.Point> point(Section keys, String key) {
        Optional<Node> node = keys.node(key);
        if (node.isEmpty()) {
            keys.missing(
                    "\"" + key + "\" is missing here.",
                    "Write   " + key + ": {from left: 450 mm, from front: 300 mm}");
            return Optional.empty();
        }
        return point(keys.findings(), node.get(), key);
    }

    static Optional<Shape.Point> point(Findings findings, Node node, String key) {
        if (!(node instanceof MappingNode map)) {
            findings.add(
                    node,
                    "\"" + key + "\" wants a place.",
                    "Write   " + key + ": {from left: 450 mm, from front: 300 mm}");
            return Optional.empty();
        }
        Section tape = new Section(findings, map).allowing(PlaceSection.TAPE);
        Numbers n = new Numbers(tape);
        double x = n.need("from left", Dimension.LENGTH, -20, 20);
        double y = n.need("from front", Dimension.LENGTH, -20, 20);
        return n.complete() ? Optional.of(new Shape.Point(x, y)) : Optional.empty();
    }

    /**
     * Returns a place along an edge, from the left or the front [m]: {@code 150 mm from right}, or
     * {@code middle}.
     */
    static OptionalDouble along(Section keys, String key, Edge edge, double length) {
        Optional<String> text = keys.text(key);
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        if (text.get().equals("middle")) {
            return OptionalDouble.of(length / 2);
        }
        Matcher m = ALONG.matcher(text.get());
        String example = "150 mm from " + edge.start();
        if (!m.matches()) {
            keys.findings()
                    .add(
                            keys.keyNode(key),
                            "\""
                                    + key
                                    + "\" wants a reading of the tape and the end it starts from.",
                            "Write   " + key + ": " + example + "   or   " + key + ": middle");
            return OptionalDouble.empty();
        }
        String from = m.group("end");
        if (!from.equals(edge.start()) && !from.equals(edge.end())) {
            keys.findings()
                    .add(
                            keys.keyNode(key),
                            "The "
                                    + edge.words()
                                    + " runs from "
                                    + edge.start()
                                    + " to "
                                    + edge.end()
                                    + "; it cannot be measured from the "
                                    + from
                                    + ".",
                            "Write   " + key + ": " + example);
            return OptionalDouble.empty();
        }
        OptionalDouble size =
                keys.quantity(keys.keyNode(key), key, m.group("size"), Dimension.LENGTH, -20, 20);
        if (size.isEmpty()) {
            return size;
        }
        return OptionalDouble.of(
                from.equals(edge.start()) ? size.getAsDouble() : length - size.getAsDouble());
    }

    /** Returns two sides, {@code 60 mm x 40 mm}; or, where one alone will do, a square. */
    static Optional<Shape.Point> sides(
            Section keys, Node node, String key, String text, boolean square, String example) {
        List<String> parts = List.of(text.split("\\s+x\\s+", -1));
        if (parts.size() != 2 && !(square && parts.size() == 1)) {
            keys.findings()
                    .add(
                            node,
                            "\"" + key + "\" wants two sides.",
                            "Write   " + key + ": " + example);
            return Optional.empty();
        }
        OptionalDouble x = keys.quantity(node, key, parts.get(0), Dimension.LENGTH, 0.002, 6);
        OptionalDouble y =
                parts.size() == 1
                        ? x
                        : keys.quantity(node, key, parts.get(1), Dimension.LENGTH, 0.002, 6);
        return x.isPresent() && y.isPresent()
                ? Optional.of(new Shape.Point(x.getAsDouble(), y.getAsDouble()))
                : Optional.empty();
    }
}
