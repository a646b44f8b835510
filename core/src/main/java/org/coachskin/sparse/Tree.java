package org.coachskin.sparse;

import java.util.Arrays;

/**
 * Blocks of unknowns that are eliminated together, and the tree of who must wait for whom: runs of
 * one group in the order, joined into larger blocks where that stores few zeros.
 */
final class Tree {

    private final Graph graph;

    /** Unknowns in order. */
    private final int[] unknown;

    /** Start of each run in the order; one more than runs. */
    private int[] runStart = new int[0];

    private int runs;

    /** Runs of each group, ascending. */
    private int[][] runsOf = new int[0][];

    private int[] runGroup = new int[0];

    /** Later runs each run's column reaches, ascending; null once it is no block of its own. */
    private int[][] reach = new int[0][];

    private int[] parent = new int[0];

    /** Block into which each run was joined, itself for one that leads a block. */
    private int[] leader = new int[0];

    private long[] width = new long[0];
    private long[] below = new long[0];
    private long[] zeros = new long[0];

    Tree(Graph graph, int[] unknown) {
        this.graph = graph;
        this.unknown = unknown;
        cut();
        reachOf();
        join();
    }

    int runs() {
        return runs;
    }

    /** Whether a run leads a block. */
    boolean leads(int run) {
        return leader[run] == run;
    }

    /** The block that a run belongs to. */
    int blockOf(int run) {
        int r = run;
        while (leader[r] != r) {
            r = leader[r];
        }
        return r;
    }

    /** The block that waits for a block, or -1. */
    int parentOf(int block) {
        return parent[block] < 0 ? -1 : blockOf(parent[block]);
    }

    int[] reachOf(int block) {
        return reach[block];
    }

    int runStart(int run) {
        return runStart[run];
    }

    long width(int block) {
        return width[block];
    }

    long below(int block) {
        return below[block];
    }

    private void cut() {
        int n = unknown.length;
        runStart = new int[n + 1];
        runGroup = new int[n];
        int[] count = new int[graph.size];
        for (int i = 0; i < n; i++) {
            int g = graph.groupOf[unknown[i]];
            if (i == 0 || g != runGroup[runs - 1]) {
                runStart[runs] = i;
                runGroup[runs++] = g;
                count[g]++;
            }
        }
        runStart[runs] = n;
        runsOf = new int[graph.size][];
        for (int g = 0; g < graph.size; g++) {
            runsOf[g] = new int[count[g]];
        }
        Arrays.fill(count, 0);
        for (int r = 0; r < runs; r++) {
            runsOf[runGroup[r]][count[runGroup[r]]++] = r;
        }
    }

    /** Every run reaches its later neighbours and what its children reach. */
    private void reachOf() {
        reach = new int[runs][];
        parent = new int[runs];
        width = new long[runs];
        below = new long[runs];
        int[] mark = new int[runs];
        Arrays.fill(mark, -1);
        int[] firstChild = new int[runs];
        int[] nextChild = new int[runs];
        Arrays.fill(firstChild, -1);
        int[] found = new int[runs];
        for (int r = 0; r < runs; r++) {
            mark[r] = r;
            int n = later(runGroup[r], r, mark, found, 0);
            for (int at = graph.start[runGroup[r]]; at < graph.start[runGroup[r] + 1]; at++) {
                n = later(graph.near[at], r, mark, found, n);
            }
            for (int c = firstChild[r]; c >= 0; c = nextChild[c]) {
                for (int other : reach[c]) {
                    if (mark[other] != r) {
                        mark[other] = r;
                        found[n++] = other;
                    }
                }
            }
            reach[r] = Arrays.copyOf(found, n);
            Arrays.sort(reach[r]);
            parent[r] = n == 0 ? -1 : reach[r][0];
            width[r] = length(r);
            for (int other : reach[r]) {
                below[r] += length(other);
            }
            if (n > 0) {
                nextChild[r] = firstChild[parent[r]];
                firstChild[parent[r]] = r;
            }
        }
    }

    private int length(int run) {
        return runStart[run + 1] - runStart[run];
    }

    private int later(int group, int r, int[] mark, int[] found, int n) {
        int count = n;
        for (int other : runsOf[group]) {
            if (other > r && mark[other] != r) {
                mark[other] = r;
                found[count++] = other;
            }
        }
        return count;
    }

    /** Joins a block to the one that waits for it where few zeros are stored by that. */
    private void join() {
        leader = new int[runs];
        zeros = new long[runs];
        int[] firstChild = new int[runs];
        int[] nextChild = new int[runs];
        Arrays.fill(firstChild, -1);
        for (int r = 0; r < runs; r++) {
            leader[r] = r;
        }
        for (int r = 0; r < runs; r++) {
            boolean joined = true;
            while (joined) {
                joined = joinBest(r, firstChild, nextChild);
            }
            if (parent[r] >= 0) {
                nextChild[r] = firstChild[parent[r]];
                firstChild[parent[r]] = r;
            }
        }
    }

    private boolean joinBest(int r, int[] firstChild, int[] nextChild) {
        int best = -1;
        int beforeBest = -1;
        int before = -1;
        for (int c = firstChild[r]; c >= 0; before = c, c = nextChild[c]) {
            if (best < 0 || below[c] > below[best] || (below[c] == below[best] && c > best)) {
                best = c;
                beforeBest = before;
            }
        }
        if (best < 0) {
            return false;
        }
        long more = width[best] * (width[r] + below[r] - below[best]);
        long all = width[best] + width[r];
        long stored = all * (all + 1) / 2 + all * below[r];
        long empty = zeros[best] + zeros[r] + more;
        if (more > 0 && !few(all, empty / (double) stored)) {
            return false;
        }
        width[r] = all;
        zeros[r] = empty;
        leader[best] = r;
        if (beforeBest < 0) {
            firstChild[r] = nextChild[best];
        } else {
            nextChild[beforeBest] = nextChild[best];
        }
        int c = firstChild[best];
        while (c >= 0) {
            int next = nextChild[c];
            nextChild[c] = firstChild[r];
            firstChild[r] = c;
            c = next;
        }
        return true;
    }

    /** Shares of stored zeros that pay for themselves by larger blocks; found by trial. */
    private static boolean few(long width, double share) {
        return width <= 8
                ? share < 0.6
                : width <= 24 ? share < 0.25 : width <= 64 ? share < 0.1 : share < 0.04;
    }
}
