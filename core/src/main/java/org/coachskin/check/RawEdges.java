package org.coachskin.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.material.Inserts;
import org.coachskin.panel.Opening;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Shape;

/** Where foam comes to an edge with nothing over it: no lip, no solid insert. */
final class RawEdges {

    /** How far inside an edge the stack is looked at [m]. */
    private static final double INSIDE = 5e-4;

    private RawEdges() {}

    /** Returns what to beware of at edges and openings where foam shows. */
    static Optional<String> caution(Panel panel) {
        List<String> where = new ArrayList<>();
        double x = panel.outline() instanceof Shape.Polygon ? 0 : panel.width() / 2;
        double y = panel.outline() instanceof Shape.Polygon ? 0 : panel.length() / 2;
        if (isRaw(panel, panel.outline(), x, y, -INSIDE)) {
            where.add("along its edges");
        }
        for (Opening opening : panel.openings()) {
            if (isRaw(panel, opening.shape(), opening.x(), opening.y(), INSIDE)) {
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

    private static boolean isRaw(Panel panel, Shape shape, double x, double y, double inward) {
        return OpeningRims.round(shape).stream()
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
