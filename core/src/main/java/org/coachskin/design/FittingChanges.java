package org.coachskin.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.coachskin.check.Margin;
import org.coachskin.check.Movement;
import org.coachskin.check.Place;
import org.coachskin.check.Verdict;
import org.coachskin.laminate.Patch;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Support;

/**
 * Single changes of hinges, latches and rubber seals that bear on what does not hold. A pad is a
 * hinge or a latch where its name says so.
 */
final class FittingChanges {

    /** A reserve below this is wanting: hand work or the method could turn it. */
    private static final double WANTING = 1.15;

    /** What lies as near as this to a pad is due to it [m]. */
    private static final double BESIDE = 0.06;

    /** As near as this share of the shorter side to an edge its fittings bear on a place. */
    private static final double NEAR = 0.25;

    /** A press on this share of the panel beside an edge is borne by its latches too. */
    private static final double HALF = 0.6;

    /** A seal that gives at least this share of the movement is worth stiffening. */
    private static final double GIVES = 0.1;

    /** A share of a fitting's force that stands at rest and is worth getting rid of. */
    private static final double AT_REST = 0.25;

    /** Places are whole multiples of this [m]. */
    private static final double STEP = 0.005;

    private final Verdict verdict;
    private final Panel panel;
    private final Map<String, Support> found = new LinkedHashMap<>();

    /** What bears on the margin in hand. */
    private final Map<String, Support> bears = new LinkedHashMap<>();

    private FittingChanges(Verdict verdict) {
        this.verdict = verdict;
        panel = verdict.job().panel();
    }

    /**
     * Returns words and what holds the panel then: changes that bear on everything that does not
     * hold, or where all of it does on everything that could be turned.
     */
    static Map<String, Support> of(Verdict verdict) {
        FittingChanges changes = new FittingChanges(verdict);
        if (verdict.job().panel().support() instanceof Support.WholeRim) {
            return Map.of();
        }
        double wanted = verdict.holds() ? WANTING : 1;
        boolean first = true;
        for (Margin margin : verdict.margins()) {
            if (margin.reserve() < wanted) {
                changes.bears.clear();
                changes.add(margin);
                if (first) {
                    changes.found.putAll(changes.bears);
                } else {
                    changes.found.keySet().retainAll(changes.bears.keySet());
                }
                first = false;
            }
        }
        return changes.found;
    }

    private void add(Margin margin) {
        switch (margin.mode()) {
            case SEAL_GAP, SAG -> {
                for (Edge edge : Edge.values()) {
                    if (isNear(edge, margin.place())) {
                        secondLatch(edge);
                        furtherApart(edge);
                    }
                }
                softer(verdict.atRest().stream().anyMatch(held -> held.widestGap() > 0));
            }
            case FELT_STIFFNESS -> {
                for (Edge edge : Edge.values()) {
                    double depth = edge.alongX() ? panel.length() : panel.width();
                    if (away(edge, margin.place().x(), margin.place().y()) < HALF * depth) {
                        secondLatch(edge);
                    }
                }
                stiffer(verdict.movementUnder(margin.loadCase()));
            }
            default -> {
                for (Fitting.Pad pad : pads("")) {
                    if (isBeside(pad, margin.place())) {
                        secondLatch(edge(pad));
                        plates(pad);
                        softer(isPulledAtRest(pad, margin.loadCase()));
                    }
                }
            }
        }
    }

    private List<Fitting.Pad> pads(String word) {
        return panel.support().pads().stream().filter(pad -> pad.name().contains(word)).toList();
    }

    private List<Fitting.Pad> pads(String word, Edge edge) {
        return pads(word).stream().filter(pad -> edge(pad) == edge).toList();
    }

    /** Returns the nearest edge of a pad. */
    private Edge edge(Fitting.Pad pad) {
        Edge nearest = Edge.FRONT;
        for (Edge edge : Edge.values()) {
            if (away(edge, pad.x(), pad.y()) < away(nearest, pad.x(), pad.y())) {
                nearest = edge;
            }
        }
        return nearest;
    }

    private double away(Edge edge, double x, double y) {
        return Math.abs((edge.alongX() ? y : x) - edge.position(panel));
    }

    private boolean isNear(Edge edge, Place place) {
        return away(edge, place.x(), place.y()) < NEAR * Math.min(panel.width(), panel.length());
    }

    private static boolean isBeside(Fitting.Pad pad, Place place) {
        return Math.abs(place.x() - pad.x()) < pad.sizeX() / 2 + BESIDE
                && Math.abs(place.y() - pad.y()) < pad.sizeY() / 2 + BESIDE;
    }

    /** Two latches at the quarters in place of one in the middle; else its mirror image as well. */
    private void secondLatch(Edge edge) {
        List<Fitting.Pad> latches = pads("latch", edge);
        if (latches.size() != 1) {
            return;
        }
        Fitting.Pad latch = latches.get(0);
        double length = edge.length(panel);
        double in = Math.min(along(latch, edge), length - along(latch, edge));
        boolean middle = in > 0.4 * length;
        double from = inFrom(latch, edge, middle ? length / 4 : in, length / 3);
        if (Double.isNaN(from)) {
            return;
        }
        String where = pads("latch").size() > 1 ? ", " + edge.words() : "";
        put(
                "a second latch: " + millimetres(from) + " from each corner" + where,
                fitting ->
                        fitting.equals(latch)
                                ? List.of(
                                        moved(latch, edge, from, edge.start() + " latch" + where),
                                        moved(
                                                latch,
                                                edge,
                                                length - from,
                                                edge.end() + " latch" + where))
                                : List.of(fitting));
    }

