package org.coachskin.sparse;

import java.util.Arrays;

/**
 * The order in which unknowns are eliminated. Immutable; the same pattern and coordinates give the
 * same order on every machine.
 */
public final class Order {

    /** Unknown at each place. */
    private final int[] unknown;

    private Order(int[] unknown) {
        this.unknown = unknown;
    }

    /** Eliminates unknowns as they are numbered. */
    public static Order natural(int size) {
        int[] unknown = new int[size];
        for (int i = 0; i < size; i++) {
            unknown[i] = i;
        }
        return new Order(unknown);
    }

    /**
     * Takes an order from elsewhere.
     *
     * @param unknown the unknown eliminated first, the one after it, and so on; copied
     * @throws IllegalArgumentException when it is no permutation
     */
    public static Order of(int... unknown) {
        boolean[] seen = new boolean[unknown.length];
        for (int u : unknown) {
            if (u < 0 || u >= unknown.length || seen[u]) {
                throw new IllegalArgumentException(
                        "an order names each of 0 to " + (unknown.length - 1) + " once; see " + u);
            }
            seen[u] = true;
        }
        return new Order(unknown.clone());
    }

    /**
     * Nested dissection from the graph alone: halves it by small separators (George, SIAM J. Numer.
     * Anal. 10, 1973, pp. 345-363) along levels of distance, improved by moving single groups
     * (Fiduccia and Mattheyses, 19th Design Automation Conference, 1982, pp. 175-181; both from
     * memory); small pieces by minimum degree.
     */
    public static Order dissection(Pattern pattern) {
        return new Order(new Dissection(pattern.graph(), null).unknowns());
    }

    /**
     * Nested dissection that also tries cuts across x, y and z; as a rule a little better and
     * faster than without coordinates.
     *
     * @param place x, y, z of each unknown's node, 3 n values, in any unit of length; copied
     * @throws IllegalArgumentException when {@code place} is not of that length or not finite
     */
    public static Order dissection(Pattern pattern, double[] place) {
        if (place.length != 3 * pattern.size()) {
            throw new IllegalArgumentException(
                    "coordinates are "
                            + place.length
                            + " values; "
                            + pattern.size()
                            + " unknowns want three each");
        }
        for (double x : place) {
            if (!Double.isFinite(x)) {
                throw new IllegalArgumentException("a coordinate is " + x);
            }
        }
        return new Order(new Dissection(pattern.graph(), place).unknowns());
    }

    /** Returns the number of unknowns. */
    public int size() {
        return unknown.length;
    }

    /** Returns the unknown that is eliminated at a place, counted from 0. */
    public int unknownAt(int place) {
        return unknown[place];
    }

    /** Returns a copy of the unknowns in order. */
    public int[] toArray() {
        return unknown.clone();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Order that && Arrays.equals(unknown, that.unknown);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(unknown);
    }
}
