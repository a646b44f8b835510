package org.coachskin.cli.file;

import java.util.List;
import java.util.Optional;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Load;
import org.coachskin.panel.Shape;
import org.coachskin.units.Dimension;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** A line on the panel along which something presses: along an edge, or between two places. */
final class LineSection {

    private static final String EXAMPLE =
            "Write   line: rear edge   or   line: [{from left: 100 mm, from front: 300 mm}, {from left: 800 mm, from front: 300 mm}]";

    /** Places along a line that are tried. */
    private static final int TRIED = 200;

    private final Ground ground;

    LineSection(Ground ground) {
        this.ground = ground;
    }

    /** Returns the load of that name; empty and noted where something is wrong. */
    Optional<Load.Line> read(String name, Section keys) {
        Numbers n = new Numbers(keys);
        double force = n.need("force", Dimension.FORCE_PER_LENGTH, 0.1, 50e3);
        for (String other : List.of("patch", "at")) {
            if (keys.has(other)) {
                keys.findings()
                        .add(
                                keys.keyNode(other),
                                "The "
                                        + name
                                        + " presses along a line: it has no \""
                                        + other
                                        + "\".",
                                "Take   " + other + "   out, or   line");
                return Optional.empty();
            }
        }
        List<Shape.Point> ends = ends(keys);
        if (!n.complete() || ends.isEmpty()) {
            return Optional.empty();
        }
        Shape.Point a = ends.get(0);
        Shape.Point b = ends.get(1);
        if (Math.hypot(b.x() - a.x(), b.y() - a.y()) < 1e-3) {
            keys.findings().add(keys.keyNode("line"), "The line begins where it ends.", EXAMPLE);
            return Optional.empty();
        }
        for (int i = 0; i <= TRIED; i++) {
            double s = (double) i / TRIED;
            Optional<String> missed =
                    ground.missed(a.x() + s * (b.x() - a.x()), a.y() + s * (b.y() - a.y()));
            if (missed.isPresent()) {
                keys.findings()
                        .add(
                                keys.keyNode("line"),
                                "The " + name + " would press partly " + missed.get() + ".",
                                "Move the ends of the line; the panel is "
                                        + Side.mm(ground.width())
                                        + " by "
                                        + Side.mm(ground.length())
                                        + ".");
                return Optional.empty();
            }
        }
        return Optional.of(new Load.Line(force, a.x(), a.y(), b.x(), b.y()));
    }

    private List<Shape.Point> ends(Section keys) {
        Optional<Node> node = keys.node("line");
        if (node.isPresent() && node.get() instanceof SequenceNode list) {
            List<Shape.Point> ends =
                    list.getValue().stream()
                            .flatMap(end -> Tape.point(keys.findings(), end, "line").stream())
                            .toList();
            if (ends.size() < list.getValue().size()) {
                return List.of();
            }
            if (ends.size() != 2) {
                keys.findings().add(keys.keyNode("line"), "A line has two ends.", EXAMPLE);
                return List.of();
            }
            return ends;
        }
        String word = keys.text("line").orElse("");
        List<Edge> edges =
                word.isEmpty()
                        ? List.of()
                        : Tape.edges(keys.findings(), keys.keyNode("line"), "line", word);
        if (edges.size() > 1) {
            keys.findings().add(keys.keyNode("line"), "A line runs along one edge.", EXAMPLE);
            return List.of();
        }
        return edges.isEmpty() ? List.of() : along(keys, edges.get(0));
    }

    private List<Shape.Point> along(Section keys, Edge edge) {
        if (!(ground.outline() instanceof Shape.Rectangle outline)) {
            keys.findings()
                    .add(
                            keys.keyNode("line"),
                            "The outline is no rectangle: an edge may be more than one line.",
                            EXAMPLE.substring(0, 5)
                                    + EXAMPLE.substring(EXAMPLE.indexOf("   line: [")));
            return List.of();
        }
        double r = outline.cornerRadius();
        double end = ground.length(edge) - r;
        double at = edge == Edge.REAR || edge == Edge.RIGHT ? ground.depth(edge) : 0;
        return edge.alongX()
                ? List.of(new Shape.Point(r, at), new Shape.Point(end, at))
                : List.of(new Shape.Point(at, r), new Shape.Point(at, end));
    }
}
