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
import org.coachskin.units.Unit;
import org.snakeyaml.engine.v2.common.FlowStyle;
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
        this(findings, (Node) map);
        String before = "";
        for (NodeTuple tuple : map.getValue()) {
            String key = Yaml.key(tuple);
            if (isRestOfNumber(map, before, key, tuple.getValueNode())) {
                values.computeIfPresent(before, (k, value) -> withComma((ScalarNode) value, key));
            } else {
                keyNodes.putIfAbsent(key, tuple.getKeyNode());
                values.putIfAbsent(key, tuple.getValueNode());
                before = key;
            }
        }
    }

    private Section(Findings findings, Node place) {
        this.findings = findings;
        this.place = place;
    }

    /** Returns a section without keys, where a name alone stands in place of a map. */
    static Section empty(Findings findings, Node place) {
        return new Section(findings, place);
    }

    /** Whether {@code {thickness: 12,5 mm}} was cut at its comma. */
    private boolean isRestOfNumber(MappingNode map, String before, String key, Node value) {
        return map.getFlowStyle() == FlowStyle.FLOW
                && Yaml.isNothing(value)
                && key.matches("\\d.*")
                && values.get(before) instanceof ScalarNode number
                && number.getValue().matches(".*\\d");
    }

    private static Node withComma(ScalarNode number, String rest) {
        return new ScalarNode(
                number.getTag(),
                true,
                number.getValue() + "," + rest,
                number.getScalarStyle(),
                number.getStartMark(),
                number.getEndMark());
    }

    /** Returns this section with the keys of {@code over} in place of its own. */
    Section with(Section over) {
        Section merged = new Section(findings, place);
        merged.keyNodes.putAll(keyNodes);
        merged.values.putAll(values);
        merged.keyNodes.putAll(over.keyNodes);
        merged.values.putAll(over.values);
        return merged;
    }

    /**
     * Returns this section with the map {@code key} laid over that of {@code base}: only what
     * differs is written.
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
                        findings.add(
                                node,
                                "There is no key \"" + key + "\" here.",
                                "Write   "
                                        + MaterialLibrary.nearest(key, known)
                                        + ":   or one of: "
                                        + String.join(", ", known));
                    }
                });
        return this;
    }

    Section allowing(List<String> known) {
        return allowing(known, List.of());
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

    /** Notes what is missing from this section. */
    void missing(String what, String fix) {
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
        return node(key)
                .map(
                        node ->
                                node instanceof SequenceNode sequence
                                        ? sequence.getValue()
                                        : List.of(node))
                .orElse(List.of());
    }

    /** A quantity within bounds that no panel leaves; empty and noted where it is not one. */
    OptionalDouble quantity(String key, Dimension dimension, double low, double high) {
        Optional<String> text = text(key);
        return text.isEmpty()
                ? OptionalDouble.empty()
                : quantity(keyNode(key), key, text.get(), dimension, low, high);
    }

    OptionalDouble quantity(
            Node node, String key, String text, Dimension dimension, double low, double high) {
        return quantity(node, key, "", text, dimension, low, high);
    }

    /** A quantity behind a word, as in {@code shape: circle 80 mm}. */
    OptionalDouble quantity(
            Node node,
            String key,
            String word,
            String text,
            Dimension dimension,
            double low,
            double high) {
        double value;
        try {
            value = Quantity.parse(text, dimension);
        } catch (QuantityException e) {
            findings.add(
                    node,
                    "\"" + key + "\" " + e.getMessage() + ".",
                    "Write   " + key + ": " + word + e.fix());
            return OptionalDouble.empty();
        }
        if (value >= low && value <= high) {
            return OptionalDouble.of(value);
        }
        String range =
                "It should lie between "
                        + Format.plain(low, dimension)
                        + " and "
                        + Format.plain(high, dimension)
                        + ".";
        if (dimension == Dimension.SHARE && (value < 0 || value > 1)) {
            boolean percent = value >= 100 * low && value <= 100 * high;
            findings.add(
                    node,
                    "\"" + key + "\" is a share and lies between 0 and 1.",
                    percent ? "Write   " + key + ": " + text + " %" : range);
        } else if (value <= 0 && low >= 0) {
            String bound = low > 0 ? "be above zero" : "not be below zero";
            findings.add(node, "\"" + key + "\" is " + text + "; it must " + bound + ".", range);
        } else {
            findings.add(
                    node,
                    "\"" + key + "\" is " + text + ": no panel of this kind is like that.",
                    meant(key, text, dimension, low, high) + range);
        }
        return OptionalDouble.empty();
    }

    /** The same number in the unit that would make sense of it, if there is one. */
    private static String meant(
            String key, String text, Dimension dimension, double low, double high) {
        String number = text.replaceFirst("[\\s]*[^\\d\\s.][^\\d]*$", "");
        for (Unit unit : Unit.of(dimension)) {
            String other = number + " " + unit.symbol();
            try {
                double value = Quantity.parse(other, dimension);
                if (value >= low && value <= high) {
                    return "Is   " + key + ": " + other + "   meant?\n";
                }
            } catch (QuantityException e) {
                return "";
            }
        }
        return "";
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
