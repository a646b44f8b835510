package org.coachskin.panel;

import java.util.List;

/**
 * Loads that act together.
 *
 * @param name how it is called, for example {@code palm}
 * @param loads at least one; multiplied together by a reserve
 * @param standing loads that stand all the time and are not multiplied, heat for example; may be
 *     empty
 * @param kind what sort of load it is, which decides limits and factors
 * @param reverses whether the load can also act the other way round
 * @param stays whether the load stays for weeks
 */
public record LoadCase(
        String name,
        List<Load> loads,
        List<Load> standing,
        Kind kind,
        boolean reverses,
        boolean stays) {

    /** Copies the lists and checks that there is a load. */
    public LoadCase {
        loads = List.copyOf(loads);
        standing = List.copyOf(standing);
        if (loads.isEmpty()) {
            throw new IllegalArgumentException("load case " + name + " has no load");
        }
    }

    /** Returns a load case of one load that does not reverse or stay. */
    public static LoadCase of(String name, Kind kind, Load load) {
        return new LoadCase(name, List.of(load), List.of(), kind, false, false);
    }

    /** What sort of load it is. */
    public enum Kind {
        /** A palm that judges the felt stiffness. */
        FELT,
        /** A hand, a thumb, an elbow, a knee: judged for strength and marks. */
        TOUCH,
        /** Somebody stands, kneels or sits on the panel: a higher factor for core shear. */
        PERSON,
        /**
         * Spread over the panel: wind, snow, luggage, own weight; judged against a share of the
         * span.
         */
        SPREAD
    }
}
