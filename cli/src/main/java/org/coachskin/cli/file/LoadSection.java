package org.coachskin.cli.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coachskin.laminate.Patch;
import org.coachskin.material.MaterialLibrary;
import org.coachskin.panel.EverydayLoads;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.coachskin.units.Dimension;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** What presses on the panel: everyday loads by name, or a force of one's own. */
final class LoadSection {

    private static final List<String> SPREAD =
            List.of("wind", "snow", "own weight", "luggage", "heat");

    private static final List<String> PLACES =
            List.of("middle", "left edge", "right edge", "front edge", "rear edge");

    private final Section root;
    private final Findings findings;
    private final double width;
    private final double length;
    private final List<PanelFile.Assumption> assumptions;
    private final List<Load> heat = new ArrayList<>();

    LoadSection(Section root, double width, double length, List<PanelFile.Assumption> assumptions) {
        this.root = root;
        this.findings = root.findings();
        this.width = width;
        this.length = length;
        this.assumptions = assumptions;
    }

    List<LoadCase> read() {
        List<LoadCase> cases = new ArrayList<>();
        Optional<Node> node = root.node("loads");
        if (node.isEmpty()) {
            assumptions.add(new PanelFile.Assumption("loads", "a palm and a thumb in the middle"));
            named("palm").ifPresent(load -> cases.add(load.at(width / 2, length / 2)));
            named("thumb").ifPresent(load -> cases.add(load.at(width / 2, length / 2)));
            return cases;
        }
        if (node.get() instanceof MappingNode map) {
            for (Map.Entry<String, Node> entry : new Section(findings, map).entries().entrySet()) {
                one(entry.getKey(), entry.getValue()).ifPresent(cases::add);
            }
        } else {
            for (Node item : root.list("loads")) {
                if (item instanceof ScalarNode scalar) {
                    one(scalar.getValue(), item).ifPresent(cases::add);
                } else if (item instanceof MappingNode map) {
                    new Section(findings, map)
                            .entries()
                            .forEach((key, value) -> one(key, value).ifPresent(cases::add));
                }
            }
        }
        if (cases.isEmpty() && findings.isEmpty()) {
            findings.add(
                    node.get(), "No load presses on the panel.", "Write   loads: [palm, thumb]");
        }
        return heat.isEmpty()
                ? cases
                : cases.stream()
                        .map(
                                load ->
                                        new LoadCase(
                                                load.name(),
                                                load.loads(),
                                                List.copyOf(heat),
                                                load.kind(),
                                                load.reverses(),
                                                load.stays()))
                        .toList();
    }

    private static Optional<EverydayLoads.Named> named(String name) {
        return EverydayLoads.named(name);
    }

    private Optional<LoadCase> one(String name, Node node) {
        String key = name.strip();
        if (key.equals("parked in the sun")) {
            findings.addLater(
                    node,
                    "Heat from the colour of the paint cannot be worked out yet.",
                    "Write   heat: {outside: 60 K, inside: 25 K}   for what you measured above the day of laying.");
            return Optional.empty();
        }
        if (SPREAD.contains(key)) {
            return spread(key, node);
        }
        Optional<EverydayLoads.Named> known = named(key);
        if (known.isPresent()) {
            return press(known.get(), node);
        }
        if (node instanceof MappingNode map) {
            return own(key, new Section(findings, map));
        }
        List<String> names = new ArrayList<>(SPREAD);
        EverydayLoads.known().forEach(load -> names.add(load.name()));
        findings.add(
                node,
                "No load is called \"" + key + "\".",
                "Write   "
                        + MaterialLibrary.nearest(key, names)
                        + "   or give force and patch:   {force: 200 N, patch: 100 mm x 80 mm}");
        return Optional.empty();
    }

    private Optional<LoadCase> press(EverydayLoads.Named load, Node node) {
        Section keys = settings(node);
        keys.allowing(List.of("at", "force", "patch"), List.of());
        MaterialSection.Numbers n = new MaterialSection.Numbers(keys);
        double force = n.or("force", Dimension.FORCE, 1, 50e3, load.force());
        Patch patch = keys.has("patch") ? patch(keys).orElse(load.patch()) : load.patch();
        return place(load.name(), keys, patch, node)
                .filter(at -> n.complete())
                .map(
                        at ->
                                LoadCase.of(
                                        load.name(),
                                        load.kind(),
                                        new Load.Press(force, patch, at.x, at.y)));
    }

