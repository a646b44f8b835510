package org.coachskin.sparse;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Which unknowns of a symmetric matrix meet: the elements that will contribute to it, each a list
 * of unknowns that all couple with one another. Immutable; may be shared between threads.
 *
 * <p>Only the lower triangle is stored, by columns, rows ascending, every diagonal entry included.
 * Unknowns that occur in exactly the same elements (all of one node, all inside one edge of a
 * high-order element) form a <i>group</i>: they have the same neighbours, so orders and symbolic
 * work treat them as one.
 */
public final class Pattern {

    private final int size;
    private final int[][] elements;
    private final Graph graph;
    private final int[] start;
    private final int[] row;
    private final int[][] target;

    private Pattern(int size, int[][] elements) {
        this.size = size;
        this.elements = elements;
        graph = Graph.of(size, elements);
        start = new int[size + 1];
        row = lowerRows();
        target = new int[elements.length][];
        aim();
    }

    /** Collects elements. */
    public static final class Builder {

        private final int size;
        private final List<int[]> elements = new ArrayList<>();
        private final int[] seen;

        private Builder(int size) {
            this.size = size;
            seen = new int[size];
        }

        /**
         * Adds the next element; elements count from 0 in the order of these calls.
         *
         * @param unknowns which unknowns it couples, each from 0 to size - 1 and named once; copied
         * @throws IllegalArgumentException when one is out of range or named twice
         */
        public Builder element(int... unknowns) {
            int mark = elements.size() + 1;
            for (int u : unknowns) {
                if (u < 0 || u >= size) {
                    throw new IllegalArgumentException(
                            "unknown " + u + " is not one of 0 to " + (size - 1));
                }
                if (seen[u] == mark) {
                    throw new IllegalArgumentException(
                            "element " + (mark - 1) + " names unknown " + u + " twice");
                }
                seen[u] = mark;
            }
            elements.add(unknowns.clone());
            return this;
        }

        /** Returns whether a pattern has this size and these elements, in this order. */
        public boolean makes(Pattern pattern) {
            if (pattern.size != size || pattern.elements.length != elements.size()) {
                return false;
            }
            for (int e = 0; e < pattern.elements.length; e++) {
                if (!Arrays.equals(pattern.elements[e], elements.get(e))) {
                    return false;
                }
            }
            return true;
        }

        /**
         * Returns the pattern.
         *
         * @throws IllegalArgumentException when it has more than 2^31 - 1 entries
         */
        public Pattern build() {
            return new Pattern(size, elements.toArray(int[][]::new));
        }
    }

    /**
     * Starts a pattern.
     *
     * @param size number of unknowns, at least 1
     */
    public static Builder of(int size) {
        if (size < 1) {
            throw new IllegalArgumentException("size is " + size + "; it must be at least 1");
        }
        return new Builder(size);
    }

    /** Returns the number of unknowns. */
    public int size() {
        return size;
    }

    /** Returns the number of elements. */
    public int elements() {
        return elements.length;
    }

    /** Returns the number of unknowns of an element. */
    public int sizeOf(int element) {
        return elements[element].length;
    }

    /** Returns the number of stored entries: lower triangle and diagonal. */
    public int entries() {
        return row.length;
    }

    /** Returns the number of groups of unknowns with the same elements. */
    public int groups() {
        return graph.size;
    }

    Graph graph() {
        return graph;
    }

    /** Start of each column; its diagonal entry stands first. Not to be changed. */
    int[] starts() {
        return start;
    }

    /** Row of each entry. Not to be changed. */
    int[] rows() {
        return row;
    }

    /** Where the entries of an element's lower triangle, by its own rows, are stored. */
    int[] targets(int element) {
        return target[element];
    }

    /** Returns where entry (i, j) is stored, or -1. */
    int find(int i, int j) {
        int column = Math.min(i, j);
        int at = Arrays.binarySearch(row, start[column], start[column + 1], Math.max(i, j));
        return at < 0 ? -1 : at;
    }

    private int[] lowerRows() {
        int[][] full = new int[graph.size][];
        for (int g = 0; g < graph.size; g++) {
            full[g] = graph.unknownsNear(g);
        }
        long total = 0;
        for (int j = 0; j < size; j++) {
            int[] near = full[graph.groupOf[j]];
            total += near.length - Arrays.binarySearch(near, j);
            if (total > Integer.MAX_VALUE - 8) {
                throw new IllegalArgumentException("the pattern has more than 2^31 - 1 entries");
            }
            start[j + 1] = (int) total;
        }
        int[] rows = new int[(int) total];
        for (int j = 0; j < size; j++) {
            int[] near = full[graph.groupOf[j]];
            int count = start[j + 1] - start[j];
            System.arraycopy(near, near.length - count, rows, start[j], count);
        }
        return rows;
    }

    /** Finds the entries of every element once, so that values are only added afterwards. */
    private void aim() {
        int[] place = new int[size];
        int[][] parts = new int[size][];
        int[] count = new int[size];
        for (int[] element : elements) {
            for (int u : element) {
                count[u]++;
            }
        }
        for (int u = 0; u < size; u++) {
            parts[u] = new int[2 * count[u]];
        }
        for (int e = 0; e < elements.length; e++) {
            int k = elements[e].length;
            target[e] = new int[k * (k + 1) / 2];
            for (int c = 0; c < k; c++) {
                int u = elements[e][c];
                count[u]--;
                parts[u][2 * count[u]] = e;
                parts[u][2 * count[u] + 1] = c;
            }
        }
        for (int j = 0; j < size; j++) {
            for (int at = start[j]; at < start[j + 1]; at++) {
                place[row[at]] = at;
            }
            for (int p = 0; p < parts[j].length; p += 2) {
                aim(parts[j][p], parts[j][p + 1], j, place);
            }
        }
    }

    private void aim(int e, int c, int j, int[] place) {
        int[] element = elements[e];
        for (int r = 0; r < element.length; r++) {
            if (element[r] >= j) {
                int low = Math.min(r, c);
                int high = Math.max(r, c);
                target[e][high * (high + 1) / 2 + low] = place[element[r]];
            }
        }
    }
}
