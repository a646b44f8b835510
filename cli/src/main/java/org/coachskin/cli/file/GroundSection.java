package org.coachskin.cli.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.coachskin.panel.Opening;
import org.coachskin.panel.Shape;
import org.coachskin.units.Dimension;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Outline and openings. */
final class GroundSection {

    static final List<String> OPENING =
            List.of("name", "shape", "corner radius", "centre", "corners");

    private static final String CIRCLE = "circle ";

    private static final String SHAPES =
            "120 mm x 60 mm   or   circle 80 mm   or   slot 120 mm x 40 mm   or   polygon";

    /** Rims nearer than this touch [m]. */
    private static final double TOUCH = 1e-3;

    /** A strip of panel narrower than this is no panel [m]. */
    private static final double THINNEST = 3e-3;

    private final Section root;
    private final Findings findings;

    GroundSection(Section root) {
        this.root = root;
        this.findings = root.findings();
    }

    /** Returns the ground plan of a panel of that size, without what is wrong and noted. */
    Ground read(double width, double length) {
        Ground ground = new Ground(width, length, outline(width, length), List.of());
        List<Opening> openings = new ArrayList<>();
        for (Node item : root.list("openings")) {
            if (item instanceof MappingNode map) {
                Section keys = new Section(findings, map).allowing(OPENING);
                opening(keys, openings.size() + 1)
                        .filter(opening -> isOn(ground, keys, opening))
                        .filter(opening -> isApart(openings, keys, opening))
                        .ifPresent(openings::add);
            } else if (!Yaml.isNothing(item)) {
                findings.add(
                        item,
                        "An opening wants keys of its own.",
                        "Write   - {name: vent, shape: circle 80 mm, centre: {from left: 450 mm, from front: 300 mm}}");
            }
        }
        return ground.withOpenings(openings);
    }

    private Shape outline(double width, double length) {
        if (root.has("outline")) {
            return polygon(width, length);
        }
        return rounded(root, width, length);
    }

    /** A rectangle with the corner radius of {@code keys}, sharp where that is wrong and noted. */
    private Shape rounded(Section keys, double x, double y) {
        double radius = new Numbers(keys).or("corner radius", Dimension.LENGTH, 0, 3, 0);
        double most = Math.min(x, y) / 2;
        if (radius > most) {
            findings.add(
                    keys.keyNode("corner radius"),
                    String.format(
                            Locale.ROOT,
                            "A corner radius of %s does not fit sides of %s and %s.",
                            Side.mm(radius),
                            Side.mm(x),
                            Side.mm(y)),
                    "Write   corner radius: " + Side.mm(most) + "   or less");
        }
        return new Shape.Rectangle(x, y, radius <= most ? radius : 0);
    }

    private Shape polygon(double width, double length) {
        Shape whole = new Shape.Rectangle(width, length, 0);
        if (root.has("corner radius")) {
            findings.addLater(
                    root.keyNode("corner radius"),
                    "Round corners of an outline of your own cannot be worked out yet.",
                    "Draw each round corner by a few short sides under   outline:");
        }
        Optional<List<Shape.Point>> corners = corners(root, "outline");
        if (corners.isEmpty()) {
            return whole;
        }
        double[] x = corners.get().stream().mapToDouble(Shape.Point::x).sorted().toArray();
        double[] y = corners.get().stream().mapToDouble(Shape.Point::y).sorted().toArray();
        int last = x.length - 1;
        if (Math.abs(x[0]) > Ground.ROUNDING
                || Math.abs(y[0]) > Ground.ROUNDING
                || Math.abs(x[last] - width) > Ground.ROUNDING
                || Math.abs(y[last] - length) > Ground.ROUNDING) {
            findings.add(
                    root.keyNode("outline"),
                    String.format(
                            Locale.ROOT,
                            "The outline reaches from %s to %s across and from %s to %s along; the panel is %s by %s.",
                            Side.mm(x[0]),
                            Side.mm(x[last]),
                            Side.mm(y[0]),
                            Side.mm(y[last]),
                            Side.mm(width),
                            Side.mm(length)),
                    String.format(
                            Locale.ROOT,
                            "Measure its corners from 0 mm, and write   width: %s   and   length: %s",
                            Side.mm(x[last] - x[0]),
                            Side.mm(y[last] - y[0])));
            return whole;
        }
        return new Shape.Polygon(corners.get());
    }

