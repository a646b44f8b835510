package org.coachskin.panel;

/** Which height of the stack at that place something holds. */
public enum Height {
    /** The outside surface. */
    OUTSIDE,
    /** Mid-height of the stack. */
    MIDDLE,
    /** The inside surface. */
    INSIDE
}
