package org.coachskin.sparse;

/**
 * Eliminates the columns of one dense front, in tiles of {@value #TALL} rows by {@value #WIDE}
 * columns that stay in the nearest cache; allocates nothing.
 *
 * <p>Loops run along columns held in arrays of their own, so that the compiler turns them into
 * vector instructions. Nothing is contracted or reordered by that: the bits are those of the plain
 * loop, on any machine.
 */
final class Front {

    private static final int TALL = 96;
    private static final int WIDE = 32;

    /** Columns of the tile, four by four, each {@value #TALL} long. */
    private final double[][] tile = new double[WIDE / 4][4 * TALL];

    /** The column at work, and the next one. */
    private final double[] column = new double[TALL];

    private final double[] next = new double[TALL];

    /** d times L of each row, {@value #WIDE} a row. */
    private double[] row = new double[WIDE * TALL];

    /** Told about each pivot as it comes up. */
    interface Pivots {

        /** Returns the pivot to use, 0 to leave the column out. */
        double take(int column, double found);
    }

    /**
     * Eliminates k columns of a front of m rows.
     *
     * @param l holds the columns from {@code lo} on, each m long, diagonal entry of column j at j;
     *     overwritten by L
     * @param u holds the lower triangle of the other m - k columns from {@code uo} on, column after
     *     column; what is left is subtracted there
     */
    void eliminate(double[] l, int lo, int k, int m, double[] u, int uo, Pivots pivots) {
        if (row.length < m * WIDE) {
            row = new double[m * WIDE];
        }
        for (int k0 = 0; k0 < k; k0 += WIDE) {
            int wide = Math.min(WIDE, k - k0);
            int height = m - k0;
            int strips = (height + TALL - 1) / TALL;
            int tall = (height + strips - 1) / strips;
            for (int r0 = k0; r0 < m; r0 += tall) {
                int n = Math.min(tall, m - r0);
                for (int p = 0; p < wide; p++) {
                    reduce(l, lo + (k0 + p) * m, k0, p, r0, n, pivots);
                }
                for (int j = k0 + wide; j < r0 + n; j += 2) {
                    boolean both = j + 1 < r0 + n;
                    int s = Math.max(j - r0, 0);
                    int below = Math.max(j + 1 - r0, 0);
                    double[] c = j < k ? l : u;
                    int from = r0 + (j < k ? lo + j * m : uo + packed(j - k, m - k) - k);
                    System.arraycopy(c, from + s, column, s, n - s);
                    if (both) {
                        double[] e = j + 1 < k ? l : u;
                        int to = j + 1 < k ? from + m : r0 + uo + packed(j + 1 - k, m - k) - k;
                        System.arraycopy(e, to + below, next, below, n - below);
                        subtractFromBoth((j - k0) * WIDE, wide, s, n);
                        System.arraycopy(next, below, e, to + below, n - below);
                    } else {
                        subtract((j - k0) * WIDE, wide, s, n);
                    }
                    System.arraycopy(column, s, c, from + s, n - s);
                }
            }
        }
    }

    /** Where row 0 of column {@code j} of a packed lower triangle would stand. */
    static int packed(int j, int size) {
        return j * size - j * (j + 1) / 2;
    }

    /** Brings rows r0 to r0 + n of column k0 + p to their final values. */
    private void reduce(double[] l, int base, int k0, int p, int r0, int n, Pivots pivots) {
        boolean top = r0 == k0;
        int s = top ? p : 0;
        System.arraycopy(l, base + r0 + s, column, s, n - s);
        subtract(p * WIDE, p, s, n);
        double d;
        if (top) {
            d = pivots.take(p + k0, column[p]);
            l[base + k0 + p] = d;
            column[p] = 1;
            s++;
        } else {
            d = l[base + k0 + p];
        }
        double inverse = d == 0 ? 0 : 1 / d;
        double keep = d == 0 ? 0 : 1;
        int to = (r0 - k0 + s) * WIDE + p;
        for (int i = s; i < n; i++, to += WIDE) {
            row[to] = keep * column[i];
        }
        scale(column, s, n, inverse);
        System.arraycopy(column, s, l, base + r0 + s, n - s);
        System.arraycopy(column, s, tile[p >> 2], (p & 3) * TALL + s, n - s);
    }

