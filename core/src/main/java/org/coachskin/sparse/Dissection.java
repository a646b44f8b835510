package org.coachskin.sparse;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Nested dissection of a graph of groups. */
final class Dissection {

    /** Pieces of at most so many groups are ordered by minimum degree. */
    private static final int LEAF = 60;

    private final Graph graph;
    private final double @Nullable [][] place;
    private final Separator separator;
    private final LeafOrder leaf;

    /** Which piece each group belongs to at the moment; ordered groups keep the last one. */
    private final int[] piece;

    private final int[] queue;
    private final int[] level;
    private final int[] order;
    private int pieces;

    Dissection(Graph graph, double @Nullable [] coordinates) {
        this.graph = graph;
        place = coordinates == null ? null : means(graph, coordinates);
        piece = new int[graph.size];
        queue = new int[graph.size];
        level = new int[graph.size];
        order = new int[graph.size];
        separator = new Separator(graph, piece);
        leaf = new LeafOrder(graph, piece);
        int[] all = new int[graph.size];
        for (int g = 0; g < all.length; g++) {
            all[g] = g;
        }
        dissect(all, 0);
    }

    /** Returns the unknowns in order, those of a group together. */
    int[] unknowns() {
        int[] unknowns = new int[graph.groupOf.length];
        int n = 0;
        for (int g : order) {
            int k = graph.weight(g);
            System.arraycopy(graph.member, graph.memberStart[g], unknowns, n, k);
            n += k;
        }
        return unknowns;
    }

    private static double[][] means(Graph graph, double[] coordinates) {
        double[][] mean = new double[3][graph.size];
        for (int u = 0; u < graph.groupOf.length; u++) {
            int g = graph.groupOf[u];
            for (int axis = 0; axis < 3; axis++) {
                mean[axis][g] += coordinates[3 * u + axis] / graph.weight(g);
            }
        }
        return mean;
    }

    /** Orders {@code groups}, all of one piece, from place {@code first} on. */
    private void dissect(int[] groups, int first) {
        if (groups.length <= LEAF) {
            leaf.order(groups, order, first);
            return;
        }
        if (levels(groups[0], groups) < groups.length) {
            int at = first;
            for (int[] connected : components(groups)) {
                mark(connected);
                dissect(connected, at);
                at += connected.length;
            }
            return;
        }
        for (int[] start : starts(groups)) {
            separator.attempt(start);
        }
        int[][] parts = separator.take(groups);
        int[] low = parts[0];
        int[] high = parts[1];
        int[] between = parts[2];
        if (low.length == 0 || high.length == 0) {
            // Nothing separates it: all but full.
            System.arraycopy(groups, 0, order, first, groups.length);
            return;
        }
        mark(low);
        mark(high);
        mark(between);
        dissect(low, first);
        dissect(high, first + low.length);
        System.arraycopy(between, 0, order, first + low.length + high.length, between.length);
    }

    private void mark(int[] groups) {
        pieces++;
        for (int g : groups) {
            piece[g] = pieces;
        }
    }

    /** Returns the groups in orders whose halves may be good ones. */
    private List<int[]> starts(int[] groups) {
        List<int[]> starts = new ArrayList<>();
        if (place == null) {
            byDistance(groups, starts);
            return starts;
        }
        double largest = 0;
        for (double[] axis : place) {
            largest = Math.max(largest, extent(groups, axis));
        }
        for (double[] axis : place) {
            if (extent(groups, axis) > 0.4 * largest) {
                starts.add(along(groups, axis));
            }
        }
        levels(farEnd(groups), groups);
        starts.add(Arrays.copyOf(queue, groups.length));
        return starts;
    }

    /**
     * Takes four groups far from one another, as the corners of a sheet, for the want of
     * coordinates: cuts fall midway between two opposite corners, and between two opposite sides.
     */
    private void byDistance(int[] groups, List<int[]> starts) {
        double[][] to = new double[4][];
        to[0] = distances(farEnd(groups), groups);
        starts.add(Arrays.copyOf(queue, groups.length));
        to[1] = distances(queue[groups.length - 1], groups);
        to[2] = distances(farthest(groups, to[0], to[1]), groups);
        to[3] = distances(queue[groups.length - 1], groups);
        int[][] signs = {{1, -1, 0, 0}, {0, 0, 1, -1}, {1, -1, 1, -1}, {1, -1, -1, 1}};
        for (int[] sign : signs) {
            double[] axis = new double[groups.length];
            for (int i = 0; i < axis.length; i++) {
                for (int q = 0; q < 4; q++) {
                    axis[i] += sign[q] * to[q][i];
                }
            }
            starts.add(sorted(groups, axis));
        }
    }

    /** Returns a group from which none lies farther than from the one before. */
    private int farEnd(int[] groups) {
        int end = groups[0];
        int depth = -1;
        levels(end, groups);
        int last = queue[groups.length - 1];
        while (level[last] > depth) {
            depth = level[last];
            end = last;
            levels(end, groups);
            last = queue[groups.length - 1];
        }
        return end;
    }

    private double[] distances(int from, int[] groups) {
        levels(from, groups);
        double[] found = new double[groups.length];
        for (int i = 0; i < found.length; i++) {
            found[i] = level[groups[i]];
        }
        return found;
    }

    private static int farthest(int[] groups, double[] a, double[] b) {
        int best = 0;
        for (int i = 1; i < groups.length; i++) {
            if (Math.min(a[i], b[i]) > Math.min(a[best], b[best])) {
                best = i;
            }
        }
        return groups[best];
    }

    private static double extent(int[] groups, double[] axis) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int g : groups) {
            low = Math.min(low, axis[g]);
            high = Math.max(high, axis[g]);
        }
        return high - low;
    }

    private static int[] along(int[] groups, double[] axis) {
        double[] own = new double[groups.length];
        for (int i = 0; i < own.length; i++) {
            own[i] = axis[groups[i]];
        }
        return sorted(groups, own);
    }

    /** Sorts by {@code axis}, one value a group; equal ones keep their order. */
    private static int[] sorted(int[] groups, double[] axis) {
        Integer[] at = new Integer[groups.length];
        for (int i = 0; i < at.length; i++) {
            at[i] = i;
        }
        Arrays.sort(at, Comparator.comparingDouble(i -> axis[i]));
        int[] found = new int[groups.length];
        for (int i = 0; i < found.length; i++) {
            found[i] = groups[at[i]];
        }
        return found;
    }

    private List<int[]> components(int[] groups) {
        List<int[]> found = new ArrayList<>();
        reset(groups);
        int tail = 0;
        for (int g : groups) {
            if (level[g] < 0) {
                int head = tail;
                tail = spread(g, tail);
                int[] connected = Arrays.copyOfRange(queue, head, tail);
                Arrays.sort(connected);
                found.add(connected);
            }
        }
        return found;
    }

    /**
     * Fills queue and levels by distance from a group inside its piece; returns how many it met.
     */
    private int levels(int from, int[] groups) {
        reset(groups);
        return spread(from, 0);
    }

    private void reset(int[] groups) {
        for (int g : groups) {
            level[g] = -1;
        }
    }

    private int spread(int from, int first) {
        int own = piece[from];
        int tail = first;
        level[from] = 0;
        queue[tail++] = from;
        for (int head = first; head < tail; head++) {
            int g = queue[head];
            for (int at = graph.start[g]; at < graph.start[g + 1]; at++) {
                int other = graph.near[at];
                if (piece[other] == own && level[other] < 0) {
                    level[other] = level[g] + 1;
                    queue[tail++] = other;
                }
            }
        }
        return tail;
    }
}