    /** Returns the corners under a key, from left and front; empty and noted where wrong. */
    private Optional<List<Shape.Point>> corners(Section keys, String key) {
        if (keys.node(key).filter(SequenceNode.class::isInstance).isEmpty()) {
            findings.add(keys.keyNode(key), "A polygon is a list of corners.", cornersOf(key));
            return Optional.empty();
        }
        List<Node> nodes = keys.list(key).stream().filter(node -> !Yaml.isNothing(node)).toList();
        List<Shape.Point> corners = new ArrayList<>();
        nodes.forEach(node -> Tape.point(findings, node, key).ifPresent(corners::add));
        if (corners.size() < nodes.size()) {
            return Optional.empty();
        }
        if (corners.size() < 3) {
            findings.add(
                    keys.keyNode(key), "A polygon needs three corners or more.", cornersOf(key));
            return Optional.empty();
        }
        if (crosses(corners)) {
            findings.add(
                    keys.keyNode(key),
                    "The sides cross one another.",
                    "List the corners in the order in which a tape walks round them.");
            return Optional.empty();
        }
        return Optional.of(corners);
    }

    private static String cornersOf(String key) {
        return "Write   "
                + key
                + ":   and under it, corner by corner   - {from left: 0 mm, from front: 0 mm}";
    }