    private void furtherApart(Edge edge) {
        List<Fitting.Pad> hinges = pads("hinge", edge);
        if (hinges.size() != 2) {
            return;
        }
        double length = edge.length(panel);
        double first = Math.min(along(hinges.get(0), edge), along(hinges.get(1), edge));
        double last = Math.max(along(hinges.get(0), edge), along(hinges.get(1), edge));
        double in = Math.min(first, length - last);
        double from = inFrom(hinges.get(0), edge, in / 2, 0.8 * in);
        if (Double.isNaN(from)) {
            return;
        }
        put(
                "hinges further apart: " + millimetres(from) + " from each corner",
                fitting ->
                        fitting instanceof Fitting.Pad pad && hinges.contains(pad)
                                ? List.of(
                                        moved(
                                                pad,
                                                edge,
                                                along(pad, edge) == first ? from : length - from,
                                                pad.name()))
                                : List.of(fitting));
    }

    /** Every latch or every hinge of an edge on a plate twice as wide. */
    private void plates(Fitting.Pad pad) {
        Edge edge = edge(pad);
        String kind = pad.name().contains("hinge") ? "hinge" : "latch";
        List<Fitting.Pad> like = pads(kind, edge);
        if (!like.contains(pad)) {
            return;
        }
        List<Fitting.Pad> wide = like.stream().map(each -> onPlate(each, edge)).toList();
        if (!wide.stream().allMatch(this::isOnPanel)) {
            return;
        }
        String size = millimetres(2 * pad.sizeX()) + " x " + millimetres(2 * pad.sizeY());
        put(
                (like.size() == 1 ? "a stiff plate " : "stiff plates ")
                        + size
                        + " under the "
                        + (like.size() == 1 ? kind : kind.equals("latch") ? "latches" : "hinges"),
                fitting ->
                        fitting instanceof Fitting.Pad each && like.contains(each)
                                ? List.of(wide.get(like.indexOf(each)))
                                : List.of(fitting));
    }

    /** Rubber that is not touched bears nothing: softer is better for what it does at rest. */
    private void softer(boolean atRest) {
        if (atRest) {
            seal("a softer rubber seal: ", 0.5);
        }
    }

    /** Returns whether much of the force of a pad stands before the load comes. */
    private boolean isPulledAtRest(Fitting.Pad pad, String load) {
        for (int i = 0; i < verdict.held().size(); i++) {
            if (verdict.job().loads().get(i).name().equals(load)) {
                double still = verdict.atRest().get(i).outward(pad.name());
                double under = verdict.held().get(i).outward(pad.name());
                return Math.abs(still) > AT_REST * Math.abs(under);
            }
        }
        return false;
    }

    private void stiffer(Movement movement) {
        if (movement.seal() > GIVES * movement.total()) {
            seal("a stiffer rubber seal: ", 2);
        }
    }

    private void seal(String words, double times) {
        for (Fitting fitting : panel.support().fittings()) {
            if (fitting instanceof Fitting.RubberSeal seal) {
                put(
                        words
                                + Math.round(times * seal.force())
                                + " N per m instead of "
                                + Math.round(seal.force()),
                        each ->
                                List.of(
                                        each instanceof Fitting.RubberSeal same
                                                ? new Fitting.RubberSeal(
                                                        same.stretches(),
                                                        times * same.force(),
                                                        same.squeeze(),
                                                        same.solid(),
                                                        same.solidFactor())
                                                : each));
                return;
            }
        }
    }

    private interface Replacing {
        List<Fitting> with(Fitting fitting);
    }

    private void put(String words, Replacing change) {
        List<Fitting> fittings = new ArrayList<>();
        panel.support().fittings().forEach(fitting -> fittings.addAll(change.with(fitting)));
        bears.put(words, new Support.Fittings(fittings));
    }

    /**
     * Returns how far from the ends of an edge two pads can sit: from {@code least} on, in whole
     * steps, as soon as both lie on the panel; NaN where none does up to {@code most}.
     */
    private double inFrom(Fitting.Pad pad, Edge edge, double least, double most) {
        double length = edge.length(panel);
        for (double in = STEP * Math.round(least / STEP); in <= most + 1e-9; in += STEP) {
            double from = STEP * Math.round(in / STEP);
            if (isOnPanel(moved(pad, edge, from, ""))
                    && isOnPanel(moved(pad, edge, length - from, ""))) {
                return from;
            }
        }
        return Double.NaN;
    }

    private boolean isOnPanel(Fitting.Pad pad) {
        return panel.covers(new Patch.Rectangle(pad.sizeX(), pad.sizeY()), pad.x(), pad.y());
    }

    private static double along(Fitting.Pad pad, Edge edge) {
        return edge.alongX() ? pad.x() : pad.y();
    }

    private static Fitting.Pad moved(Fitting.Pad pad, Edge edge, double along, String name) {
        return new Fitting.Pad(
                name,
                edge.alongX() ? along : pad.x(),
                edge.alongX() ? pad.y() : along,
                pad.sizeX(),
                pad.sizeY(),
                pad.held(),
                pad.stiffness(),
                pad.height());
    }

    /** Twice as wide both ways, its side by the edge where it was. */
    private Fitting.Pad onPlate(Fitting.Pad pad, Edge edge) {
        double inward = edge == Edge.FRONT || edge == Edge.LEFT ? 0.5 : -0.5;
        return new Fitting.Pad(
                pad.name(),
                pad.x() + (edge.alongX() ? 0 : inward * pad.sizeX()),
                pad.y() + (edge.alongX() ? inward * pad.sizeY() : 0),
                2 * pad.sizeX(),
                2 * pad.sizeY(),
                pad.held(),
                pad.stiffness(),
                pad.height());
    }

    private static String millimetres(double metres) {
        return Math.round(1000 * metres) + " mm";
    }
}
