package org.coachskin.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.material.Inserts;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Opening;
import org.coachskin.panel.Panel;
import org.coachskin.panel.RimPlace;
import org.coachskin.panel.Shape;
import org.coachskin.panel.TurnedEdge;

/**
 * Where foam comes to an edge with nothing over it: no lip, no solid insert, no skin turned round
 * it.
 */
final class RawEdges {

    /** How far inside an edge the stack is looked at [m]. */
    private static final double INSIDE = 5e-4;

    private RawEdges() {}

    /** Returns what to beware of at edges and openings where foam shows. */
    static Optional<String> caution(Panel panel) {
        List<String> where = new ArrayList<>();
        double x = panel.outline() instanceof Shape.Polygon ? 0 : panel.width() / 2;
        double y = panel.outline() instanceof Shape.Polygon ? 0 : panel.length() / 2;
        if (isRaw(panel, panel.outline(), x, y, -INSIDE, at -> !isTurned(panel, at))) {
            where.add("along its edges");
        }
        for (Opening opening : panel.openings()) {
            boolean turned =
                    panel.turned().stream()
                            .anyMatch(
                                    t ->
                                            t instanceof TurnedEdge.Round round
                                                    && round.opening().equals(opening.name()));
            if (isRaw(panel, opening.shape(), opening.x(), opening.y(), INSIDE, at -> !turned)) {
                where.add("round the " + opening.name());
            }
        }
        if (where.isEmpty()) {
            return Optional.empty();
        }
        String last = where.get(where.size() - 1);
        String all =
                where.size() == 1
                        ? last
                        : String.join(", ", where.subList(0, where.size() - 1)) + " and " + last;
        return Optional.of(
                "Raw foam shows "
                        + all
                        + ": water gets in there and the skins peel. Turn a skin round it, or dig the "
                        + "foam back about 10 mm and fill the groove with thickened resin. "
                        + "[common practice, no source]");
    }

    /** Returns whether a skin is turned round the panel's edge at a place on its outline. */
    private static boolean isTurned(Panel panel, RimPlace at) {
        boolean between = Edge.isBetween(at.outX(), at.outY());
        return isTurned(panel, Edge.facing(at.outX(), at.outY()))
                || (between && isTurned(panel, at.outX() < 0 ? Edge.LEFT : Edge.RIGHT));
    }

    private static boolean isTurned(Panel panel, Edge edge) {
        return panel.turned().stream()
                .anyMatch(t -> t instanceof TurnedEdge.Along along && along.edge() == edge);
    }

    /**
     * Returns whether foam shows on a rim.
     *
     * @param inward way from the rim into the panel, along what points out of the shape [m]
     * @param open which places of the rim have no skin turned round them
     */
    private static boolean isRaw(
            Panel panel, Shape shape, double x, double y, double inward, Predicate<RimPlace> open) {
        return RimPlace.round(shape).stream()
                .filter(open)
                .anyMatch(
                        at -> {
                            double px = x + at.x() + inward * at.outX();
                            double py = y + at.y() + inward * at.outY();
                            return panel.hasMaterialAt(px, py) && hasFoam(panel.laminateAt(px, py));
                        });
    }

    private static boolean hasFoam(Laminate laminate) {
        return laminate.layers().stream()
                .anyMatch(
                        layer ->
                                layer instanceof Layer.Core core
                                        && Inserts.all().stream()
                                                .noneMatch(
                                                        solid ->
                                                                solid.name()
                                                                        .equals(
                                                                                core.foam()
                                                                                        .name())));
    }
}
