package org.coachskin.sparse;

import java.util.Arrays;

/**
 * Groups of unknowns and which groups meet in an element. Groups are numbered by their first
 * unknown.
 */
final class Graph {

    /** Number of groups. */
    final int size;

    /** Group of each unknown. */
    final int[] groupOf;

    /** Start of each group's unknowns in {@link #member}; one more than groups. */
    final int[] memberStart;

    /** Unknowns by group, ascending within each. */
    final int[] member;

    /** Start of each group's neighbours in {@link #near}; one more than groups. */
    final int[] start;

    /** Neighbours of each group, itself left out, ascending. */
    final int[] near;

    private Graph(int unknowns, int[][] elements) {
        int[] group = new int[unknowns];
        size = numbered(group, split(group, elements));
        groupOf = group;
        memberStart = new int[size + 1];
        for (int g : groupOf) {
            memberStart[g + 1]++;
        }
        for (int g = 0; g < size; g++) {
            memberStart[g + 1] += memberStart[g];
        }
        member = new int[unknowns];
        int[] next = memberStart.clone();
        for (int u = 0; u < unknowns; u++) {
            member[next[groupOf[u]]++] = u;
        }
        start = new int[size + 1];
        near = neighbours(elements);
    }

    static Graph of(int unknowns, int[][] elements) {
        return new Graph(unknowns, elements);
    }

    /** Number of unknowns in a group. */
    int weight(int group) {
        return memberStart[group + 1] - memberStart[group];
    }

    /** Returns the unknowns of a group and of its neighbours, ascending. */
    int[] unknownsNear(int group) {
        int count = weight(group);
        for (int at = start[group]; at < start[group + 1]; at++) {
            count += weight(near[at]);
        }
        int[] found = new int[count];
        int n = weight(group);
        System.arraycopy(member, memberStart[group], found, 0, n);
        for (int at = start[group]; at < start[group + 1]; at++) {
            int other = near[at];
            System.arraycopy(member, memberStart[other], found, n, weight(other));
            n += weight(other);
        }
        Arrays.sort(found);
        return found;
    }

    /**
     * Splits one group of all unknowns by every element in turn; unknowns of no element stay alone.
     *
     * @return how many labels were used
     */
    private static int split(int[] group, int[][] elements) {
        int labels = 1;
        int[] seenBy = new int[16];
        int[] moved = new int[16];
        Arrays.fill(seenBy, -1);
        for (int e = 0; e < elements.length; e++) {
            for (int u : elements[e]) {
                int g = group[u];
                if (seenBy[g] != e) {
                    seenBy[g] = e;
                    if (labels == seenBy.length) {
                        int old = labels;
                        seenBy = Arrays.copyOf(seenBy, 2 * old);
                        moved = Arrays.copyOf(moved, 2 * old);
                        Arrays.fill(seenBy, old, 2 * old, -1);
                    }
                    moved[g] = labels++;
                }
                group[u] = moved[g];
            }
        }
        for (int u = 0; u < group.length; u++) {
            if (group[u] == 0) {
                group[u] = labels++;
            }
        }
        return labels;
    }

    private static int numbered(int[] group, int labels) {
        int[] number = new int[labels];
        Arrays.fill(number, -1);
        int count = 0;
        for (int u = 0; u < group.length; u++) {
            if (number[group[u]] < 0) {
                number[group[u]] = count++;
            }
            group[u] = number[group[u]];
        }
        return count;
    }

    private int[] neighbours(int[][] elements) {
        int[] count = new int[size + 1];
        int[][] groups = new int[elements.length][];
        int[] mark = new int[size];
        Arrays.fill(mark, -1);
        for (int e = 0; e < elements.length; e++) {
            groups[e] = groupsOf(elements[e], e, mark);
            for (int g : groups[e]) {
                count[g + 1]++;
            }
        }
        for (int g = 0; g < size; g++) {
            count[g + 1] += count[g];
        }
        int[] of = new int[count[size]];
        int[] next = count.clone();
        for (int e = 0; e < elements.length; e++) {
            for (int g : groups[e]) {
                of[next[g]++] = e;
            }
        }
        Arrays.fill(mark, -1);
        int[] found = new int[Math.max(16, 4 * size)];
        int n = 0;
        for (int g = 0; g < size; g++) {
            mark[g] = g;
            for (int at = count[g]; at < count[g + 1]; at++) {
                for (int other : groups[of[at]]) {
                    if (mark[other] != g) {
                        mark[other] = g;
                        if (n == found.length) {
                            found = Arrays.copyOf(found, 2 * n);
                        }
                        found[n++] = other;
                    }
                }
            }
            Arrays.sort(found, start[g], n);
            start[g + 1] = n;
        }
        return Arrays.copyOf(found, n);
    }

    private int[] groupsOf(int[] element, int e, int[] mark) {
        int[] found = new int[element.length];
        int n = 0;
        for (int u : element) {
            int g = groupOf[u];
            if (mark[g] != e) {
                mark[g] = e;
                found[n++] = g;
            }
        }
        return Arrays.copyOf(found, n);
    }
}
