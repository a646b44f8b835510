package org.coachskin.sparse;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The symbolic half of a factorisation: fill, blocks of columns and where every entry goes, found
 * once for a pattern and an order and used for any number of matrices. Immutable; may be shared
 * between threads.
 *
 * <p>The matrix is factored as P A P<sup>T</sup> = L D L<sup>T</sup> by the multifrontal method
 * (Duff and Reid, ACM Trans. Math. Softw. 9, 1983, pp. 302-325; from memory): blocks of columns are
 * eliminated in dense fronts along the elimination tree.
 */
public final class FactorPlan {

    private final Pattern pattern;

    /** Number of blocks. */
    final int blocks;

    /** Place of each unknown in the order of elimination, and the unknown at each place. */
    final int[] placeOf;

    final int[] unknownAt;

    /** First column of each block; one more than blocks. */
    final int[] first;

    /** Block that takes over what a block leaves, or -1. */
    final int[] parent;

    /** Start of each block's rows in {@link #row}; one more than blocks. */
    final int[] rowStart;

    /** Rows below each block's own columns, ascending, as places. */
    final int[] row;

    /** The same rows as positions in the parent's front: its columns first, then its rows. */
    final int[] inParent;

    /** Start of each block's columns among the values of L; one more than blocks. */
    final int[] valueStart;

    /** Where each entry of the matrix goes among the values of L. */
    final int[] target;

    /** How many earlier blocks each block takes over. */
    final int[] children;

    /** Most values that wait on the stack at a time. */
    final int stack;

    private final long entries;
    private final double work;

    private FactorPlan(Pattern pattern, Order order) {
        this.pattern = pattern;
        int[] given = order.toArray();
        Tree tree = new Tree(pattern.graph(), given);
        int[] sequence = sequence(tree);
        blocks = sequence.length;
        first = new int[blocks + 1];
        parent = new int[blocks];
        rowStart = new int[blocks + 1];
        valueStart = new int[blocks + 1];
        unknownAt = new int[given.length];
        placeOf = new int[given.length];
        children = new int[blocks];
        place(tree, sequence, given);
        long rows = 0;
        long values = 0;
        long kept = 0;
        double flops = 0;
        for (int s = 0; s < blocks; s++) {
            long k = columns(s);
            long r = tree.below(sequence[s]);
            rows += r;
            values += k * (k + r);
            kept += k * (k + 1) / 2 + k * r;
            for (long j = 0; j < k; j++) {
                flops += (double) (k - j + r) * (k - j + r);
            }
            if (rows > Integer.MAX_VALUE - 8 || values > Integer.MAX_VALUE - 8) {
                throw new IllegalArgumentException("the factor has more than 2^31 - 1 entries");
            }
            rowStart[s + 1] = (int) rows;
            valueStart[s + 1] = (int) values;
        }
        entries = kept;
        work = flops;
        row = new int[(int) rows];
        for (int s = 0; s < blocks; s++) {
            int n = rowStart[s];
            for (int run : tree.reachOf(sequence[s])) {
                for (int i = tree.runStart(run); i < tree.runStart(run + 1); i++) {
                    row[n++] = placeOf[given[i]];
                }
            }
            Arrays.sort(row, rowStart[s], n);
        }
        inParent = new int[row.length];
        for (int s = 0; s < blocks; s++) {
            fit(s);
        }
        target = aim();
        stack = stackNeeded();
    }

    /**
     * Analyses.
     *
     * @throws IllegalArgumentException when the order is of another size, or the factor would have
     *     more than 2^31 - 1 entries
     */
    public static FactorPlan of(Pattern pattern, Order order) {
        if (order.size() != pattern.size()) {
            throw new IllegalArgumentException(
                    "an order of " + order.size() + " for " + pattern.size() + " unknowns");
        }
        return new FactorPlan(pattern, order);
    }

    /** Analyses in the order of {@link Order#dissection(Pattern)}. */
    public static FactorPlan of(Pattern pattern) {
        return of(pattern, Order.dissection(pattern));
    }

    /**
     * Factors a matrix; pivots of at most {@link Factor#NULL} times their diagonal entry are null.
     *
     * @throws IllegalArgumentException when it is not on this plan's pattern
     * @throws ArithmeticException when a pivot is not finite, naming its unknown
     */
    public Factor factor(SymmetricMatrix matrix) {
        return factor(matrix, Factor.NULL);
    }

    /**
     * Factors a matrix.
     *
     * @param share a pivot of at most so much of its diagonal entry is null; 0 or more, below 1
     * @throws IllegalArgumentException when it is not on this plan's pattern
     * @throws ArithmeticException when a pivot is not finite, naming its unknown
     */
    public Factor factor(SymmetricMatrix matrix, double share) {
        if (!(share >= 0 && share < 1)) {
            throw new IllegalArgumentException("share is " + share + "; wanted is 0 to below 1");
        }
        Factor factor = new Factor(this, share);
        factor.refactor(matrix);
        return factor;
    }

    /** Returns the pattern. */
    public Pattern pattern() {
        return pattern;
    }

    /** Returns the order in which unknowns are really eliminated: as good as the one given. */
    public Order order() {
        return Order.of(unknownAt);
    }

