package org.coachskin.failure;

/** One of the two skins. */
public enum Face {
    /** The skin on the outside. */
    OUTSIDE,
    /** The skin on the inside. */
    INSIDE
}
