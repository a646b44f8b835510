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

    /** The column at work. */
    private final double[] column = new double[TALL];

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
                for (int j = k0 + wide; j < r0 + n; j++) {
                    int s = Math.max(j - r0, 0);
                    boolean inside = j < k;
                    int base = inside ? lo + j * m : uo + packed(j - k, m - k) - k;
                    double[] c = inside ? l : u;
                    System.arraycopy(c, base + r0 + s, column, s, n - s);
                    subtract((j - k0) * WIDE, wide, s, n);
                    System.arraycopy(column, s, c, base + r0 + s, n - s);
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
        switch (count - four) {
            case 1 -> one(column, tile[four >> 2], s, n, b[q]);
            case 2 -> two(column, tile[four >> 2], s, n, b[q], b[q + 1]);
            case 3 -> three(column, tile[four >> 2], s, n, b[q], b[q + 1], b[q + 2]);
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
}
