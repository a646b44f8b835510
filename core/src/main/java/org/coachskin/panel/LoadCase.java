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
 * @param softest whether its press stands where the panel yields most: a check looks for that place
 *     and takes the one given only as where to begin
 */
public record LoadCase(
        String name,
        List<Load> loads,
        List<Load> standing,
        Kind kind,
        boolean reverses,
        boolean stays,
        boolean softest) {

    /** Copies the lists and checks that there is a load, and a press to look for a place for. */
    public LoadCase {
        loads = List.copyOf(loads);
        standing = List.copyOf(standing);
        if (loads.isEmpty()) {
            throw new IllegalArgumentException("load case " + name + " has no load");
        }
        if (softest && !(loads.size() == 1 && loads.get(0) instanceof Load.Press)) {
            throw new IllegalArgumentException(
                    "a place is looked for one press alone: not for load case " + name);
        }
    }

    /** Creates a load case whose presses stand where they are. */
    public LoadCase(
            String name,
            List<Load> loads,
            List<Load> standing,
            Kind kind,
            boolean reverses,
            boolean stays) {
        this(name, loads, standing, kind, reverses, stays, false);
    }

    /** Returns this load case with its press where the panel yields most, or no longer so. */
    public LoadCase withSoftest(boolean other) {
        return new LoadCase(name, loads, standing, kind, reverses, stays, other);
    }

    /** Returns whether something presses along a line. */
    public boolean isAlongLine() {
        return loads.stream().anyMatch(Load.Line.class::isInstance);
    }

    /** Returns this load case with other loads. */
    public LoadCase withLoads(List<Load> other) {
        return new LoadCase(name, other, standing, kind, reverses, stays, softest);
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
