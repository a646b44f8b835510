package org.coachskin.cli.file;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.MaterialLibrary;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Height;
import org.coachskin.panel.Opening;
import org.coachskin.panel.TurnedEdge;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * Skins turned round raw edges of the foam, {@code place: skin}; one single edge has the say over
 * {@code all edges}.
 */
final class TurnedSection {

    private static final String RAW = "raw";

    /** What may be said of an edge. */
    static final List<String> WORDS = List.of("outside", "inside", RAW);

    private final Section root;
    private final Findings findings;
    private final List<PanelFile.Assumption> assumptions;

    TurnedSection(Section root, List<PanelFile.Assumption> assumptions) {
        this.root = root;
        this.findings = root.findings();
        this.assumptions = assumptions;
    }

    /** Returns what is turned where, in words and in the order of the file. */
    List<PanelFile.Turned> words() {
        List<PanelFile.Turned> out = new ArrayList<>();
        for (Map.Entry<String, List<Height>> entry : skins().entrySet()) {
            for (Height skin : entry.getValue()) {
                out.add(new PanelFile.Turned(entry.getKey(), skin));
            }
        }
        return out;
    }

    /**
     * Returns what is turned where.
     *
     * @param openings of the panel
     * @param schedule what is laid; empty where that is wrong and noted
     */
    List<TurnedEdge> read(List<Opening> openings, Optional<Schedule> schedule) {
        Map<String, List<Height>> skins = skins();
        if (skins.isEmpty()) {
            return List.of();
        }
        if (!root.has("foam")) {
            findings.add(
                    root.keyNode("turned"),
                    "The panel has no foam, so no edge of it is raw.",
                    "Take   turned   out.");
            return List.of();
        }
        Section keys = root.map("turned").orElseThrow();
        Map<Edge, List<Height>> along = new EnumMap<>(Edge.class);
        List<TurnedEdge> turned = new ArrayList<>();
        List<Edge> single = new ArrayList<>();
        for (Map.Entry<String, List<Height>> entry : skins.entrySet()) {
            String place = entry.getKey();
            Node node = keys.keyNode(place);
            if (Tape.EDGES.contains(place)) {
                List<Edge> edges = Tape.edges(findings, node, "", place);
                for (Edge edge : edges) {
                    if (edges.size() == 1 || !single.contains(edge)) {
                        along.put(edge, entry.getValue());
                    }
                }
                if (edges.size() == 1) {
                    single.addAll(edges);
                }
            } else if (openings.stream().anyMatch(opening -> opening.name().equals(place))) {
                entry.getValue().forEach(skin -> turned.add(new TurnedEdge.Round(place, skin)));
            } else if (!openings.isEmpty() || !root.has("openings")) {
                // Otherwise the opening itself is wrong and noted, or a variant leaves it out.
                unknown(node, place, openings);
            }
            schedule.ifPresent(laid -> plies(node, entry.getValue(), laid));
        }
        if (root.has("lip")) {
            lip(keys, along);
        }
        List<TurnedEdge> all = new ArrayList<>();
        along.forEach(
                (edge, which) -> which.forEach(skin -> all.add(new TurnedEdge.Along(edge, skin))));
        all.addAll(turned);
        if (!all.isEmpty()) {
            assumptions.add(
                    new PanelFile.Assumption(
                            "turned",
                            "a skin turned round an edge: all its plies go on over the foam and "
                                    + "are glued to the other skin"));
        }
        return all;
    }

    /** What is said, by place; without what is wrong and noted. */
    private Map<String, List<Height>> skins() {
        Map<String, List<Height>> skins = new LinkedHashMap<>();
        if (!root.has("turned")) {
            return skins;
        }
        root.map("turned")
                .ifPresent(
                        keys ->
                                keys.entries()
                                        .keySet()
                                        .forEach(place -> skins(keys, place, skins)));
        return skins;
    }

    private void skins(Section keys, String place, Map<String, List<Height>> skins) {
        List<Height> found = new ArrayList<>();
        List<Node> nodes = keys.list(place);
        for (Node node : nodes) {
            String word = Yaml.isNothing(node) ? "" : keys.scalar(node, place).orElse("?");
            if (word.equals("?")) {
                return;
            }
            if (!WORDS.contains(word) || (word.equals(RAW) && nodes.size() > 1)) {
                findings.add(
                        node,
                        word.isEmpty()
                                ? "It is not said which skin is turned round here."
                                : word.equals(RAW)
                                        ? "An edge that a skin is turned round is not raw."
                                        : "No skin is called \"" + word + "\".",
                        "Write   "
                                + place
                                + ": inside   or one of: "
                                + String.join(", ", WORDS)
                                + "\nBoth skins:   "
                                + place
                                + ": [outside, inside]");
                return;
            }
            if (!word.equals(RAW)) {
                Height skin = Height.valueOf(word.toUpperCase(Locale.ROOT));
                if (!found.contains(skin)) {
                    found.add(skin);
                }
            }
        }
        skins.put(place, found);
    }

    private void unknown(Node node, String place, List<Opening> openings) {
        List<String> known = new ArrayList<>(Tape.EDGES);
        openings.forEach(opening -> known.add(opening.name()));
        findings.add(
                node,
                "No edge and no opening is called \"" + place + "\".",
                "Write   "
                        + MaterialLibrary.nearest(place, known)
                        + ": inside   or one of: "
                        + String.join(", ", known));
    }

    /** Notes a skin that has no plies. */
    private void plies(Node node, List<Height> skins, Schedule laid) {
        for (Height skin : skins) {
            boolean inside = skin == Height.INSIDE;
            if ((inside ? laid.inside() : laid.outside()).isEmpty()) {
                findings.add(
                        node,
                        "No ply lies on the " + word(skin) + " that could be turned round an edge.",
                        "Turn the other skin:   " + (inside ? "outside" : "inside"));
            }
        }
    }

    /** Notes edges from which the lip takes the foam away; of all edges it takes what is left. */
    private void lip(Section keys, Map<Edge, List<Height>> along) {
        List<Edge> lip =
                root.map("lip")
                        .filter(section -> section.has("at"))
                        .map(section -> Tape.edges(section, "at"))
                        .orElse(List.of(Edge.values()));
        for (Edge edge : lip) {
            List<Height> skins = along.getOrDefault(edge, List.of());
            boolean named = keys.has(edge.words());
            if (!skins.isEmpty() && (named || lip.size() == Edge.values().length)) {
                findings.add(
                        keys.keyNode(named ? edge.words() : Tape.ALL),
                        "The lip takes the foam away from the "
                                + (named ? edge.words() : "edges")
                                + ": there is no raw edge.",
                        "Take it out of   turned   or out of   lip");
                return;
            }
            along.remove(edge);
        }
    }

    private static String word(Height skin) {
        return skin.name().toLowerCase(Locale.ROOT);
    }
}
