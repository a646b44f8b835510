package org.coachskin.cli.file;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.coachskin.laminate.Patch;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Fitting.Direction;
import org.coachskin.panel.Height;
import org.coachskin.panel.Shape;
import org.snakeyaml.engine.v2.nodes.Node;

/** Hinges, latches, rests and props: where their pads are, whether they lie on the panel. */
final class Pads {

    /** How far the two ready-made hinges are in from the corners, as a share of the edge. */
    private static final double HINGES_IN = 1.0 / 6;

    /** What lies within this share of the edge about its middle is called neither end. */
    private static final double MIDDLE = 0.1;

    private final Ground ground;
    private final Findings findings;
    private final Set<String> names = new HashSet<>();

    Pads(Ground ground, Findings findings) {
        this.ground = ground;
        this.findings = findings;
    }

    /** Returns the pads that a ready-made word stands for. */
    List<Fitting> readyMade(ReadyMade thing, Edge edge, Node node) {
        double side = thing.pad().orElseThrow();
        double length = ground.length(edge);
        boolean hinges = thing.word().equals("hinges");
        double[] places =
                hinges
                        ? new double[] {length * HINGES_IN, length * (1 - HINGES_IN)}
                        : new double[] {length / 2};
        List<Fitting> pads = new ArrayList<>();
        for (double along : places) {
            atEdge(hinges ? "hinge" : "latch", edge, along, new Shape.Point(side, side), node)
                    .ifPresent(pads::add);
        }
        return pads;
    }

    /**
     * Returns a pad whose outer side lies on an edge.
     *
     * @param along its centre, from left or front [m]
     */
    Optional<Fitting> atEdge(String thing, Edge edge, double along, Shape.Point size, Node node) {
        double deep = (edge.alongX() ? size.y() : size.x()) / 2;
        boolean far = edge == Edge.REAR || edge == Edge.RIGHT;
        double across = far ? ground.depth(edge) - deep : deep;
        String name = called(thing, edge, along);
        return edge.alongX()
                ? pad(thing, name, along, across, size, node, edge)
                : pad(thing, name, across, along, size, node, edge);
    }

    /** Returns a pad somewhere on the panel that holds inward and outward. */
    Optional<Fitting> inField(String thing, Shape.Point at, Shape.Point size, Node node) {
        String name = thing;
        for (int i = 2; !names.add(name); i++) {
            name = thing + " " + i;
        }
        return pad(thing, name, at.x(), at.y(), size, node, null);
    }

    private Optional<Fitting> pad(
            String thing,
            String name,
            double x,
            double y,
            Shape.Point size,
            Node node,
            @org.jspecify.annotations.Nullable Edge edge) {
        for (Side side : Side.both(ground, size.x() / 2, size.y() / 2, x, y)) {
            if (side.past() > Ground.ROUNDING) {
                findings.add(node, side.what("pad of the " + thing), fix(side, edge));
                return Optional.empty();
            }
        }
        Optional<String> missed = ground.missed(new Patch.Rectangle(size.x(), size.y()), x, y);
        if (missed.isPresent()) {
            findings.add(
                    node,
                    "The pad of the " + thing + " would lie partly " + missed.get() + ".",
                    "Move it, or give it a smaller   pad:");
            return Optional.empty();
        }
        Set<Direction> held =
                thing.equals("hinge") ? EnumSet.allOf(Direction.class) : EnumSet.of(Direction.Z);
        return Optional.of(
                new Fitting.Pad(
                        name,
                        x,
                        y,
                        size.x(),
                        size.y(),
                        held,
                        Double.POSITIVE_INFINITY,
                        Height.INSIDE));
    }

    private static String fix(Side side, @org.jspecify.annotations.Nullable Edge edge) {
        if (side.isTooLarge()) {
            return "The pad is larger than the panel: write   pad: 40 mm";
        }
        return edge == null
                ? side.fix()
                : "Write   at: " + Side.mm(side.half()) + " from " + side.edge() + "   or more";
    }

    /**
     * {@code left hinge}, or {@code hinge} in the middle; with its edge where that is not enough.
     */
    private String called(String thing, Edge edge, double along) {
        double share = along / ground.length(edge) - 0.5;
        String end = Math.abs(share) < MIDDLE ? "" : (share < 0 ? edge.start() : edge.end()) + " ";
        String name = end + thing;
        if (names.add(name)) {
            return name;
        }
        String longer = name + " of the " + edge.words();
        String whole = longer;
        for (int i = 2; !names.add(whole); i++) {
            whole = longer + " " + i;
        }
        return whole;
    }
}
