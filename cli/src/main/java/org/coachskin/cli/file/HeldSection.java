package org.coachskin.cli.file;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.coachskin.material.MaterialLibrary;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Fitting.Motion;
import org.coachskin.panel.Height;
import org.coachskin.panel.Stretch;
import org.coachskin.panel.Support;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * What holds the panel. In short, {@code place: thing}: of what runs along an edge one single edge
 * has the say over {@code all edges}, hinges and latches come on top. At length, a list, of which
 * everything counts.
 */
final class HeldSection {

    private static final String ALL =
            "Write   held: all edges   to see the panel as if its whole rim were carried.";

    private final Section root;
    private final Findings findings;
    private final Ground ground;
    private final List<PanelFile.Assumption> assumptions;
    private final Pads pads;

    HeldSection(Section root, Ground ground, List<PanelFile.Assumption> assumptions) {
        this.root = root;
        this.findings = root.findings();
        this.ground = ground;
        this.assumptions = assumptions;
        this.pads = new Pads(ground, findings);
    }

    /** Returns what holds the panel; empty and noted where something is wrong. */
    Optional<Support> read() {
        Optional<Node> node = look(root);
        if (node.isEmpty() || node.get() instanceof ScalarNode) {
            return node.map(all -> new Support.WholeRim());
        }
        int before = findings.count();
        List<Fitting> fittings =
                node.get() instanceof MappingNode map
                        ? inShort(new Section(findings, map))
                        : new FittingSection(findings, ground, pads)
                                .read((SequenceNode) node.get());
        if (findings.count() > before) {
            return Optional.empty();
        }
        if (fittings.stream().noneMatch(HeldSection::holds)) {
            boolean seal = fittings.stream().anyMatch(Fitting.RubberSeal.class::isInstance);
            findings.add(
                    root.keyNode("held"),
                    seal
                            ? "Nothing holds the panel: a rubber seal only pushes it outward."
                            : "Nothing holds the panel.",
                    "Add   front edge: hinges   and   rear edge: latch\nor w" + ALL.substring(1));
            return Optional.empty();
        }
        return Optional.of(
                isWholeRim(fittings) ? new Support.WholeRim() : new Support.Fittings(fittings));
    }

    /** Returns what stands there; nothing, and noted, where that cannot be understood at all. */
    static Optional<Node> look(Section root) {
        Optional<Node> node = root.node("held");
        if (node.isEmpty()) {
            root.missing("What holds the panel is missing.", ALL);
        } else if (node.get() instanceof ScalarNode scalar
                && !scalar.getValue().strip().equals(Tape.ALL)) {
            root.findings()
                    .add(
                            node.get(),
                            "\"held\" is not understood.",
                            "Write   held: all edges   or, on a line of its own under   held:\n  front edge: hinges");
            return Optional.empty();
        }
        return node;
    }

    private static boolean holds(Fitting fitting) {
        if (fitting instanceof Fitting.Pad pad) {
            return pad.held().contains(Fitting.Direction.Z);
        }
        return fitting instanceof Fitting.HeldEdge edge && edge.held().contains(Motion.DEFLECTION);
    }

    private static boolean isWholeRim(List<Fitting> fittings) {
        Set<Edge> carried = EnumSet.noneOf(Edge.class);
        for (Fitting fitting : fittings) {
            if (!(fitting instanceof Fitting.HeldEdge edge
                    && edge.equals(Fitting.HeldEdge.carried(edge.stretch().edge())))) {
                return false;
            }
            carried.add(edge.stretch().edge());
        }
        return carried.size() == Edge.values().length;
    }

