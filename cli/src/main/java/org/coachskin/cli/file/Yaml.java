package org.coachskin.cli.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** A file to nodes that know their line, within bounds of size and depth. */
final class Yaml {

    /** A panel file is a page or two; this is far beyond. */
    private static final int LARGEST = 1 << 20;

    private static final int DEEPEST = 20;

    private Yaml() {}

    /** Returns the map that the file holds; findings say what is wrong where there is none. */
    static MappingNode read(Path path, Findings findings) {
        String text = text(path, findings);
        findings.stopIfAny();
        List<String> lines = text.lines().toList();
        findings.text(lines);
        refuseTabsAndDepth(lines, findings);
        findings.stopIfAny();
        try {
            Optional<Node> root =
                    new Compose(
                                    LoadSettings.builder()
                                            .setLabel(path.toString())
                                            .setCodePointLimit(LARGEST)
                                            .build())
                            .composeString(text);
            if (root.isPresent() && root.get() instanceof MappingNode map) {
                refuseAliases(map, new IdentityHashMap<>(), findings);
                refuseDuplicates(map, findings);
                findings.stopIfAny();
                return map;
            }
            findings.addWhole(
                    "The file holds no keys.",
                    "Start with   name: my panel    or write one with   coachskin new lid FILE");
        } catch (MarkedYamlEngineException e) {
            int line = e.getProblemMark().map(mark -> mark.getLine()).orElse(0);
            findings.add(
                    line,
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

    private static String text(Path path, Findings findings) {
        try {
            if (Files.isDirectory(path)) {
                findings.addWhole("This is a folder.", "Name the panel file in it.");
                return "";
            }
            byte[] bytes;
            try (InputStream in = Files.newInputStream(path)) {
                bytes = in.readNBytes(LARGEST + 1);
            }
            if (bytes.length > LARGEST) {
                findings.addWhole(
                        "The file is larger than a megabyte: no panel file is.", "Check the name.");
                return "";
            }
            String text =
                    StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (NoSuchFileException e) {
            findings.addWhole(
                    "There is no such file.",
                    "Check the name, or write a new one with   coachskin new lid "
                            + path.getFileName());
        } catch (AccessDeniedException e) {
            findings.addWhole("You may not read this file.", "Ask for permission, or copy it.");
        } catch (CharacterCodingException e) {
            findings.addWhole("The file is not UTF-8 text.", "Save it as UTF-8 in your editor.");
        } catch (IOException e) {
            findings.addWhole(
                    "The file cannot be read: " + firstLine(e) + ".", "Try again, or copy it.");
        }
        return "";
    }

    private static void refuseTabsAndDepth(List<String> lines, Findings findings) {
        int open = 0;
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            String indent = line.substring(0, line.length() - line.stripLeading().length());
            if (indent.indexOf('\t') >= 0) {
                findings.add(
                        i,
                        "A tab stands at the start of the line; YAML wants spaces.",
                        "Replace it by two spaces.");
            }
            for (int k = 0; k < line.length(); k++) {
                char c = line.charAt(k);
                open += c == '[' || c == '{' ? 1 : c == ']' || c == '}' ? -1 : 0;
                if (c == '#') {
                    break;
                }
            }
            long dashes =
                    Arrays.stream(line.split(" ", -1))
                            .takeWhile(word -> word.isEmpty() || word.equals("-"))
                            .filter("-"::equals)
                            .count();
            if (open > DEEPEST || dashes > DEEPEST || indent.length() > 8 * DEEPEST) {
                findings.add(
                        i, "This is nested deeper than any panel file needs.", "Write it flatter.");
                return;
            }
        }
    }

    private static void refuseAliases(Node node, Map<Node, Boolean> seen, Findings findings) {
        if (seen.put(node, true) != null) {
            if (!(node instanceof ScalarNode)) {
                findings.add(
                        node,
                        "An alias (*name) repeats this part; the reader takes none.",
                        "Write the part out.");
            }
            return;
        }
        if (node instanceof MappingNode map) {
            for (NodeTuple tuple : map.getValue()) {
                refuseAliases(tuple.getValueNode(), seen, findings);
            }
        } else if (node instanceof SequenceNode sequence) {
            sequence.getValue().forEach(child -> refuseAliases(child, seen, findings));
        }
    }

    private static void refuseDuplicates(Node node, Findings findings) {
        if (node instanceof MappingNode map) {
            Map<String, Integer> lines = new HashMap<>();
            for (NodeTuple tuple : map.getValue()) {
                String key = key(tuple);
                Integer before = lines.putIfAbsent(key, Findings.line(tuple.getKeyNode()));
                if (before != null) {
                    findings.add(
                            tuple.getKeyNode(),
                            "\"" + key + "\" stands already in line " + (before + 1) + ".",
                            "Keep one of the two.");
                }
                refuseDuplicates(tuple.getValueNode(), findings);
            }
        } else if (node instanceof SequenceNode sequence) {
            sequence.getValue().forEach(child -> refuseDuplicates(child, findings));
        }
    }

    static String key(NodeTuple tuple) {
        return tuple.getKeyNode() instanceof ScalarNode scalar ? scalar.getValue() : "?";
    }
}
