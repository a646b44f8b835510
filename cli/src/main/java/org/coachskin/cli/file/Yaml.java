package org.coachskin.cli.file;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionEndEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Text to nodes that know their line, within bounds of depth and without repetition. */
final class Yaml {

    /** A panel file needs six. */
    private static final int DEEPEST = 20;

    private Yaml() {}

    /**
     * Returns the map that the text holds.
     *
     * @throws org.coachskin.InputException where there is none, with all that stands in the way
     */
    static MappingNode read(String text, Findings findings) {
        List<String> lines = text.lines().toList();
        findings.text(lines);
        refuseTabs(lines, findings);
        findings.stopIfAny();
        LoadSettings settings =
                LoadSettings.builder()
                        .setAllowDuplicateKeys(true)
                        .setAllowNonScalarKeys(true)
                        .build();
        try {
            // Events come one by one: what is nested or repeated without end never becomes a tree.
            refuseDepthAndAliases(new Parse(settings).parseString(text), findings);
            findings.stopIfAny();
            Optional<Node> root = new Compose(settings).composeString(text);
            if (root.isPresent() && root.get() instanceof MappingNode map) {
                if (!refuseKeys(map, findings)) {
                    findings.stopIfAny();
                }
                return map;
            }
            findings.addWhole(
                    "The file holds no keys.",
                    "Start with   name: my panel    or write one with   coachskin new lid FILE");
        } catch (MarkedYamlEngineException e) {
            findings.add(
                    e.getProblemMark().map(mark -> mark.getLine()).orElse(0),
                    "This cannot be read as YAML: " + e.getProblem() + ".",
                    "Look at quotes, colons and brackets here and in the line before.");
        } catch (YamlEngineException e) {
            findings.addWhole(
                    "This cannot be read as YAML: " + firstLine(e) + ".",
                    "Look at quotes, colons and brackets.");
        }
        findings.stopIfAny();
        throw new IllegalStateException("a file without a map must have stopped");
    }

    private static String firstLine(Exception e) {
        return String.valueOf(e.getMessage()).lines().findFirst().orElse("");
    }

    private static void refuseTabs(List<String> lines, Findings findings) {
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            String indent = line.substring(0, line.length() - line.stripLeading().length());
            if (indent.indexOf('\t') >= 0 && !line.isBlank()) {
                findings.add(
                        i,
                        "A tab stands at the start of the line; YAML wants spaces.",
                        "Replace it by two spaces.");
            }
        }
    }

    private static void refuseDepthAndAliases(Iterable<Event> events, Findings findings) {
        int depth = 0;
        for (Event event : events) {
            int line = event.getStartMark().map(mark -> mark.getLine()).orElse(0);
            if (event instanceof CollectionStartEvent) {
                depth++;
            } else if (event instanceof CollectionEndEvent) {
                depth--;
            } else if (event instanceof AliasEvent alias) {
                findings.add(
                        line,
                        "An alias (*" + alias.getAlias() + ") repeats a part; none is taken here.",
                        "Write the part out.");
            } else if (event instanceof ScalarEvent scalar
                    && scalar.getValue().chars().anyMatch(Yaml::unseen)) {
                findings.add(
                        line, "A character here cannot be seen.", "Write plain text on one line.");
            }
            if (depth > DEEPEST) {
                findings.add(
                        line,
                        "This is nested deeper than any panel file needs.",
                        "Write it flatter.");
                return;
            }
        }
    }

    /** Line ends of a folded text are seen as white space; other controls may steer a terminal. */
    private static boolean unseen(int c) {
        return Character.isISOControl(c) && c != '\n';
    }

    /**
     * Notes keys that stand twice, of which the first one counts for what else is looked for, and
     * keys that are none; returns whether every key is a word.
     */
    private static boolean refuseKeys(Node node, Findings findings) {
        boolean words = true;
        if (node instanceof SequenceNode sequence) {
            for (Node child : sequence.getValue()) {
                words &= refuseKeys(child, findings);
            }
        }
        if (!(node instanceof MappingNode map)) {
            return words;
        }
        Map<String, Integer> lines = new HashMap<>();
        for (NodeTuple tuple : map.getValue()) {
            if (tuple.getKeyNode() instanceof ScalarNode scalar) {
                Integer before = lines.putIfAbsent(scalar.getValue(), Findings.line(scalar));
                if (before != null) {
                    findings.add(
                            scalar,
                            "\""
                                    + scalar.getValue()
                                    + "\" stands already in line "
                                    + (before + 1)
                                    + ".",
                            "Keep one of the two.");
                }
            } else {
                words = false;
                findings.add(
                        tuple.getKeyNode(),
                        "A list or a map stands where a key is wanted.",
                        "Write a word before the colon.");
            }
            words &= refuseKeys(tuple.getValueNode(), findings);
        }
        return words;
    }

    static String key(NodeTuple tuple) {
        return ((ScalarNode) tuple.getKeyNode()).getValue();
    }

    /** Returns whether nothing stands there: {@code outside:} and no more. */
    static boolean isNothing(Node node) {
        return node instanceof ScalarNode scalar && scalar.getValue().isBlank();
    }
}