    private static boolean crosses(List<Shape.Point> corners) {
        int n = corners.size();
        for (int i = 0; i < n; i++) {
            for (int j = i + 2; j < n; j++) {
                if ((j + 1) % n != i
                        && cut(
                                corners.get(i),
                                corners.get(i + 1),
                                corners.get(j),
                                corners.get((j + 1) % n))) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean cut(Shape.Point a, Shape.Point b, Shape.Point c, Shape.Point d) {
        return turn(a, b, c) * turn(a, b, d) <= 0 && turn(c, d, a) * turn(c, d, b) <= 0;
    }

    private static double turn(Shape.Point a, Shape.Point b, Shape.Point c) {
        return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
    }

    private Optional<Opening> opening(Section keys, int number) {
        String name =
                keys.has("name")
                        ? keys.text("name").orElse("")
                        : number == 1 ? "opening" : "opening " + number;
        Optional<String> shape = keys.text("shape");
        if (!keys.has("shape")) {
            keys.missing("The shape of the opening is missing.", "Write   shape: " + SHAPES);
        }
        if (shape.isEmpty()) {
            return Optional.empty();
        }
        if (shape.get().equals("polygon")) {
            return polygon(name, keys);
        }
        refuse(keys, "corners", "Only a polygon has corners of its own.");
        Optional<Shape.Point> centre = Tape.point(keys, "centre");
        return shape(keys, shape.get())
                .flatMap(known -> centre.map(at -> new Opening(name, known, at.x(), at.y())));
    }

    private Optional<Opening> polygon(String name, Section keys) {
        refuse(keys, "centre", "A polygon is where its corners are.");
        refuse(keys, "corner radius", "A polygon has sharp corners.");
        if (!keys.has("corners")) {
            keys.missing(
                    "The corners of the opening are missing.",
                    "Write   corners:   and under it, corner by corner   - {from left: 400 mm, from front: 200 mm}");
            return Optional.empty();
        }
        return corners(keys, "corners")
                .map(
                        corners -> {
                            double x = mean(corners.stream().mapToDouble(Shape.Point::x).toArray());
                            double y = mean(corners.stream().mapToDouble(Shape.Point::y).toArray());
                            return new Opening(
                                    name,
                                    new Shape.Polygon(
                                            corners.stream()
                                                    .map(p -> new Shape.Point(p.x() - x, p.y() - y))
                                                    .toList()),
                                    x,
                                    y);
                        });
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }

    private void refuse(Section keys, String key, String what) {
        if (keys.has(key)) {
            findings.add(keys.keyNode(key), what, "Take   " + key + "   out.");
        }
    }

    private Optional<Shape> shape(Section keys, String words) {
        Node node = keys.keyNode("shape");
        String round = "A circle and a slot have no corners.";
        if (words.startsWith(CIRCLE)) {
            refuse(keys, "corner radius", round);
            var d =
                    keys.quantity(
                            node,
                            "shape",
                            CIRCLE,
                            words.substring(CIRCLE.length()),
                            Dimension.LENGTH,
                            0.002,
                            6);
            return d.isPresent()
                    ? Optional.of(new Shape.Circle(d.getAsDouble()))
                    : Optional.empty();
        }
        boolean slot = words.startsWith("slot ");
        if (slot) {
            refuse(keys, "corner radius", round);
        }
        String sides = slot ? words.substring(5) : words;
        if (!slot && !sides.matches("[\\d.+-].*")) {
            findings.add(node, "No shape is called \"" + words + "\".", "Write   shape: " + SHAPES);
            return Optional.empty();
        }
        Optional<Shape.Point> size = Tape.sides(keys, node, "shape", sides, false, SHAPES);
        if (slot) {
            return size.map(s -> new Shape.Rectangle(s.x(), s.y(), Math.min(s.x(), s.y()) / 2));
        }
        return size.map(s -> rounded(keys, s.x(), s.y()));
    }

    private boolean isOn(Ground ground, Section keys, Opening opening) {
        List<Shape.Point> rim = opening.rim();
        double[] x = rim.stream().mapToDouble(Shape.Point::x).sorted().toArray();
        double[] y = rim.stream().mapToDouble(Shape.Point::y).sorted().toArray();
        int last = x.length - 1;
        Node place = keys.keyNode(keys.has("centre") ? "centre" : "corners");
        String name = "opening \"" + opening.name() + "\"";
        if (rim.stream().noneMatch(p -> ground.inward(p.x(), p.y()) > 0)) {
            findings.add(
                    place,
                    "The " + name + " lies off the panel.",
                    "Measure its centre from left and front; the panel is "
                            + Side.mm(ground.width())
                            + " by "
                            + Side.mm(ground.length())
                            + ".");
            return false;
        }
        boolean within = true;
        for (Side side :
                Side.both(
                        ground,
                        (x[last] - x[0]) / 2,
                        (y[last] - y[0]) / 2,
                        (x[last] + x[0]) / 2,
                        (y[last] + y[0]) / 2)) {
            if (side.past() > TOUCH) {
                findings.add(
                        place,
                        side.what(name),
                        side.isTooLarge()
                                ? "It is larger than the panel: draw a smaller opening."
                                : side.fix());
                within = false;
            }
        }
        double room = within ? ground.room(opening) : THINNEST;
        if (room < THINNEST) {
            findings.add(
                    place,
                    "The "
                            + name
                            + (room < TOUCH
                                    ? " touches or crosses the rim of the panel."
                                    : " leaves less than 3 mm of panel at the rim."),
                    "Move it inward or make it smaller; a notch is drawn under   outline:");
            within = false;
        }
        return within;
    }

    private boolean isApart(List<Opening> others, Section keys, Opening opening) {
        for (Opening other : others) {
            if (other.name().equals(opening.name())) {
                findings.add(
                        keys.keyNode("name"),
                        "Another opening is called \"" + opening.name() + "\" already.",
                        "Give this one another name.");
                return false;
            }
            double gap = Ground.gap(other, opening);
            if (gap < THINNEST) {
                findings.add(
                        keys.keyNode(keys.has("centre") ? "centre" : "corners"),
                        "The openings \""
                                + other.name()
                                + "\" and \""
                                + opening.name()
                                + (gap < TOUCH
                                        ? "\" touch or overlap."
                                        : "\" leave less than 3 mm of panel between them."),
                        "Move them apart, or draw the two as one polygon.");
                return false;
            }
        }
        return true;
    }
}