    private Optional<LoadCase> own(String name, Section keys) {
        keys.allowing(List.of("at", "force", "patch", "stays", "people"), List.of());
        MaterialSection.Numbers n = new MaterialSection.Numbers(keys);
        double force = n.need("force", Dimension.FORCE, 1, 50e3);
        Optional<Patch> patch = patch(keys);
        if (!n.complete() || patch.isEmpty()) {
            return Optional.empty();
        }
        LoadCase.Kind kind =
                keys.flag("people", false) ? LoadCase.Kind.PERSON : LoadCase.Kind.TOUCH;
        boolean stays = keys.flag("stays", false);
        return place(name, keys, patch.get(), keys.keyNode("at"))
                .map(
                        at ->
                                new LoadCase(
                                        name,
                                        List.of(new Load.Press(force, patch.get(), at.x, at.y)),
                                        List.of(),
                                        kind,
                                        false,
                                        stays));
    }

    private Section settings(Node node) {
        return node instanceof MappingNode map
                ? new Section(findings, map)
                : new Section(
                        findings,
                        new MappingNode(
                                node.getTag(),
                                List.of(),
                                org.snakeyaml.engine.v2.common.FlowStyle.FLOW));
    }

    /** {@code 100 mm x 80 mm} or {@code 20 mm disc}. */
    private Optional<Patch> patch(Section keys) {
        return size(keys, "patch", "100 mm x 80 mm   or   20 mm disc");
    }

    private Optional<Patch> size(Section keys, String key, String example) {
        Optional<String> text = keys.text(key);
        if (text.isEmpty()) {
            if (!keys.has(key)) {
                keys.missing(
                        key, "\"" + key + "\" is missing here.", "Write   " + key + ": " + example);
            }
            return Optional.empty();
        }
        Node node = keys.node(key).orElseThrow();
        if (text.get().endsWith("disc")) {
            String diameter = text.get().substring(0, text.get().length() - 4);
            OptionalDouble d = keys.quantity(node, key, diameter, Dimension.LENGTH, 0.002, 2);
            return d.isPresent() ? Optional.of(new Patch.Disc(d.getAsDouble())) : Optional.empty();
        }
        List<String> sides = List.of(text.get().split(" x ", -1));
        if (sides.size() != 2) {
            findings.add(
                    node,
                    "\"" + key + "\" wants two sides or a disc.",
                    "Write   " + key + ": " + example);
            return Optional.empty();
        }
        OptionalDouble x = keys.quantity(node, key, sides.get(0), Dimension.LENGTH, 0.002, 5);
        OptionalDouble y = keys.quantity(node, key, sides.get(1), Dimension.LENGTH, 0.002, 5);
        return x.isPresent() && y.isPresent()
                ? Optional.of(new Patch.Rectangle(x.getAsDouble(), y.getAsDouble()))
                : Optional.empty();
    }

    private record At(double x, double y) {}

    private Optional<At> place(String name, Section keys, Patch patch, Node node) {
        double x = width / 2;
        double y = length / 2;
        if (!keys.has("at")) {
            return fits(name, patch, x, y, node);
        }
        Node at = keys.node("at").orElseThrow();
        if (at instanceof MappingNode map) {
            Section tape =
                    new Section(findings, map)
                            .allowing(List.of("from left", "from front"), List.of());
            MaterialSection.Numbers n = new MaterialSection.Numbers(tape);
            x = n.or("from left", Dimension.LENGTH, 0, 20, x);
            y = n.or("from front", Dimension.LENGTH, 0, 20, y);
            return n.complete() ? fits(name, patch, x, y, at) : Optional.empty();
        }
        String word = keys.text("at").orElse("");
        if (word.equals("softest place")) {
            findings.addLater(
                    at,
                    "The softest place cannot be searched for yet.",
                    "Write   at: middle   which is the softest place of a panel carried all round.");
            return Optional.empty();
        }
        switch (word) {
            case "middle" -> {}
            case "left edge" -> x = patch.halfX();
            case "right edge" -> x = width - patch.halfX();
            case "front edge" -> y = patch.halfY();
            case "rear edge" -> y = length - patch.halfY();
            default -> {
                findings.add(
                        at,
                        "\"" + word + "\" is no place.",
                        "Write one of: "
                                + String.join(", ", PLACES)
                                + ";   or   {from left: 300 mm, from front: 200 mm}");
                return Optional.empty();
            }
        }
        return fits(name, patch, x, y, at);
    }