    /** Subtracts the first {@code count} columns of the tile, times a row's factors. */
    private void subtract(int at, int count, int s, int n) {
        double[] b = row;
        int q = at;
        int four = count & ~3;
        for (int p = 0; p < four; p += 4, q += 4) {
            four(column, tile[p >> 2], s, n, b[q], b[q + 1], b[q + 2], b[q + 3]);
        }
        subtractRest(column, q, count, s, n);
    }

    /**
     * Does the same to two columns: each value of the tile is fetched once for both, which is worth
     * a half more even to a compiler without vectors. A row of {@link #next} above the diagonal may
     * come along; it is not written back.
     */
    private void subtractFromBoth(int at, int count, int s, int n) {
        double[] b = row;
        int q = at;
        int t = at + WIDE;
        int four = count & ~3;
        for (int p = 0; p < four; p += 4, q += 4, t += 4) {
            double[] a = tile[p >> 2];
            both(a, s, n, b[q], b[q + 1], b[q + 2], b[q + 3], b[t], b[t + 1], b[t + 2], b[t + 3]);
        }
        subtractRest(column, q, count, s, n);
        subtractRest(next, t, count, s, n);
    }

    /** Subtracts the columns of the tile beyond the last four. */
    private void subtractRest(double[] c, int q, int count, int s, int n) {
        double[] b = row;
        int four = count & ~3;
        switch (count - four) {
            case 1 -> one(c, tile[four >> 2], s, n, b[q]);
            case 2 -> two(c, tile[four >> 2], s, n, b[q], b[q + 1]);
            case 3 -> three(c, tile[four >> 2], s, n, b[q], b[q + 1], b[q + 2]);
            default -> {}
        }
    }

    private static void scale(double[] c, int s, int n, double factor) {
        for (int i = s; i < n; i++) {
            c[i] *= factor;
        }
    }

    private static void one(double[] c, double[] a, int s, int n, double b0) {
        for (int i = s; i < n; i++) {
            c[i] -= a[i] * b0;
        }
    }

    private static void two(double[] c, double[] a, int s, int n, double b0, double b1) {
        for (int i = s; i < n; i++) {
            c[i] -= a[i] * b0 + a[i + TALL] * b1;
        }
    }

    private static void three(
            double[] c, double[] a, int s, int n, double b0, double b1, double b2) {
        for (int i = s; i < n; i++) {
            c[i] -= a[i] * b0 + a[i + TALL] * b1 + a[i + 2 * TALL] * b2;
        }
    }

    private static void four(
            double[] c, double[] a, int s, int n, double b0, double b1, double b2, double b3) {
        for (int i = s; i < n; i++) {
            c[i] -= a[i] * b0 + a[i + TALL] * b1 + a[i + 2 * TALL] * b2 + a[i + 3 * TALL] * b3;
        }
    }

    /** The same for {@link #column} and {@link #next}. */
    private void both(
            double[] a,
            int s,
            int n,
            double b0,
            double b1,
            double b2,
            double b3,
            double d0,
            double d1,
            double d2,
            double d3) {
        double[] c = column;
        double[] e = next;
        for (int i = s; i < n; i++) {
            double a0 = a[i];
            double a1 = a[i + TALL];
            double a2 = a[i + 2 * TALL];
            double a3 = a[i + 3 * TALL];
            c[i] -= a0 * b0 + a1 * b1 + a2 * b2 + a3 * b3;
            e[i] -= a0 * d0 + a1 * d1 + a2 * d2 + a3 * d3;
        }
    }
}