    private List<Fitting> inShort(Section keys) {
        Map<Edge, String> even = new EnumMap<>(Edge.class);
        Set<Edge> named = EnumSet.noneOf(Edge.class);
        List<Fitting> fittings = new ArrayList<>();
        for (Map.Entry<String, Node> entry : keys.entries().entrySet()) {
            String place = entry.getKey();
            List<Edge> edges = Tape.edges(findings, keys.keyNode(place), "", place);
            String before = "";
            for (Node node : keys.list(place)) {
                String word = Yaml.isNothing(node) ? "" : keys.scalar(node, place).orElse("?");
                Optional<ReadyMade> thing = ReadyMade.named(word);
                if (thing.isEmpty()) {
                    unknown(node, place, word);
                } else if (thing.get().pad().isPresent()) {
                    edges.forEach(edge -> fittings.addAll(pads.readyMade(thing.get(), edge, node)));
                    assume(thing.get());
                } else if (!before.isEmpty()) {
                    twice(node, place, before, word);
                } else {
                    before = word;
                    assume(thing.get());
                }
            }
            for (Edge edge : edges) {
                boolean single = edges.size() == 1;
                if (!before.isEmpty() && (single || !named.contains(edge))) {
                    even.put(edge, before);
                }
                if (single && !before.isEmpty()) {
                    named.add(edge);
                }
            }
        }
        fittings.addAll(alongEdges(even));
        return fittings;
    }

    /** Notes a word that is none; what is no word at all has been noted. */
    private void unknown(Node node, String place, String word) {
        if (word.equals("?")) {
            return;
        }
        findings.add(
                node,
                word.isEmpty()
                        ? "It is not said what holds the panel here."
                        : "Nothing that holds a panel is called \"" + word + "\".",
                "Write   "
                        + place
                        + ": "
                        + (word.isEmpty()
                                ? "hinges"
                                : MaterialLibrary.nearest(word, ReadyMade.words()))
                        + "   or one of: "
                        + String.join(", ", ReadyMade.words())
                        + "\nOr say it at length:   - {hinge: front edge, at: 150 mm from left, pad: 40 mm}");
    }

    private void twice(Node node, String place, String first, String then) {
        findings.add(
                node,
                "The " + place + " cannot be both \"" + first + "\" and \"" + then + "\".",
                "Keep one of the two, or give each its part of the edge at length:\n  - {carried: "
                        + place
                        + ", from: 100 mm, to: 500 mm}");
    }

    private void assume(ReadyMade thing) {
        if (thing.pad().isPresent() || thing.force().isPresent()) {
            assumptions.add(
                    new PanelFile.Assumption(
                            "held",
                            thing.word()
                                    + ": "
                                    + thing.what()
                                    + (thing.pad().isPresent()
                                            ? ", pad "
                                                    + Side.mm(thing.pad().getAsDouble())
                                                    + " square"
                                            : ", "
                                                    + Format.number(thing.force().orElseThrow())
                                                    + " N per m squeezed by "
                                                    + Side.mm(thing.squeezed().orElseThrow())
                                                    + ", solid at "
                                                    + Side.mm(thing.solid().orElseThrow()))
                                    + " ["
                                    + thing.source().standing().words()
                                    + "]"));
        }
    }

    private static List<Fitting> alongEdges(Map<Edge, String> even) {
        List<Fitting> fittings = new ArrayList<>();
        List<Stretch> sealed = new ArrayList<>();
        even.forEach(
                (edge, word) -> {
                    switch (word) {
                        case "carried" -> fittings.add(Fitting.HeldEdge.carried(edge));
                        case "clamped" -> fittings.add(Fitting.HeldEdge.clamped(edge));
                        case "rubber seal" -> sealed.add(Stretch.whole(edge));
                        default -> {
                            // A free edge is held by nothing.
                        }
                    }
                });
        if (!sealed.isEmpty()) {
            ReadyMade seal = ReadyMade.row("rubber seal");
            fittings.add(
                    new Fitting.RubberSeal(
                            sealed,
                            seal.force().orElseThrow(),
                            seal.squeezed().orElseThrow(),
                            seal.solid().orElseThrow(),
                            seal.stiffer().orElseThrow()));
        }
        return fittings;
    }

    /** Returns an edge held in a part of its length. */
    static Fitting.HeldEdge held(Stretch stretch, boolean clamped) {
        Set<Motion> motions =
                clamped
                        ? EnumSet.allOf(Motion.class)
                        : Fitting.HeldEdge.carried(stretch.edge()).held();
        return new Fitting.HeldEdge(stretch, motions, Height.MIDDLE);
    }
}