    private Optional<At> fits(String name, Patch patch, double x, double y, Node node) {
        boolean across =
                over(name, "left", "right", "wide", "from left", patch.halfX(), x, width, node);
        boolean along =
                over(name, "front", "rear", "long", "from front", patch.halfY(), y, length, node);
        return across || along ? Optional.empty() : Optional.of(new At(x, y));
    }

    private boolean over(
            String name,
            String low,
            String high,
            String adjective,
            String key,
            double half,
            double at,
            double side,
            Node node) {
        double past = Math.max(half - at, at + half - side);
        if (past <= 1e-9) {
            return false;
        }
        boolean pastHigh = at + half - side >= half - at;
        double limit = pastHigh ? side - half : half;
        findings.add(
                node,
                "The "
                        + name
                        + " is "
                        + mm(2 * half)
                        + " "
                        + adjective
                        + " and would hang "
                        + mm(past)
                        + " over the "
                        + (pastHigh ? high : low)
                        + " edge (the panel is "
                        + mm(side)
                        + " "
                        + adjective
                        + ").",
                2 * half > side
                        ? "It is larger than the panel: give it a smaller patch."
                        : "Write   "
                                + key
                                + ": "
                                + mm(limit)
                                + "   or "
                                + (pastHigh ? "less" : "more")
                                + ", or say   at: "
                                + (pastHigh ? high : low)
                                + " edge");
        return true;
    }

    private static String mm(double length) {
        return Math.round(1000 * length) + " mm";
    }

    private Optional<LoadCase> spread(String name, Node node) {
        return switch (name) {
            case "wind" -> {
                OptionalDouble speed = single(name, node, Dimension.SPEED, 1, 120, "110 km/h");
                yield speed.isPresent()
                        ? Optional.of(EverydayLoads.wind(speed.getAsDouble()))
                        : Optional.empty();
            }
            case "snow" -> {
                OptionalDouble pressure = single(name, node, Dimension.STRESS, 10, 10e3, "1 kPa");
                yield pressure.isPresent()
                        ? Optional.of(EverydayLoads.snow(pressure.getAsDouble()))
                        : Optional.empty();
            }
            case "own weight" -> Optional.of(EverydayLoads.ownWeight());
            case "heat" -> {
                heat(node);
                yield Optional.empty();
            }
            default -> luggage(node);
        };
    }

    private OptionalDouble single(
            String name, Node node, Dimension dimension, double low, double high, String example) {
        if (node instanceof ScalarNode scalar && !scalar.getValue().equals(name)) {
            return root.quantity(node, name, scalar.getValue(), dimension, low, high);
        }
        findings.add(
                node,
                "\"" + name + "\" wants a figure.",
                "Write   " + name + ": " + example + "   with   loads:   as keys, not as a list");
        return OptionalDouble.empty();
    }

    private void heat(Node node) {
        Section keys = settings(node).allowing(List.of("outside", "inside"), List.of());
        MaterialSection.Numbers n = new MaterialSection.Numbers(keys);
        double outside = n.need("outside", Dimension.TEMPERATURE_DIFFERENCE, -60, 120);
        double inside = n.or("inside", Dimension.TEMPERATURE_DIFFERENCE, -60, 120, 0);
        if (n.complete()) {
            heat.add(new Load.Heat(outside, inside));
        }
    }

    private Optional<LoadCase> luggage(Node node) {
        Section keys =
                settings(node).allowing(List.of("mass", "spread over", "at", "stays"), List.of());
        MaterialSection.Numbers n = new MaterialSection.Numbers(keys);
        double mass = n.need("mass", Dimension.MASS, 0.1, 1000);
        Optional<Patch> patch = size(keys, "spread over", "400 mm x 300 mm");
        boolean stays = keys.has("stays");
        if (!n.complete() || patch.isEmpty()) {
            return Optional.empty();
        }
        return place("luggage", keys, patch.get(), node)
                .map(at -> EverydayLoads.luggage(mass, patch.get(), at.x, at.y, stays));
    }
}
