package org.coachskin.sparse;

import java.io.IOException;

/**
 * The Matrix Market exchange format of NIST (Boisvert, Pozo and Remington, NISTIR 5935, 1996; from
 * memory): plain text that other solvers read.
 */
public final class MatrixMarket {

    private MatrixMarket() {}

    /**
     * Writes a matrix: {@code coordinate real symmetric}, lower triangle, rows and columns from 1,
     * every value in full, stored zeros included.
     *
     * @throws IOException when {@code out} throws it
     */
    public static void write(SymmetricMatrix matrix, Appendable out) throws IOException {
        int n = matrix.size();
        int[] start = matrix.pattern().starts();
        int[] row = matrix.pattern().rows();
        double[] value = matrix.values();
        out.append("%%MatrixMarket matrix coordinate real symmetric\n");
        out.append(n + " " + n + " " + value.length + "\n");
        for (int j = 0; j < n; j++) {
            for (int at = start[j]; at < start[j + 1]; at++) {
                out.append((row[at] + 1) + " " + (j + 1) + " " + value[at] + "\n");
            }
        }
    }

    /**
     * Writes a vector: {@code array real general}, one column.
     *
     * @throws IOException when {@code out} throws it
     */
    public static void write(double[] vector, Appendable out) throws IOException {
        out.append("%%MatrixMarket matrix array real general\n");
        out.append(vector.length + " 1\n");
        for (double v : vector) {
            out.append(v + "\n");
        }
    }
}
