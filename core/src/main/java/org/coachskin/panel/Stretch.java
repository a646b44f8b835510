package org.coachskin.panel;

import java.util.List;
import org.coachskin.Require;

/**
 * Part of an edge, or all of it.
 *
 * @param edge which edge
 * @param from where it begins, from the left (front and rear edge) or from the front [m]
 * @param to where it ends; infinite for the end of the edge [m]
 */
public record Stretch(Edge edge, double from, double to) {

    /** Checks that it has a length. */
    public Stretch {
        Require.finite("start of a stretch of edge", from, "m");
        if (!(to > from)) {
            throw new IllegalArgumentException(
                    "a stretch of edge ends before it begins: from " + from + " m to " + to + " m");
        }
    }

    /** Returns the whole of {@code edge}. */
    public static Stretch whole(Edge edge) {
        return new Stretch(edge, 0, Double.POSITIVE_INFINITY);
    }

    /** Returns all four edges. */
    public static List<Stretch> rim() {
        return List.of(whole(Edge.FRONT), whole(Edge.REAR), whole(Edge.LEFT), whole(Edge.RIGHT));
    }

    /** Returns whether a place on the edge, measured like {@link #from}, belongs to it. */
    public boolean holds(double along) {
        double slack = 1e-9;
        return along >= from - slack && along <= to + slack;
    }
}
