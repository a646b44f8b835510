package org.coachskin.cli.file;

import java.util.ArrayList;
import java.util.List;
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
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** What presses on the panel: everyday loads by name, or a force of one's own. */
final class LoadSection {

    static final List<String> SPREAD = List.of("wind", "snow", "own weight", "luggage", "heat");

    private static final List<String> USUAL = List.of("palm", "thumb");

    private static final String USUAL_FIX = "Write   loads: [palm, thumb]";

    static final List<String> PRESS = List.of("at", "force", "patch");

    static final List<String> OWN = List.of("at", "force", "patch", "line", "stays", "people");

    static final List<String> LUGGAGE = List.of("mass", "spread over", "at", "stays");

    static final List<String> HEAT = List.of("outside", "inside");

    /** A load that stays is one that lies longer than this [s]. */
    private static final double HOUR = 3600;

    private static final double CENTURY = 3.2e9;

    private final Section root;
    private final Findings findings;
    private final PlaceSection places;
    private final LineSection lines;
    private final double length;
    private final List<PanelFile.Assumption> assumptions;
    private final List<Load> heat = new ArrayList<>();

    LoadSection(Section root, Ground ground, List<PanelFile.Assumption> assumptions) {
        this.root = root;
        this.findings = root.findings();
        this.places = new PlaceSection(ground);
        this.lines = new LineSection(ground);
        this.length = ground.length();
        this.assumptions = assumptions;
    }

    List<LoadCase> read() {
        Optional<Node> node = root.node("loads");
        if (node.isEmpty()) {
            assumptions.add(new PanelFile.Assumption("loads", "a palm and a thumb in the middle"));
            return EverydayLoads.known().stream()
                    .filter(load -> USUAL.contains(load.name()))
                    .flatMap(
                            load ->
                                    places.read(load.name(), inMiddle(), load.patch()).stream()
                                            .map(at -> load.at(at.x(), at.y())))
                    .toList();
        }
        List<LoadCase> cases = new ArrayList<>();
        for (Node item : items(node.get())) {
            if (item instanceof ScalarNode scalar && !Yaml.isNothing(item)) {
                one(scalar.getValue(), item).ifPresent(cases::add);
            } else if (item instanceof MappingNode map) {
                new Section(findings, map)
                        .entries()
                        .forEach((key, value) -> one(key, value).ifPresent(cases::add));
            } else if (item instanceof SequenceNode) {
                findings.add(item, "A list stands where a load is wanted.", USUAL_FIX);
            }
        }
        if (cases.isEmpty() && findings.isEmpty() && !findings.anyLater()) {
            findings.add(
                    root.keyNode("loads"),
                    heat.isEmpty()
                            ? "No load presses on the panel."
                            : "Heat alone is not judged: it stands beside a load.",
                    USUAL_FIX);
        }
        return cases.stream().map(this::heated).toList();
    }

    /** No keys; what is wrong with the middle stands at the openings. */
    private Section inMiddle() {
        return Section.empty(findings, root.keyNode("openings"));
    }

    private static List<Node> items(Node node) {
        return node instanceof SequenceNode sequence ? sequence.getValue() : List.of(node);
    }

    /** Heat stands beside every load and is not multiplied by a reserve. */
    private LoadCase heated(LoadCase load) {
        return new LoadCase(
                load.name(),
                load.loads(),
                heat,
                load.kind(),
                load.reverses(),
                load.stays(),
                load.softest());
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
        Optional<EverydayLoads.Named> known = EverydayLoads.named(key);
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
        Section keys = settings(load.name(), node).allowing(PRESS);
        Numbers n = new Numbers(keys);
        double force = n.or("force", Dimension.FORCE, 1, 50e3, load.force());
        Optional<Patch> patch = keys.has("patch") ? patch(keys) : Optional.of(load.patch());
        if (!n.complete() || patch.isEmpty()) {
            return Optional.empty();
        }
        return places.read(load.name(), keys, patch.get())
                .map(
                        at ->
                                LoadCase.of(
                                                load.name(),
                                                load.kind(),
                                                new Load.Press(force, patch.get(), at.x(), at.y()))
                                        .withSoftest(at.softest()));
    }

