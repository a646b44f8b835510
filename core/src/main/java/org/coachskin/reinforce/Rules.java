package org.coachskin.reinforce;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * What a maker wants tried.
 *
 * @param means what may be used
 * @param widest no band is wider [m]; may be infinite
 * @param highest nothing stands up further on the inside [m]; may be infinite
 */
public record Rules(Set<Means> means, double widest, double highest) {

    /** Everything, as wide and high as practice and room allow. */
    public static final Rules ANY =
            new Rules(
                    EnumSet.allOf(Means.class), Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);

    /** Copies the set and checks the lengths. */
    public Rules {
        means = Set.copyOf(means);
        if (!(widest > 0) || !(highest > 0)) {
            throw new IllegalArgumentException("a width and a height are above zero");
        }
    }

    /** Something that may be used. */
    public enum Means {
        /** More plies on the inside. */
        PLIES("plies"),
        /** More plies on the outside besides, which shows. */
        OUTSIDE("outside"),
        /** A strip of the panel's foam on the inside. */
        STRIP("strip"),
        /** Denser foam in place of the panel's. */
        FOAM("foam"),
        /** A solid in place of the foam, under fittings. */
        INSERT("insert"),
        /** The inside skin turned round the raw edge. */
        TURNED("turned"),
        /** Rounder corners of the opening. */
        CORNERS("corners");

        private final String words;

        Means(String words) {
            this.words = words;
        }

        /** Returns what it is called. */
        public String words() {
            return words;
        }

        /** Returns what all of them are called. */
        public static List<String> names() {
            Set<String> names = new TreeSet<>();
            for (Means means : values()) {
                names.add(means.words);
            }
            return List.copyOf(names);
        }
    }

    boolean allows(Means one) {
        return means.contains(one);
    }
}
