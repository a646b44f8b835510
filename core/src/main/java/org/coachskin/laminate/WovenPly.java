package org.coachskin.laminate;

/** From cloth, resin and way of working to a cured ply, and from a schedule to a stack. */
public final class WovenPly {

    private WovenPly() {}

    /** Returns the stack of {@code schedule}, inside to outside. */
    static Laminate laminate(Schedule schedule) {
        return new Laminate(java.util.List.of());
    }
}