    /** Returns the number of entries of L, diagonal and stored zeros included. */
    public long entries() {
        return entries;
    }

    /** Returns the multiplications and additions of one factorisation. */
    public double work() {
        return work;
    }

    /** Returns the number of blocks of columns. */
    public int blocks() {
        return blocks;
    }

    int rows(int block) {
        return rowStart[block + 1] - rowStart[block];
    }

    int columns(int block) {
        return first[block + 1] - first[block];
    }

    /** Blocks so that each comes right after all it waits for; the largest of those first. */
    private static int[] sequence(Tree tree) {
        List<List<Integer>> children = new ArrayList<>();
        for (int r = 0; r <= tree.runs(); r++) {
            children.add(new ArrayList<>(0));
        }
        int count = 0;
        for (int r = 0; r < tree.runs(); r++) {
            if (tree.leads(r)) {
                int p = tree.parentOf(r);
                children.get(p < 0 ? tree.runs() : p).add(r);
                count++;
            }
        }
        for (List<Integer> of : children) {
            of.sort((a, b) -> Long.compare(tree.below(b), tree.below(a)));
        }
        int[] found = new int[count];
        int[] path = new int[count + 1];
        int[] next = new int[tree.runs() + 1];
        int n = 0;
        int depth = 0;
        path[0] = tree.runs();
        while (depth >= 0) {
            int at = path[depth];
            if (next[at] < children.get(at).size()) {
                path[++depth] = children.get(at).get(next[at]++);
            } else {
                if (at < tree.runs()) {
                    found[n++] = at;
                }
                depth--;
            }
        }
        return found;
    }

    private void place(Tree tree, int[] sequence, int[] given) {
        int[] number = new int[tree.runs()];
        for (int s = 0; s < blocks; s++) {
            number[sequence[s]] = s;
            first[s + 1] = first[s] + (int) tree.width(sequence[s]);
        }
        for (int s = 0; s < blocks; s++) {
            int p = tree.parentOf(sequence[s]);
            parent[s] = p < 0 ? -1 : number[p];
            if (p >= 0) {
                children[number[p]]++;
            }
        }
        int[] next = first.clone();
        for (int r = 0; r < tree.runs(); r++) {
            int s = number[tree.blockOf(r)];
            for (int i = tree.runStart(r); i < tree.runStart(r + 1); i++) {
                unknownAt[next[s]] = given[i];
                placeOf[given[i]] = next[s]++;
            }
        }
    }

    private void fit(int s) {
        int p = parent[s];
        if (p < 0) {
            return;
        }
        int at = rowStart[p];
        for (int i = rowStart[s]; i < rowStart[s + 1]; i++) {
            if (row[i] < first[p + 1]) {
                inParent[i] = row[i] - first[p];
            } else {
                while (row[at] != row[i]) {
                    at++;
                }
                inParent[i] = columns(p) + at - rowStart[p];
            }
        }
    }

    private int[] aim() {
        int n = placeOf.length;
        int[] column = new int[n];
        int[] local = new int[n];
        int[] found = new int[pattern.entries()];
        int[] start = pattern.starts();
        int[] rows = pattern.rows();
        // Entries by the place of their column, so that each block's rows are laid out once.
        int[] count = new int[n + 1];
        for (int j = 0; j < n; j++) {
            for (int at = start[j]; at < start[j + 1]; at++) {
                count[Math.min(placeOf[j], placeOf[rows[at]]) + 1]++;
            }
        }
        for (int j = 0; j < n; j++) {
            count[j + 1] += count[j];
        }
        int[] entry = new int[found.length];
        int[] high = new int[found.length];
        System.arraycopy(count, 0, column, 0, n);
        for (int j = 0; j < n; j++) {
            for (int at = start[j]; at < start[j + 1]; at++) {
                int a = placeOf[j];
                int b = placeOf[rows[at]];
                int to = column[Math.min(a, b)]++;
                entry[to] = at;
                high[to] = Math.max(a, b);
            }
        }
        for (int s = 0; s < blocks; s++) {
            int k = columns(s);
            for (int i = 0; i < k; i++) {
                local[first[s] + i] = i;
            }
            for (int i = rowStart[s]; i < rowStart[s + 1]; i++) {
                local[row[i]] = k + i - rowStart[s];
            }
            int height = k + rows(s);
            for (int j = 0; j < k; j++) {
                for (int at = count[first[s] + j]; at < count[first[s] + j + 1]; at++) {
                    found[entry[at]] = valueStart[s] + j * height + local[high[at]];
                }
            }
        }
        return found;
    }

    private int stackNeeded() {
        long most = 0;
        long now = 0;
        long[] waiting = new long[blocks];
        for (int s = 0; s < blocks; s++) {
            long own = (long) rows(s) * (rows(s) + 1) / 2;
            most = Math.max(most, now + own);
            now += own - waiting[s];
            if (parent[s] >= 0) {
                waiting[parent[s]] += own;
            }
        }
        if (most > Integer.MAX_VALUE - 8) {
            throw new IllegalArgumentException("the fronts hold more than 2^31 - 1 entries");
        }
        return (int) most;
    }
}
