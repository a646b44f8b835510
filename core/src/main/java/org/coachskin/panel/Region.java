package org.coachskin.panel;

import java.util.List;
import org.coachskin.Require;

/** A part of a panel that is laid otherwise than the rest. */
public sealed interface Region {

    /** Returns whether this part of {@code panel} holds a place. */
    default boolean holds(Panel panel, double x, double y) {
        return Places.holds(panel, this, x, y);
    }

    /**
     * A band along some of the edges.
     *
     * @param edges which ones
     * @param width of the band [m]
     */
    record AlongEdges(List<Edge> edges, double width) implements Region {
        /** Copies the list and checks the width. */
        public AlongEdges {
            edges = List.copyOf(edges);
            Require.positive("width of a band", width, "m");
        }
    }

    /**
     * A ring around an opening.
     *
     * @param opening its name
     * @param width of the ring [m]
     */
    record Around(String opening, double width) implements Region {
        /** Checks the width. */
        public Around {
            Require.positive("width of the ring around " + opening, width, "m");
        }
    }

    /**
     * A rectangle along the panel's sides.
     *
     * @param x1 left side, from the left edge [m]
     * @param x2 right side [m]
     * @param y1 front side, from the front edge [m]
     * @param y2 rear side [m]
     */
    record Box(double x1, double x2, double y1, double y2) implements Region {
        /** Checks that there is an area. */
        public Box {
            if (!(x2 > x1 && y2 > y1)) {
                throw new IllegalArgumentException(
                        "an empty rectangle: x " + x1 + " to " + x2 + ", y " + y1 + " to " + y2);
            }
        }
    }
}
