package org.coachskin.cli.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coachskin.material.MaterialLibrary;
import org.coachskin.units.Dimension;
import org.coachskin.units.Quantity;
import org.coachskin.units.QuantityException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** The keys of one map: read one by one, with a note for each that is wrong. */
final class Section {

    private final Findings findings;
    private final Node place;
    private final Map<String, Node> keyNodes = new LinkedHashMap<>();
    private final Map<String, Node> values = new LinkedHashMap<>();

    Section(Findings findings, MappingNode map) {
        this.findings = findings;
        this.place = map;
        for (NodeTuple tuple : map.getValue()) {
            keyNodes.put(Yaml.key(tuple), tuple.getKeyNode());
            values.put(Yaml.key(tuple), tuple.getValueNode());
        }
    }

    /** This section with the keys of {@code over} in place of its own. */
    Section with(Section over) {
        Section merged =
                new Section(
                        findings,
                        new MappingNode(
                                place.getTag(),
                                List.of(),
                                org.snakeyaml.engine.v2.common.FlowStyle.BLOCK));
        merged.keyNodes.putAll(keyNodes);
        merged.values.putAll(values);
        merged.keyNodes.putAll(over.keyNodes);
        merged.values.putAll(over.values);
        return merged;
    }

    /**
     * This section with the map {@code key} over that of {@code base}: only what differs is
     * written.
     */
    Section withMap(String key, Section base) {
        if (values.get(key) instanceof MappingNode top
                && base.values.get(key) instanceof MappingNode below) {
            List<NodeTuple> tuples = new ArrayList<>(top.getValue());
            List<String> changed = top.getValue().stream().map(Yaml::key).toList();
            below.getValue().stream()
                    .filter(tuple -> !changed.contains(Yaml.key(tuple)))
                    .forEach(tuples::add);
            values.put(
                    key,
                    new MappingNode(
                            top.getTag(),
                            true,
                            tuples,
                            top.getFlowStyle(),
                            top.getStartMark(),
                            top.getEndMark()));
        }
        return this;
    }

    /** Notes every key that is not among {@code known}, with the one that reads most like it. */
    Section allowing(List<String> known, List<String> later) {
        keyNodes.forEach(
                (key, node) -> {
                    if (later.contains(key)) {
                        findings.addLater(
                                node,
                                "\"" + key + "\" cannot be worked out yet.",
                                "Take it out to see the panel without it; nothing of it is guessed.");
                    } else if (!known.contains(key)) {
                        String nearest = MaterialLibrary.nearest(key, known);
                        findings.add(
                                node,
                                "There is no key \"" + key + "\" here.",
                                "Write   "
                                        + nearest
                                        + ":   or one of: "
                                        + String.join(", ", known));
                    }
                });
        return this;
    }

    Findings findings() {
        return findings;
    }

    Map<String, Node> entries() {
        return values;
    }

    boolean has(String key) {
        return values.containsKey(key);
    }

    Optional<Node> node(String key) {
        return Optional.ofNullable(values.get(key));
    }

    Node keyNode(String key) {
        return Optional.ofNullable(keyNodes.get(key)).orElse(place);
    }

    /** Notes that {@code key} is missing. */
    void missing(String key, String what, String fix) {
        findings.add(place, what, fix);
    }

    Optional<String> text(String key) {
        return node(key).flatMap(node -> scalar(node, key));
    }

    Optional<String> scalar(Node node, String key) {
        if (node instanceof ScalarNode scalar && !scalar.getValue().isBlank()) {
            return Optional.of(scalar.getValue().strip());
        }
        findings.add(
                node,
                "\"" + key + "\" wants one value here.",
                "Write   " + key + ": ...   on one line");
        return Optional.empty();
    }

    Optional<Section> map(String key) {
        return node(key).flatMap(node -> asMap(node, key));
    }

    Optional<Section> asMap(Node node, String key) {
        if (node instanceof MappingNode map) {
            return Optional.of(new Section(findings, map));
        }
        findings.add(
                node,
                "\"" + key + "\" wants keys of its own.",
                "Write them indented under   " + key + ":");
        return Optional.empty();
    }

    /** The items of a list; a single value counts as a list of one. */
    List<Node> list(String key) {
        Optional<Node> node = node(key);
        if (node.isEmpty()) {
            return List.of();
        }
        return node.get() instanceof SequenceNode sequence
                ? new ArrayList<>(sequence.getValue())
                : List.of(node.get());
    }

    /** A quantity within bounds that no panel leaves; empty and noted where it is not one. */
    OptionalDouble quantity(String key, Dimension dimension, double low, double high) {
        Optional<Node> node = node(key);
        if (node.isEmpty()) {
            return OptionalDouble.empty();
        }
        Optional<String> text = scalar(node.get(), key);
        return text.isEmpty()
                ? OptionalDouble.empty()
                : quantity(node.get(), key, text.get(), dimension, low, high);
    }

    OptionalDouble quantity(
            Node node, String key, String text, Dimension dimension, double low, double high) {
        try {
            double value = Quantity.parse(text, dimension);
            if (dimension == Dimension.SHARE && (value < 0 || value > 1)) {
                findings.add(
                        node,
                        "\"" + key + "\" is a share and lies between 0 and 1.",
                        "Write for example   " + key + ": 50 %");
            } else if (value <= 0 && low > 0) {
                findings.add(
                        node, "\"" + key + "\" must be above zero.", "Write what you measured.");
            } else if (value < low || value > high) {
                findings.add(
                        node,
                        "\""
                                + key
                                + "\" is "
                                + text
                                + ": no panel of this kind is like that. Is the unit right?",
                        "It should lie between "
                                + Format.plain(low, dimension)
                                + " and "
                                + Format.plain(high, dimension)
                                + ".");
            } else {
                return OptionalDouble.of(value);
            }
        } catch (QuantityException e) {
            findings.add(
                    node,
                    "\"" + key + "\" is " + text + ". " + e.getMessage(),
                    "Write   " + key + ": " + e.fix());
        }
        return OptionalDouble.empty();
    }

    /** Yes or no. */
    boolean flag(String key, boolean otherwise) {
        Optional<String> text = text(key);
        if (text.isEmpty()) {
            return otherwise;
        }
        return switch (text.get()) {
            case "yes", "true" -> true;
            case "no", "false" -> false;
            default -> {
                findings.add(
                        keyNode(key), "\"" + key + "\" is yes or no.", "Write   " + key + ": yes");
                yield otherwise;
            }
        };
    }
}
