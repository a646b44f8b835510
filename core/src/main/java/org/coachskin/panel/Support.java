package org.coachskin.panel;

/** What holds a panel. */
public sealed interface Support {

    /**
     * The whole rim is carried: along every edge the deflection, the displacement along the edge
     * and the rotations along the edge (of skins and foam) are zero; the displacement and the
     * rotations at right angles to the edge are free.
     */
    record WholeRim() implements Support {}
}
