package org.coachskin.sparse;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class SymmetricMatrixTest {

    /** Sums of a few dozen terms of order one: rounding and nothing else. */
    private static final double ROUNDING = 1e-12;

    @Property(tries = 100, seed = "20261125")
    void isTheSumOfItsElements(@ForAll @IntRange(min = 1, max = 30) int n, @ForAll long start) {
        Random random = new Random(start);
        int[][] elements = new int[random.nextInt(20)][];
        Pattern.Builder builder = Pattern.of(n);
        for (int e = 0; e < elements.length; e++) {
            elements[e] =
                    random.ints(0, n)
                            .distinct()
                            .limit(1 + random.nextInt(Math.min(n, 5)))
                            .toArray();
            builder.element(elements[e]);
        }
        SymmetricMatrix matrix = new SymmetricMatrix(builder.build());
        double[][] dense = new double[n][n];
        for (int turn = 0; turn < 2; turn++) {
            matrix.clear();
            dense = new double[n][n];
            for (int e = 0; e < elements.length; e++) {
                int k = elements[e].length;
                double[] own = Grids.gram(k, 2, random);
                matrix.add(e, own);
                for (int i = 0; i < k; i++) {
                    for (int j = 0; j < k; j++) {
                        dense[elements[e][i]][elements[e][j]] += own[i * k + j];
                    }
                }
            }
        }
        double[] x = Grids.vector(n, random);
        double[] product = new double[n];
        double norm = 0;
        for (int i = 0; i < n; i++) {
            double sum = 0;
            for (int j = 0; j < n; j++) {
                assertEquals(dense[i][j], matrix.get(i, j), ROUNDING);
                product[i] += dense[i][j] * x[j];
                sum += Math.abs(dense[i][j]);
            }
            norm = Math.max(norm, sum);
        }
        double[] ours = new double[n];
        matrix.multiply(x, ours);
        assertArrayEquals(product, ours, ROUNDING * (1 + norm));
        assertEquals(norm, matrix.norm(), ROUNDING * norm);
    }

    @Test
    void unknownsOfOneNodeAreOneGroup() {
        assertEquals(5 * 5, Grids.squares(4, 4, 1, 7).groups());
        // Of fourth order: four insides, four shared edges, the corner where all meet.
        assertEquals(4 + 4 + 1, Grids.squares(2, 2, 4, 3).groups());
    }

    @Test
    void writesMatrixMarket() throws IOException {
        SymmetricMatrix matrix = new SymmetricMatrix(Pattern.of(3).element(2, 0).build());
        matrix.add(0, new double[] {4, -1, -1, 0.1});
        matrix.add(1, 1, 1e-300);
        StringBuilder text = new StringBuilder();
        MatrixMarket.write(matrix, text);
        MatrixMarket.write(new double[] {1, -0.5}, text);
        assertEquals(
                """
                %%MatrixMarket matrix coordinate real symmetric
                3 3 4
                1 1 0.1
                3 1 -1.0
                2 2 1.0E-300
                3 3 4.0
                %%MatrixMarket matrix array real general
                2 1
                1.0
                -0.5
                """,
                text.toString());
    }

    @Test
    void refusesWhatDoesNotFit() {
        assertThrows(IllegalArgumentException.class, () -> Pattern.of(0));
        assertThrows(IllegalArgumentException.class, () -> Pattern.of(2).element(0, 2));
        assertThrows(IllegalArgumentException.class, () -> Pattern.of(2).element(1, 1));
        SymmetricMatrix matrix = new SymmetricMatrix(Pattern.of(2).element(0).build());
        assertThrows(IllegalArgumentException.class, () -> matrix.add(0, new double[2]));
        assertThrows(IllegalArgumentException.class, () -> matrix.add(0, 1, 1));
        assertThrows(
                IllegalArgumentException.class,
                () -> matrix.multiply(new double[3], new double[2]));
        SymmetricMatrix other = new SymmetricMatrix(Pattern.of(2).build());
        assertThrows(IllegalArgumentException.class, () -> matrix.setSum(1, matrix, 1, other));
    }
}
