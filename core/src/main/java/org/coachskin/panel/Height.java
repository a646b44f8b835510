package org.coachskin.panel;

import java.util.List;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;

/** Which height of the stack at that place something holds. */
public enum Height {
    /** The outside surface. */
    OUTSIDE,
    /** Mid-height of the stack. */
    MIDDLE,
    /** The inside surface. */
    INSIDE;

    /**
     * Returns the layers of a stack's skin at this surface, inside to outside; none at mid-height
     * and where there is no foam.
     */
    public List<Layer> skin(Laminate stack) {
        return switch (this) {
            case OUTSIDE -> stack.outsideSkin();
            case MIDDLE -> List.of();
            case INSIDE -> stack.insideSkin();
        };
    }
}
