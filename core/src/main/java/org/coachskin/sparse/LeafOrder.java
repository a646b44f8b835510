package org.coachskin.sparse;

import java.util.Arrays;

/**
 * Minimum degree on a small piece: eliminates the group whose neighbours, those in separators round
 * the piece included, weigh least; ties go to the lower number. Rows are bit sets, so degrees are
 * exact.
 */
final class LeafOrder {

    private final Graph graph;
    private final int[] piece;
    private final int[] local;

    LeafOrder(Graph graph, int[] piece) {
        this.graph = graph;
        this.piece = piece;
        local = new int[graph.size];
        Arrays.fill(local, -1);
    }

    /**
     * Writes the order of {@code groups}, all of one piece, into {@code order} from {@code first}.
     */
    void order(int[] groups, int[] order, int first) {
        int own = groups.length == 0 ? 0 : piece[groups[0]];
        int[] all = Arrays.copyOf(groups, groups.length + around(groups, own));
        int n = groups.length;
        for (int i = 0; i < n; i++) {
            local[groups[i]] = i;
        }
        for (int g : groups) {
            for (int at = graph.start[g]; at < graph.start[g + 1]; at++) {
                int other = graph.near[at];
                if (local[other] < 0) {
                    local[other] = n;
                    all[n++] = other;
                }
            }
        }
        all = Arrays.copyOf(all, n);
        long[][] row = new long[n][(n + 63) / 64];
        for (int i = 0; i < groups.length; i++) {
            for (int at = graph.start[all[i]]; at < graph.start[all[i] + 1]; at++) {
                int j = local[graph.near[at]];
                set(row[i], j);
                set(row[j], i);
            }
        }
        eliminate(all, groups.length, row, order, first);
        for (int g : all) {
            local[g] = -1;
        }
    }

    /** Bounds the number of groups round a piece. */
    private int around(int[] groups, int own) {
        int count = 0;
        for (int g : groups) {
            for (int at = graph.start[g]; at < graph.start[g + 1]; at++) {
                if (piece[graph.near[at]] != own) {
                    count++;
                }
            }
        }
        return count;
    }

    private void eliminate(int[] all, int inside, long[][] row, int[] order, int first) {
        long[] degree = new long[inside];
        for (int i = 0; i < inside; i++) {
            degree[i] = weight(row[i], all);
        }
        for (int k = 0; k < inside; k++) {
            int pick = 0;
            for (int i = 1; i < inside; i++) {
                if (degree[i] < degree[pick]) {
                    pick = i;
                }
            }
            order[first + k] = all[pick];
            degree[pick] = Long.MAX_VALUE;
            long[] gone = row[pick];
            for (int i = 0; i < all.length; i++) {
                if ((gone[i >> 6] >>> i & 1) != 0) {
                    for (int w = 0; w < gone.length; w++) {
                        row[i][w] |= gone[w];
                    }
                    row[i][i >> 6] &= ~(1L << i);
                    row[i][pick >> 6] &= ~(1L << pick);
                    if (i < inside) {
                        degree[i] = weight(row[i], all);
                    }
                }
            }
        }
    }

    private long weight(long[] set, int[] all) {
        long sum = 0;
        for (int w = 0; w < set.length; w++) {
            for (long bits = set[w]; bits != 0; bits &= bits - 1) {
                sum += graph.weight(all[(w << 6) + Long.numberOfTrailingZeros(bits)]);
            }
        }
        return sum;
    }

    private static void set(long[] row, int i) {
        row[i >> 6] |= 1L << i;
    }
}