    private Optional<LoadCase> own(String name, Section keys) {
        keys.allowing(OWN);
        boolean stays = stays(keys);
        LoadCase.Kind kind =
                keys.flag("people", false) ? LoadCase.Kind.PERSON : LoadCase.Kind.TOUCH;
        if (keys.has("line")) {
            return lines.read(name, keys)
                    .map(line -> new LoadCase(name, List.of(line), List.of(), kind, false, stays));
        }
        Numbers n = new Numbers(keys);
        double force = n.need("force", Dimension.FORCE, 1, 50e3);
        Optional<Patch> patch = patch(keys);
        if (!n.complete() || patch.isEmpty()) {
            return Optional.empty();
        }
        return places.read(name, keys, patch.get())
                .map(
                        at ->
                                new LoadCase(
                                        name,
                                        List.of(new Load.Press(force, patch.get(), at.x(), at.y())),
                                        List.of(),
                                        kind,
                                        false,
                                        stays,
                                        at.softest()));
    }

    /** {@code yes}, {@code no}, or for how long. */
    private static boolean stays(Section keys) {
        String words = keys.has("stays") ? keys.text("stays").orElse("no") : "no";
        return switch (words) {
            case "no", "false" -> false;
            case "yes", "true" -> true;
            default -> keys.quantity("stays", Dimension.TIME, HOUR, CENTURY).isPresent();
        };
    }

    /** The settings of a load; a name alone has none. */
    private Section settings(String name, Node node) {
        if (node instanceof MappingNode map) {
            return new Section(findings, map);
        }
        boolean bare = node instanceof ScalarNode scalar && scalar.getValue().strip().equals(name);
        if (!bare && !Yaml.isNothing(node)) {
            findings.add(
                    node,
                    "\"" + name + "\" wants keys of its own.",
                    "Write   " + name + ": {at: middle}   or leave it empty.");
        }
        return Section.empty(findings, node);
    }

    /** {@code 100 mm x 80 mm} or {@code 20 mm disc}. */
    private Optional<Patch> patch(Section keys) {
        return size(keys, "patch", "100 mm x 80 mm   or   20 mm disc");
    }

    private Optional<Patch> size(Section keys, String key, String example) {
        Optional<String> text = keys.text(key);
        if (text.isEmpty()) {
            if (!keys.has(key)) {
                keys.missing("\"" + key + "\" is missing here.", "Write   " + key + ": " + example);
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

    private Optional<LoadCase> spread(String name, Node node) {
        return switch (name) {
            case "wind" -> {
                OptionalDouble speed = single(name, node, Dimension.SPEED, 1, 120, "110 km/h");
                yield speed.isPresent()
                        ? Optional.of(EverydayLoads.wind(speed.getAsDouble(), length))
                        : Optional.empty();
            }
            case "snow" -> {
                OptionalDouble pressure = single(name, node, Dimension.STRESS, 10, 10e3, "1 kPa");
                yield pressure.isPresent()
                        ? Optional.of(EverydayLoads.snow(pressure.getAsDouble()))
                        : Optional.empty();
            }
            case "own weight" -> ownWeight(node);
            case "heat" -> {
                heat(node);
                yield Optional.empty();
            }
            default -> luggage(node);
        };
    }

    private Optional<LoadCase> ownWeight(Node node) {
        String name = "own weight";
        boolean bare = node instanceof ScalarNode scalar && scalar.getValue().strip().equals(name);
        if (!bare && !Yaml.isNothing(node)) {
            findings.add(
                    node,
                    "\"own weight\" takes nothing: it is worked out and pulls everywhere.",
                    "Write   own weight:   and leave it empty.");
            return Optional.empty();
        }
        return Optional.of(EverydayLoads.ownWeight());
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
        Section keys = settings("heat", node).allowing(HEAT);
        Numbers n = new Numbers(keys);
        double outside = n.need("outside", Dimension.TEMPERATURE_DIFFERENCE, -60, 120);
        double inside = n.or("inside", Dimension.TEMPERATURE_DIFFERENCE, -60, 120, 0);
        if (n.complete()) {
            heat.add(new Load.Heat(outside, inside));
        }
    }

    private Optional<LoadCase> luggage(Node node) {
        Section keys = settings("luggage", node).allowing(LUGGAGE);
        Numbers n = new Numbers(keys);
        double mass = n.need("mass", Dimension.MASS, 0.1, 1000);
        Optional<Patch> patch = size(keys, "spread over", "400 mm x 300 mm");
        boolean stays = stays(keys);
        if (!n.complete() || patch.isEmpty()) {
            return Optional.empty();
        }
        return places.read("luggage", keys, patch.get())
                .map(
                        at ->
                                EverydayLoads.luggage(mass, patch.get(), at.x(), at.y(), stays)
                                        .withSoftest(at.softest()));
    }
}
